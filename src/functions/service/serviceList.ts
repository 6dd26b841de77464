import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { listArguments, mostServices, readTasks, tooManyServices } from "../../arguments/serviceArguments";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";
import { serviceList as listServices } from "../../models/servicePlan";

export const args = tableArguments(listArguments);

/**
 * Every service that falls due between two days, from a list of tasks. A task that was already due before comes first,
 * once, with the date it was due.
 *
 * @customfunction SERVICE_LIST
 * @param tasks One row a task: task, last date, months; or nine columns: also last hours, interval hours, hours now (the meter on from_date), hours per day, part, quantity, blank where there is none
 * @param from_date First day of the list [date]
 * @param to_date Last day of the list [date]
 * @param [harsh] Share of the intervals that harsh conditions leave, above 0 to 1
 * @returns One row a service: date, task, occurrence since the last date
 */
export function serviceList(tasks: any[][], from_date: any[][], to_date: any[][], harsh?: any[][]): any[][] {
  return wholeTable(args, [tasks, from_date, to_date, harsh], (given) => {
    const read = readTasks(given.tasks, given.from_date, given.to_date, given.harsh);
    if (read instanceof CellError) return read;
    const due = listServices(read, given.from_date, given.to_date, given.harsh, mostServices);
    if (!due) return tooManyServices();
    if (due.length === 0) return noAnswer("no service is due in these dates");
    return [
      ["date", "task", "occurrence"],
      ...due.map(({ date, task, occurrence }) => [dateCell(date), read[task]!.task, occurrence]),
    ];
  });
}

export const about: About = {
  gives: ["date", "text", "count"],
  rule: "k-th service = the earlier of last date + INT(harsh × (EDATE(last date, k × months) − last date)) and from date + INT((last hours + k × harsh × interval hours − hours now)/hours per day); without hours now the second is last date + INT(k × harsh × interval hours/hours per day); no date counts from the one before",
  range: `At most 2,000 services, or #VALUE!. Each task needs months, or interval hours with hours per day, or both. Enter hours now, the meter on from_date: without it the hours since the last date are a guess by hours per day. With it the first date by hours is that of SERVICE_DUE. A task overdue on from_date stands once, as occurrence 1 with the date it was due; others that were missed are left out and the count goes on. Sorted by date, then by place in the list. A last date after to_date, or a meter that runs back, is #VALUE!. ${blankAsZero}`,
  source:
    "Month-end rule of Excel's EDATE (Microsoft, EDATE function; ECMA-376 Part 4, EDATE); whichever first: common practice, no source; the harsh share is an own planning figure",
  examples: [
    {
      formula: '=OXYGEN.SERVICE_LIST({"filter","2026-01-31",1},"2026-02-01","2026-04-30")',
      result: [
        ["date", "task", "occurrence"],
        [46081, "filter", 1],
        [46112, "filter", 2],
        [46142, "filter", 3],
      ],
      note: "From 31 January: 28 February, 31 March, 30 April",
      source: "Month-end rule of EDATE",
    },
    {
      formula:
        '=OXYGEN.SERVICE_LIST({"belt","2025-12-01",1,"","","","","","";"oil","2026-01-01",6,1100,500,1410,10,"oil litre",4},"2026-02-01","2026-03-01")',
      result: [
        ["date", "task", "occurrence"],
        [46023, "belt", 1],
        [46054, "belt", 2],
        [46073, "oil", 1],
        [46082, "belt", 3],
      ],
      note: "The belt was due on 1 January; the oil's meter stands at 1410 h on 1 February and reaches 1600 h on the 20th, before its six months",
      source: "by hand: 1 February (serial 46054) + (1100 + 500 − 1410) / 10 = 46073",
    },
    {
      formula: '=OXYGEN.SERVICE_LIST({"filter","2026-01-31",2},"2026-02-01","2026-05-01",0.75)',
      result: [
        ["date", "task", "occurrence"],
        [46097, "filter", 1],
        [46143, "filter", 2],
      ],
      note: "Three quarters of every two months: 16 March and 1 May",
      source: "31 January (serial 46053) + 0.75 × 59 and + 0.75 × 120 days, part days cut off",
    },
  ],
  seeAlso: ["PARTS_NEEDED", "SERVICE_DUE", "NEXT_SERVICE_DATE", "VISIT_FOR"],
  caution: "The maker's manual sets tasks and intervals and comes first; this only counts the days.",
};
