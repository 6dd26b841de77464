import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { date, isoDay } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { days } from "../../arguments/quantity";
import { dateCell, noAnswer } from "../../cells/cellValues";
import { chooseVisit } from "../../models/servicePlan";

export const args = cellArguments({
  as_of: date,
  due_date: date,
  visit_dates: column(date),
  late: days.whole().default(defaults.late),
});

/**
 * The visit on which to do a service: the last one to come that is in time, or the next one when it is overdue.
 *
 * @customfunction VISIT_FOR
 * @param as_of The day to judge from; visits before it don't count [date]
 * @param due_date Day on which the service is due [date]
 * @param visit_dates Days of the planned visits, in any order [date]
 * @param [late] Days the service may be late [days]
 * @returns Day of the visit [date]
 */
export function visitFor(as_of: any[][], due_date: any[][], visit_dates: any[][], late?: any[][]): any[][] {
  return eachCell(args, [as_of, due_date, visit_dates, late], (given) => {
    const latest = given.due_date + given.late;
    const { visit, first } = chooseVisit(given.as_of, latest, given.visit_dates);
    if (visit !== undefined) return dateCell(visit);
    const [from, to] = [isoDay(given.as_of), isoDay(latest)];
    if (first !== undefined)
      return noAnswer(`no visit from ${from} to ${to}; the first one after is on ${isoDay(first)}`);
    return noAnswer(
      latest < given.as_of
        ? `overdue since ${to}, and no visit on or after ${from}: plan one now`
        : `no visit on or after ${from}: plan one by ${to}`,
    );
  });
}

export const about: About = {
  gives: "date",
  rule: "the last visit date from as of to due date + late; when due date + late is before as of, the first visit date on or after as of",
  range:
    "Visits in any order, a first row of headings passed over, a blank refused. A visit on the day as of counts. No visit in time is #N/A and names the first one after. An overdue service gets the next visit: it is late all the same (OVERDUE_DAYS).",
  source: "Common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.VISIT_FOR("2026-02-10","2026-03-20",{"2026-02-15";"2026-03-15";"2026-04-15"})',
      result: 46096,
      note: "15 March 2026, the last one in time",
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.VISIT_FOR("2026-02-10","2026-04-10",{"2026-02-15";"2026-03-15";"2026-04-15"},7)',
      result: 46127,
      note: "A week late is allowed: 15 April",
      source: "10 April + 7 days = 17 April",
    },
    {
      formula: '=OXYGEN.VISIT_FOR("2026-03-01","2026-02-20",{"2026-02-15";"2026-03-15";"2026-04-15"})',
      result: 46096,
      note: "Overdue since 20 February, and the visit of 15 February is past: 15 March",
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.VISIT_FOR("2026-02-20","2026-03-10",{"2026-02-15";"2026-03-15"})',
      result: { error: "#N/A", words: "no visit from 2026-02-20 to 2026-03-10; the first one after is on 2026-03-15" },
      source: "The rule stated",
    },
  ],
  seeAlso: ["SERVICE_LIST", "SERVICE_STATUS", "OVERDUE_DAYS", "NEXT_SERVICE_DATE"],
  caution: "Where the maker's manual or a local rule lets nothing be late, leave late out and bring the visit forward.",
};
