import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { litres } from "../../arguments/quantity";
import { liquidDensity } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({
  liquid: litres,
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Mass of liquid oxygen.
 *
 * @customfunction LIQUID_MASS
 * @param liquid Liquid oxygen [L]
 * @param [pressure] Pressure of the vessel in which it boils, gauge [bar]
 * @returns Mass of the liquid alone [kg]
 */
export function liquidMass(liquid: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [liquid, pressure], (given) => given.liquid * liquidDensity(given.pressure));
}

export const about: About = {
  gives: "mass",
  rule: "liquid × density of the saturated liquid",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. The vapour above it and the vessel come on top. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.LIQUID_MASS(10)",
      result: 11.42,
      tolerance: 0.015,
      source: "International Fire Code 2018, table G101.2: 1 L is 1.142 kg",
    },
    {
      formula: '=OXYGEN.LIQUID_MASS("1 gal")',
      result: 4.321,
      tolerance: 0.003,
      source: "International Fire Code 2018, table G101.2: 1 gal is 4.321 kg",
    },
    {
      formula: '=OXYGEN.LIQUID_MASS(55,"22 psi")',
      result: 60.01246,
      tolerance: 0.005,
      note: "Warmer, lighter: 62.8 kg at 0 bar",
      source: "Schmidt & Wagner 1985, computed with CoolProp outside this project",
    },
  ],
  seeAlso: ["LIQUID_FROM_MASS", "LEVEL_FROM_WEIGHT", "SHIPPED_MASS"],
};
