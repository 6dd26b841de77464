import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { days, sameUnit } from "../../arguments/quantity";

export const args = cellArguments({
  arrivals: sameUnit,
  stay: days,
});

/**
 * Patients who are there on average, from how many come and how long they stay.
 *
 * @customfunction AVERAGE_CENSUS
 * @param arrivals Patients who come a day, on average
 * @param stay Days that a patient stays, on average [days]
 * @returns Patients there at once, on average
 */
export function averageCensus(arrivals: any[][], stay: any[][]): any[][] {
  return eachCell(args, [arrivals, stay], (given) => given.arrivals * given.stay);
}

export const about: About = {
  gives: "mean patients",
  rule: "arrivals a day × mean stay in days (Little's law)",
  range: `0 or more; a long-run average. While an outbreak grows or fades the census lags behind it: OUTBREAK_CENSUS. ${blankAsZero}`,
  source: "Little, J. D. C., A proof for the queuing formula L = λW, Operations Research 9 (1961) 383 (abstract read)",
  examples: [
    { formula: "=OXYGEN.AVERAGE_CENSUS(4.5,6)", result: 27, source: "4.5 × 6" },
    {
      formula: '=OXYGEN.AVERAGE_CENSUS(6,"36 h")',
      result: 9,
      note: "Six a day for a day and a half",
      source: "6 × 1.5",
    },
  ],
  seeAlso: ["OUTBREAK_CENSUS", "CENSUS_AT_LEVEL", "CENSUS_OVER_CHANCE", "TURNED_AWAY_SHARE"],
  caution:
    "On many days there are more patients than this, where there are many on almost every other day: plan places with CENSUS_AT_LEVEL.",
};
