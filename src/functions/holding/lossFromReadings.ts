import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { dateTime } from "../../arguments/date";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { fitStraightLine } from "../../models/leastSquares";

export const args = tableArguments({
  times: column(dateTime),
  levels: column(sameUnit),
});

/**
 * Standing loss of a vessel from its own readings: a straight line through levels or weights taken at several times,
 * with nothing filled or drawn in between.
 *
 * @customfunction LOSS_FROM_READINGS
 * @param times When each reading was taken, one column or one row [date-time]
 * @param levels Level or weight at each of these times, all in one unit
 * @returns Table of one row: loss a day in the unit of the levels, its standard error, r² of the line
 */
export function lossFromReadings(times: any[][], levels: any[][]): any[][] {
  return wholeTable(args, [times, levels], (given) => {
    const unequal = sameLength({ times: given.times, levels: given.levels });
    if (unequal) return unequal;
    const line = fitStraightLine(given.times, given.levels);
    if (!line)
      return invalid("times has fewer than two different times; enter two readings or more, best over several days");
    return [
      ["loss/day", "standard error", "r²"],
      [-line.slope, line.slopeError ?? "", line.rSquared ?? ""],
    ];
  });
}

export const about: About = {
  gives: ["amount", "amount", "fraction"],
  rule: "loss/day = −slope of the least-squares line of levels over times",
  range:
    "Two readings or more at two times or more, in any order; a blank cell or lists of unequal length are #VALUE!. Two readings leave the standard error empty, equal levels the r². A negative loss means that the vessel gained. Weigh at the same pressure each time; the twofold standard error is about the 95 % margin with many readings and too small with few.",
  source:
    "Least squares, NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1; agrees with the certified values of NIST StRD, data set Norris",
  examples: [
    {
      formula: '=OXYGEN.LOSS_FROM_READINGS({"2026-03-02";"2026-03-03";"2026-03-05"},{40;36;28})',
      result: [
        ["loss/day", "standard error", "r²"],
        [4, 0, 1],
      ],
      tolerance: 1e-9,
      source: "By hand: 4 L fewer each day, on a straight line",
    },
    {
      formula: '=OXYGEN.LOSS_FROM_READINGS({"2026-03-02";"2026-03-03";"2026-03-04"},{10;7;6})',
      result: [
        ["loss/day", "standard error", "r²"],
        [2, 0.577350269, 0.923076923],
      ],
      tolerance: 1e-8,
      source: "By hand: Sxx 2, Sxy −4, Syy 26/3, SSE 2/3: slope −2, s² 2/3, standard error √(1/3), r² 1 − (2/3)/(26/3)",
    },
    {
      formula: '=OXYGEN.LOSS_FROM_READINGS({"2026-03-02 06:00";"2026-03-02 18:00"},{31;29})',
      result: [
        ["loss/day", "standard error", "r²"],
        [4, "", 1],
      ],
      note: "Two readings in half a day: no standard error",
      source: "By hand: 2 L in half a day",
    },
  ],
  seeAlso: ["DAILY_LOSS", "HEAT_LEAK", "LEVEL_FROM_WEIGHT", "DAYS_UNTIL_EMPTY"],
  caution:
    "A loss that grows, or frost on the outside, may be a failing vacuum: take the vessel out of use and ask the maker or a licensed service.",
};
