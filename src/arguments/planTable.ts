import { type CellError, type CellTable, dateCell } from "../cells/cellValues";
import type { StockPlanDay } from "../models/stockPlan";
import { isFailure } from "./argument";
import { date } from "./date";
import type { Kind } from "./kinds";
import { consecutiveDays } from "./planArguments";
import { litres } from "./quantity";
import { type Row, table } from "./range";

const columns = {
  date,
  opening: litres,
  made: litres,
  received: litres,
  drawn: litres,
  boil_off: litres,
  vented: litres,
  closing: litres,
  short: litres,
  held_back: litres,
  room: litres,
};

/** The table of STOCK_PLAN, with or without its header row. */
export const planTable = table(columns);

/** The days of such a table. Rows that were filtered or sorted are no plan any more. */
export function planOfTable(rows: readonly Row<typeof columns>[], label: string): StockPlanDay[] | CellError {
  const gap = consecutiveDays(
    rows.map((row) => row.date),
    label,
  );
  if (isFailure(gap)) return gap;
  return rows.map(({ boil_off, held_back, ...row }) => ({ ...row, boilOff: boil_off, heldBack: held_back }));
}

/** What the columns of a plan are. */
export const planKinds: readonly Kind[] = [
  "date",
  "liquid",
  "liquid",
  "liquid",
  "gross liquid",
  "liquid",
  "liquid",
  "liquid",
  "gross liquid",
  "liquid",
  "liquid",
];

/** A plan as a table, header row first. */
export const tableOfPlan = (days: readonly StockPlanDay[]): CellTable => [
  ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
  ...days.map((day) => [
    dateCell(day.date),
    day.opening,
    day.made,
    day.received,
    day.drawn,
    day.boilOff,
    day.vented,
    day.closing,
    day.short,
    day.heldBack,
    day.room,
  ]),
];
