import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { oneUnitDown as shareLeft } from "../../models/options";

export const args = cellArguments({
  unit_outputs: list(sameUnit),
  need: sameUnit.positive(),
});

/**
 * Share of the need that is still met when the largest unit fails.
 *
 * @customfunction ONE_UNIT_DOWN
 * @param unit_outputs Output of each unit, one cell a unit, in the unit of the need
 * @param need What is needed
 * @returns Share of the need, may pass 1
 */
export function oneUnitDown(unit_outputs: any[][], need: any[][]): any[][] {
  return eachCell(args, [unit_outputs, need], (given) => shareLeft(given.unit_outputs, given.need));
}

export const about: About = {
  rule: "(Σ outputs − largest output) / need",
  range: "Need above 0; outputs 0 or more and none blank. One unit alone answers 0.",
  source: "The n − 1 rule of supply, common practice, no source",
  examples: [
    { formula: "=OXYGEN.ONE_UNIT_DOWN({36;36;24},60)", result: 1, note: "36 + 24 still meet 60" },
    { formula: "=OXYGEN.ONE_UNIT_DOWN({36},30)", result: 0, note: "Nothing behind a single plant" },
  ],
  seeAlso: ["SUPPLY_CHANCE", "ENOUGH_UNITS_CHANCE", "OPTION_TABLE"],
  caution:
    "Below 1, patients depend on stock or cylinders from the moment a unit fails: have them ready. The clinician decides who can do with less.",
};
