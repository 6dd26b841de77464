import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { watts } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { lossFromHeatLeak } from "../../models/closedVessel";

export const args = cellArguments({
  heat_leak: watts,
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Liquid that a heat leak boils off a day.
 *
 * @customfunction LOSS_FROM_HEAT
 * @param heat_leak Heat that leaks in [W]
 * @param [pressure] Pressure at which the vessel vents, gauge [bar]
 * @returns Liquid boiled off [L/day]
 */
export function lossFromHeat(heat_leak: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [heat_leak, pressure], (given) => lossFromHeatLeak(given.heat_leak, given.pressure));
}

export const about: About = {
  gives: "liquid a day",
  rule: "heat leak × 86 400 s / (density of the liquid × heat of vaporisation)",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Heat balance of a boiling vessel; properties: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175",
  examples: [
    {
      formula: "=OXYGEN.LOSS_FROM_HEAT(12)",
      result: 4.264324,
      tolerance: 0.001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: '=OXYGEN.LOSS_FROM_HEAT(9.823358,"35 psi")',
      result: 4,
      tolerance: 0.001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["HEAT_LEAK", "DAILY_LOSS", "LATENT_HEAT"],
};
