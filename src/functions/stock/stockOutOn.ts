import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { dateCell, invalid, noAnswer } from "../../cells/cellValues";
import { lastDay } from "../../models/calendar";
import { daysOfSupply } from "../../models/stock";
import { cutDownThings } from "../../models/wholeNumbers";

export const args = cellArguments({
  as_of: date,
  stock: sameUnit,
  daily_use: sameUnit,
  daily_loss: sameUnit,
  keep: sameUnit.default(defaults.keep),
});

/**
 * Day on which a stock is down to what must be kept, at an even use. Any one unit will do: litres, cylinders, kilograms.
 *
 * @customfunction STOCK_OUT_ON
 * @param as_of Day of the count, before that day's use [date]
 * @param stock What is there then, in any one unit
 * @param daily_use What is taken out a day, in the same unit; of liquid as drawn (GROSS_DRAW), not as filled
 * @param daily_loss What is lost a day, in the same unit; 0 for cylinders, DAILY_LOSS for a vessel of liquid
 * @param [keep] What must not be used, in the same unit
 * @returns Day on which only the kept amount is left, cut down to the whole day [date]
 */
export function stockOutOn(
  as_of: any[][],
  stock: any[][],
  daily_use: any[][],
  daily_loss: any[][],
  keep?: any[][],
): any[][] {
  return eachCell(args, [as_of, stock, daily_use, daily_loss, keep], (given) => {
    if (given.daily_use + given.daily_loss === 0) {
      return invalid(
        "daily_use and daily_loss are both 0, so the stock never runs down; enter what is used or lost a day",
      );
    }
    const day = given.as_of + cutDownThings(daysOfSupply(given.stock, given.daily_use, given.daily_loss, given.keep));
    return day <= lastDay ? dateCell(day) : noAnswer("the stock lasts beyond the year 9999, the last that Excel dates");
  });
}

export const about: About = {
  gives: "date",
  rule: "as of + (stock − keep) / (daily use + daily loss), cut down to the whole day",
  range: `All amounts 0 or more and in one unit; a stock not above what is kept answers the day of the count; without use and loss it is #VALUE!, beyond the year 9999 #N/A. For a vessel of liquid take EMPTY_ON, or give the gross use (GROSS_DRAW) and the daily loss here. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: '=OXYGEN.STOCK_OUT_ON("2026-03-01",630,45,8,100)',
      result: 46092,
      note: "Ten days on: 11 March 2026",
      source: "46082, 1 March 2026, + (630 − 100) / (45 + 8)",
    },
    {
      formula: "=OXYGEN.STOCK_OUT_ON(46082,130,50,0)",
      result: 46084,
      note: "2.6 days are cut down to 2",
      source: "46082 + 130 / 50, cut down",
    },
  ],
  seeAlso: ["DAYS_OF_SUPPLY", "EMPTY_ON", "GROSS_DRAW", "FIRST_SHORT_DATE", "DAYS_COVERED"],
  caution: "An average day says nothing about the worst one: order well before this day, by the reorder point.",
};
