import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { kilograms } from "../../arguments/quantity";
import { oxygenUptake as uptakeAtRest } from "../../models/bedside";

export const args = cellArguments({
  body_mass: kilograms.positive(),
});

/**
 * Oxygen that a body takes up at rest: the least that a closed circuit must be given.
 *
 * @customfunction OXYGEN_UPTAKE
 * @param body_mass Body mass [kg]
 * @returns Oxygen taken up [L/min]
 */
export function oxygenUptake(body_mass: any[][]): any[][] {
  return eachCell(args, [body_mass], (given) => uptakeAtRest(given.body_mass));
}

export const about: About = {
  gives: "gas flow",
  rule: "10 × kg^0.75 mL/min",
  range:
    "Mass above 0; under anaesthesia or at rest, at normal temperature. Fever, shivering and effort raise it several times; what patients are given is many times more than they take up.",
  source:
    "Brody's rule as Lowe & Ernst give it for anaesthesia (The Quantitative Practice of Anesthesia, 1981); their formula was read in a trial's methods, the exponent is from memory",
  examples: [
    { formula: "=OXYGEN.OXYGEN_UPTAKE(16)", result: 0.08, source: "16^0.75 = 8" },
    { formula: "=OXYGEN.OXYGEN_UPTAKE(70)", result: 0.242, tolerance: 0.0005, source: "Brody's rule; from memory" },
  ],
  seeAlso: ["VENTILATOR_FLOW", "PLANNED_FLOW"],
  caution: "For understanding, not for setting a flow: the clinician decides.",
};
