import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { vesselGauge } from "../../arguments/oxygenState";
import { boilingPoint as boilingAt } from "../../models/amounts";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";

export const args = cellArguments({ pressure: vesselGauge.default(defaults.pressure) });

/**
 * Temperature at which liquid oxygen boils at a vessel pressure.
 *
 * @customfunction BOILING_POINT
 * @param [pressure] Pressure of the vessel, gauge [bar]
 * @returns Boiling point [°C]
 */
export function boilingPoint(pressure?: any[][]): any[][] {
  return eachCell(args, [pressure], (given) => boilingAt(given.pressure));
}

export const about: About = {
  gives: "temperature",
  rule: "saturation temperature at pressure + 1.01325 bar",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen and boils over a small range instead of at one temperature.`,
  source: "Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175 (equation of state of oxygen)",
  examples: [
    {
      formula: "=OXYGEN.BOILING_POINT(0)",
      result: -182.962,
      tolerance: 0.01,
      source: "Normal boiling point 90.188 K, Schmidt & Wagner 1985",
    },
    {
      formula: '=OXYGEN.BOILING_POINT({"10 psi";"22 psi";"35 psi"})',
      result: [[-177.6865], [-173.1967], [-169.4466]],
      tolerance: 0.001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
  ],
  seeAlso: ["SATURATION_PRESSURE", "LIQUID_DENSITY", "LATENT_HEAT"],
  caution:
    "Colder than air freezes to: skin sticks and burns, and air condenses on bare cold pipes. Wear what the maker's manual asks for.",
};
