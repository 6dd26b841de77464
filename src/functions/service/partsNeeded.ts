import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { listArguments, mostServices, readTasks, tooManyServices } from "../../arguments/serviceArguments";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { CellError, noAnswer } from "../../cells/cellValues";
import { partsNeeded as sumParts, serviceList } from "../../models/servicePlan";

export const args = tableArguments(listArguments);

/**
 * Parts for every service that falls due between two days: the sums of SERVICE_LIST.
 *
 * @customfunction PARTS_NEEDED
 * @param tasks One row a task, in nine columns as SERVICE_LIST has them: task, last date, months, last hours, interval hours, hours now, hours per day, part, quantity, blank where there is none
 * @param from_date First day of the list [date]
 * @param to_date Last day of the list [date]
 * @param [harsh] Share of the intervals that harsh conditions leave, above 0 to 1
 * @returns One row a part: part, quantity
 */
export function partsNeeded(tasks: any[][], from_date: any[][], to_date: any[][], harsh?: any[][]): any[][] {
  return wholeTable(args, [tasks, from_date, to_date, harsh], (given) => {
    const read = readTasks(given.tasks, given.from_date, given.to_date, given.harsh);
    if (read instanceof CellError) return read;
    const due = serviceList(read, given.from_date, given.to_date, given.harsh, mostServices);
    if (!due) return tooManyServices();
    const parts = sumParts(
      due,
      given.tasks.map(({ part, quantity }) => (part === undefined ? undefined : { part, quantity: quantity! })),
    );
    if (parts.length === 0)
      return noAnswer("no part is needed in these dates; parts stand in columns 8 and 9 of tasks");
    return [["part", "quantity"], ...parts.map(({ part, quantity }) => [part, quantity])];
  });
}

export const about: About = {
  gives: ["text", "amount"],
  rule: "for each part, the quantity of its tasks × the times each task stands in SERVICE_LIST",
  range: `As SERVICE_LIST, a task overdue counts once. Parts stand in order of first appearance; upper and lower case are one part. No part is #N/A. Quantities are not rounded. ${blankAsZero}`,
  source: "Sums over SERVICE_LIST; plain arithmetic",
  examples: [
    {
      formula:
        '=OXYGEN.PARTS_NEEDED({"filter","2026-01-31",1,"","","","","filter",2;"oil","2026-01-01",6,1100,500,1420,10,"oil litre",4},"2026-02-01","2026-04-30")',
      result: [
        ["part", "quantity"],
        ["filter", 6],
        ["oil litre", 8],
      ],
      note: "Three filter changes of two; oil on 19 February and 10 April",
      source: "1 February + (1600 − 1420) / 10 and + (2100 − 1420) / 10 days; 3 × 2 and 2 × 4",
    },
    {
      formula:
        '=OXYGEN.PARTS_NEEDED({"oil","2026-01-01",6,1100,500,1420,10,"oil litre",4},"2026-02-01","2026-04-30",0.7)',
      result: [
        ["part", "quantity"],
        ["oil litre", 12],
      ],
      note: "Dust leaves seven tenths of each interval: three changes",
      source: "1 February + (1100 + k × 350 − 1420) / 10 days: 4 February, 11 March, 15 April; 3 × 4",
    },
  ],
  seeAlso: ["SERVICE_LIST", "SPARES_TO_KEEP", "REORDER_POINT"],
  caution: "Planned service only: breakdowns need spares of their own.",
};
