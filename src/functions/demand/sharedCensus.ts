import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, number } from "../../arguments/quantity";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { binomial, countAtLevel, mostMean } from "../../models/counts";

export const args = cellArguments({
  patients: number.between(0, mostMean).whole().as("patients"),
  share: fraction,
  level: serviceLevel,
});

/**
 * How many of a known number of patients need oxygen at once, so that a given share of the time there are no more.
 *
 * @customfunction SHARED_CENSUS
 * @param patients Patients or beds in all
 * @param share Share of them on oxygen at a time, on average
 * @param level Share of the time that the answer is enough, above 0 and under 1
 * @returns Patients on oxygen at once, the least number that is enough
 */
export function sharedCensus(patients: any[][], share: any[][], level: any[][]): any[][] {
  return eachCell(
    args,
    [patients, share, level],
    (given) => refuseLevel(given.level) ?? countAtLevel(binomial(given.patients, given.share), given.level),
  );
}

export const about: About = {
  gives: "patients",
  rule: "least k with P(K ≤ k) ≥ level, K binomial of patients and share",
  range: `Whole patients, up to a million; share 0 to 1; exact, without the normal short-cut. Patients need it independently of each other; where one cause affects all, plan for all. ${blankAsZero}`,
  source:
    "Binomial distribution: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.18 (section number from memory)",
  examples: [
    {
      formula: "=OXYGEN.SHARED_CENSUS(20,25%,95%)",
      result: 8,
      source: "binomial tables: P(≤ 7) = 0.8982, P(≤ 8) = 0.9591",
    },
    { formula: "=OXYGEN.SHARED_CENSUS(2,0.5,0.7)", result: 1, source: "Two coins: P(≤ 0) = 1/4, P(≤ 1) = 3/4" },
  ],
  seeAlso: ["CENSUS_AT_LEVEL", "DESIGN_FLOW", "ENOUGH_UNITS_CHANCE"],
  caution: "A planning figure; the clinician decides who is on oxygen.",
};
