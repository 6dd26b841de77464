import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { dateTime } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours, litres, litresPerHour } from "../../arguments/quantity";
import { dateTimeResult } from "../../arguments/resultDate";
import { hoursToMake } from "../../models/making";

export const args = cellArguments({
  start_time: dateTime,
  need: litres,
  rate: litresPerHour.positive(),
  start_delay: hours.default(defaults.start_delay),
  plants: count.atLeast(1).default(defaults.plants),
});

/**
 * Date and time at which an amount of liquid has been made, from the time at which the plants are switched on together.
 *
 * @customfunction READY_AT
 * @param start_time When the plants are switched on [date-time]
 * @param need Liquid to make, with what its transfer loses [L]
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @param [plants] Plants of that rate
 * @returns When that much is made [date-time]
 */
export function readyAt(
  start_time: any[][],
  need: any[][],
  rate: any[][],
  start_delay?: any[][],
  plants?: any[][],
): any[][] {
  return eachCell(args, [start_time, need, rate, start_delay, plants], (given) =>
    dateTimeResult(
      given.start_time + hoursToMake(given.need, given.rate, given.start_delay, given.plants) / 24,
      "the time at which it is ready",
    ),
  );
}

export const about: About = {
  rule: "start time + (start delay + need / (rate × plants)) / 24",
  range:
    "Rate above 0, at least one plant. The vessels are taken to have room for it; nothing needed still answers the start delay.",
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: '=OXYGEN.READY_AT("2026-03-02 06:00",45,1.5,3,2)',
      result: 46084,
      note: "Two plants: 3 h + 15 h after 06:00 is midnight",
      source: "Serial 46083 is 2 March 2026",
    },
    { formula: "=OXYGEN.READY_AT(46083,24,1,0)", result: 46084, note: "24 L at 1 L/h from a cold plant" },
  ],
  seeAlso: ["SWITCH_ON_BY", "FULL_AT", "GROSS_DRAW"],
};
