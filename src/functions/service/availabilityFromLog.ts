import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { dateTime, isoMinute } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { instants, instantsOrBlank } from "../../arguments/instants";
import { CellError, invalid, noAnswer } from "../../cells/cellValues";
import { type Stop, availabilityOf } from "../../models/availability";

export const args = tableArguments({
  stops: instants("give the range with its heading, also when there was no stop yet"),
  starts: instantsOrBlank("give the range beside stops, blank where it is still down"),
  from_date: dateTime,
  to_date: dateTime,
});

/** A moment [days] that typed and reckoned times may differ by: a tenth of a second. */
const moment = 0.1 / 86400;

/** The times down in order, or words on the first that can't be. */
function readStops(stops: readonly number[], starts: readonly number[], from: number, to: number): Stop[] | CellError {
  if (starts.length !== stops.length && starts.length !== stops.length - 1)
    return invalid(
      `stops has ${stops.length} and starts has ${starts.length} cells; they must go together one by one, and only the last start may be blank`,
    );
  const read: Stop[] = [];
  for (let index = 0; index < stops.length; index++) {
    const stop = stops[index]!;
    const start = index < starts.length ? starts[index]! : to;
    const fault = (words: string): CellError => invalid(`${words} (stop ${index + 1} of the log)`);
    const before = read[index - 1];
    if (stop < from - moment)
      return fault(
        `stops: ${isoMinute(stop)} is before from_date ${isoMinute(from)}; enter from_date as the stop of a machine that was down then, or leave the stop out`,
      );
    if (stop >= to)
      return fault(`stops: ${isoMinute(stop)} is not before to_date ${isoMinute(to)}; leave the stop out`);
    if (before && stop < before.to - moment)
      return fault(
        `stops: ${isoMinute(stop)} is before the start ${isoMinute(before.to)} above it; check both, and the order of the rows`,
      );
    if (start <= stop)
      return fault(`starts: ${isoMinute(start)} is not after its stop ${isoMinute(stop)}; check which is which`);
    if (start > to + moment)
      return fault(
        `starts: ${isoMinute(start)} is after to_date ${isoMinute(to)}; leave the last start blank if it was down at the end`,
      );
    read.push({ from: stop, to: Math.min(start, to) });
  }
  return read;
}

/**
 * Availability of a machine from the log of its stops: the share of time it was up, and a cautious share to plan with,
 * since a short log may have been lucky.
 *
 * @customfunction AVAILABILITY_FROM_LOG
 * @param stops Date-times at which it went down, in order [date-time]
 * @param starts Date-times at which it was back, beside each stop; the last is blank while it is still down [date-time]
 * @param from_date Date-time from which the log is complete [date-time]
 * @param to_date Date-time up to which it is complete; a day alone counts up to its first minute [date-time]
 * @returns One row: availability, stops, mean hours up, mean hours down, cautious availability
 */
export function availabilityFromLog(stops: any[][], starts: any[][], from_date: any[][], to_date: any[][]): any[][] {
  return wholeTable(args, [stops, starts, from_date, to_date], (given) => {
    const { from_date: from, to_date: to } = given;
    if (to <= from)
      return invalid(`to_date ${isoMinute(to)} is not after from_date ${isoMinute(from)}; check which is which`);
    const read = readStops(given.stops, given.starts, from, to);
    if (read instanceof CellError) return read;
    if (read.length === 0)
      return noAnswer(
        `no stop in ${formatNumber((to - from) * 24)} hours seen up: too few to tell an availability; plan with a cautious one until there is a stop`,
      );
    const found = availabilityOf(read, from, to);
    return [
      ["availability", "stops", "mean hours up", "mean hours down", "cautious availability"],
      [found.availability, found.stops, found.meanUp, found.meanDown, found.cautious],
    ];
  });
}

export const about: About = {
  gives: ["fraction", "count", "hours", "hours", "fraction"],
  rule: "U hours up, D hours down, n stops: U/(U + D), n, U/n, D/n, and U/(U + D × F) with F the 95 % point of the F distribution with 2n and 2n degrees of freedom",
  range:
    "One machine, in order, no stop outside the time or over another: #VALUE!. Every stop counts, planned service too. A stop still open counts up to to_date. No stop is #N/A: a log without stops is not an availability of 1. The cautious share is too high in one case of twenty, where times up and down vary as exponential ones do and the log is typical of what comes: a new site, the hot season or missing parts make it worse. The fewer the stops, the further below the plain share it lies.",
  source:
    "Billinton & Allan, Reliability Evaluation of Engineering Systems (from memory); Trivedi, Probability and Statistics with Reliability, Queuing, and Computer Science Applications, 2nd ed. (2001), example 10.27 (read); incomplete beta function: DLMF 8.17.22",
  examples: [
    {
      formula: '=OXYGEN.AVAILABILITY_FROM_LOG({"2026-01-09 06:00"},{"2026-01-10 12:00"},"2026-01-01","2026-01-31")',
      result: [
        ["availability", "stops", "mean hours up", "mean hours down", "cautious availability"],
        [690 / 720, 1, 690, 30, 690 / (690 + 30 * 19)],
      ],
      note: "One stop of 30 hours in 30 days: 0.96 as it was, and little more than a half is sure",
      source: "The 95 % point of F with 2 and 2 degrees is 19 (NIST/SEMATECH e-Handbook, 1.3.6.7.3)",
    },
    {
      formula:
        '=OXYGEN.AVAILABILITY_FROM_LOG({"stopped";"2026-01-05 08:00";"2026-01-13 20:00";"2026-01-29 18:00"},{"back";"2026-01-05 20:00";"2026-01-14 08:00";""},"2026-01-01","2026-01-31")',
      result: [
        ["availability", "stops", "mean hours up", "mean hours down", "cautious availability"],
        [666 / 720, 3, 222, 18, 666 / (666 + 54 * 4.2839)],
      ],
      tolerance: 0.0001,
      note: "Three stops, the last one still open",
      source: "12 + 12 + 30 hours down; the 95 % point of F with 6 and 6 degrees is 4.2839 (F tables)",
    },
    {
      formula: '=OXYGEN.AVAILABILITY_FROM_LOG({"stopped"},{"back"},"2026-01-01","2026-01-31")',
      result: { error: "#N/A", words: "no stop in 720 hours seen up" },
      source: "30 × 24",
    },
  ],
  seeAlso: ["PLANTS_NEEDED", "ENOUGH_UNITS_CHANCE", "SUPPLY_CHANCE", "PLAN_CHANCE", "SERVICE_LIST"],
  caution: "Plan with the cautious share, and have oxygen for the longest stop you have seen, not for the mean one.",
};
