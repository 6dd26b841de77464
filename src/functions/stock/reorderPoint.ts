import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero, stockOfLiquid } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days, sameUnit } from "../../arguments/quantity";
import { refuseSafetyLevel, serviceLevel } from "../../arguments/serviceLevel";
import { stockTarget } from "../../models/stock";

export const args = cellArguments({
  mean: sameUnit.positive(),
  sd: sameUnit,
  lead_days: days.positive(),
  level: serviceLevel,
  lead_sd: days.default(defaults.lead_sd),
});

/**
 * Stock at which to order again: the mean demand of the lead time plus the safety stock. Any one unit will do.
 *
 * @customfunction REORDER_POINT
 * @param mean Demand of a day, on average, in any one unit
 * @param sd Standard deviation of a day's demand, in the same unit
 * @param lead_days Days from ordering to having it, on average [days]
 * @param level Share of lead times without running out, from 0.5 to under 1
 * @param [lead_sd] Standard deviation of the lead time [days]
 * @returns Stock on hand and on order at which to order, in the same unit
 */
export function reorderPoint(
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
      refuseSafetyLevel(given.level) ?? stockTarget(given.mean, given.sd, given.lead_days, given.level, given.lead_sd),
  );
}

export const about: About = {
  gives: "amount",
  rule: "mean × lead days + safety stock",
  range: `Mean and lead days above 0, sd 0 or more (a steady log has 0); level from 0.5 to under 1. The stock is watched all the time; where it is looked at every few days only, use ORDER_UP_TO. ${stockOfLiquid} ${blankAsZero}`,
  source:
    "Taylor, Introduction to Management Science, ch. 16; Heizer & Render, Operations Management, ch. 12; read in their worked examples",
  examples: [
    {
      formula: "=OXYGEN.REORDER_POINT(30,5,10,95%)",
      result: 326.007,
      tolerance: 0.001,
      source: "Taylor, carpet example: 30 × 10 + 1.6449 × 5 × √10; the book's z of 1.65 gives 326.1",
    },
    {
      formula: "=OXYGEN.REORDER_POINT(50,5,1,97%)",
      result: 59.4,
      tolerance: 0.01,
      source: "Stevenson, Operations Management, ch. 12 example 8",
    },
    {
      formula: "=OXYGEN.REORDER_POINT(6,2,16,0.841344746,1)",
      result: 106,
      tolerance: 0.00001,
      note: "A lead time that varies by a day",
      source: "normal tables: Φ(1) = 0.841344746; 6 × 16 + √(16 × 2² + 6² × 1²)",
    },
  ],
  seeAlso: ["SAFETY_STOCK", "ORDER_UP_TO", "ORDER_QUANTITY", "STOCK_LEVELS"],
  caution:
    "It covers ordinary spread only, not a failed plant, a closed road or an outbreak: keep an emergency reserve besides.",
};
