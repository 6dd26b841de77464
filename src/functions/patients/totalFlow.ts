import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction, refuseRicherThanSource, sourcePurity } from "../../arguments/oxygenFraction";
import { litresPerMinute } from "../../arguments/quantity";
import { worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { totalFlow as flowOfMixture } from "../../models/bedside";
import { oxygenInAir } from "../../models/roomOxygen";

export const args = cellArguments({
  source_flow: litresPerMinute,
  fio2: breathedFraction,
  source_purity: sourcePurity,
});

/**
 * Flow of the mixture that a source flow gives when air is mixed in to an oxygen fraction.
 *
 * @customfunction TOTAL_FLOW
 * @param source_flow Flow from the source [L/min]
 * @param fio2 Oxygen fraction of the mixture, above 0.21
 * @param [source_purity] Oxygen fraction of the source
 * @returns Flow of the mixture [L/min]
 */
export function totalFlow(source_flow: any[][], fio2: any[][], source_purity?: any[][]): any[][] {
  return eachCell(args, [source_flow, fio2, source_purity], (given) =>
    given.fio2 === oxygenInAir
      ? invalid("fio2 0.21 is air alone, at any total flow; enter more than 0.21")
      : (refuseRicherThanSource(given.fio2, given.source_purity) ??
        flowOfMixture(given.source_flow, given.fio2, given.source_purity)),
  );
}

export const about: About = {
  gives: "gas flow",
  rule: "source flow × (source purity − 0.21) / (fio2 − 0.21)",
  range: `fio2 above 0.21, up to the source's purity. A patient who breathes in faster than this draws room air besides. ${worstOfOxygen93}`,
  source: "Oxygen balance of two gases; the air and oxygen ratio of respiratory-care texts",
  examples: [
    {
      formula: "=OXYGEN.TOTAL_FLOW(3,35%,1)",
      result: 16.9285714286,
      source: "3 × 0.79 / 0.14; a teaching sheet rounds the ratio to 5 : 1 and says 18",
    },
    {
      formula: "=OXYGEN.TOTAL_FLOW(10,0.57)",
      result: (10 * (defaults.source_purity.value - 0.21)) / 0.36,
      note: "Half and half of a source of 0.93",
      source: "10 × (source purity − 0.21) / 0.36",
    },
  ],
  seeAlso: ["SOURCE_FLOW", "AIR_PARTS", "MIXED_FIO2"],
  caution: "A planning figure; the clinician decides. Check the fraction with an oxygen analyser at the patient.",
};
