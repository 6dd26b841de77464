import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { dateTime } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours, litres, litresPerHour } from "../../arguments/quantity";
import { dateTimeResult } from "../../arguments/resultDate";
import { blankAsZero } from "../../arguments/whereCautionEnds";
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

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "date-time",
  rule: "start time + (start delay + need / (rate × plants)) / 24",
  range: `Rate above 0, at least one plant. The vessels are taken to have room for it; nothing needed still answers the start delay. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: '=OXYGEN.READY_AT("2026-03-02 06:00",45,1.5)',
      result: 46083 + (6 + delay + 30) / 24,
      note: "One plant, switched on at 06:00",
      source: `Serial 46083 is 2 March 2026; ${delay} h and 45 / 1.5 = 30 h after 06:00`,
    },
    {
      formula: '=OXYGEN.READY_AT("2026-03-02 06:00",48,1.5,2,2)',
      result: 46084,
      note: "Two plants are ready at midnight",
      source: "2 h + 48 / 3 = 18 h after 06:00",
    },
  ],
  seeAlso: ["SWITCH_ON_BY", "FULL_AT", "GROSS_DRAW"],
};
