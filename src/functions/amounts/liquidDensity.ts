import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { vesselGauge } from "../../arguments/oxygenState";
import { liquidDensity as densityAt } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({ pressure: vesselGauge.default(defaults.pressure) });

/**
 * Density of liquid oxygen that boils at a vessel pressure.
 *
 * @customfunction LIQUID_DENSITY
 * @param [pressure] Pressure of the vessel, gauge [bar]
 * @returns Density of the liquid [kg/L]
 */
export function liquidDensity(pressure?: any[][]): any[][] {
  return eachCell(args, [pressure], (given) => densityAt(given.pressure));
}

export const about: About = {
  gives: "liquid density",
  rule: "density of the saturated liquid at pressure + 1.01325 bar",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. Saturated: liquid that is colder than its boiling point is denser. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.LIQUID_DENSITY(0)",
      result: 1.142,
      tolerance: 0.0015,
      source: "International Fire Code 2018, table G101.2: 1 L is 1.142 kg",
    },
    {
      formula: '=OXYGEN.LIQUID_DENSITY("35 psi")',
      result: 1.070942,
      tolerance: 0.00005,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["LIQUID_MASS", "LEVEL_FROM_WEIGHT", "BOILING_POINT", "GAS_DENSITY"],
};
