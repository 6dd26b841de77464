import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { dateTime } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours, litres, litresPerHour } from "../../arguments/quantity";
import { dateTimeResult } from "../../arguments/resultDate";
import { blankAsZero } from "../../arguments/whereCautionEnds";
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

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "date-time",
  rule: "need time − (start delay + need / (rate × plants)) / 24",
  range: `Rate above 0, at least one plant. Nothing is kept in hand for a power cut or a slow start: switch on earlier than this. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: '=OXYGEN.SWITCH_ON_BY("2026-03-04 08:00",33,1.5)',
      result: 46085 + (8 - delay - 22) / 24,
      note: "One plant",
      source: `Serial 46085 is 4 March 2026; ${delay} h and 33 / 1.5 = 22 h before 08:00`,
    },
    {
      formula: '=OXYGEN.SWITCH_ON_BY("2026-03-04 08:00",48,1.5,2,2)',
      result: 46084 + 14 / 24,
      note: "Two plants: Tuesday at 14:00",
      source: "2 h + 48 / 3 = 18 h before Wednesday 08:00",
    },
  ],
  seeAlso: ["READY_AT", "START_DELAY", "GROSS_DRAW"],
};
