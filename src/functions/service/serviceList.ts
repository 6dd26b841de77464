import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { listArguments, mostServices, readTasks, tooManyServices } from "../../arguments/serviceArguments";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";
import { serviceList as listServices } from "../../models/servicePlan";

export const args = tableArguments(listArguments);

/**
 * Every service that falls due between two days, from a list of tasks. A task that was already due before comes first,
 * once, with the date it was due.
 *
 * @customfunction SERVICE_LIST
 * @param tasks One row a task: task, last date, months; or eight columns: also last hours, interval hours, hours per day, part, quantity, blank where there is none
 * @param from_date First day of the list [date]
 * @param to_date Last day of the list [date]
 * @param [harsh] Share of the intervals that harsh conditions leave, above 0 to 1
 * @returns One row a service: date, task, occurrence since the last date
 */
export function serviceList(tasks: any[][], from_date: any[][], to_date: any[][], harsh?: any[][]): any[][] {
  return wholeTable(args, [tasks, from_date, to_date, harsh], (given) => {
    const read = readTasks(given.tasks, given.from_date, given.to_date);
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
  rule: "k-th service = the earlier of last date + INT(harsh × (EDATE(last date, k × months) − last date)) and last date + INT(k × harsh × interval hours/hours per day); every date counts from the last date, never from the one before",
  range:
    "At most 2,000 services, or #VALUE!. Each task needs months, or interval hours with hours per day, or both. Missed services of one task are listed once. Sorted by date, then by place in the list. The hours rule counts from the last date with the average hours per day; last hours is kept for the record.",
  source:
    "Month-end rule of Excel's EDATE (Microsoft, EDATE function; ECMA-376 Part 4, EDATE); whichever first: common practice, no source; the harsh factor is an own planning default",
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
    },
    {
      formula:
        '=OXYGEN.SERVICE_LIST({"belt","2025-12-01",1,"","","","","";"oil","2026-01-01",6,100,500,10,"oil litre",4},"2026-02-01","2026-03-01")',
      result: [
        ["date", "task", "occurrence"],
        [46023, "belt", 1],
        [46054, "belt", 2],
        [46073, "oil", 1],
        [46082, "belt", 3],
      ],
      note: "The belt was due on 1 January; the oil's 500 h at 10 h a day come on 20 February, before its six months",
    },
  ],
  seeAlso: ["PARTS_NEEDED", "SERVICE_DUE", "NEXT_SERVICE_DATE", "VISIT_FOR"],
  caution: "The maker's manual sets tasks and intervals and comes first; this only counts the days.",
};
