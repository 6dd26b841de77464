import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction, refuseRicherThanSource, sourcePurity } from "../../arguments/oxygenFraction";
import { worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { airParts as partsOfAir } from "../../models/bedside";
import { oxygenInAir } from "../../models/roomOxygen";

export const args = cellArguments({
  fio2: breathedFraction,
  source_purity: sourcePurity,
});

/**
 * Parts of air that are mixed with one part of source gas to reach an oxygen fraction.
 *
 * @customfunction AIR_PARTS
 * @param fio2 Oxygen fraction of the mixture, above 0.21
 * @param [source_purity] Oxygen fraction of the source
 * @returns Parts of air to one part of source
 */
export function airParts(fio2: any[][], source_purity?: any[][]): any[][] {
  return eachCell(args, [fio2, source_purity], (given) =>
    given.fio2 === oxygenInAir
      ? invalid("fio2 0.21 is air alone, without any part of the source; enter more than 0.21")
      : (refuseRicherThanSource(given.fio2, given.source_purity) ?? partsOfAir(given.fio2, given.source_purity)),
  );
}

export const about: About = {
  gives: "number",
  rule: "(source purity − fio2) / (fio2 − 0.21)",
  range: `fio2 above 0.21, up to the source's purity. Tables of masks print rounded ratios, and some take air as 0.20. ${worstOfOxygen93}`,
  source: "Oxygen balance of two gases; the air and oxygen ratio of respiratory-care texts: (100 − %) / (% − 21)",
  examples: [
    {
      formula: "=OXYGEN.AIR_PARTS(0.6,1)",
      result: 1.02564103,
      tolerance: 1e-8,
      source: "0.40 / 0.39; printed tables say 1 : 1",
    },
    {
      formula: "=OXYGEN.AIR_PARTS(28%,1)",
      result: 10.2857142857,
      source: "0.72 / 0.07; printed tables say 10 : 1",
    },
    {
      formula: "=OXYGEN.AIR_PARTS(0.57)",
      result: 1,
      note: "Half and half of a source of 0.93",
      source: "(0.93 − 0.57) / (0.57 − 0.21)",
    },
  ],
  seeAlso: ["TOTAL_FLOW", "MIXED_FIO2", "SOURCE_FLOW"],
  caution: "A planning figure; the clinician decides. A mask made for pure oxygen gives less on a source of 0.93.",
};
