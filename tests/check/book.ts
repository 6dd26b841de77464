import { catalogue } from "../../src/catalogue/catalogue";
import { checkWorkbook, type CheckResult } from "../../src/check/checkWorkbook";
import type { CheckedCell, CheckedSheet, CheckedTable, CheckedWorkbook } from "../../src/check/workbook";

type GivenCell = number | string | boolean | CheckedCell;
export type GivenSheet = Readonly<Record<string, GivenCell>>;

const cellOf = (given: GivenCell): CheckedCell =>
  typeof given === "object"
    ? given
    : typeof given === "string" && given.startsWith("=")
      ? { formula: given.slice(1), value: 1 }
      : { value: given };

/** Sheets by name, cells by address; a text that begins with "=" is a formula. */
export const workbook = (
  sheets: Readonly<Record<string, GivenSheet>>,
  more: { names?: Record<string, string>; hidden?: string[]; tables?: CheckedTable[] } = {},
): CheckedWorkbook => ({
  sheets: Object.entries(sheets).map(([name, cells]): CheckedSheet => ({
    name,
    hidden: more.hidden?.includes(name),
    cells: new Map(Object.entries(cells).map(([address, given]) => [address, cellOf(given)])),
  })),
  names: new Map(Object.entries(more.names ?? {})),
  tables: more.tables,
});

export const check = (book: CheckedWorkbook): CheckResult => checkWorkbook(book, catalogue);

/** A column of cells from a first address down. */
export const down = (first: string, cells: readonly GivenCell[]): GivenSheet => {
  const [, column, row] = /^([A-Z]+)(\d+)$/.exec(first)!;
  return Object.fromEntries(cells.map((cell, index) => [`${column}${Number(row) + index}`, cell]));
};
