import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { dateTime } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours, litres, litresPerHour } from "../../arguments/quantity";
import { dateTimeResult } from "../../arguments/resultDate";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { hoursToFill } from "../../models/making";

export const args = cellArguments({
  start_time: dateTime,
  capacity: litres.positive(),
  rate: litresPerHour.positive(),
  level: litres.default(defaults.level),
  start_delay: hours.default(defaults.start_delay),
});

/**
 * Date and time at which a vessel is full, from the time at which the plant is switched on.
 *
 * @customfunction FULL_AT
 * @param start_time When the plant is switched on [date-time]
 * @param capacity Liquid the vessel holds when full [L]
 * @param rate Liquid the plant makes, net of standing loss [L/h]
 * @param [level] Liquid in the vessel at that time [L]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @returns When the vessel is full [date-time]
 */
export function fullAt(
  start_time: any[][],
  capacity: any[][],
  rate: any[][],
  level?: any[][],
  start_delay?: any[][],
): any[][] {
  return eachCell(
    args,
    [start_time, capacity, rate, level, start_delay],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      dateTimeResult(
        given.start_time + hoursToFill(given.capacity, given.rate, given.level, given.start_delay) / 24,
        "the time of a full vessel",
      ),
  );
}

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "date-time",
  rule: "start time + (start delay + (capacity − level) / rate) / 24",
  range: `Capacity and rate above 0; a level above the capacity is #VALUE!. Assumes that nothing is drawn and the power holds. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: '=OXYGEN.FULL_AT("2026-03-02 08:00",66,1.5)',
      result: 46083 + (8 + delay + 44) / 24,
      note: "An empty vessel, switched on Monday 2 March at 08:00",
      source: `Serial 46083 is 2 March 2026; ${delay} h and 66 / 1.5 = 44 h after 08:00`,
    },
    {
      formula: '=OXYGEN.FULL_AT("2026-03-02",66,1.5,30,0)',
      result: 46084,
      note: "A cold plant fills the rest in a day",
      source: "36 / 1.5 = 24 h",
    },
  ],
  seeAlso: ["HOURS_TO_FILL", "READY_AT", "SWITCH_ON_BY"],
};
