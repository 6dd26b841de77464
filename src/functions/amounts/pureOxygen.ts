import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, gasLitres } from "../../arguments/quantity";

export const args = cellArguments({
  gas: gasLitres,
  source_purity: fraction,
});

/**
 * Oxygen that a gas of a given purity contains.
 *
 * @customfunction PURE_OXYGEN
 * @param gas Gas [L]
 * @param source_purity Share of oxygen in it by volume, such as 0.93
 * @returns Oxygen contained in it [L]
 */
export function pureOxygen(gas: any[][], source_purity: any[][]): any[][] {
  return eachCell(args, [gas, source_purity], (given) => given.gas * given.source_purity);
}

export const about: About = {
  gives: "gas",
  rule: "gas × source purity",
  range:
    "Purity 0 to 1, or a percent such as 93%; a bare 93 is #VALUE!. The worst of oxygen 93 is 0.90: enter that for the cautious end.",
  source: "Plain arithmetic; shares by volume of gases at the same temperature and pressure",
  examples: [
    { formula: "=OXYGEN.PURE_OXYGEN(1000,0.93)", result: 930, source: "1000 × 0.93" },
    { formula: '=OXYGEN.PURE_OXYGEN("2 m3","99.5%")', result: 1990, source: "2000 × 0.995" },
    {
      formula: "=OXYGEN.PURE_OXYGEN(1000,93)",
      result: { error: "#VALUE!", words: "looks like a percent" },
      source: "The range stated",
    },
  ],
  seeAlso: ["PURITY_CLASS", "SOURCE_FLOW", "MIXED_FIO2"],
  caution: "What a patient breathes depends on flow and device too; the clinician decides.",
};
