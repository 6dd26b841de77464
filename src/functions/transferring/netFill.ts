import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { netFill as fillFrom } from "../../models/transferring";

export const args = cellArguments({
  gross_draw: litres.as("gross liquid"),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Liquid that ends up in a vessel of what is drawn from the store.
 *
 * @customfunction NET_FILL
 * @param gross_draw Liquid drawn from the store [L]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Liquid in the vessel [L]
 */
export function netFill(gross_draw: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [gross_draw, draw_ratio], (given) => fillFrom(given.gross_draw, given.draw_ratio));
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "net liquid",
  rule: "gross draw / draw ratio",
  range: `Draw ratio 1 or more. It does not know how much the vessel holds: stop at its filling limit. ${drawRatioOfPortables}`,
  source: "Draw ratio: common practice, no source; better from your own weights (DRAW_RATIO)",
  examples: [
    {
      formula: "=OXYGEN.NET_FILL(45)",
      result: 45 / ratio,
      source: `45 L / ${ratio}; draw ratio: ${defaults.draw_ratio.source}`,
    },
    { formula: "=OXYGEN.NET_FILL({30;60},1.5)", result: [[20], [40]], source: "30 / 1.5 and 60 / 1.5" },
  ],
  seeAlso: ["GROSS_DRAW", "TRANSFER_LOSS", "FILLS_AVAILABLE"],
  caution: "Cold liquid burns skin and feeds fire: trained people, the maker's manual and the protection it asks for.",
};
