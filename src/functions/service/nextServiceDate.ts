import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { months as monthsQuantity } from "../../arguments/quantity";
import { dateResult } from "../../arguments/resultDate";
import { harsh as harshShare } from "../../arguments/serviceArguments";
import { dateByMonths } from "../../models/servicePlan";

export const args = cellArguments({
  last_date: date,
  months: monthsQuantity.atLeast(1).whole(),
  harsh: harshShare,
});

/**
 * Date of the next service so many months after the last, sooner under harsh conditions.
 *
 * @customfunction NEXT_SERVICE_DATE
 * @param last_date Day of the last service [date]
 * @param months Interval between services, in whole months [months]
 * @param [harsh] Share of the interval that harsh conditions leave, above 0 to 1
 * @returns Day of the next service [date]
 */
export function nextServiceDate(last_date: any[][], months: any[][], harsh?: any[][]): any[][] {
  return eachCell(args, [last_date, months, harsh], (given) =>
    dateResult(dateByMonths(given.last_date, given.months, 1, given.harsh), "the next service"),
  );
}

export const about: About = {
  gives: "date",
  rule: "last date + INT(harsh × (EDATE(last date, months) − last date)); a day the month doesn't have becomes its last day",
  range:
    "Whole months from 1, harsh above 0 to 1; a result after the year 9999 is #VALUE!. Part days are cut off, so that the service is never late.",
  source:
    "Month-end rule of Excel's EDATE (Microsoft, EDATE function; ECMA-376 Part 4, EDATE); the harsh share is an own planning figure",
  examples: [
    {
      formula: '=OXYGEN.NEXT_SERVICE_DATE("2011-01-15",1)',
      result: 40589,
      note: "15 February 2011",
      source: "Microsoft, EDATE function: 15-Jan-11 and 1 month",
    },
    {
      formula: '=OXYGEN.NEXT_SERVICE_DATE("2026-01-31",1)',
      result: 46081,
      note: "31 January to 28 February 2026",
      source: "Month-end rule of EDATE",
    },
    {
      formula: '=OXYGEN.NEXT_SERVICE_DATE("2026-01-01",3,0.5)',
      result: 46068,
      note: "15 February 2026",
      source: "1 January (serial 46023) + 0.5 × 90 days to 1 April",
    },
  ],
  seeAlso: ["SERVICE_DUE", "SERVICE_LIST", "SERVICE_STATUS", "NEXT_SERVICE_BY_HOURS"],
  caution: "The maker's manual sets the intervals and what counts as harsh; this only counts the days.",
};
