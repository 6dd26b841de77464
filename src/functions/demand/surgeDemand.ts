import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { number, sameUnit } from "../../arguments/quantity";
import { surgeShare } from "../../models/demand";

const most = 10000;
const wholeDays = number.between(0, most).whole().as("days");

export const args = tableArguments({
  base: sameUnit,
  days: number.between(1, most).whole().as("days"),
  start_day: number.between(-most, most).whole(),
  factor: sameUnit,
  rise: wholeDays,
  hold: wholeDays,
  fall: wholeDays,
});

/**
 * Demand day by day through a surge that rises, holds and falls in straight lines. Any one unit will do.
 *
 * @customfunction SURGE_DEMAND
 * @param base Demand a day without the surge, in any one unit
 * @param days Days to list, 1 to 10000
 * @param start_day Number of the first day that is above the base, counting listed days from 1
 * @param factor Demand at the height of the surge, as a multiple of the base
 * @param rise Days of rising; on the last of them the full height is reached; 0 starts at full height
 * @param hold Days at full height after that
 * @param fall Days of falling; on the last of them demand is back at the base
 * @returns A row for each day: day, demand
 */
export function surgeDemand(
  base: any[][],
  days: any[][],
  start_day: any[][],
  factor: any[][],
  rise: any[][],
  hold: any[][],
  fall: any[][],
): any[][] {
  return wholeTable(args, [base, days, start_day, factor, rise, hold, fall], (given) => [
    ["day", "demand"],
    ...Array.from({ length: given.days }, (_, index) => {
      const share = surgeShare(index + 1, given.start_day, given.rise, given.hold, given.fall);
      return [index + 1, given.base * (1 + (given.factor - 1) * share)];
    }),
  ]);
}

export const about: About = {
  gives: ["count", "amount"],
  rule: "base × (1 + (factor − 1) × share of the way up); the start day is 1/rise of the way up",
  range: `Whole days, at most 10000; a start day of 0 or less means the surge began before the first listed day. A factor under 1 is a dip. ${blankAsZero}`,
  source: "own planning shape: straight ramps, no published curve",
  examples: [
    {
      formula: "=OXYGEN.SURGE_DEMAND(100,8,2,3,2,2,2)",
      result: [
        ["day", "demand"],
        [1, 100],
        [2, 200],
        [3, 300],
        [4, 300],
        [5, 300],
        [6, 200],
        [7, 100],
        [8, 100],
      ],
      note: "Threefold: two days up, two more at the height, two down",
      source: "100 × (1 + 2 × share), shares 0, 1/2, 1, 1, 1, 1/2, 0, 0",
    },
  ],
  seeAlso: ["DAILY_DEMAND", "DAYS_COVERED", "STOCK_PLAN", "DELIVERY_DATES"],
  caution: "A planning shape, not a forecast: try a higher factor and a longer hold before trusting a stock to it.",
};
