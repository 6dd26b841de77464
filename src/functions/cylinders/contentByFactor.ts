import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cylinderFactor } from "../../arguments/factor";
import { gaugePsi } from "../../arguments/quantity";
import { contentByFactor as contentOf, sizeFactors } from "../../models/cylinderUse";

export const args = cellArguments({
  pressure_psi: gaugePsi,
  factor: cylinderFactor(sizeFactors),
  keep_psi: gaugePsi.default(defaults.keep_psi),
});

/**
 * Gas that may be used from a cylinder by its handbook size factor, the bedside rule; the reserve is already taken off.
 *
 * @customfunction CONTENT_BY_FACTOR
 * @param pressure_psi Pressure, gauge [psi]
 * @param factor Litres of gas for each psi, or the size D, E, M, H or K [L/psi]
 * @param [keep_psi] Pressure that stays in the cylinder as reserve, gauge [psi]
 * @returns Gas to use above the reserve [L]
 */
export function contentByFactor(pressure_psi: any[][], factor: any[][], keep_psi?: any[][]): any[][] {
  return eachCell(args, [pressure_psi, factor, keep_psi], (given) =>
    contentOf(given.pressure_psi, given.factor, given.keep_psi),
  );
}

export const about: About = {
  rule: "max(0, pressure − keep) × factor; D 0.16, E 0.28, M 1.56, H and K 3.14 L/psi",
  range:
    "Factor above 0; at or below the reserve the answer is 0. The reserve is in it, so CYLINDER_MINUTES takes it with keep share 0. Beside the real gas of CYLINDER_CONTENT in a 244 ft³ cylinder it says 9 % less than a full one holds and 19 % less at 1000 psi; that caution is the reserve alone: with keep 0 the straight line says up to 2 % too much when a quarter full.",
  source: "Cylinder factors and the 200 psi residual of respiratory-care and emergency-medical teaching texts",
  examples: [
    {
      formula: "=OXYGEN.CONTENT_BY_FACTOR(2000,0.16)",
      result: 288,
      note: "Size D; at 0.5 L/min that is 576 minutes",
      source: "Worked example of emergency-medical teaching texts",
    },
    {
      formula: '=OXYGEN.CONTENT_BY_FACTOR(1000,"E",0)',
      result: 280,
      note: "At 2 L/min that is 140 minutes",
      source: "Worked example of respiratory-therapy study notes",
    },
    { formula: "=OXYGEN.CONTENT_BY_FACTOR(150,0.28)", result: 0, note: "Below the reserve" },
  ],
  seeAlso: ["CYLINDER_CONTENT", "CYLINDER_MINUTES"],
  caution:
    "A bedside estimate: letters of sizes differ between countries and makers. Change the cylinder before the reserve, and keep the next one at hand.",
};
