import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gaugeBar } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { gaugeCorrected as corrected } from "../../models/atmosphere";
import { cylinderPressureRange } from "../../models/cylinder";

export const args = cellArguments({
  pressure: gaugeBar.between(0, cylinderPressureRange.most),
  altitude: siteAltitude,
});

/**
 * What a gauge read on high ground shows, as gauge over 1.01325 bar: the gauge pressure of all other functions.
 *
 * @customfunction GAUGE_CORRECTED
 * @param pressure Pressure as the gauge shows it [bar]
 * @param altitude Altitude of the gauge above sea level, geopotential [m]
 * @returns Pressure, gauge over 1.01325 bar; below 0 where the vessel stands open to thin air [bar]
 */
export function gaugeCorrected(pressure: any[][], altitude: any[][]): any[][] {
  return eachCell(args, [pressure, altitude], (given) => corrected(given.pressure, given.altitude));
}

export const about: About = {
  gives: "gauge pressure",
  rule: "pressure − (1.01325 bar − air pressure at the altitude)",
  range: `0 to ${cylinderPressureRange.most} bar as shown, −500 to 11 000 m; outside is #VALUE!. Correct a reading once only. It matters for liquid, where 0.3 bar moves the boiling point and what flashes off; for a full cylinder it is nothing. The standard atmosphere: the day's weather moves the air pressure by a few percent. A gauge that shows absolute pressure needs no altitude: take 1.01325 bar from it. ${blankAsZero}`,
  source: "A gauge shows the pressure above the air about it; air pressure of ISO 2533:1975, Standard Atmosphere",
  examples: [
    {
      formula: "=OXYGEN.GAUGE_CORRECTED(1.5,5000)",
      result: 1.026949,
      tolerance: 0.00001,
      source: "ISO 2533:1975, table 5: 1.5 − (1.01325 − 0.540199)",
    },
    {
      formula: "=OXYGEN.GAUGE_CORRECTED(0,5000)",
      result: -0.473051,
      tolerance: 0.00001,
      note: "An open vessel",
      source: "ISO 2533:1975, table 5: 0.540199 − 1.01325",
    },
    {
      formula: '=OXYGEN.GAUGE_CORRECTED("22 psi",0)',
      result: 1.516847,
      tolerance: 0.000001,
      note: "At sea level it shows what it is",
      source: "NIST SP 811: 22 × 0.06894757",
    },
  ],
  seeAlso: ["AIR_PRESSURE", "FLASH_LOSS", "BOILING_POINT", "HOURS_TO_PRESSURE"],
  caution:
    "For reckoning only. A relief valve opens by the pressure above the air about it: its setting and the vessel's stamp are never changed by this.",
};
