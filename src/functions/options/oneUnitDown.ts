import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { totalRow } from "../../arguments/unitOutputs";
import { endsInTotal, oneUnitDown as shareLeft } from "../../models/options";

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
  return eachCell(args, [unit_outputs, need], (given) =>
    endsInTotal(given.unit_outputs) ? totalRow : shareLeft(given.unit_outputs, given.need),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "(Σ outputs − largest output) / need",
  range:
    "Need above 0; outputs 0 or more and none blank. One unit alone answers 0. A last unit that gives as much as all others together (within rounding) is refused as a total row where there are three units or more.",
  source: "The n − 1 rule of supply, common practice, no source",
  examples: [
    { formula: "=OXYGEN.ONE_UNIT_DOWN({36;36;24},60)", result: 1, source: "(36 + 36 + 24 − 36) / 60" },
    {
      formula: "=OXYGEN.ONE_UNIT_DOWN({36},30)",
      result: 0,
      note: "Nothing behind a single plant",
      source: "(36 − 36) / 30",
    },
    {
      formula: "=OXYGEN.ONE_UNIT_DOWN({36;24;60},60)",
      result: { error: "#VALUE!", words: "looks like a total row" },
      note: "36 + 24 = 60",
    },
  ],
  seeAlso: ["SUPPLY_CHANCE", "ENOUGH_UNITS_CHANCE", "OPTION_TABLE"],
  caution:
    "Below 1, patients depend on stock or cylinders from the moment a unit fails: have them ready. The clinician decides who can do with less.",
};
