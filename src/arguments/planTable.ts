import type { CellError } from "../cells/cellValues";
import { date } from "./date";
import { consecutiveDays } from "./planArguments";
import { litres } from "./quantity";
import { table } from "./range";

/** The table of STOCK_PLAN, with or without its header row. */
export const planTable = table({
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
});

/** Rows that were filtered or sorted are no plan any more. */
export const wholePlan = (rows: readonly { date: number }[]): CellError | undefined =>
  consecutiveDays(
    rows.map((row) => row.date),
    "plan",
  );
