import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { column } from "../../arguments/column";
import { date } from "../../arguments/date";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { summariseLog } from "../../models/demand";

export const args = tableArguments({
  dates: column(date),
  amounts: column(sameUnit),
});

/**
 * Daily use from a log: its mean, its spread and the worst day. Any one unit will do.
 *
 * @customfunction DEMAND_FROM_LOG
 * @param dates Day of each record, in any order [date]
 * @param amounts What was used, in any one unit, one for each date; records of the same day are added up
 * @returns One row: days, days with a record, mean, sd, most
 */
export function demandFromLog(dates: any[][], amounts: any[][]): any[][] {
  return wholeTable(args, [dates, amounts], (given) => {
    const unequal = sameLength({ dates: given.dates, amounts: given.amounts });
    if (unequal) return unequal;
    const log = summariseLog(given.dates, given.amounts);
    return [
      ["days", "days with a record", "mean", "sd", "most"],
      [log.days, log.daysWithRecord, log.mean, log.sd ?? "", log.most],
    ];
  });
}

export const about: About = {
  gives: ["days", "count", "amount", "amount", "amount"],
  rule: "mean = Σ daily use / days with a record; sd = √(Σ (daily use − mean)² / (days with a record − 1))",
  range: `Days count from the first to the last, both included. A day without a record is left out of the mean and the spread, not taken as 0: where nothing was used, write 0. One day with a record has no spread, and sd is empty. One column or row each, a header passed over; a blank cell is refused. ${blankAsZero}`,
  source:
    "Sample mean and sample standard deviation: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5 (section number from memory)",
  examples: [
    {
      formula: '=OXYGEN.DEMAND_FROM_LOG({"2026-03-01";"2026-03-02";"2026-03-02";"2026-03-04"},{40;30;20;60})',
      result: [
        ["days", "days with a record", "mean", "sd", "most"],
        [4, 3, 50, 10, 60],
      ],
      note: "Days of 40, 50 and 60; 3 March has no record",
      source: "mean 150 / 3; sd √(200 / 2)",
    },
  ],
  seeAlso: ["SAFETY_STOCK", "REORDER_POINT", "STOCK_LEVELS", "LOG_FAULTS"],
};
