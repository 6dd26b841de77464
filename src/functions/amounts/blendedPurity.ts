import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, litresPerMinute } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { blendedPurity as blended } from "../../models/purity";

export const args = cellArguments({
  flow_1: litresPerMinute,
  purity_1: fraction,
  flow_2: litresPerMinute,
  purity_2: fraction,
});

/**
 * Purity of two supplies that feed one line, such as a plant and a manifold of cylinders.
 *
 * @customfunction BLENDED_PURITY
 * @param flow_1 Gas flow of the first supply [L/min]
 * @param purity_1 Share of oxygen in it by volume, such as 0.93
 * @param flow_2 Gas flow of the second supply [L/min]
 * @param purity_2 Share of oxygen in that, such as 99.5%
 * @returns Share of oxygen in the blend
 */
export function blendedPurity(flow_1: any[][], purity_1: any[][], flow_2: any[][], purity_2: any[][]): any[][] {
  return eachCell(args, [flow_1, purity_1, flow_2, purity_2], (given) =>
    given.flow_1 + given.flow_2 > 0
      ? blended(given.flow_1, given.purity_1, given.flow_2, given.purity_2)
      : invalid("flow_1 and flow_2 are both 0; nothing is blended"),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "(flow 1 × purity 1 + flow 2 × purity 2) / (flow 1 + flow 2)",
  range: `Flows 0 or more, not both 0; purities 0 to 1. Flows at one reference temperature. True where both are well mixed: a bed near one supply may get that one alone, and when a supply stops the other's purity is left. The worst of oxygen 93 is 0.90: enter that for the cautious end. ${blankAsZero}`,
  source: "Balance of oxygen; plain arithmetic",
  examples: [
    {
      formula: '=OXYGEN.BLENDED_PURITY(60,0.93,20,"99.5%")',
      result: 0.94625,
      source: "(60 × 0.93 + 20 × 0.995)/80",
    },
    {
      formula: "=OXYGEN.BLENDED_PURITY(0,0.93,35,0.995)",
      result: 0.995,
      note: "The plant is down",
      source: "35 × 0.995/35",
    },
    {
      formula: "=OXYGEN.BLENDED_PURITY(45,0.9,15,0.21)",
      result: 0.7275,
      note: "Air that leaks in",
      source: "(45 × 0.9 + 15 × 0.21)/60",
    },
  ],
  seeAlso: ["PURITY_CLASS", "PURE_OXYGEN", "SOURCE_FLOW", "AIR_PARTS"],
  caution:
    "An analyser on the line, not this figure, says what patients breathe. Whether two grades of oxygen may feed one line is for the pharmacist and local rules to say.",
};
