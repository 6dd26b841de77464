import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Worksheet } from "@univerjs/core";
import { columnLetters } from "../cells/addresses";
import { element } from "../pane/element";
import { describeCell } from "./describeCell";
import type { Grid } from "./grid";
import type { SheetNotes } from "./openWorkbook";

/** The last row and column that hold anything, spilled results included; -1 for an empty sheet. */
const usedSize = (grid: Grid, sheet: Worksheet): { lastRow: number; lastColumn: number } => {
  let [lastRow, lastColumn] = [-1, -1];
  const stretch = (row: number, column: number): void => {
    lastRow = Math.max(lastRow, row);
    lastColumn = Math.max(lastColumn, column);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (cell && ((cell.v !== undefined && cell.v !== null && cell.v !== "") || cell.f || cell.p)) stretch(row, column);
  });
  const spilled = grid.injector.get(FormulaDataModel).getArrayFormulaCellData()[grid.workbook.getUnitId()]?.[
    sheet.getSheetId()
  ];
  for (const [row, columns] of Object.entries(spilled ?? {})) {
    for (const column of Object.keys(columns ?? {})) stretch(Number(row), Number(column));
  }
  return { lastRow, lastColumn };
};

/** The used cells of a sheet as a plain table, for screen readers, printing and copying. */
export const resultsTable = (grid: Grid, sheet: Worksheet, notes: SheetNotes | undefined): HTMLElement => {
  const { lastRow, lastColumn } = usedSize(grid, sheet);
  if (lastRow < 0) return element("p", {}, `The sheet ${sheet.getName()} is empty.`);
  const table = element("table");
  table.append(element("caption", {}, `Cells of the sheet ${sheet.getName()}`));
  const head = table.createTHead().insertRow();
  head.append(element("th", { scope: "col" }, "Row"));
  for (let column = 0; column <= lastColumn; column++) {
    head.append(element("th", { scope: "col" }, columnLetters(column)));
  }
  const body = table.createTBody();
  for (let row = 0; row <= lastRow; row++) {
    const cells = Array.from({ length: lastColumn + 1 }, (_, column) => describeCell(grid, sheet, row, column, notes));
    if (cells.every(({ value, error }) => value === "" && error === "")) continue;
    const line = body.insertRow();
    line.append(element("th", { scope: "row" }, String(row + 1)));
    for (const { address, value, raw, unit, error, isInput } of cells) {
      const cell = line.insertCell();
      cell.dataset.cell = address;
      if (raw !== "") cell.dataset.value = raw;
      cell.textContent = error || `${value}${unit ? ` ${unit}` : ""}`;
      if (error) cell.className = "error";
      if (isInput) {
        cell.className = "input";
        cell.append(element("span", { class: "unseen" }, " (input)"));
      }
    }
  }
  return table;
};
