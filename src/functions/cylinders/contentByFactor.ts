import { defaults, inWords } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cylinderFactor } from "../../arguments/factor";
import { gaugePsi } from "../../arguments/quantity";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
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
  gives: "gas",
  rule: "max(0, pressure − keep) × factor; D 0.16, E 0.28, M 1.56, H and K 3.14 L/psi",
  range: `Factor above 0; at or below the reserve the answer is 0. The reserve is in it, so CYLINDER_MINUTES takes it with keep share 0. The straight line says more than the real gas that flows out above ${inWords(defaults.keep_psi)}: at 21.1 °C nothing too much when full, 2 % at 1000 psi, 5 % near the reserve; with gas at 40 °C 9 to 13 %. MINUTES_ON_CYLINDER takes temperature and real gas into account. ${gaugeAtAltitude}`,
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
    { formula: "=OXYGEN.CONTENT_BY_FACTOR(150,0.28)", result: 0, note: "Below the reserve", source: "The rule stated" },
  ],
  seeAlso: ["MINUTES_ON_CYLINDER", "CYLINDER_CONTENT", "CYLINDER_MINUTES"],
  caution:
    "A bedside estimate: letters of sizes differ between countries and makers. Change the cylinder before the reserve, and keep the next one at hand.",
};
