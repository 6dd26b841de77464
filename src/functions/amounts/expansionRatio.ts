import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange, pureOxygenGas, vesselGauge } from "../../arguments/oxygenState";
import { gasFromALitre } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  pressure: vesselGauge.default(defaults.pressure),
  gas_temperature: gasCelsius.default(defaults.gas_temperature),
  gas_pressure: gasGauge.default(defaults.gas_pressure),
});

/**
 * Litres of gas that a litre of liquid oxygen gives.
 *
 * @customfunction EXPANSION_RATIO
 * @param [pressure] Pressure of the vessel in which it boils, gauge [bar]
 * @param [gas_temperature] Temperature of the gas [°C]
 * @param [gas_pressure] Pressure of the gas, gauge [bar]
 * @returns Gas in litres for each litre of liquid
 */
export function expansionRatio(pressure?: any[][], gas_temperature?: any[][], gas_pressure?: any[][]): any[][] {
  return eachCell(args, [pressure, gas_temperature, gas_pressure], (given) =>
    gasFromALitre(given.pressure, given.gas_temperature, given.gas_pressure),
  );
}

export const about: About = {
  gives: "number",
  rule: "density of the liquid / density of the gas",
  range: `Pressures are bar gauge. Vessel 0.5 to 25 bar absolute, gas ${gasRange}; outside is #VALUE!. ${gaugeAtAltitude} ${pureOxygenGas}`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.EXPANSION_RATIO(0)",
      result: 861,
      tolerance: 1,
      source: "International Fire Code 2018, table G101.2: 1 L is 0.861 m³ at 70 °F, 1 atm",
    },
    {
      formula: "=OXYGEN.EXPANSION_RATIO(0,20)",
      result: 857.2611,
      tolerance: 0.1,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.EXPANSION_RATIO(1.5,25,4)",
      result: 168.141,
      tolerance: 0.02,
      note: "Out of a vessel at 1.5 bar into a pipe at 4 bar and 25 °C",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["GAS_FROM_LIQUID", "LIQUID_FROM_GAS", "SPILL_OXYGEN"],
  caution: "Liquid shut in without room bursts what holds it: relief valves stay as the maker set them.",
};
