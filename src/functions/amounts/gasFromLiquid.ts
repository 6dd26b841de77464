import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, liquidGauge } from "../../arguments/oxygenState";
import { litres } from "../../arguments/quantity";
import { gasFromALitre } from "../../models/amounts";

export const args = cellArguments({
  liquid: litres,
  pressure: liquidGauge.default(defaults.pressure),
  gas_temperature: gasCelsius.default(defaults.gas_temperature),
  gas_pressure: gasGauge.default(defaults.gas_pressure),
});

/**
 * Gas that liquid oxygen gives when it has boiled off and warmed up.
 *
 * @customfunction GAS_FROM_LIQUID
 * @param liquid Liquid oxygen [L]
 * @param [pressure] Pressure of the vessel in which it boils, gauge [bar]
 * @param [gas_temperature] Temperature of the gas [°C]
 * @param [gas_pressure] Pressure of the gas, gauge [bar]
 * @returns Gas at that temperature and pressure [L]
 */
export function gasFromLiquid(
  liquid: any[][],
  pressure?: any[][],
  gas_temperature?: any[][],
  gas_pressure?: any[][],
): any[][] {
  return eachCell(
    args,
    [liquid, pressure, gas_temperature, gas_pressure],
    (given) => given.liquid * gasFromALitre(given.pressure, given.gas_temperature, given.gas_pressure),
  );
}

export const about: About = {
  rule: "liquid × density of the liquid / density of the gas",
  range:
    "Pressures are bar gauge. Vessel 0.5 to 25 bar absolute, gas 1 to 301.4 bar absolute and −40 to 60 °C; outside is #VALUE!. Properties are those of pure oxygen; 93 % product holds argon and nitrogen and differs by about 1 % as gas.",
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.GAS_FROM_LIQUID(20)",
      result: 17220,
      tolerance: 20,
      source: "International Fire Code 2018, table G101.2: 1 L of liquid is 0.861 m³ of gas at 70 °F, 1 atm",
    },
    {
      formula: '=OXYGEN.GAS_FROM_LIQUID("1 gal",0,"70 °F")',
      result: 3257.9,
      tolerance: 3,
      source: "International Fire Code 2018, table G101.2: 1 gal is 115.05 ft³",
    },
    { formula: "=OXYGEN.GAS_FROM_LIQUID(1,0,15)", result: 843.2, tolerance: 1, source: "861 × 288.15/294.25" },
  ],
  seeAlso: ["LIQUID_FROM_GAS", "EXPANSION_RATIO", "CONVERT_AMOUNT"],
  caution:
    "Liquid shut in without room grows some 860 times as gas and bursts what holds it: relief valves stay as the maker set them.",
};
