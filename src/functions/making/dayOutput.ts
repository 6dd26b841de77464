import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { hours, litresPerHour, litresPerMinute, number } from "../../arguments/quantity";
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

export const about: About = {
  rule: "liquid = max(0, make hours − start delay) × rate; gas = gas hours × 60 × gas flow; both = liquid / draw ratio × gas from a litre of liquid + gas",
  range: "Make and gas hours together at most 24. Set start delay to 0 for a plant that stays cold between the two.",
  source:
    "Plain arithmetic; expansion ratio: Schmidt & Wagner 1985; start delay and draw ratio: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.DAY_OUTPUT(16,8,1.5,10)",
      result: [
        ["liquid made", "gas supplied", "both as gas at the patient"],
        [19.5, 4800, 18225],
      ],
      tolerance: 10,
      source:
        "13 h × 1.5 = 19.5 L; 8 × 60 × 10 = 4800 L; 19.5/1.25 × 860.6 (International Fire Code 2018, table G101.2) + 4800 = 18 225",
    },
  ],
  seeAlso: ["LIQUID_MADE", "DELIVERED_FLOW", "DAILY_DEMAND"],
  caution: "A planning figure. Changing a plant over between liquid and gas follows the maker's manual.",
};
