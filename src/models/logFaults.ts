/** Faults in a log of dated levels that no stock could have had. Levels in litres, dates as serials with time of day. */
import { stuckReadings } from "./plausible";

/** A row of the log, counted from 1; what could not be read is undefined. */
export interface Reading {
  readonly row: number;
  readonly date: number | undefined;
  readonly level: number | undefined;
}

export interface LogLimits {
  readonly capacity: number;
  /** L/day */
  readonly mostRise: number | undefined;
  /** L/day */
  readonly mostFall: number | undefined;
}

export interface LogFault {
  readonly row: number;
  readonly date: number | undefined;
  readonly fault: string;
}

const shown = (value: number): string => String(Number(value.toPrecision(5)));
/** Floating noise is no fault. */
const exceeds = (value: number, limit: number): boolean => value > limit + 1e-9 * Math.max(1, Math.abs(limit));

/** Dates that stand twice or go back, levels above the capacity, changes faster than the limits, a gauge that is stuck. */
export function logFaults(readings: readonly Reading[], { capacity, mostRise, mostFall }: LogLimits): LogFault[] {
  const found: LogFault[] = [];
  const add = (reading: Reading, fault: string): void =>
    void found.push({ row: reading.row, date: reading.date, fault });
  const rowOfDate = new Map<number, number>();
  let latest: { row: number; date: number } | undefined;
  let last: { row: number; date: number; level: number } | undefined;
  for (const reading of readings) {
    const { row, date, level } = reading;
    if (date !== undefined) {
      const earlier = rowOfDate.get(date);
      if (earlier !== undefined) add(reading, `the same date as row ${earlier}`);
      else {
        rowOfDate.set(date, row);
        if (latest && date < latest.date) add(reading, `the date is before that of row ${latest.row}: out of order`);
        else latest = { row, date };
      }
    }
    if (level === undefined) continue;
    if (exceeds(level, capacity)) {
      add(reading, `level ${shown(level)} L is above the capacity of ${shown(capacity)} L`);
      continue;
    }
    if (date === undefined) continue;
    const days = last ? date - last.date : 0;
    if (last && days > 0) {
      const rise = (level - last.level) / days;
      if (mostRise !== undefined && exceeds(rise, mostRise))
        add(reading, `rises ${shown(rise)} L a day since row ${last.row}, faster than ${shown(mostRise)} L a day`);
      if (mostFall !== undefined && exceeds(-rise, mostFall))
        add(reading, `falls ${shown(-rise)} L a day since row ${last.row}, faster than ${shown(mostFall)} L a day`);
    }
    if (!last || days > 0) last = { row, date, level };
  }
  const levels = readings.filter(({ level }) => level !== undefined);
  for (let start = 0; start < levels.length;) {
    const { level } = levels[start]!;
    let end = start + 1;
    while (end < levels.length && levels[end]!.level === level) end++;
    const run = levels.slice(start, end);
    const times = new Set(run.map(({ date }) => date)).size;
    if (times >= stuckReadings && level! > 0 && level! < capacity) {
      add(
        run[0]!,
        `the same level in ${run.length} readings, rows ${run[0]!.row} to ${run[run.length - 1]!.row}: is the gauge stuck?`,
      );
    }
    start = end;
  }
  return found;
}
