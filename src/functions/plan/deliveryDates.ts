import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { DailyAmountsArgument, column } from "../../arguments/column";
import { date, isoDay } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { amountEachDay, consecutiveDays } from "../../arguments/planArguments";
import { sameUnit } from "../../arguments/quantity";
import { flag } from "../../arguments/text";
import { CellError, dateCell, invalid, noAnswer } from "../../cells/cellValues";
import { deliveries } from "../../models/coverage";
import { defaults } from "../../models/defaults";

export const args = tableArguments({
  dates: column(date),
  needs: new DailyAmountsArgument(sameUnit),
  opening: sameUnit,
  batch: sameUnit.positive(),
  keep: sameUnit,
  same_day: flag.default(defaults.same_day),
});

/**
 * Latest dates on which whole batches must come so that no day's use leaves less than is to be kept. A delivery counts
 * from the next morning, unless same_day is TRUE. All amounts in one unit.
 *
 * @customfunction DELIVERY_DATES
 * @param dates Consecutive days, 1 to 2,000 of them [date]
 * @param needs What is drawn each day, the daily loss in it; two columns may give date or day number and need
 * @param opening Stock on the first morning
 * @param batch What one delivery brings
 * @param keep Least stock after any day's use
 * @param [same_day] TRUE if a delivery can be used on the day it comes
 * @returns One row a day with a delivery: date, amount; the header alone when none is needed
 */
export function deliveryDates(
  dates: any[][],
  needs: any[][],
  opening: any[][],
  batch: any[][],
  keep: any[][],
  same_day?: any[][],
): any[][] {
  return wholeTable(args, [dates, needs, opening, batch, keep, same_day], (given) => {
    const gap = consecutiveDays(given.dates, "dates");
    if (gap) return gap;
    const amounts = amountEachDay(given.needs, given.dates, "needs");
    if (amounts instanceof CellError) return amounts;
    if (!Number.isFinite(amounts.reduce((sum, need) => sum + need, given.keep) / given.batch)) {
      return invalid("needs or keep is too large for this batch; check their units");
    }
    const found = deliveries(amounts, given.opening, given.batch, given.keep, given.same_day);
    if (found === "first day") {
      return noAnswer(
        `the use of ${isoDay(given.dates[0]!)} leaves less than keep, and a delivery of that day counts only from the next; set same_day TRUE if it is there in time`,
      );
    }
    return [
      ["date", "amount"],
      ...found.map(({ day, batches }) => [dateCell(given.dates[day]!), batches * given.batch]),
    ];
  });
}

export const about: About = {
  gives: ["date", "amount"],
  rule: "on every day opening − need ≥ keep, opening with what came on the days before (with same_day: on that day too); each batch comes on the latest day that keeps this",
  range: `Consecutive dates, 1 to 2,000; batch above 0. A first day that falls below keep can't be helped in time and is #N/A; no delivery needed is the header alone, which STOCK_PLAN takes as none. Standing loss is not counted, nor what is lost in filling: enter need × draw ratio (GROSS_DRAW) with the daily loss added. Several batches of one day stand in one row, and room for them is not checked: DELIVERIES_NEEDED does both beside plants. ${blankAsZero}`,
  source: "Plain arithmetic; common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.DELIVERY_DATES({"2026-03-01";"2026-03-02";"2026-03-03";"2026-03-04"},{32;32;32;32},75,55,10)',
      result: [
        ["date", "amount"],
        [46083, 55],
        [46084, 55],
      ],
      note: "43, then 11 are left; the third day needs a batch of the second, and the fourth one of the third, since 34 less 32 is below 10",
    },
    {
      formula: '=OXYGEN.DELIVERY_DATES({"2026-03-01";"2026-03-02"},{32;128},75,55,0,TRUE)',
      result: [
        ["date", "amount"],
        [46083, 110],
      ],
      note: "85 are missing on the second day, and a delivery can be used at once: two batches",
    },
    {
      formula: '=OXYGEN.DELIVERY_DATES({"2026-03-01";"2026-03-02"},{80;10},75,55,0)',
      result: { error: "#N/A", words: "the use of 2026-03-01 leaves less than keep" },
    },
  ],
  seeAlso: ["DELIVERIES_NEEDED", "GROSS_DRAW", "DAILY_LOSS", "STOCK_PLAN", "DAYS_COVERED", "REORDER_POINT"],
  caution:
    "These are the latest dates, with no day to spare for a late lorry or a surge: keep a reserve and order earlier.",
};
