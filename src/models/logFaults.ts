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
/**
 * Floating noise is no fault. A rise is a small difference of large levels, so it is noisier than what `exceeds` of the
 * other models lets pass.
 */
const isFault = (value: number, limit: number): boolean => value > limit + 1e-9 * Math.max(1, Math.abs(limit));

/**
 * Which dates belong to the longest rising series of the list, earlier rows first among equals: one wrong date is then
 * the fault of its own row, not of every row after it. Undefined dates don't belong.
 */
function risingDates(dates: readonly (number | undefined)[]): boolean[] {
  /** From the end: length of the longest rising series that begins with each date. */
  const lengths = dates.map(() => 0);
  /** The latest date that begins a series of each length; it falls as the length grows. */
  const latestStart: number[] = [];
  for (let index = dates.length - 1; index >= 0; index--) {
    const date = dates[index];
    if (date === undefined) continue;
    let [low, high] = [0, latestStart.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (latestStart[middle]! > date) low = middle + 1;
      else high = middle;
    }
    latestStart[low] = date;
    lengths[index] = low + 1;
  }
  let wanted = latestStart.length;
  let last = -Infinity;
  return dates.map((date, index) => {
    if (date === undefined || lengths[index] !== wanted || date <= last) return false;
    wanted--;
    last = date;
    return true;
  });
}

/** Dates that stand twice or out of order, levels above the capacity, changes faster than the limits, a gauge that is stuck. */
export function logFaults(readings: readonly Reading[], { capacity, mostRise, mostFall }: LogLimits): LogFault[] {
  const found: LogFault[] = [];
  const add = (reading: Reading, fault: string): void =>
    void found.push({ row: reading.row, date: reading.date, fault });
  const rising = risingDates(readings.map(({ date }) => date));
  const rowOfDate = new Map<number | undefined, number>();
  readings.forEach(({ row, date }, index) => {
    if (rising[index]) rowOfDate.set(date, row);
  });
  /** The last reading before this one whose date is in order. */
  let before: Reading | undefined;
  const misplaced = (reading: Reading, index: number): string => {
    const twin = rowOfDate.get(reading.date);
    if (twin !== undefined) return `the same date as row ${twin}`;
    if (before && reading.date! < before.date!) return `the date is before that of row ${before.row}: out of order`;
    const after = readings.find((_, at) => at > index && rising[at])!;
    return `the date is after that of row ${after.row}: out of order`;
  };
  let last: { row: number; date: number; level: number } | undefined;
  readings.forEach((reading, index) => {
    const { row, date, level } = reading;
    if (rising[index]) before = reading;
    else if (date !== undefined) add(reading, misplaced(reading, index));
    if (level === undefined) return;
    if (isFault(level, capacity)) {
      add(reading, `level ${shown(level)} L is above the capacity of ${shown(capacity)} L`);
      return;
    }
    if (date === undefined || !rising[index]) return;
    if (last) {
      const rise = (level - last.level) / (date - last.date);
      if (mostRise !== undefined && isFault(rise, mostRise))
        add(reading, `rises ${shown(rise)} L a day since row ${last.row}, faster than ${shown(mostRise)} L a day`);
      if (mostFall !== undefined && isFault(-rise, mostFall))
        add(reading, `falls ${shown(-rise)} L a day since row ${last.row}, faster than ${shown(mostFall)} L a day`);
    }
    last = { row, date, level };
  });
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
