import type { About } from "../../arguments/about";
import { DailyAmountsArgument, column } from "../../arguments/column";
import { date } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { amountEachDay, consecutiveDays } from "../../arguments/planArguments";
import { sameUnit } from "../../arguments/quantity";
import { CellError, dateCell, invalid, noAnswer } from "../../cells/cellValues";
import { deliveries } from "../../models/coverage";

export const args = tableArguments({
  dates: column(date),
  needs: new DailyAmountsArgument(sameUnit),
  opening: sameUnit,
  batch: sameUnit.positive(),
  keep: sameUnit,
});

/**
 * Latest dates on which whole batches must come so that no day closes below what is to be kept. A delivery can be drawn
 * the day it comes. All amounts in one unit.
 *
 * @customfunction DELIVERY_DATES
 * @param dates Consecutive days, 1 to 2,000 of them [date]
 * @param needs Need of each day; two columns may give date or day number and need
 * @param opening Stock on the first morning
 * @param batch What one delivery brings
 * @param keep Least stock at the close of any day
 * @returns One row a day with a delivery: date, amount
 */
export function deliveryDates(
  dates: any[][],
  needs: any[][],
  opening: any[][],
  batch: any[][],
  keep: any[][],
): any[][] {
  return wholeTable(args, [dates, needs, opening, batch, keep], (given) => {
    const gap = consecutiveDays(given.dates, "dates");
    if (gap) return gap;
    const amounts = amountEachDay(given.needs, given.dates, "needs");
    if (amounts instanceof CellError) return amounts;
    if (!Number.isFinite(amounts.reduce((sum, need) => sum + need, given.keep) / given.batch)) {
      return invalid("needs or keep is too large for this batch; check their units");
    }
    const found = deliveries(amounts, given.opening, given.batch, given.keep);
    if (found.length === 0) return noAnswer("no delivery is needed in these dates");
    return [
      ["date", "amount"],
      ...found.map(({ day, batches }) => [dateCell(given.dates[day]!), batches * given.batch]),
    ];
  });
}

export const about: About = {
  rule: "deliver on the first day whose closing would fall below keep, as many whole batches as bring it back",
  range:
    "Consecutive dates, 1 to 2,000; batch above 0. No delivery needed is #N/A. Standing loss is not counted, nor what is lost in filling: enter needs × draw ratio (GROSS_DRAW) with the loss added. Several batches of one day stand in one row, and room for them is not checked.",
  source: "Plain arithmetic; common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.DELIVERY_DATES({"2026-03-01";"2026-03-02";"2026-03-03";"2026-03-04"},{30;30;30;30},70,50,10)',
      result: [
        ["date", "amount"],
        [46084, 50],
        [46085, 50],
      ],
      note: "Closing 40, then 10; the third day would close at −20 and needs a batch, the fourth at 0, below the 10 to keep",
    },
    {
      formula: '=OXYGEN.DELIVERY_DATES({"2026-03-01";"2026-03-02"},{30;130},70,50,0)',
      result: [
        ["date", "amount"],
        [46083, 100],
      ],
      note: "90 are missing on the second day: two batches",
    },
  ],
  seeAlso: ["GROSS_DRAW", "STOCK_PLAN", "DAYS_COVERED", "REORDER_POINT", "ORDER_QUANTITY"],
  caution:
    "These are the latest dates, with no day to spare for a late lorry or a surge: keep a reserve and order earlier.",
};
