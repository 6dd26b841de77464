import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { hours, litresPerHour, litresPerMinute, number } from "../../arguments/quantity";
import { blankAsZero, drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { gasAtPatient, liquidMade } from "../../models/making";

export const args = tableArguments({
  make_hours: hours,
  gas_hours: hours,
  rate: litresPerHour.positive(),
  gas_flow: litresPerMinute,
  start_delay: hours.default(defaults.start_delay),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * What one plant gives in a day that is split between making liquid and supplying gas, of which it does one at a time.
 *
 * @customfunction DAY_OUTPUT
 * @param make_hours Hours of the day set to making liquid, start delay included [h]
 * @param gas_hours Hours of the day set to supplying gas [h]
 * @param rate Liquid it makes, net of standing loss [L/h]
 * @param gas_flow Gas it supplies in that mode [L/min]
 * @param [start_delay] Hours from the start of making until liquid accumulates [h]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Table of one row: liquid made in L, gas supplied in L, both as gas at the patient in L
 */
export function dayOutput(
  make_hours: any[][],
  gas_hours: any[][],
  rate: any[][],
  gas_flow: any[][],
  start_delay?: any[][],
  draw_ratio?: any[][],
): any[][] {
  return wholeTable(args, [make_hours, gas_hours, rate, gas_flow, start_delay, draw_ratio], (given) => {
    const dayHours = given.make_hours + given.gas_hours;
    if (exceeds(dayHours, 24)) {
      return invalid(
        `make_hours and gas_hours come to ${formatNumber(dayHours)} h; a plant does one at a time, so at most 24 h together`,
      );
    }
    const liquid = liquidMade(given.make_hours, given.rate, given.start_delay, 1);
    const gas = given.gas_hours * 60 * given.gas_flow;
    return [
      ["liquid made", "gas supplied", "both as gas at the patient"],
      [liquid, gas, gasAtPatient(liquid, given.draw_ratio) + gas],
    ];
  });
}

const [delay, ratio] = [defaults.start_delay.value, defaults.draw_ratio.value];
const made = (15 - delay) * 2.2;

export const about: About = {
  gives: ["liquid", "gas", "gas"],
  rule: "liquid = max(0, make hours − start delay) × rate; gas = gas hours × 60 × gas flow; both = liquid / draw ratio × gas from a litre of liquid + gas",
  range: `Make and gas hours together at most 24. Set start delay to 0 only for a plant that stays cold between the two. ${drawRatioOfPortables} ${blankAsZero}`,
  source: `Plain arithmetic; expansion ratio: Schmidt & Wagner 1985; start delay: ${defaults.start_delay.source}; draw ratio: ${defaults.draw_ratio.source}`,
  examples: [
    {
      formula: "=OXYGEN.DAY_OUTPUT(15,9,2.2,12)",
      result: [
        ["liquid made", "gas supplied", "both as gas at the patient"],
        [made, 6480, (made / ratio) * 860.6 + 6480],
      ],
      tolerance: 3,
      source: `(15 − ${delay}) h × 2.2 L/h; 9 × 60 × 12 L; liquid / ${ratio} × 860.6 (International Fire Code 2018, table G101.2) + 6480`,
    },
    {
      formula: "=OXYGEN.DAY_OUTPUT(15,9,2.2,12,0,1.5)",
      result: [
        ["liquid made", "gas supplied", "both as gas at the patient"],
        [33, 6480, 25413.2],
      ],
      tolerance: 3,
      note: "A plant that stays cold, and small portable vessels",
      source: "15 × 2.2 = 33 L; 33 / 1.5 × 860.6 (International Fire Code 2018, table G101.2) + 6480",
    },
  ],
  seeAlso: ["LIQUID_MADE", "DELIVERED_FLOW", "DAILY_DEMAND"],
  caution: "A planning figure. Changing a plant over between liquid and gas follows the maker's manual.",
};
