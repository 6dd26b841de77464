import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { vesselGauge } from "../../arguments/oxygenState";
import { latentHeat as heatAt } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({ pressure: vesselGauge.default(defaults.pressure) });

/**
 * Heat that boils a kilogram of liquid oxygen at a vessel pressure.
 *
 * @customfunction LATENT_HEAT
 * @param [pressure] Pressure of the vessel, gauge [bar]
 * @returns Heat of vaporisation [kJ/kg]
 */
export function latentHeat(pressure?: any[][]): any[][] {
  return eachCell(args, [pressure], (given) => heatAt(given.pressure));
}

export const about: About = {
  gives: "heat a kilogram",
  rule: "enthalpy of the saturated vapour − enthalpy of the saturated liquid at pressure + 1.01325 bar",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.LATENT_HEAT(1.98675)",
      result: 200.1991,
      tolerance: 0.01,
      note: "3 bar absolute",
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.LATENT_HEAT({3.98675;8.98675})",
      result: [[191.3813], [174.3364]],
      tolerance: 0.01,
      note: "5 and 10 bar absolute",
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["HEAT_LEAK", "LOSS_FROM_HEAT", "BOILING_POINT"],
};
