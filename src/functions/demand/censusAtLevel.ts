import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { number } from "../../arguments/quantity";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { countAtLevel, mostMean, poisson } from "../../models/counts";

export const args = cellArguments({
  mean: number.between(0, mostMean).as("mean patients"),
  level: serviceLevel,
});

/**
 * Patients to be ready for, so that a given share of the time there are no more.
 *
 * @customfunction CENSUS_AT_LEVEL
 * @param mean Patients there at once, on average
 * @param level Share of the time that the answer is enough, above 0 and under 1
 * @returns Patients, the least number that is enough
 */
export function censusAtLevel(mean: any[][], level: any[][]): any[][] {
  return eachCell(
    args,
    [mean, level],
    (given) => refuseLevel(given.level) ?? countAtLevel(poisson(given.mean), given.level),
  );
}

export const about: About = {
  gives: "patients",
  rule: "least n with P(N ≤ n) ≥ level, N Poisson of the mean",
  range: `Mean 0 to a million, and nobody at a mean of 0; exact, without the normal short-cut. Patients come independently of each other, at any length of stay, and none is turned away. Outbreaks and mass casualties come together: OUTBREAK_CENSUS, or plan them as a surge. ${blankAsZero}`,
  source:
    "Number in an M/G/∞ system is Poisson, at any length of stay (Palm's theorem): Feeney & Sherbrooke, Management Science 12(5) (1966) 391 (abstract read)",
  examples: [
    {
      formula: "=OXYGEN.CENSUS_AT_LEVEL(4,95%)",
      result: 8,
      source: "cumulative Poisson tables: P(≤ 7) = 0.9489, P(≤ 8) = 0.9786",
    },
    {
      formula: "=OXYGEN.CENSUS_AT_LEVEL(5,0.5)",
      result: 5,
      source: "cumulative Poisson tables: P(≤ 4) = 0.4405, P(≤ 5) = 0.6160",
    },
    { formula: "=OXYGEN.CENSUS_AT_LEVEL(4,1)", result: { error: "#VALUE!", words: "certainty" } },
  ],
  seeAlso: ["AVERAGE_CENSUS", "OUTBREAK_CENSUS", "CENSUS_OVER_CHANCE", "FLOW_AT_LEVEL", "SHARED_CENSUS"],
  caution:
    "A planning figure; above the level there are more patients than this, and someone must know what happens then.",
};
