import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";

export const args = cellArguments({
  gross_draw: sameUnit,
  net_fill: sameUnit.positive(),
});

/**
 * What a site draws for each litre it fills, from its own levels or weights.
 *
 * @customfunction DRAW_RATIO
 * @param gross_draw What left the store, in litres or kilograms
 * @param net_fill What ended up in the vessels, in the same unit
 * @returns Draw ratio, to use wherever a draw_ratio is asked for
 */
export function drawRatio(gross_draw: any[][], net_fill: any[][]): any[][] {
  return eachCell(args, [gross_draw, net_fill], (given) =>
    exceeds(given.net_fill, given.gross_draw)
      ? invalid(
          `gross_draw of ${formatNumber(given.gross_draw)} is below net_fill of ${formatNumber(given.net_fill)}; more can't be filled than was drawn: check which is which`,
        )
      : Math.max(1, given.gross_draw / given.net_fill),
  );
}

export const about: About = {
  gives: "number",
  rule: "gross draw / net fill",
  range:
    "Both in one unit; a fill larger than the draw is #VALUE!. Take the sum of many fills: a warm first fill alone is no measure. By weight and by litres the ratio differs by that of the densities, a few percent when the store stands at higher pressure. Vessels of one size at a time: a small one loses a larger share.",
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DRAW_RATIO(131.2,102.5)",
      result: 1.28,
      note: "A week's weights in kilograms",
      source: "131.2 / 102.5",
    },
    { formula: "=OXYGEN.DRAW_RATIO({46;23},{36;16})", result: [[46 / 36], [1.4375]], source: "46 / 36 and 23 / 16" },
    {
      formula: "=OXYGEN.DRAW_RATIO(18,20)",
      result: { error: "#VALUE!", words: "gross_draw of 18 is below net_fill of 20" },
      source: "By the rule: more can't be filled than was drawn",
    },
  ],
  seeAlso: ["GROSS_DRAW", "LEVEL_FROM_WEIGHT", "ESTIMATED_DRAW"],
};
