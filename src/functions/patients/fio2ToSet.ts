import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction, sourcePurity } from "../../arguments/oxygenFraction";
import { siteAltitude } from "../../arguments/siteAir";
import { blankAsZero, worstOfOxygen93 } from "../../arguments/whereCautionEnds";
import { noAnswer } from "../../cells/cellValues";
import { airPressure } from "../../models/atmosphere";
import { fractionToSet, seaLevelFraction } from "../../models/bedside";
import { exceeds } from "../../models/exceeds";

export const args = cellArguments({
  fio2: breathedFraction,
  altitude: siteAltitude,
  source_purity: sourcePurity,
});

/**
 * Oxygen fraction to give at an altitude so that it is worth what a patient needs at sea level.
 *
 * @customfunction FIO2_TO_SET
 * @param fio2 Oxygen fraction that the patient needs at sea level, from 0.21
 * @param altitude Altitude, or altitude of a pressurised cabin [m]
 * @param [source_purity] Oxygen fraction of the source
 * @returns Oxygen fraction to give up there
 */
export function fio2ToSet(fio2: any[][], altitude: any[][], source_purity?: any[][]): any[][] {
  return eachCell(args, [fio2, altitude, source_purity], (given) => {
    const pressure = airPressure(given.altitude);
    const fraction = fractionToSet(given.fio2, pressure);
    if (!exceeds(fraction, given.source_purity)) return fraction;
    return noAnswer(
      `can't be reached: fio2 ${formatNumber(given.fio2)} takes a fraction of ${formatNumber(fraction)} at that altitude, and the source holds ${formatNumber(given.source_purity)}; unmixed it is worth ${formatNumber(seaLevelFraction(given.source_purity, pressure))} of sea level`,
    );
  });
}

export const about: About = {
  gives: "fraction",
  rule: "fio2 × (101.325 − 6.28) / (p − 6.28), p the standard air pressure at the altitude in kPa; never below 0.21",
  range: `fio2 from 0.21; −500 to 11 000 m of the ISO 2533 standard atmosphere; gas humidified at 37 °C (47 mmHg). More than the source holds is #N/A with what the source is worth. It keeps the oxygen pressure in the airways, not the saturation: sick lungs may need more. ${worstOfOxygen93} ${blankAsZero}`,
  source:
    "Inspired oxygen pressure, F × (p − 6.28 kPa): Samuels, The effects of flight and altitude, Arch Dis Child 89 (2004) 448, table 1; air pressure of ISO 2533:1975",
  examples: [
    {
      formula: "=OXYGEN.FIO2_TO_SET(0.4,2000)",
      result: 0.519264,
      tolerance: 0.00001,
      source: "ISO 2533:1975, table 5: 0.4 × 95.045 / (79.4952 − 6.28)",
    },
    {
      formula: "=OXYGEN.FIO2_TO_SET(0.21,3000,1)",
      result: 0.315,
      tolerance: 0.004,
      note: "What makes mountain air as good as that of the coast",
      source: "Samuels 2004, table 1: inspired oxygen 150 mmHg at sea level and 100 at 3000 m, 0.21 × 150 / 100",
    },
    {
      formula: '=OXYGEN.FIO2_TO_SET(0.7,"8000 ft",1)',
      result: 0.964,
      tolerance: 0.001,
      source: "0.7 × 95.045 / (75.26 − 6.28), with the 75.26 kPa of 8,000 feet in ISO 2533:1975",
    },
    {
      formula: '=OXYGEN.FIO2_TO_SET(0.7,"8000 ft",0.9)',
      result: { error: "#N/A", words: "can't be reached" },
      note: "Not from a source of 0.90",
    },
  ],
  seeAlso: ["SEA_LEVEL_FIO2", "SOURCE_FLOW", "MIXED_FIO2", "AIR_PRESSURE"],
  caution:
    "A planning figure; the clinician decides by the patient's saturation, watched on the way up and down. Flight needs a medical clearance of its own, and richer gas feeds fire.",
};
