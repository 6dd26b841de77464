import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero, stockOfLiquid } from "../../arguments/whereCautionEnds";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { days, sameUnit } from "../../arguments/quantity";
import { refuseSafetyLevel, serviceLevel } from "../../arguments/serviceLevel";
import { safetyStock, stockTarget } from "../../models/stock";

export const args = tableArguments({
  mean: sameUnit.positive(),
  sd: sameUnit,
  lead_days: days.positive(),
  review_days: days,
  level: serviceLevel,
  emergency_days: days,
  lead_sd: days.default(defaults.lead_sd),
});

/**
 * The levels of a stock side by side: emergency, safety, reorder and order-up-to. Any one unit will do.
 *
 * @customfunction STOCK_LEVELS
 * @param mean Demand of a day, on average, in any one unit
 * @param sd Standard deviation of a day's demand, in the same unit
 * @param lead_days Days from ordering to having it, on average [days]
 * @param review_days Days from one look to the next [days]
 * @param level Share of cycles without running out, from 0.5 to under 1
 * @param emergency_days Days for which the emergency stock must last [days]
 * @param [lead_sd] Standard deviation of the lead time [days]
 * @returns Four rows: level, amount
 */
export function stockLevels(
  mean: any[][],
  sd: any[][],
  lead_days: any[][],
  review_days: any[][],
  level: any[][],
  emergency_days: any[][],
  lead_sd?: any[][],
): any[][] {
  return wholeTable(args, [mean, sd, lead_days, review_days, level, emergency_days, lead_sd], (given) => {
    const refused = refuseSafetyLevel(given.level);
    if (refused) return refused;
    const target = (over: number): number => stockTarget(given.mean, given.sd, over, given.level, given.lead_sd);
    return [
      ["level", "amount"],
      ["emergency", given.emergency_days * given.mean],
      ["safety", safetyStock(given.mean, given.sd, given.lead_days, given.level, given.lead_sd)],
      ["reorder", target(given.lead_days)],
      ["order up to", target(given.lead_days + given.review_days)],
    ];
  });
}

export const about: About = {
  gives: ["text", "amount"],
  rule: "emergency days × mean; SAFETY_STOCK; REORDER_POINT; ORDER_UP_TO",
  range: `As for those functions. The emergency amount is not in the other rows: where it must never be touched, add it to each of them. ${stockOfLiquid} ${blankAsZero}`,
  source: "Taylor, Introduction to Management Science, ch. 16; the emergency row is plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.STOCK_LEVELS(30,5,10,0,95%,3)",
      result: [
        ["level", "amount"],
        ["emergency", 90],
        ["safety", 26.007],
        ["reorder", 326.007],
        ["order up to", 326.007],
      ],
      tolerance: 0.001,
      source: "Taylor, carpet example with z = 1.644854; 3 × 30",
      note: "Watched all the time, so that the last two agree",
    },
    {
      formula: "=OXYGEN.STOCK_LEVELS(6,2,9,7,0.841344746,3,1)",
      result: [
        ["level", "amount"],
        ["emergency", 18],
        ["safety", Math.sqrt(72)],
        ["reorder", 54 + Math.sqrt(72)],
        ["order up to", 106],
      ],
      tolerance: 0.00001,
      note: "A lead time that varies by a day",
      source: "normal tables: Φ(1) = 0.841344746; √(9 × 2² + 6² × 1²) and 6 × 16 + √(16 × 2² + 6² × 1²)",
    },
  ],
  seeAlso: ["SAFETY_STOCK", "REORDER_POINT", "ORDER_UP_TO", "DEMAND_FROM_LOG"],
  caution:
    "Safety stock covers ordinary spread only; the emergency row is for a failed plant, a closed road or an outbreak.",
};
