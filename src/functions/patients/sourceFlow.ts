import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction, refuseRicherThanSource, sourcePurity } from "../../arguments/oxygenFraction";
import { litresPerMinute } from "../../arguments/quantity";
import { blankAsZero, worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { sourceFlow as flowOfSource } from "../../models/bedside";

export const args = cellArguments({
  total_flow: litresPerMinute,
  fio2: breathedFraction,
  source_purity: sourcePurity,
});

/**
 * Oxygen to draw from the source for a flow that is mixed with air to an oxygen fraction.
 *
 * @customfunction SOURCE_FLOW
 * @param total_flow Flow of the mixture [L/min]
 * @param fio2 Oxygen fraction of the mixture, from 0.21
 * @param [source_purity] Oxygen fraction of the source
 * @returns Flow from the source [L/min]
 */
export function sourceFlow(total_flow: any[][], fio2: any[][], source_purity?: any[][]): any[][] {
  return eachCell(
    args,
    [total_flow, fio2, source_purity],
    (given) =>
      refuseRicherThanSource(given.fio2, given.source_purity) ??
      flowOfSource(given.total_flow, given.fio2, given.source_purity),
  );
}

export const about: About = {
  gives: "gas flow",
  rule: "total flow × (fio2 − 0.21) / (source purity − 0.21)",
  range: `fio2 from 0.21 to the source's purity; above it is #VALUE!. Air counts as 0.21 oxygen; leaks are not in it. ${worstOfOxygen93} ${blankAsZero}`,
  source: "Oxygen balance of two gases; the air and oxygen ratio of respiratory-care texts",
  examples: [
    { formula: "=OXYGEN.SOURCE_FLOW(50,0.6,0.93)", result: 27.0833333333, source: "50 × 0.39 / 0.72" },
    { formula: "=OXYGEN.SOURCE_FLOW(60,1,1)", result: 60, note: "Pure oxygen, unmixed", source: "60 × 0.79 / 0.79" },
    {
      formula: "=OXYGEN.SOURCE_FLOW(60,1)",
      result: { error: "#VALUE!", words: "can't be reached" },
      note: "Not from a source of 0.93",
    },
  ],
  seeAlso: ["MIXED_FIO2", "TOTAL_FLOW", "AIR_PARTS", "VENTILATOR_FLOW"],
  caution: "A planning figure; the clinician decides. Check the fraction with an oxygen analyser at the patient.",
};
