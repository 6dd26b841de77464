import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, metresHigh } from "../../arguments/quantity";
import { airPressure, altitudeRange } from "../../models/atmosphere";
import { seaLevelFraction } from "../../models/bedside";

export const args = cellArguments({
  fio2: fraction,
  altitude: metresHigh.between(altitudeRange.least, altitudeRange.most),
});

/**
 * Oxygen fraction at sea level that does as much as a fraction breathed at an altitude.
 *
 * @customfunction FIO2_AT_ALTITUDE
 * @param fio2 Oxygen fraction breathed at the altitude
 * @param altitude Altitude, or altitude of a pressurised cabin [m]
 * @returns Fraction at sea level with the same oxygen pressure in the airways
 */
export function fio2AtAltitude(fio2: any[][], altitude: any[][]): any[][] {
  return eachCell(args, [fio2, altitude], (given) => seaLevelFraction(given.fio2, airPressure(given.altitude)));
}

export const about: About = {
  rule: "fio2 × (p − 6.28) / (101.325 − 6.28), p the standard air pressure at the altitude in kPa",
  range:
    "−500 to 11 000 m of the ISO 2533 standard atmosphere; gas humidified at 37 °C (47 mmHg). Below sea level the answer can pass fio2, and 1.",
  source: "Inspired-oxygen term of the alveolar gas equation, F × (p − 47 mmHg); air pressure of ISO 2533:1975",
  examples: [
    { formula: "=OXYGEN.FIO2_AT_ALTITUDE(0.5,0)", result: 0.5, note: "Sea level" },
    {
      formula: '=OXYGEN.FIO2_AT_ALTITUDE(0.21,"8000 ft")',
      result: 0.151,
      tolerance: 0.002,
      source: "hypoxia altitude simulation test, Chest 133 (2008) 1002: 15.1 % simulates a cabin at 8,000 feet",
    },
  ],
  seeAlso: ["AIR_PRESSURE", "JOURNEY_GAS", "CANNULA_FIO2"],
  caution:
    "A planning figure; the clinician decides by the patient's saturation, and flight needs a medical clearance of its own.",
};
