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
  review_days: days,
  level: serviceLevel,
  lead_sd: days.default(defaults.lead_sd),
});

/**
 * Stock to order up to when it is looked at every few days: it lasts until the order after this one arrives. Any one
 * unit will do.
 *
 * @customfunction ORDER_UP_TO
 * @param mean Demand of a day, on average, in any one unit
 * @param sd Standard deviation of a day's demand, in the same unit
 * @param lead_days Days from ordering to having it, on average [days]
 * @param review_days Days from one look to the next [days]
 * @param level Share of cycles without running out, from 0.5 to under 1
 * @param [lead_sd] Standard deviation of the lead time [days]
 * @returns Stock on hand and on order to bring it up to, in the same unit
 */
export function orderUpTo(
  mean: any[][],
  sd: any[][],
  lead_days: any[][],
  review_days: any[][],
  level: any[][],
  lead_sd?: any[][],
): any[][] {
  return eachCell(
    args,
    [mean, sd, lead_days, review_days, level, lead_sd],
    (given) =>
      refuseSafetyLevel(given.level) ??
      stockTarget(given.mean, given.sd, given.lead_days + given.review_days, given.level, given.lead_sd),
  );
}

export const about: About = {
  gives: "amount",
  rule: "mean × (lead + review days) + z × √((lead + review days) × sd² + mean² × lead sd²)",
  range: `Mean and lead days above 0, sd 0 or more (a steady log has 0); review days 0 or more (0 gives the reorder point); level from 0.5 to under 1. ${stockOfLiquid} ${blankAsZero}`,
  source:
    "Periodic review: Silver, Pyke and Peterson, Inventory Management and Production Planning and Scheduling, ch. 7 (from memory)",
  examples: [
    {
      formula: "=OXYGEN.ORDER_UP_TO(7,4.71495167,3,10,90%)",
      result: 112.79,
      tolerance: 0.01,
      source:
        "Bozarth & Handfield, toffee exercise of ch. 11 (inputs read: 91 and 17 over the 13 days; 91 + 1.28155 × 17 computed)",
    },
    {
      formula: "=OXYGEN.ORDER_UP_TO(30,5,10,0,95%)",
      result: 326.007,
      tolerance: 0.001,
      source: "Taylor, Introduction to Management Science, carpet example",
      note: "Without a review time it is the reorder point",
    },
    {
      formula: "=OXYGEN.ORDER_UP_TO(6,2,9,7,0.841344746,1)",
      result: 106,
      tolerance: 0.00001,
      note: "A lead time that varies by a day",
      source: "normal tables: Φ(1) = 0.841344746; 6 × 16 + √(16 × 2² + 6² × 1²)",
    },
  ],
  seeAlso: ["REORDER_POINT", "ORDER_QUANTITY", "SAFETY_STOCK", "STOCK_LEVELS"],
  caution:
    "It covers ordinary spread only, not a failed plant, a closed road or an outbreak: keep an emergency reserve besides.",
};
