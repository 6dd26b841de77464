import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, number } from "../../arguments/quantity";
import { blankAsZero, drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { fillsAvailable as fillsFrom } from "../../models/transferring";

export const args = cellArguments({
  level: litres,
  fill_each: litres.positive().as("net liquid"),
  keep: litres.default(defaults.keep),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Whole fills that the liquid in a vessel gives.
 *
 * @customfunction FILLS_AVAILABLE
 * @param level Liquid in the vessel drawn from [L]
 * @param fill_each Liquid that goes into a vessel at each fill [L]
 * @param [keep] Liquid that stays in the vessel drawn from [L]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Fills
 */
export function fillsAvailable(level: any[][], fill_each: any[][], keep?: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [level, fill_each, keep, draw_ratio], (given) =>
    fillsFrom(given.level, given.fill_each, given.keep, given.draw_ratio),
  );
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "count",
  rule: "(level − keep) / (fill × draw ratio), cut down to whole fills; 0 when the level is not above what is kept",
  range: `Fill above 0, draw ratio 1 or more. Nothing is made in the meantime; for a day's running see FILLS_PER_DAY. ${drawRatioOfPortables} ${blankAsZero}`,
  source: "Plain arithmetic; draw ratio: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.FILLS_AVAILABLE(94,18)",
      result: Math.floor(94 / (18 * ratio)),
      source: `94 / (18 × ${ratio}), cut down`,
    },
    {
      formula: "=OXYGEN.FILLS_AVAILABLE({60;90},1.2,15,1.6)",
      result: [[23], [39]],
      source: "45 and 75 L above the reserve, 1.92 L each: 23.4 and 39.1",
    },
    {
      formula: "=OXYGEN.FILLS_AVAILABLE(10,6,15)",
      result: 0,
      note: "Below the reserve",
      source: "By the rule: 10 L are not above 15 L",
    },
  ],
  seeAlso: ["GROSS_DRAW", "FILL_ORDER", "FILLS_PER_DAY"],
  caution:
    "A planning figure: the last of a vessel is hard to draw, so keep a reserve. Transfers are for trained people by the maker's manual.",
};
