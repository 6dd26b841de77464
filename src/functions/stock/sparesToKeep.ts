import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { number } from "../../arguments/quantity";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { countAtLevel, mostMean, poisson } from "../../models/counts";

export const args = cellArguments({
  mean_lead_demand: number.aboveTo(0, mostMean),
  level: serviceLevel,
});

/**
 * Spare parts to keep, so that a given share of lead times needs no more than these.
 *
 * @customfunction SPARES_TO_KEEP
 * @param mean_lead_demand Parts that fail in one lead time, on average
 * @param level Share of lead times for which the spares are enough, above 0 and under 1
 * @returns Spares, the least number that is enough
 */
export function sparesToKeep(mean_lead_demand: any[][], level: any[][]): any[][] {
  return eachCell(
    args,
    [mean_lead_demand, level],
    (given) => refuseLevel(given.level) ?? countAtLevel(poisson(given.mean_lead_demand), given.level),
  );
}

export const about: About = {
  gives: "count",
  rule: "least n with P(N ≤ n) ≥ level, N Poisson of the mean",
  range:
    "Mean above 0, up to a million; exact. Each part taken is ordered again at once, one for one. Failures come independently; parts that wear out together need more.",
  source:
    "Feeney & Sherbrooke, The (S−1, S) inventory policy under compound Poisson demand, Management Science 12(5) (1966) 391 (abstract read)",
  examples: [
    {
      formula: "=OXYGEN.SPARES_TO_KEEP(4,95%)",
      result: 8,
      source: "cumulative Poisson tables: P(≤ 7) = 0.9489, P(≤ 8) = 0.9786",
    },
    {
      formula: "=OXYGEN.SPARES_TO_KEEP(0.5,90%)",
      result: 1,
      source: "cumulative Poisson tables: P(≤ 0) = 0.6065, P(≤ 1) = 0.9098",
    },
  ],
  seeAlso: ["CENSUS_AT_LEVEL", "PARTS_NEEDED", "REORDER_POINT"],
  caution:
    "0 says that this level asks for none, not that none will fail: keep one of what stops the oxygen and is far away. Parts in contact with oxygen must be the maker's, clean for oxygen service and sealed.",
};
