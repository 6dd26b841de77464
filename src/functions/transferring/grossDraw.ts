import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { grossDraw as drawFor } from "../../models/transferring";

export const args = cellArguments({
  net_fill: litres.as("net liquid"),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Liquid that must be drawn from the store to put an amount into a vessel.
 *
 * @customfunction GROSS_DRAW
 * @param net_fill Liquid that ends up in the vessel [L]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Liquid drawn [L]
 */
export function grossDraw(net_fill: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [net_fill, draw_ratio], (given) => drawFor(given.net_fill, given.draw_ratio));
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "gross liquid",
  rule: "net fill × draw ratio",
  range: `Draw ratio 1 or more: nothing is filled without being drawn. A warm vessel or hose takes more. ${drawRatioOfPortables}`,
  source: "Draw ratio: common practice, no source; better from your own weights (DRAW_RATIO)",
  examples: [
    {
      formula: "=OXYGEN.GROSS_DRAW(36)",
      result: 36 * ratio,
      source: `36 L × ${ratio}; draw ratio: ${defaults.draw_ratio.source}`,
    },
    { formula: '=OXYGEN.GROSS_DRAW("10 gal",1.1)', result: 41.639529624, source: "NIST SP 811: 37.854 117 84 L × 1.1" },
  ],
  seeAlso: ["NET_FILL", "TRANSFER_LOSS", "DRAW_RATIO", "ESTIMATED_DRAW"],
  caution: "Cold liquid burns skin and feeds fire: trained people, the maker's manual and the protection it asks for.",
};
