import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, number } from "../../arguments/quantity";
import { drawRatioOfPortables } from "../../arguments/whereCautionEnds";
import { transferLoss as lossOf } from "../../models/transferring";

export const args = cellArguments({
  net_fill: litres.as("net liquid"),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
});

/**
 * Liquid that is lost as gas while a vessel is filled.
 *
 * @customfunction TRANSFER_LOSS
 * @param net_fill Liquid that ends up in the vessel [L]
 * @param [draw_ratio] Liquid drawn for each litre filled
 * @returns Liquid lost [L]
 */
export function transferLoss(net_fill: any[][], draw_ratio?: any[][]): any[][] {
  return eachCell(args, [net_fill, draw_ratio], (given) => lossOf(given.net_fill, given.draw_ratio));
}

const ratio = defaults.draw_ratio.value;

export const about: About = {
  gives: "liquid",
  rule: "net fill × (draw ratio − 1)",
  range: `Draw ratio 1 or more. ${drawRatioOfPortables}`,
  source: "Draw ratio: common practice, no source; better from your own weights (DRAW_RATIO)",
  examples: [
    {
      formula: "=OXYGEN.TRANSFER_LOSS(36)",
      result: 36 * (ratio - 1),
      source: `36 L × (${ratio} − 1); draw ratio: ${defaults.draw_ratio.source}`,
    },
    { formula: "=OXYGEN.TRANSFER_LOSS({18;42},1.5)", result: [[9], [21]], source: "18 × 0.5 and 42 × 0.5" },
  ],
  seeAlso: ["GROSS_DRAW", "FLASH_LOSS", "COOL_DOWN_LOSS", "GAS_FROM_LIQUID"],
  caution:
    "What is lost goes into the air around you: a litre becomes some 860 L of gas. Fill outdoors or with strong ventilation, away from fuel, oil and anything that sparks.",
};
