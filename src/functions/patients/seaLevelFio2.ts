import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { breathedFraction } from "../../arguments/oxygenFraction";
import { siteAltitude } from "../../arguments/siteAir";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { airPressure } from "../../models/atmosphere";
import { seaLevelFraction } from "../../models/bedside";

export const args = cellArguments({
  fio2: breathedFraction,
  altitude: siteAltitude,
});

/**
 * What an oxygen fraction breathed at an altitude is worth at sea level. It is not the fraction to set: that is FIO2_TO_SET.
 *
 * @customfunction SEA_LEVEL_FIO2
 * @param fio2 Oxygen fraction breathed at the altitude, from 0.21
 * @param altitude Altitude, or altitude of a pressurised cabin [m]
 * @returns Fraction at sea level with the same oxygen pressure in the airways
 */
export function seaLevelFio2(fio2: any[][], altitude: any[][]): any[][] {
  return eachCell(args, [fio2, altitude], (given) => seaLevelFraction(given.fio2, airPressure(given.altitude)));
}

export const about: About = {
  gives: "fraction",
  rule: "fio2 × (p − 6.28) / (101.325 − 6.28), p the standard air pressure at the altitude in kPa",
  range: `fio2 from 0.21; −500 to 11 000 m of the ISO 2533 standard atmosphere; gas humidified at 37 °C (47 mmHg). The answer is smaller than what is breathed: who sets it as the fraction gives too little. Below sea level it can pass fio2, and 1. ${blankAsZero}`,
  source:
    "Inspired oxygen pressure, F × (p − 6.28 kPa): Samuels, The effects of flight and altitude, Arch Dis Child 89 (2004) 448, table 1; air pressure of ISO 2533:1975",
  examples: [
    {
      formula: "=OXYGEN.SEA_LEVEL_FIO2(0.35,2000)",
      result: 0.269613,
      tolerance: 0.00001,
      source: "ISO 2533:1975, table 5: 0.35 × (79.4952 − 6.28) / 95.045",
    },
    {
      formula: '=OXYGEN.SEA_LEVEL_FIO2(0.21,"8000 ft")',
      result: 0.151,
      tolerance: 0.002,
      note: "Air in the cabin of an aeroplane",
      source: "hypoxia altitude simulation test, Chest 133 (2008) 1002: 15.1 % simulates a cabin at 8,000 feet",
    },
    { formula: "=OXYGEN.SEA_LEVEL_FIO2(0.5,0)", result: 0.5, note: "Sea level", source: "0.5 × 95.045 / 95.045" },
  ],
  seeAlso: ["FIO2_TO_SET", "AIR_PRESSURE", "JOURNEY_GAS", "CANNULA_FIO2"],
  caution:
    "Never set a patient's fraction by this. A planning figure; the clinician decides by the patient's saturation, and flight needs a medical clearance of its own.",
};
