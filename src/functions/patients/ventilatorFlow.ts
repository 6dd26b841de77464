import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction, refuseRicherThanSource, sourcePurity } from "../../arguments/oxygenFraction";
import { litresPerMinute } from "../../arguments/quantity";
import { blankAsZero, worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { sourceFlow } from "../../models/bedside";

export const args = cellArguments({
  minute_volume: litresPerMinute.positive(),
  fio2: breathedFraction,
  bias_flow: litresPerMinute,
  drive_gas: litresPerMinute.default(defaults.drive_gas),
  source_purity: sourcePurity,
});

/**
 * Oxygen that a ventilator draws from the source: for the patient, for its bias flow and for its drive.
 *
 * @customfunction VENTILATOR_FLOW
 * @param minute_volume Gas that the patient breathes a minute [L/min]
 * @param fio2 Oxygen fraction that is set, from 0.21
 * @param bias_flow Flow at the set fraction that passes the patient unused, from the maker's manual [L/min]
 * @param [drive_gas] Source gas that drives the ventilator [L/min]
 * @param [source_purity] Oxygen fraction of the source
 * @returns Flow from the source [L/min]
 */
export function ventilatorFlow(
  minute_volume: any[][],
  fio2: any[][],
  bias_flow: any[][],
  drive_gas?: any[][],
  source_purity?: any[][],
): any[][] {
  return eachCell(
    args,
    [minute_volume, fio2, bias_flow, drive_gas, source_purity],
    (given) =>
      refuseRicherThanSource(given.fio2, given.source_purity) ??
      sourceFlow(given.minute_volume + given.bias_flow, given.fio2, given.source_purity) + given.drive_gas,
  );
}

export const about: About = {
  gives: "gas flow",
  rule: "(minute volume + bias flow) × (fio2 − 0.21) / (source purity − 0.21) + drive gas",
  range: `Minute volume above 0; fio2 from 0.21 to the source's purity. The bias flow differs from machine to machine and can exceed the minute volume, so it has no default; leaks of a mask come on top. A ventilator that is driven by the source draws its drive gas whatever fraction is set. ${worstOfOxygen93} ${blankAsZero}`,
  source: "Oxygen balance of two gases",
  examples: [
    {
      formula: "=OXYGEN.VENTILATOR_FLOW(8,0.5,5)",
      result: (13 * 0.29) / (defaults.source_purity.value - 0.21),
      source: "13 × 0.29 / (source purity − 0.21)",
    },
    {
      formula: "=OXYGEN.VENTILATOR_FLOW(6,1,0,0.5,1)",
      result: 6.5,
      note: "Pure oxygen, driven by half a litre a minute",
      source: "6 × 0.79 / 0.79 + 0.5",
    },
  ],
  seeAlso: ["SOURCE_FLOW", "JOURNEY_GAS", "PLANNED_FLOW"],
  caution:
    "A planning figure; the clinician decides. Take bias flow and drive gas from the maker's manual, and ask the maker whether the ventilator may run on oxygen of this purity.",
};
