import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { litresPerDay } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { heatLeakFromLoss } from "../../models/closedVessel";

export const args = cellArguments({
  daily_loss: litresPerDay,
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Heat that leaks into a vessel, from the liquid it boils off a day.
 *
 * @customfunction HEAT_LEAK
 * @param daily_loss Liquid lost a day while the vessel stands and vents [L/day]
 * @param [pressure] Pressure at which it vents, gauge [bar]
 * @returns Heat leak [W]
 */
export function heatLeak(daily_loss: any[][], pressure?: any[][]): any[][] {
  return eachCell(args, [daily_loss, pressure], (given) => heatLeakFromLoss(given.daily_loss, given.pressure));
}

export const about: About = {
  gives: "watts",
  rule: "daily loss × density of the liquid × heat of vaporisation / 86 400 s",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. Loss by level; by vented gas the heat is less than 1 % larger at 1 atm, since vapour stays behind for the liquid gone. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Heat balance of a boiling vessel; properties: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175",
  examples: [
    {
      formula: '=OXYGEN.HEAT_LEAK(4,"35 psi")',
      result: 9.823358,
      tolerance: 0.001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.HEAT_LEAK({0;4.264})",
      result: [[0], [12]],
      tolerance: 0.02,
      source: "12 W boil 10.66 % of 40 L a day, Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["LOSS_FROM_HEAT", "HOURS_TO_PRESSURE", "LOSS_FROM_READINGS", "LATENT_HEAT"],
};
