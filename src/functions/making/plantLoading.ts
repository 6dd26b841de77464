import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, gasPerDay, litresPerHour, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { plantLoading as loadingOf } from "../../models/making";

export const args = cellArguments({
  daily_gas: gasPerDay,
  rate: litresPerHour.positive(),
  plants: count.atLeast(1),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Share of what plants can make around the clock that a daily use of gas takes; above 1 they fall short.
 *
 * @customfunction PLANT_LOADING
 * @param daily_gas Gas used at the patients each day [L/day]
 * @param rate Liquid one plant makes on site, net of standing loss [L/h]
 * @param plants Plants of that rate
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Share of capacity used; may pass 1
 */
export function plantLoading(daily_gas: any[][], rate: any[][], plants: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [daily_gas, rate, plants, draw_ratio], (given) =>
    loadingOf(given.daily_gas, given.rate, given.plants, given.draw_ratio),
  );
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "fraction",
  rule: "daily gas × draw ratio / (24 × rate × plants × gas from a litre of liquid)",
  range: `Rate above 0, at least one plant, draw ratio 1 or more. May pass 1; over the availability of the plants the stock shrinks. ${drawRatioOfPortables}`,
  source: `Plain arithmetic; expansion ratio: Schmidt & Wagner 1985; draw ratio: ${defaults.draw_ratio.source}`,
  examples: [
    {
      formula: "=OXYGEN.PLANT_LOADING(120000,2,4)",
      result: (120000 * ratio) / (192 * 860.6),
      tolerance: 0.001,
      source: `860.6 L/L (International Fire Code 2018, table G101.2): 120 000 × ${ratio} / (24 × 2 × 4 × 860.6)`,
    },
    {
      formula: "=OXYGEN.PLANT_LOADING(120000,2,{3;4},1.4)",
      result: [[1.3556], [1.0167]],
      tolerance: 0.001,
      note: "With small portable vessels four don't keep up either",
      source: "860.6 L/L (International Fire Code 2018, table G101.2): 168 000 / (48 × 860.6) over 3 and over 4",
    },
  ],
  seeAlso: ["PLANTS_NEEDED", "DAILY_DEMAND", "ONE_UNIT_DOWN"],
};
