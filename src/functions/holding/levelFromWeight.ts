import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { kilograms } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { liquidDensity } from "../../models/amounts";
import { exceeds } from "../../models/exceeds";

export const args = cellArguments({
  gross_mass: kilograms,
  empty_mass: kilograms,
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Liquid in a vessel that stands on a scale.
 *
 * @customfunction LEVEL_FROM_WEIGHT
 * @param gross_mass Vessel with its liquid, as weighed [kg]
 * @param empty_mass Empty vessel, with the same fittings on it [kg]
 * @param [pressure] Pressure of the vessel, gauge [bar]
 * @returns Liquid in it [L]
 */
export function levelFromWeight(gross_mass: any[][], empty_mass: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [gross_mass, empty_mass, pressure], (given) =>
    exceeds(given.empty_mass, given.gross_mass)
      ? invalid(
          `gross_mass of ${formatNumber(given.gross_mass)} kg is below empty_mass of ${formatNumber(given.empty_mass)} kg; check which is which`,
        )
      : Math.max(0, given.gross_mass - given.empty_mass) / liquidDensity(given.pressure),
  );
}

export const about: About = {
  gives: "liquid",
  rule: "(gross mass − empty mass) / density of the saturated liquid",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. All the weight is taken as liquid: vapour above it reads as 0.4 % of the space it fills at 1 atm, and as more at pressure. Frost and hoses count as liquid: weigh without them. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.LEVEL_FROM_WEIGHT(61.42,50)",
      result: 10,
      tolerance: 0.015,
      source: "International Fire Code 2018, table G101.2: 1 L is 1.142 kg",
    },
    {
      formula: '=OXYGEN.LEVEL_FROM_WEIGHT("150.31708 lb","100 lb")',
      result: 20,
      tolerance: 0.001,
      source: "20 L weigh 50.317 08 lb, Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: '=OXYGEN.LEVEL_FROM_WEIGHT(120,80,"35 psi")',
      result: 37.3503,
      tolerance: 0.02,
      note: "Warmer liquid is lighter",
      source: "40 kg / 1.070942 kg/L, Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["LEVEL_FROM_HEAD", "LIQUID_FROM_MASS", "LOSS_FROM_READINGS", "LIQUID_DENSITY"],
  caution: "A full vessel is heavy and must stay upright: lift and strap it as the maker's manual asks.",
};
