import worked from "../../reference/stockPlanTenDays.json";

/** Serial of 1 March 2026. */
export const firstOfMarch = 46082;

export const columnOf = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

export const consecutive = (days: number, first = firstOfMarch): unknown[][] =>
  columnOf(Array.from({ length: days }, (_, day) => first + day));

/** The cells of the plan worked by hand, period 1 on 1 March 2026. */
export const workedCells = (sameDay?: boolean): (unknown[][] | undefined)[] => [
  consecutive(worked.nextDay.length),
  columnOf(worked.nextDay.map((row) => row.need)),
  columnOf(worked.nextDay.map((row) => row.received)),
  columnOf(worked.nextDay.map((row) => row.powerHours)),
  worked.plants.map(([count, period, hours, rate, capacity]) => [
    count,
    firstOfMarch + period! - 1,
    hours,
    rate,
    capacity,
  ]),
  [[worked.opening]],
  [[worked.drawRatio]],
  [[worked.emptyDays]],
  [[worked.restartHours]],
  sameDay === undefined ? undefined : [[sameDay]],
];

export const plainCell = (cell: any): any =>
  typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;

/** A table's rows below its header, by header word. */
export const records = (table: any[][]): Record<string, any>[] =>
  table.slice(1).map((row) => Object.fromEntries(row.map((cell, index) => [table[0]![index], plainCell(cell)])));
