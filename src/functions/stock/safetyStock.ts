import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero, stockOfLiquid } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days, sameUnit } from "../../arguments/quantity";
import { refuseSafetyLevel, serviceLevel } from "../../arguments/serviceLevel";
import { safetyStock as spreadStock } from "../../models/stock";

export const args = cellArguments({
  mean: sameUnit.positive(),
  sd: sameUnit,
  lead_days: days.positive(),
  level: serviceLevel,
  lead_sd: days.default(defaults.lead_sd),
});

/**
 * Stock to hold beyond the mean demand of the lead time, so that most lead times don't run out. Any one unit will do.
 *
 * @customfunction SAFETY_STOCK
 * @param mean Demand of a day, on average, in any one unit
 * @param sd Standard deviation of a day's demand, in the same unit
 * @param lead_days Days from ordering to having it, on average [days]
 * @param level Share of lead times without running out, from 0.5 to under 1
 * @param [lead_sd] Standard deviation of the lead time [days]
 * @returns Safety stock, in the same unit
 */
export function safetyStock(
  mean: any[][],
  sd: any[][],
  lead_days: any[][],
  level: any[][],
  lead_sd?: any[][],
): any[][] {
  return eachCell(
    args,
    [mean, sd, lead_days, level, lead_sd],
    (given) =>
      refuseSafetyLevel(given.level) ?? spreadStock(given.mean, given.sd, given.lead_days, given.level, given.lead_sd),
  );
}

export const about: About = {
  gives: "amount",
  rule: "z × √(lead days × sd² + mean² × lead sd²), z the normal quantile of the level",
  range: `Mean and lead days above 0, sd 0 or more (a steady log has 0); level from 0.5 to under 1. Days are independent and their sum is taken as normal: with a lead of a few days and a ragged demand the true need is higher. Level is the share of lead times, not of demand (FILL_RATE). ${stockOfLiquid} ${blankAsZero}`,
  source:
    "Taylor, Introduction to Management Science, ch. 16 (variable demand); Heizer & Render, Operations Management, ch. 12 (variable lead time); read in their worked examples. Both at once: Silver, Pyke and Peterson (from memory)",
  examples: [
    {
      formula: "=OXYGEN.SAFETY_STOCK(30,5,10,95%)",
      result: 26.007,
      tolerance: 0.001,
      source: "Taylor, carpet example: 5 × √10 × z; the book's z of 1.65 gives 26.1",
    },
    {
      formula: "=OXYGEN.SAFETY_STOCK(50,5,1,97%)",
      result: 9.4,
      tolerance: 0.01,
      source: "Stevenson, Operations Management, ch. 12 example 8: 1.88 × 5",
    },
    {
      formula: "=OXYGEN.SAFETY_STOCK(6,2,16,0.841344746,1)",
      result: 10,
      tolerance: 0.00001,
      note: "A lead time that varies by a day",
      source: "normal tables: Φ(1) = 0.841344746; √(16 × 2² + 6² × 1²)",
    },
  ],
  seeAlso: ["REORDER_POINT", "ORDER_UP_TO", "STOCK_LEVELS", "DEMAND_FROM_LOG"],
  caution:
    "It covers ordinary spread only, not a failed plant, a closed road or an outbreak: keep an emergency reserve besides.",
};
