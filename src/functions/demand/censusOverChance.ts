import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, number } from "../../arguments/quantity";
import { chanceOver, mostMean, poisson } from "../../models/counts";

export const args = cellArguments({
  mean: number.aboveTo(0, mostMean).as("mean patients"),
  places: count,
});

/**
 * Chance that there are more patients at once than places.
 *
 * @customfunction CENSUS_OVER_CHANCE
 * @param mean Patients there at once, on average
 * @param places Places, or cylinders, or flow meters: what one patient needs one of
 * @returns Chance of more patients than places
 */
export function censusOverChance(mean: any[][], places: any[][]): any[][] {
  return eachCell(args, [mean, places], (given) => chanceOver(poisson(given.mean), given.places));
}

export const about: About = {
  gives: "fraction",
  rule: "P(N > places), N Poisson of the mean",
  range:
    "Mean above 0, up to a million; whole places. Patients come independently and none is turned away (TURNED_AWAY_SHARE is for when they are). Under 1e-25 the chance shows as 0.",
  source:
    "Number in an M/G/∞ system is Poisson, at any length of stay (Palm's theorem): Feeney & Sherbrooke, Management Science 12(5) (1966) 391 (abstract read); exact sum",
  examples: [
    {
      formula: "=OXYGEN.CENSUS_OVER_CHANCE(4,8)",
      result: 0.0214,
      tolerance: 5e-5,
      source: "cumulative Poisson tables: P(≤ 8) = 0.9786",
    },
    {
      formula: "=OXYGEN.CENSUS_OVER_CHANCE(20,28)",
      result: 0.03433,
      tolerance: 1e-5,
      source: "two statistics libraries and an own sum agree",
    },
  ],
  seeAlso: ["CENSUS_AT_LEVEL", "TURNED_AWAY_SHARE", "AVERAGE_CENSUS"],
  caution:
    "A planning figure: patients of an outbreak or an accident don't come independently, and the true chance is higher.",
};
