import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, litresPerHour, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { deliveredFlow as flowOf } from "../../models/making";

export const args = cellArguments({
  rate: litresPerHour.positive(),
  plants: count.default(defaults.plants),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Gas flow at the patient that plants making liquid around the clock support, after what filling portable vessels loses.
 *
 * @customfunction DELIVERED_FLOW
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param [plants] Plants of that rate
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Gas flow supported without end [L/min]
 */
export function deliveredFlow(rate: any[][], plants?: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [rate, plants, draw_ratio], (given) => flowOf(given.rate, given.plants, given.draw_ratio));
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "gas flow",
  rule: "rate × plants / draw ratio × gas from a litre of liquid / 60",
  range: `Rate above 0, draw ratio 1 or more (1 only where nothing is lost on the way to the patient). A mean over days: stops, start-ups and boil-off in the vessel at the patient come off it. ${drawRatioOfPortables}`,
  source: `Expansion ratio from the equation of state of Schmidt & Wagner 1985 (Fluid Phase Equilib. 19:175); draw ratio: ${defaults.draw_ratio.source}`,
  examples: [
    {
      formula: "=OXYGEN.DELIVERED_FLOW(2.4)",
      result: (2.4 * 860.6) / ratio / 60,
      tolerance: 0.02,
      note: "One plant of 2.4 L/h",
      source: `2.4 × 115.05 ft³/gal (International Fire Code 2018, table G101.2: 860.6 L/L) / ${ratio} / 60`,
    },
    {
      formula: "=OXYGEN.DELIVERED_FLOW(1,{1;2},1)",
      result: [[14.34], [28.69]],
      tolerance: 0.02,
      note: "Nothing lost on the way",
      source: "860.6/60, once and twice",
    },
  ],
  seeAlso: ["PATIENTS_CARRIED", "PLANTS_NEEDED", "GAS_FROM_LIQUID"],
  caution:
    "A planning figure. The clinician sets each patient's flow; keep a stock or cylinders for when a plant stops.",
};
