import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { formatNumber } from "../../arguments/argument";
import { sameUnit } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { noAnswer } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { orderQuantity as wholeLots } from "../../models/stock";

export const args = cellArguments({
  on_hand: sameUnit,
  on_order: sameUnit,
  up_to: sameUnit,
  lot: sameUnit.positive().default(defaults.lot),
  room: sameUnit.mayBeOmitted(),
});

/**
 * What to order now: whole lots up to the wanted stock, but no more than still fits. Any one unit will do.
 *
 * @customfunction ORDER_QUANTITY
 * @param on_hand What is there, in any one unit
 * @param on_order What is ordered and has not come, in the same unit
 * @param up_to Stock to order up to, in the same unit
 * @param [lot] Size of one lot, in the same unit
 * @param [room] What still fits now beside what is there and on order, in the same unit; no limit if omitted
 * @returns Amount to order, in the same unit
 */
export function orderQuantity(
  on_hand: any[][],
  on_order: any[][],
  up_to: any[][],
  lot?: any[][],
  room?: any[][],
): any[][] {
  return eachCell(args, [on_hand, on_order, up_to, lot, room], (given) => {
    const missing = given.up_to - given.on_hand - given.on_order;
    const order = wholeLots(missing, given.lot, given.room);
    if (order > 0 || !exceeds(given.up_to, given.on_hand + given.on_order)) return order;
    return noAnswer(
      `${formatNumber(missing)} is needed and not one lot of ${formatNumber(given.lot)} fits in the room of ${formatNumber(given.room!)}; make room or order a smaller lot`,
    );
  });
}

export const about: About = {
  gives: "amount",
  rule: "up to − on hand − on order, in whole lots rounded up; then cut down to the whole lots that fit in the room",
  range: `Amounts 0 or more in one unit; 0 only when nothing is missing; when something is and not one lot fits it is #N/A with the amount. Room is what still fits, not the size of the whole store. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    { formula: "=OXYGEN.ORDER_QUANTITY(118,0,330)", result: 212, source: "330 − 118" },
    {
      formula: "=OXYGEN.ORDER_QUANTITY(118,40,330,50)",
      result: 200,
      note: "172 are missing: four lots of 50",
      source: "172 / 50 = 3.44, up to 4 lots",
    },
    {
      formula: "=OXYGEN.ORDER_QUANTITY(118,40,330,50,180)",
      result: 150,
      note: "Only three lots fit",
      source: "180 / 50 = 3.6, down to 3 lots",
    },
    {
      formula: "=OXYGEN.ORDER_QUANTITY(118,40,330,50,30)",
      result: { error: "#N/A", words: "172 is needed and not one lot of 50 fits" },
      note: "No room for a lot is no reason for calm",
    },
  ],
  seeAlso: ["ORDER_UP_TO", "REORDER_POINT", "ECONOMIC_ORDER", "STOCK_LEVELS"],
};
