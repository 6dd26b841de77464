import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero, stockOfLiquid } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days as dayCount, sameUnit } from "../../arguments/quantity";
import { stockOutChance as chanceShort } from "../../models/stock";

export const args = cellArguments({
  stock: sameUnit,
  mean: sameUnit.positive(),
  sd: sameUnit,
  days: dayCount,
  days_sd: dayCount.default(defaults.days_sd),
});

/**
 * Chance that a stock doesn't last for a number of days. Any one unit will do.
 *
 * @customfunction STOCK_OUT_CHANCE
 * @param stock What is there, in any one unit
 * @param mean Demand of a day, on average, in the same unit
 * @param sd Standard deviation of a day's demand, in the same unit
 * @param days Days it has to last, on average [days]
 * @param [days_sd] Standard deviation of those days [days]
 * @returns Chance of running out
 */
export function stockOutChance(stock: any[][], mean: any[][], sd: any[][], days: any[][], days_sd?: any[][]): any[][] {
  return eachCell(args, [stock, mean, sd, days, days_sd], (given) =>
    chanceShort(given.stock, given.mean, given.sd, given.days, given.days_sd),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "1 − Φ((stock − mean × days) / √(days × sd² + mean² × days sd²))",
  range: `Mean above 0, sd 0 or more (a steady log has 0); the demand of the days together is taken as normal and the days as independent. In an outbreak days are alike and the true chance is higher. ${stockOfLiquid} ${blankAsZero}`,
  source:
    "Chopra & Meindl, Supply Chain Management, ch. 11 (cycle service level is one minus this; text from memory, the solution sheet of exercise 11-4 read)",
  examples: [
    { formula: "=OXYGEN.STOCK_OUT_CHANCE(300,30,5,10)", result: 0.5, note: "Just the mean", source: "300 = 30 × 10" },
    {
      formula: "=OXYGEN.STOCK_OUT_CHANCE(600,250,150,2)",
      result: 0.32,
      tolerance: 0.005,
      source:
        "Chopra & Meindl, exercise 11-4: mean 500 and sd 212.13 over the lead time give a cycle service level of 0.68",
    },
    {
      formula: "=OXYGEN.STOCK_OUT_CHANCE(106,6,2,16,1)",
      result: 0.158655254,
      tolerance: 0.0000001,
      note: "The number of days varies too",
      source: "normal tables: Φ(1) = 0.841344746; 106 is √(16 × 2² + 6² × 1²) above 6 × 16",
    },
  ],
  seeAlso: ["SAFETY_STOCK", "REORDER_POINT", "EXPECTED_SHORTAGE", "FILL_RATE"],
  caution: "It covers ordinary spread only, not a failed plant, a closed road or an outbreak.",
};
