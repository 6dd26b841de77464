import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { expectedShortage as normalLoss } from "../../models/stock";

export const args = cellArguments({
  reorder_point: sameUnit,
  mean_lead_demand: sameUnit.positive(),
  sd_lead_demand: sameUnit,
});

/**
 * Demand that is short in one lead time, on average, when ordering at a reorder point. Any one unit will do.
 *
 * @customfunction EXPECTED_SHORTAGE
 * @param reorder_point Stock at which the order goes out, in any one unit
 * @param mean_lead_demand Demand of the whole lead time, on average, in the same unit
 * @param sd_lead_demand Standard deviation of the demand of the whole lead time, in the same unit
 * @returns Shortage of one lead time, on average, in the same unit
 */
export function expectedShortage(reorder_point: any[][], mean_lead_demand: any[][], sd_lead_demand: any[][]): any[][] {
  return eachCell(args, [reorder_point, mean_lead_demand, sd_lead_demand], (given) =>
    normalLoss(given.reorder_point, given.mean_lead_demand, given.sd_lead_demand),
  );
}

export const about: About = {
  gives: "amount",
  rule: "sd × (φ(z) − z × (1 − Φ(z))), z = (reorder point − mean) / sd",
  range: `Mean above 0, sd 0 or more; demand of the lead time taken as normal. Far above the mean it is 0. With sd 0 it is what the mean exceeds the reorder point by. ${blankAsZero}`,
  source:
    "Normal loss function: Chopra & Meindl, Supply Chain Management, ch. 11; Nahmias, Production and Operations Analysis, ch. 5 (both from memory); standard tables",
  examples: [
    { formula: "=OXYGEN.EXPECTED_SHORTAGE(92,100,0)", result: 8, note: "Perfectly steady demand", source: "100 − 92" },
    { formula: "=OXYGEN.EXPECTED_SHORTAGE(100,100,10)", result: 3.9894228, tolerance: 1e-7, source: "10/√(2π)" },
    {
      formula: "=OXYGEN.EXPECTED_SHORTAGE(110,100,10)",
      result: 0.8332,
      tolerance: 2e-4,
      source: "standard tables of the unit normal loss: L(1) = 0.08332",
    },
    {
      formula: "=OXYGEN.EXPECTED_SHORTAGE(6000,5000,707.1)",
      result: 25.1,
      tolerance: 0.15,
      source: "Chopra & Meindl, ch. 11 example (the book prints 25 from tables); from memory",
    },
  ],
  seeAlso: ["FILL_RATE", "REORDER_POINT", "STOCK_OUT_CHANCE"],
  caution: "An average over many lead times: a single shortage is far larger, and behind it are patients.",
};
