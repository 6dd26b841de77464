import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { dateTime } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours, litres, litresPerHour } from "../../arguments/quantity";
import { dateTimeResult } from "../../arguments/resultDate";
import { hoursToMake } from "../../models/making";

export const args = cellArguments({
  need_time: dateTime,
  need: litres,
  rate: litresPerHour.positive(),
  start_delay: hours.default(defaults.start_delay),
  plants: count.atLeast(1).default(defaults.plants),
});

/**
 * Latest date and time to switch plants on so that an amount of liquid is made by the time it is needed.
 *
 * @customfunction SWITCH_ON_BY
 * @param need_time When the liquid is needed [date-time]
 * @param need Liquid to make, with what its transfer loses [L]
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @param [plants] Plants of that rate
 * @returns Latest time to switch on [date-time]
 */
export function switchOnBy(
  need_time: any[][],
  need: any[][],
  rate: any[][],
  start_delay?: any[][],
  plants?: any[][],
): any[][] {
  return eachCell(args, [need_time, need, rate, start_delay, plants], (given) =>
    dateTimeResult(
      given.need_time - hoursToMake(given.need, given.rate, given.start_delay, given.plants) / 24,
      "the time to switch on",
    ),
  );
}

export const about: About = {
  rule: "need time − (start delay + need / (rate × plants)) / 24",
  range:
    "Rate above 0, at least one plant. Nothing is kept in hand for a power cut or a slow start: switch on earlier than this.",
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: '=OXYGEN.SWITCH_ON_BY("2026-03-04 08:00",45,1.5,3,2)',
      result: 46084 + 14 / 24,
      note: "18 h before Wednesday 08:00 is Tuesday 14:00",
      source: "Serial 46083 is 2 March 2026",
    },
  ],
  seeAlso: ["READY_AT", "START_DELAY", "GROSS_DRAW"],
};
