import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours as time, litresPerHour } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { liquidMade as liquidOf } from "../../models/making";

export const args = cellArguments({
  hours: time,
  rate: litresPerHour.positive(),
  start_delay: time.default(defaults.start_delay),
  plants: count.default(defaults.plants),
});

/**
 * Liquid that plants make in some hours, counted from switching them on together.
 *
 * @customfunction LIQUID_MADE
 * @param hours Hours since switching on [h]
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @param [plants] Plants of that rate
 * @returns Liquid made [L]
 */
export function liquidMade(hours: any[][], rate: any[][], start_delay?: any[][], plants?: any[][]): any[][] {
  return eachCell(args, [hours, rate, start_delay, plants], (given) =>
    liquidOf(given.hours, given.rate, given.start_delay, given.plants),
  );
}

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "liquid",
  rule: "max(0, hours − start delay) × rate × plants",
  range: `Rate above 0; nothing is made during the start delay. No vessel limits it: LEVEL_AFTER stops at the capacity. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: "=OXYGEN.LIQUID_MADE(24,1.5)",
      result: (24 - delay) * 1.5,
      note: "First day of one plant",
      source: `(24 − ${delay}) × 1.5`,
    },
    {
      formula: "=OXYGEN.LIQUID_MADE({1;2;12},2.2,2,3)",
      result: [[0], [0], [66]],
      note: "Three plants; nothing until the delay has passed",
      source: "(12 − 2) × 2.2 × 3",
    },
  ],
  seeAlso: ["LEVEL_AFTER", "DELIVERED_FLOW", "START_DELAY"],
};
