import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fraction } from "../../arguments/quantity";
import { enoughUnitsChance as chanceOf } from "../../models/supplyChance";

export const args = cellArguments({
  units: count.between(0, 1000000),
  needed: count,
  availability: fraction,
});

/**
 * Chance that enough of a number of alike units work at a time.
 *
 * @customfunction ENOUGH_UNITS_CHANCE
 * @param units Units there are
 * @param needed Units that must work
 * @param availability Share of the time that one unit works
 * @returns Chance, 0 to 1
 */
export function enoughUnitsChance(units: any[][], needed: any[][], availability: any[][]): any[][] {
  return eachCell(args, [units, needed, availability], (given) =>
    chanceOf(given.units, given.needed, given.availability),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "Σ over k from needed to units of C(units, k) a^k (1 − a)^(units − k)",
  range: `Whole units, a million at most; 0 if more are needed than there are. Units fail independently: a common cause (fuel, power, bad filters, the same fault in all) makes the true chance lower. ${blankAsZero}`,
  source: "Binomial distribution; k-out-of-n system of reliability texts",
  examples: [
    { formula: "=OXYGEN.ENOUGH_UNITS_CHANCE(3,2,0.9)", result: 0.972, source: "3 × 0.81 × 0.1 + 0.729" },
    { formula: "=OXYGEN.ENOUGH_UNITS_CHANCE(2,3,0.9)", result: 0, note: "More needed than there are", source: "3 > 2" },
  ],
  seeAlso: ["SUPPLY_CHANCE", "ONE_UNIT_DOWN", "PLANTS_NEEDED"],
  caution: "A planning figure. However high the chance, have cylinders for the time in which too few units work.",
};
