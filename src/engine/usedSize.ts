import { areaOf, isOnSheet, placeOf, sheetSize } from "../cells/addresses";
import { tokensOf } from "../cells/formulaTokens";
import type { SheetInput, WorkbookNames } from "./workbookInput";

export interface SheetRoom {
  readonly rows: number;
  readonly columns: number;
}

/** Rows and columns that a workbook's cells, formulas and names speak of; whole columns and rows count as none. */
export const usedSize = (sheets: readonly SheetInput[], names: WorkbookNames): SheetRoom => {
  let rows = 1;
  let columns = 1;
  const stretch = (row: number, column: number): void => {
    rows = Math.max(rows, row + 1);
    columns = Math.max(columns, column + 1);
  };
  const stretchTo = (formula: string): void => {
    for (const { kind, text } of tokensOf(formula)) {
      if (kind !== "reference") continue;
      for (const corner of text.slice(text.lastIndexOf("!") + 1).split(":")) {
        if (!/^\$?[A-Za-z]{1,3}\$?\d{1,7}$/.test(corner) || !isOnSheet(corner)) continue;
        const { row, column } = placeOf(corner);
        stretch(row, column);
      }
    }
  };
  for (const { cells } of sheets) {
    for (const [address, cell] of Object.entries(cells)) {
      const { row, column } = placeOf(address);
      stretch(row, column);
      if (cell.formula !== undefined) stretchTo(cell.formula);
      if (cell.formula !== undefined && cell.ref) {
        const { endRow, endColumn } = areaOf(cell.ref);
        stretch(endRow, endColumn);
      }
    }
  }
  for (const text of Object.values(names.names ?? {})) stretchTo(text);
  return { rows: Math.min(rows, sheetSize.rows), columns: Math.min(columns, sheetSize.columns) };
};
