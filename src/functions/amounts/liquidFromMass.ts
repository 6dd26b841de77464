import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { kilograms } from "../../arguments/quantity";
import { liquidDensity } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  mass: kilograms,
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Litres of liquid oxygen in a mass.
 *
 * @customfunction LIQUID_FROM_MASS
 * @param mass Mass of the liquid alone [kg]
 * @param [pressure] Pressure of the vessel in which it boils, gauge [bar]
 * @returns Liquid oxygen [L]
 */
export function liquidFromMass(mass: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [mass, pressure], (given) => given.mass / liquidDensity(given.pressure));
}

export const about: About = {
  gives: "liquid",
  rule: "mass / density of the saturated liquid",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. Mass of the liquid without its vessel; for a vessel on a scale see LEVEL_FROM_WEIGHT. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.LIQUID_FROM_MASS(1)",
      result: 0.876,
      tolerance: 0.001,
      source: "International Fire Code 2018, table G101.2: 1 kg is 0.876 L",
    },
    {
      formula: '=OXYGEN.LIQUID_FROM_MASS("50.31708 lb")',
      result: 20,
      tolerance: 0.001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.LIQUID_FROM_MASS(60,1.5)",
      result: 54.96736,
      tolerance: 0.005,
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["LIQUID_MASS", "LEVEL_FROM_WEIGHT", "CONVERT_AMOUNT"],
};
