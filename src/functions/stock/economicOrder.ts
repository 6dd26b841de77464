import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { economicOrder as squareRootRule } from "../../models/stock";

export const args = cellArguments({
  yearly_use: sameUnit,
  order_cost: sameUnit,
  holding_cost: sameUnit.positive(),
});

/**
 * Order size at which ordering and holding together cost least. Any one unit and any one money will do.
 *
 * @customfunction ECONOMIC_ORDER
 * @param yearly_use Use of a year, in any one unit
 * @param order_cost Cost of placing and moving one order, whatever its size, in any one money
 * @param holding_cost Cost of holding one unit for a year, in the same money
 * @returns Order size, in the same unit
 */
export function economicOrder(yearly_use: any[][], order_cost: any[][], holding_cost: any[][]): any[][] {
  return eachCell(args, [yearly_use, order_cost, holding_cost], (given) =>
    squareRootRule(given.yearly_use, given.order_cost, given.holding_cost),
  );
}

export const about: About = {
  gives: "amount",
  rule: "√(2 × yearly use × order cost / holding cost)",
  range: `Holding cost above 0; even use, no price breaks, no limit of room or of what a load carries. The cost is flat around the answer: round to whole loads. ${blankAsZero}`,
  source: "Harris, F. W., How many parts to make at once, Factory, The Magazine of Management 10 (1913) (from memory)",
  examples: [
    {
      formula: "=OXYGEN.ECONOMIC_ORDER(200,50,2)",
      result: 100,
      source: "Nahmias, Production and Operations Analysis, ch. 5, mustard example; from memory",
    },
    { formula: "=OXYGEN.ECONOMIC_ORDER(1000,10,2)", result: 100, source: "√(2 × 1000 × 10 / 2), a teaching exercise" },
  ],
  seeAlso: ["ORDER_QUANTITY", "REORDER_POINT", "FILL_RATE"],
  caution: "Least cost is not least risk: the reserve comes first.",
};
