import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { boilingCelsius } from "../../arguments/oxygenState";
import { saturationPressure as pressureAt } from "../../models/amounts";

export const args = cellArguments({ temperature: boilingCelsius });

/**
 * Pressure of a vessel in which liquid oxygen boils at a temperature.
 *
 * @customfunction SATURATION_PRESSURE
 * @param temperature Temperature of the boiling liquid [°C]
 * @returns Pressure, gauge [bar]
 */
export function saturationPressure(temperature: any[][]): any[][] {
  return eachCell(args, [temperature], (given) => pressureAt(given.temperature));
}

export const about: About = {
  gives: "gauge pressure",
  rule: "saturation pressure at the temperature − 1.01325 bar",
  range: `Temperatures at which oxygen boils from 0.5 to 25 bar absolute, −189.2 to −135.6 °C; outside is #VALUE!. The result is gauge over 1.01325 bar, below 0 under 1 atm; a gauge on high ground shows more, by 0.31 bar at 3000 m. Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.SATURATION_PRESSURE(-173.15)",
      result: 1.526796,
      tolerance: 0.0005,
      source: "254.0046 kPa at 100 K, Schmidt & Wagner 1985, evaluated independently; less 101.325 kPa",
    },
    {
      formula: '=OXYGEN.SATURATION_PRESSURE("100 K")',
      result: 1.526796,
      tolerance: 0.0005,
      source: "the same in kelvin, 273.15 apart",
    },
  ],
  seeAlso: ["BOILING_POINT", "HOURS_TO_PRESSURE", "FLASH_LOSS"],
  caution: "Pressure in a closed vessel of liquid climbs by itself; relief valves stay as the maker set them.",
};
