import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { absoluteKpa } from "../../arguments/quantity";
import { airPressure, altitudeFromPressure as altitudeAt, altitudeRange } from "../../models/atmosphere";

export const args = cellArguments({
  pressure_kpa: absoluteKpa.between(airPressure(altitudeRange.most), airPressure(altitudeRange.least)),
});

/**
 * Altitude at which the standard atmosphere has a given pressure: what a barometer at the site says about its height.
 *
 * @customfunction ALTITUDE_FROM_PRESSURE
 * @param pressure_kpa Station pressure, absolute, not corrected to sea level [kPa]
 * @returns Altitude above sea level, geopotential [m]
 */
export function altitudeFromPressure(pressure_kpa: any[][]): any[][] {
  return eachCell(args, [pressure_kpa], (given) => altitudeAt(given.pressure_kpa));
}

export const about: About = {
  gives: "altitude",
  rule: "288.15 / 0.0065 × (1 − (pressure / 101.325)^(1 / 5.25588))",
  range:
    '22.632 to 107.478 kPa (11 000 to −500 m); outside is #VALUE!. A bare number under 40 is refused, since it is most likely inches of mercury or psi: write "29.92 inHg", or "35 kPa" if it is that. A weather report\'s pressure is corrected to sea level and would answer about 0 m: read a barometer on the spot.',
  source: "ISO 2533:1975, Standard Atmosphere, solved for the altitude",
  examples: [
    {
      formula: "=OXYGEN.ALTITUDE_FROM_PRESSURE(101.325)",
      result: 0,
      source: "ISO 2533:1975: 101.325 kPa at sea level",
    },
    {
      formula: '=OXYGEN.ALTITUDE_FROM_PRESSURE("540.199 hPa")',
      result: 5000,
      tolerance: 0.1,
      source: "ISO 2533:1975, table 5",
    },
    {
      formula: '=OXYGEN.ALTITUDE_FROM_PRESSURE("24.896 inHg")',
      result: 1524,
      tolerance: 1,
      note: "5000 ft",
      source: "Printed standard-atmosphere tables, from memory",
    },
    {
      formula: "=OXYGEN.ALTITUDE_FROM_PRESSURE(24.896)",
      result: { error: "#VALUE!", words: 'write "24.896 inHg"' },
      note: "The unit forgotten",
      source: "The range stated",
    },
  ],
  seeAlso: ["AIR_PRESSURE", "GAUGE_CORRECTED", "DERATED_RATE"],
};
