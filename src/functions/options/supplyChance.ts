import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { fraction, sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { totalRow } from "../../arguments/unitOutputs";
import { invalid } from "../../cells/cellValues";
import { endsInTotal } from "../../models/options";
import { supplyChance as chanceOf } from "../../models/supplyChance";

export const args = cellArguments({
  unit_outputs: list(sameUnit),
  availabilities: list(fraction),
  need: sameUnit,
});

/** Unequal units: 2 × 2¹⁵ sums. */
const mostUnits = 30;

/**
 * Chance that the units which work at a time meet the need together, unequal units too.
 *
 * @customfunction SUPPLY_CHANCE
 * @param unit_outputs Output of each unit while it works, one cell a unit, in the unit of the need
 * @param availabilities Share of the time that each unit works, in the same order
 * @param need What is needed
 * @returns Chance, 0 to 1
 */
export function supplyChance(unit_outputs: any[][], availabilities: any[][], need: any[][]): any[][] {
  return eachCell(args, [unit_outputs, availabilities, need], (given) => {
    const unequal = sameLength({ unit_outputs: given.unit_outputs, availabilities: given.availabilities });
    if (unequal) return unequal;
    if (given.unit_outputs.length > mostUnits) {
      return invalid(
        `unit_outputs has ${given.unit_outputs.length} units; ${mostUnits} at most. Join small ones that stand or fall together`,
      );
    }
    if (endsInTotal(given.unit_outputs)) return totalRow;
    return chanceOf(given.unit_outputs, given.availabilities, given.need);
  });
}

export const about: About = {
  gives: "fraction",
  rule: "Σ of the chances of all combinations of units up and down whose outputs add up to the need or more",
  range: `1 to 30 units, exact for unequal ones. A last unit that gives as much as all others together (within rounding) is refused as a total row where there are three units or more. A sum that misses the need by rounding alone (1e-12 of the whole) meets it. Units fail independently: a common cause (fuel, power, the same fault in all) makes the true chance lower. ${blankAsZero}`,
  source:
    "Capacity outage probability table by convolution: Billinton & Allan, Reliability Evaluation of Power Systems, ch. 2 (from memory)",
  examples: [
    {
      formula: "=OXYGEN.SUPPLY_CHANCE({3;3;5},{0.98;0.98;0.98},8)",
      result: 0.979608,
      note: "All up, or one of the threes down: 0.98³ + 2 × 0.98² × 0.02",
      source:
        "Billinton & Allan, ch. 2, two units of 3 and one of 5 at outage rate 0.02 (from memory; the sum by hand)",
    },
    {
      formula: "=OXYGEN.SUPPLY_CHANCE({0.1;0.2},{0.9;0.9},0.3)",
      result: 0.81,
      note: "0.1 + 0.2 meets 0.3",
      source: "0.9 × 0.9",
    },
    {
      formula: "=OXYGEN.SUPPLY_CHANCE({30;20;50},{0.9;0.9;0.9},40)",
      result: { error: "#VALUE!", words: "looks like a total row" },
      note: "30 + 20 = 50",
    },
  ],
  seeAlso: ["ENOUGH_UNITS_CHANCE", "ONE_UNIT_DOWN"],
  caution: "A planning figure. However high the chance, have cylinders for the time in which too little is made.",
};
