import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sourcePurity } from "../../arguments/oxygenFraction";
import { litresPerMinute } from "../../arguments/quantity";
import { worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { mixedFraction } from "../../models/bedside";

export const args = cellArguments({
  source_flow: litresPerMinute,
  air_flow: litresPerMinute,
  source_purity: sourcePurity,
});

/**
 * Oxygen fraction of a mixture of source gas and air.
 *
 * @customfunction MIXED_FIO2
 * @param source_flow Flow from the source [L/min]
 * @param air_flow Flow of air that is mixed in [L/min]
 * @param [source_purity] Oxygen fraction of the source
 * @returns Oxygen fraction of the mixture
 */
export function mixedFio2(source_flow: any[][], air_flow: any[][], source_purity?: any[][]): any[][] {
  return eachCell(args, [source_flow, air_flow, source_purity], (given) =>
    given.source_flow + given.air_flow === 0
      ? invalid("source_flow and air_flow are both 0, so there is nothing to breathe; enter at least one of them")
      : mixedFraction(given.source_flow, given.air_flow, given.source_purity),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "(source flow × source purity + air flow × 0.21) / (source flow + air flow)",
  range: `Flows 0 or more, not both 0. Where the patient breathes in faster than the mixture flows, room air thins it further. ${worstOfOxygen93}`,
  source: "Oxygen balance of two gases",
  examples: [
    {
      formula: "=OXYGEN.MIXED_FIO2(6,10,1)",
      result: 0.506,
      tolerance: 0.0005,
      source: "C. Loewen 2009, High Flow Calculations",
    },
    {
      formula: "=OXYGEN.MIXED_FIO2(10,10)",
      result: (defaults.source_purity.value + 0.21) / 2,
      note: "Half and half",
      source: "(source purity + 0.21) / 2",
    },
  ],
  seeAlso: ["SOURCE_FLOW", "AIR_PARTS", "TOTAL_FLOW"],
  caution: "A planning figure; the clinician decides. Check the fraction with an oxygen analyser at the patient.",
};
