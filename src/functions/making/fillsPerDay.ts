import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, litres, litresPerHour, minutes, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { fillsPerDay as fillsOf } from "../../models/making";

export const args = cellArguments({
  fill_each: litres.positive(),
  rate: litresPerHour.positive(),
  minutes_each: minutes,
  plants: count.default(defaults.plants),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Whole fills of portable vessels a day that production sustains, day after day, when the plant drawn from stops making
 * during its transfer.
 *
 * @customfunction FILLS_PER_DAY
 * @param fill_each Liquid that goes into a vessel at each fill [L]
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param minutes_each Minutes for which a fill stops the plant it is drawn from [min]
 * @param [plants] Plants of that rate
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Fills a day
 */
export function fillsPerDay(
  fill_each: any[][],
  rate: any[][],
  minutes_each: any[][],
  plants?: any[][],
  draw_ratio?: any[][],
): any[][] {
  return eachCell(args, [fill_each, rate, minutes_each, plants, draw_ratio], (given) =>
    fillsOf(given.fill_each, given.rate, given.minutes_each, given.plants, given.draw_ratio),
  );
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "count",
  rule: "24 × plants × rate / (fill × draw ratio + rate × minutes each / 60), cut down to whole fills",
  range: `Fill and rate above 0, draw ratio 1 or more. Other plants go on making during a transfer. A day's mean: a stock in hand allows more for a while. ${drawRatioOfPortables}`,
  source: `Balance of what is drawn and made; draw ratio: ${defaults.draw_ratio.source}`,
  examples: [
    {
      formula: "=OXYGEN.FILLS_PER_DAY(18,2.5,48)",
      result: Math.floor(60 / (18 * ratio + 2)),
      source: `60 / (18 × ${ratio} + 2), cut down`,
    },
    {
      formula: "=OXYGEN.FILLS_PER_DAY(10,2,{0;30},2,1.3)",
      result: [[7], [6]],
      source: "96 / 13 = 7.38; 96 / (13 + 1) = 6.86",
    },
  ],
  seeAlso: ["FILLS_AVAILABLE", "GROSS_DRAW", "LIQUID_MADE"],
  caution:
    "Each fill is a transfer of liquid at −183 °C: trained people, the maker's manual and the protection it asks for.",
};
