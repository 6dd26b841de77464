import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasCelsius, gasGauge, gasRange, liquidGauge, pureOxygenGas } from "../../arguments/oxygenState";
import { gasLitres } from "../../arguments/quantity";
import { gasFromALitre } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  gas: gasLitres,
  pressure: liquidGauge.default(defaults.pressure),
  gas_temperature: gasCelsius.default(defaults.gas_temperature),
  gas_pressure: gasGauge.default(defaults.gas_pressure),
});

/**
 * Liquid oxygen that holds as much as an amount of gas.
 *
 * @customfunction LIQUID_FROM_GAS
 * @param gas Gas at its temperature and pressure [L]
 * @param [pressure] Pressure of the vessel that holds the liquid, gauge [bar]
 * @param [gas_temperature] Temperature of the gas [°C]
 * @param [gas_pressure] Pressure of the gas, gauge [bar]
 * @returns Liquid oxygen [L]
 */
export function liquidFromGas(
  gas: any[][],
  pressure?: any[][],
  gas_temperature?: any[][],
  gas_pressure?: any[][],
): any[][] {
  return eachCell(
    args,
    [gas, pressure, gas_temperature, gas_pressure],
    (given) => given.gas / gasFromALitre(given.pressure, given.gas_temperature, given.gas_pressure),
  );
}

export const about: About = {
  gives: "liquid",
  rule: "gas × density of the gas / density of the liquid",
  range: `Pressures are bar gauge. Vessel 0.5 to 25 bar absolute, gas ${gasRange}; outside is #VALUE!. ${gaugeAtAltitude} ${pureOxygenGas} No transfer loss is in it: see GROSS_DRAW.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: '=OXYGEN.LIQUID_FROM_GAS("1 m3")',
      result: 1.162,
      tolerance: 0.001,
      source: "International Fire Code 2018, table G101.2: 1 m³ of gas at 70 °F, 1 atm is 1.162 L of liquid",
    },
    {
      formula: '=OXYGEN.LIQUID_FROM_GAS("100 ft3",0,"70 °F")',
      result: 3.29,
      tolerance: 0.005,
      source: "International Fire Code 2018, table G101.2: 100 ft³ is 0.869 gal of liquid",
    },
    {
      formula: '=OXYGEN.LIQUID_FROM_GAS(5000,"22 psi",15,4)',
      result: 30.7985,
      tolerance: 0.003,
      note: "Gas in a pipe at 4 bar and 15 °C, liquid in a vessel at 22 psi",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["GAS_FROM_LIQUID", "EXPANSION_RATIO", "GROSS_DRAW"],
};
