import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { daysOfSupply as daysLeft } from "../../models/stock";

export const args = cellArguments({
  stock: sameUnit,
  daily_use: sameUnit,
  daily_loss: sameUnit,
  keep: sameUnit.default(defaults.keep),
});

/**
 * Days until a stock is down to what must be kept, at an even use. Any one unit will do: litres, cylinders, kilograms.
 *
 * @customfunction DAYS_OF_SUPPLY
 * @param stock What is there now, in any one unit
 * @param daily_use What is taken out a day, in the same unit; of liquid as drawn (GROSS_DRAW), not as filled
 * @param daily_loss What is lost a day, in the same unit; 0 for cylinders, DAILY_LOSS for a vessel of liquid
 * @param [keep] What must not be used, in the same unit
 * @returns Days until only the kept amount is left [days]
 */
export function daysOfSupply(stock: any[][], daily_use: any[][], daily_loss: any[][], keep?: any[][]): any[][] {
  return eachCell(args, [stock, daily_use, daily_loss, keep], (given) =>
    given.daily_use + given.daily_loss === 0
      ? invalid("daily_use and daily_loss are both 0, so the stock never runs down; enter what is used or lost a day")
      : daysLeft(given.stock, given.daily_use, given.daily_loss, given.keep),
  );
}

export const about: About = {
  gives: "days",
  rule: "(stock − keep) / (daily use + daily loss), 0 when the stock is not above what is kept",
  range: `All amounts 0 or more and in one unit; without use and loss it is #VALUE!. Use and loss are the same every day; for needs that change use DAYS_COVERED. Liquid boils away and a fill draws more than it leaves: for a vessel take DAYS_UNTIL_EMPTY, or give the gross use and the daily loss here. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DAYS_OF_SUPPLY(54,4.5,0)",
      result: 12,
      note: "Cylinders lose nothing: 54 / 4.5",
      source: "54 / 4.5",
    },
    {
      formula: "=OXYGEN.DAYS_OF_SUPPLY(66,6.25,8.25)",
      result: 66 / 14.5,
      note: "Liquid: 5 L filled a day draw 6.25, and 66/8 = 8.25 L a day boil away; without them it would look like 13 days",
      source: "66 / (6.25 + 8.25)",
    },
    {
      formula: "=OXYGEN.DAYS_OF_SUPPLY(630,45,8,100)",
      result: 10,
      note: "100 stay as reserve",
      source: "(630 − 100) / (45 + 8)",
    },
    {
      formula: "=OXYGEN.DAYS_OF_SUPPLY(80,45,5,100)",
      result: 0,
      note: "Already below the reserve",
      source: "80 is not above 100",
    },
    {
      formula: "=OXYGEN.DAYS_OF_SUPPLY(630,0,0)",
      result: { error: "#VALUE!", words: "never runs down" },
      note: "No use and no loss",
    },
  ],
  seeAlso: ["STOCK_OUT_ON", "DAYS_UNTIL_EMPTY", "GROSS_DRAW", "DAYS_COVERED", "REORDER_POINT", "STOCK_OUT_CHANCE"],
  caution: "An average day says nothing about the worst one: keep a reserve and count the stock, don't infer it.",
};
