import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange, pureOxygenGas } from "../../arguments/oxygenState";
import { gasDensityAt } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  pressure: gasGauge.default(defaults.pressure),
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Density of gaseous oxygen, as the real gas it is.
 *
 * @customfunction GAS_DENSITY
 * @param [pressure] Pressure of the gas, gauge [bar]
 * @param [temperature] Temperature of the gas [°C]
 * @returns Density [kg/m³]
 */
export function gasDensity(pressure?: any[][], temperature?: any[][]): any[][] {
  return eachCell(args, [pressure, temperature], (given) => gasDensityAt(given.pressure, given.temperature));
}

export const about: About = {
  gives: "gas density",
  rule: "density at pressure + 1.01325 bar and the temperature, by the equation of state",
  range: `Bar gauge; ${gasRange}, outside is #VALUE!. ${gaugeAtAltitude} ${pureOxygenGas}`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.GAS_DENSITY(0,21.1)",
      result: 1.327,
      tolerance: 0.001,
      source: "International Fire Code 2018, table G101.2: 1 m³ is 1.327 kg at 70 °F, 1 atm",
    },
    {
      formula: "=OXYGEN.GAS_DENSITY(0,{0;15;25})",
      result: [[1.429033], [1.354364], [1.308786]],
      tolerance: 0.0001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.GAS_DENSITY({4;-0.5},{15;21.1})",
      result: [[6.721073], [0.6715377]],
      tolerance: 0.001,
      note: "In a pipe at 4 bar, and in thin air",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["COMPRESSIBILITY", "LIQUID_DENSITY", "EXPANSION_RATIO"],
};
