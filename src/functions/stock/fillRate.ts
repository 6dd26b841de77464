import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { expectedShortage } from "../../models/stock";

export const args = cellArguments({
  order_quantity: sameUnit.positive(),
  reorder_point: sameUnit,
  mean_lead_demand: sameUnit.positive(),
  sd_lead_demand: sameUnit,
});

/**
 * Share of all demand that is met from stock, when ordering a fixed amount at a reorder point. Any one unit will do.
 *
 * @customfunction FILL_RATE
 * @param order_quantity Amount of one order, in any one unit
 * @param reorder_point Stock at which the order goes out, in the same unit
 * @param mean_lead_demand Demand of the whole lead time, on average, in the same unit
 * @param sd_lead_demand Standard deviation of the demand of the whole lead time, in the same unit
 * @returns Share of demand met from stock
 */
export function fillRate(
  order_quantity: any[][],
  reorder_point: any[][],
  mean_lead_demand: any[][],
  sd_lead_demand: any[][],
): any[][] {
  return eachCell(args, [order_quantity, reorder_point, mean_lead_demand, sd_lead_demand], (given) => {
    const short = expectedShortage(given.reorder_point, given.mean_lead_demand, given.sd_lead_demand);
    return Math.max(0, 1 - short / given.order_quantity);
  });
}

export const about: About = {
  gives: "fraction",
  rule: "1 − expected shortage of a lead time / order quantity, never below 0",
  range: `Order quantity and mean above 0, sd 0 or more; demand of the lead time taken as normal. Orders that are small against the spread overlap, and then the rule says too little. ${blankAsZero}`,
  source:
    "Chopra & Meindl, Supply Chain Management, ch. 11 (text from memory, the solution sheet of its exercise 11-4 read)",
  examples: [
    {
      formula: "=OXYGEN.FILL_RATE(1000,600,500,212.13)",
      result: 0.96,
      tolerance: 0.005,
      source: "Chopra & Meindl, exercise 11-4, solution sheet",
    },
  ],
  seeAlso: ["EXPECTED_SHORTAGE", "REORDER_POINT", "SAFETY_STOCK"],
  caution: "A share of demand met hides who went without: for oxygen look at STOCK_OUT_CHANCE first.",
};
