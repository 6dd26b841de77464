import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { siteAltitude } from "../../arguments/siteAir";
import { airPressure as pressureAt } from "../../models/atmosphere";

export const args = cellArguments({
  altitude: siteAltitude,
});

/**
 * Air pressure of the standard atmosphere at an altitude.
 *
 * @customfunction AIR_PRESSURE
 * @param altitude Altitude above sea level, geopotential [m]
 * @returns Standard air pressure, absolute [kPa]
 */
export function airPressure(altitude: any[][]): any[][] {
  return eachCell(args, [altitude], (given) => pressureAt(given.altitude));
}

export const about: About = {
  gives: "absolute pressure",
  rule: "101.325 × (1 − 0.0065 × altitude / 288.15)^5.25588",
  range: "−500 to 11 000 m; outside is #VALUE!. The day's weather moves the true pressure by a few percent.",
  source: "ISO 2533:1975, Standard Atmosphere",
  examples: [
    { formula: "=OXYGEN.AIR_PRESSURE(5000)", result: 54.0199, tolerance: 0.0001, source: "ISO 2533:1975, table 5" },
    {
      formula: "=OXYGEN.AIR_PRESSURE({0,11000})",
      result: [[101.325, 22.632]],
      tolerance: 0.0001,
      source: "ISO 2533:1975, table 5",
    },
    {
      formula: '=OXYGEN.AIR_PRESSURE("5000 ft")',
      result: 84.307,
      tolerance: 0.001,
      source: "24.896 inHg at 5000 ft in printed standard-atmosphere tables, from memory",
    },
  ],
  seeAlso: ["ALTITUDE_FROM_PRESSURE", "GAUGE_CORRECTED", "AIR_DENSITY_RATIO", "DERATED_RATE"],
};
