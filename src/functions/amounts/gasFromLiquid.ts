import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange, liquidGauge, pureOxygenGas } from "../../arguments/oxygenState";
import { litres } from "../../arguments/quantity";
import { gasFromALitre } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

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
  gives: "gas",
  rule: "liquid × density of the liquid / density of the gas",
  range: `Pressures are bar gauge. Vessel 0.5 to 25 bar absolute, gas ${gasRange}; outside is #VALUE!. ${gaugeAtAltitude} ${pureOxygenGas}`,
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
    {
      formula: '=OXYGEN.GAS_FROM_LIQUID(30,"22 psi",15,4)',
      result: 4870.364,
      tolerance: 0.5,
      note: "Out of a vessel at 22 psi into a pipe at 4 bar and 15 °C",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["LIQUID_FROM_GAS", "EXPANSION_RATIO", "CONVERT_AMOUNT"],
  caution:
    "Liquid shut in without room grows some 860 times as gas and bursts what holds it: relief valves stay as the maker set them.",
};
