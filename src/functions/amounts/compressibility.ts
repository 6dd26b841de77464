import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange, pureOxygenGas } from "../../arguments/oxygenState";
import { compressibilityAt } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  pressure: gasGauge,
  temperature: gasCelsius.default(defaults.temperature),
});

/**
 * Compressibility factor of gaseous oxygen: how far it departs from the ideal gas, for which it is 1.
 *
 * @customfunction COMPRESSIBILITY
 * @param pressure Pressure of the gas, gauge [bar]
 * @param [temperature] Temperature of the gas [°C]
 * @returns Compressibility factor Z
 */
export function compressibility(pressure: any[][], temperature?: any[][]): any[][] {
  return eachCell(args, [pressure, temperature], (given) => compressibilityAt(given.pressure, given.temperature));
}

export const about: About = {
  gives: "number",
  rule: "Z = absolute pressure / (density × 259.8 J/(kg·K) × absolute temperature)",
  range: `Bar gauge; ${gasRange}, outside is #VALUE!. Below 1 a cylinder holds more than the ideal gas law says. ${gaugeAtAltitude} ${pureOxygenGas}`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: '=OXYGEN.COMPRESSIBILITY("2200 psi","70 °F")',
      result: 0.9375777,
      tolerance: 0.0001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.COMPRESSIBILITY(148.98675,{0;25})",
      result: [[0.9040064], [0.9428845]],
      tolerance: 0.0001,
      note: "150 bar absolute",
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["GAS_DENSITY", "CYLINDER_CONTENT", "SETTLED_PRESSURE"],
};
