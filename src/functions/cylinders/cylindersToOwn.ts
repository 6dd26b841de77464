import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days, number } from "../../arguments/quantity";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { mostMean } from "../../models/counts";
import { cylindersToOwn as toOwn, meanAway } from "../../models/cylinderUse";

export const args = cellArguments({
  used_per_day: number.between(0, mostMean),
  turnaround_days: days,
  level: serviceLevel,
  in_use: number.between(0, mostMean).default(defaults.in_use).as("count"),
});

/**
 * Cylinders to own so that a full one is at hand at a given level: those away for filling, and those in use.
 *
 * @customfunction CYLINDERS_TO_OWN
 * @param used_per_day Cylinders emptied a day, on average
 * @param turnaround_days Days from empty until back and full: waiting, carrying, filling and testing [days]
 * @param level Share of time in which the full ones are enough, above 0 and under 1
 * @param [in_use] Cylinders connected to patients and manifolds
 * @returns Cylinders to own
 */
export function cylindersToOwn(
  used_per_day: any[][],
  turnaround_days: any[][],
  level: any[][],
  in_use?: any[][],
): any[][] {
  return eachCell(args, [used_per_day, turnaround_days, level, in_use], (given) => {
    const refused = refuseLevel(given.level);
    if (refused) return refused;
    const mean = meanAway(given.used_per_day, given.turnaround_days);
    if (mean > mostMean) {
      return invalid(
        `used_per_day ${formatNumber(given.used_per_day)} × turnaround_days ${formatNumber(given.turnaround_days)} is ${formatNumber(mean)} cylinders away; at most ${mostMean} are reckoned here`,
      );
    }
    return toOwn(given.used_per_day, given.turnaround_days, given.level, given.in_use);
  });
}

export const about: About = {
  gives: "count",
  rule: "least n with P(N ≤ n) ≥ level, N Poisson of used per day × turnaround days, and the cylinders in use, rounded up",
  range: `Used per day and in use 0 or more; used per day × turnaround up to a million, exact. Cylinders are used one by one and sent off at once; where they go and come by the truckload, or a surge uses many at once, it takes more: count the days between two trucks into the turnaround. Those out of date, lost or damaged come on top. ${blankAsZero}`,
  source:
    "Palm's theorem: Carrillo, Extensions of Palm's theorem: a review, Management Science 37(6) (1991) 739 (abstract read)",
  examples: [
    {
      formula: "=OXYGEN.CYLINDERS_TO_OWN(2,2,95%)",
      result: 8,
      source: "cumulative Poisson tables, mean 4: P(≤ 7) = 0.9489, P(≤ 8) = 0.9786",
    },
    {
      formula: "=OXYGEN.CYLINDERS_TO_OWN(3.5,5,99%,6.5)",
      result: 35,
      note: "28 away and 7 in use",
      source: "Poisson of mean 17.5 by SciPy: P(≤ 27) = 0.9875, P(≤ 28) = 0.9928",
    },
    {
      formula: '=OXYGEN.CYLINDERS_TO_OWN(6,"96 h",0.95)',
      result: 32,
      source: "Poisson of mean 24 by SciPy: P(≤ 31) = 0.9322, P(≤ 32) = 0.9533",
    },
    {
      formula: "=OXYGEN.CYLINDERS_TO_OWN(0,5,0.95,4)",
      result: 4,
      note: "None is emptied: those in use alone",
      source: "The rule stated",
    },
  ],
  seeAlso: ["CYLINDERS_NEEDED", "CYLINDERS_PER_DAY", "SPARES_TO_KEEP", "CENSUS_AT_LEVEL"],
  caution:
    "A level is a share of time on average, not a promise: what is left has its days without a full cylinder. Keep an emergency stock apart from these, and in date.",
};
