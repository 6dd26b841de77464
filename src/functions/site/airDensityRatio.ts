import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { airCelsius, siteAltitude } from "../../arguments/siteAir";
import { airDensityRatio as ratioAt } from "../../models/atmosphere";

export const args = cellArguments({
  altitude: siteAltitude,
  temperature: airCelsius,
});

/**
 * Density of dry air at a site compared with that of the standard atmosphere at sea level.
 *
 * @customfunction AIR_DENSITY_RATIO
 * @param altitude Altitude above sea level, geopotential [m]
 * @param temperature Air temperature [°C]
 * @returns Air density over 1.225 kg/m³
 */
export function airDensityRatio(altitude: any[][], temperature: any[][]): any[][] {
  return eachCell(args, [altitude, temperature], (given) => ratioAt(given.altitude, given.temperature));
}

export const about: About = {
  gives: "number",
  rule: "pressure of the altitude / (287.05287 × (temperature + 273.15)) / 1.225",
  range:
    "−500 to 11 000 m and −90 to 60 °C; outside is #VALUE!. Dry air: moist air is up to 3 % lighter in tropical heat.",
  source: "ISO 2533:1975, Standard Atmosphere, with the site's own temperature",
  examples: [
    {
      formula: "=OXYGEN.AIR_DENSITY_RATIO(0,15)",
      result: 1,
      tolerance: 0.00001,
      source: "ISO 2533:1975: 1.225 kg/m³ at 15 °C",
    },
    {
      formula: "=OXYGEN.AIR_DENSITY_RATIO(5000,-17.5)",
      result: 0.60091,
      tolerance: 0.00001,
      source: "ISO 2533:1975, table 5: 0.736116/1.225",
    },
  ],
  seeAlso: ["AIR_PRESSURE", "DERATED_RATE", "GENERATOR_DERATED"],
};
