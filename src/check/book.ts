import { cellName, placeOf } from "../cells/addresses";
import { type Expression, type Reference, expressionOf, expressionsIn, referenceOf } from "./expression";
import type { CheckedCell, CheckedSheet, CheckedTable, CheckedWorkbook } from "./workbook";

/** A cell with its place. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A cell that holds a formula, read once. */
export interface FormulaCell extends Place {
  readonly address: string;
  readonly cell: CheckedCell;
  readonly formula: string;
  readonly expression: Expression;
  /** The expression and everything inside it. */
  readonly parts: readonly Expression[];
}

interface Filled {
  readonly row: number;
  readonly cell: CheckedCell;
}

interface SheetIndex {
  readonly sheet: CheckedSheet;
  /** Filled cells of each column, from the top down. */
  readonly columns: ReadonlyMap<number, readonly Filled[]>;
  readonly lastRow: number;
  readonly lastColumn: number;
}

export const isFilled = (cell: CheckedCell | undefined): cell is CheckedCell =>
  cell !== undefined &&
  (cell.formula !== undefined ||
    (cell.value !== undefined && !(typeof cell.value === "string" && cell.value.trim() === "")));

/** The workbook laid out for questions: what is in a cell, what fills it, what a formula refers to. */
export class Book {
  readonly formulas: readonly FormulaCell[];
  private readonly sheets = new Map<string, SheetIndex>();
  private readonly byPlace = new Map<string, FormulaCell>();
  /** Cells that a formula fills besides its own, to that formula. */
  private readonly spilled = new Map<string, FormulaCell>();
  private readonly tables = new Map<string, CheckedTable>();
  private readonly names = new Map<string, Expression>();

  constructor(readonly workbook: CheckedWorkbook) {
    const formulas: FormulaCell[] = [];
    for (const sheet of workbook.sheets) {
      const columns = new Map<number, Filled[]>();
      let [lastRow, lastColumn] = [0, 0];
      sheet.cells.forEach((cell, address) => {
        if (!isFilled(cell)) return;
        const { row, column } = placeOf(address);
        const list = columns.get(column);
        if (list) list.push({ row, cell });
        else columns.set(column, [{ row, cell }]);
        lastRow = Math.max(lastRow, row);
        lastColumn = Math.max(lastColumn, column);
        if (cell.formula === undefined) return;
        const expression = expressionOf(cell.formula);
        const parts = expressionsIn(expression);
        formulas.push({ sheet: sheet.name, row, column, address, cell, formula: cell.formula, expression, parts });
      });
      columns.forEach((list) => list.sort((one, other) => one.row - other.row));
      this.sheets.set(sheet.name.toLowerCase(), { sheet, columns, lastRow, lastColumn });
    }
    this.formulas = formulas;
    for (const each of formulas) {
      this.byPlace.set(this.keyOf(each), each);
      const area = each.cell.spill === undefined ? undefined : referenceOf(each.cell.spill);
      if (!area) continue;
      for (let row = area.top; row <= area.bottom; row++)
        for (let column = area.left; column <= area.right; column++)
          if (row !== each.row || column !== each.column)
            this.spilled.set(this.keyOf({ sheet: each.sheet, row, column }), each);
    }
    for (const table of workbook.tables ?? []) this.tables.set(table.name.toLowerCase(), table);
    workbook.names.forEach((meaning, name) => this.names.set(name.toLowerCase(), expressionOf(meaning)));
  }

  /** Names of sheets are alike in any case; most are asked for as they stand. */
  private readonly lowered = new Map<string, string>();

  private lower(sheet: string): string {
    const known = this.lowered.get(sheet);
    if (known !== undefined) return known;
    const lower = sheet.toLowerCase();
    this.lowered.set(sheet, lower);
    return lower;
  }

  private keyOf({ sheet, row, column }: Place): string {
    return `${this.lower(sheet)}!${row},${column}`;
  }

  sheet(name: string): CheckedSheet | undefined {
    return this.sheets.get(this.lower(name))?.sheet;
  }

  placeOf(sheet: string, address: string): Place {
    return { sheet, ...placeOf(address) };
  }

  cell(place: Place): CheckedCell | undefined {
    return this.sheet(place.sheet)?.cells.get(cellName(place.row, place.column));
  }

  formulaAt(place: Place): FormulaCell | undefined {
    return this.byPlace.get(this.keyOf(place));
  }

  /** The formula that fills a cell from elsewhere. */
  spillOver(place: Place): FormulaCell | undefined {
    return this.spilled.get(this.keyOf(place));
  }

  meaningOf(name: string): Expression | undefined {
    return this.names.get(name.toLowerCase());
  }

  table(name: string): CheckedTable | undefined {
    return this.tables.get(name.toLowerCase());
  }

  /** The area a reference covers, a spill's whole area where it asks for that; cut to the filled part of the sheet. */
  areaOf(reference: Reference, home: string): (Reference & { readonly sheet: string }) | undefined {
    const sheet = reference.sheet ?? home;
    const index = this.sheets.get(this.lower(sheet));
    if (!index) return undefined;
    if (reference.spill) {
      const anchor = this.formulaAt({ sheet, row: reference.top, column: reference.left });
      const area = anchor?.cell.spill === undefined ? undefined : referenceOf(anchor.cell.spill);
      return area ? { ...area, sheet, spill: true, text: reference.text } : { ...reference, sheet };
    }
    return {
      ...reference,
      sheet,
      bottom: Math.min(reference.bottom, Math.max(index.lastRow, reference.top)),
      right: Math.min(reference.right, Math.max(index.lastColumn, reference.left)),
    };
  }

  /** Filled cells of an area, with their places. */
  filledIn(area: Reference & { readonly sheet: string }): (Place & { readonly cell: CheckedCell })[] {
    const index = this.sheets.get(this.lower(area.sheet));
    if (!index) return [];
    const found: (Place & { readonly cell: CheckedCell })[] = [];
    for (let column = area.left; column <= area.right; column++) {
      const list = index.columns.get(column);
      if (!list) continue;
      let low = 0;
      let high = list.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (list[middle]!.row < area.top) low = middle + 1;
        else high = middle;
      }
      for (let at = low; at < list.length && list[at]!.row <= area.bottom; at++)
        found.push({ sheet: area.sheet, row: list[at]!.row, column, cell: list[at]!.cell });
    }
    return found;
  }

  /** References of an expression and of the names it uses, each with the sheet it is seen from. */
  referencesIn(formula: FormulaCell): Reference[] {
    const found: Reference[] = [];
    for (const part of formula.parts) {
      if (part.kind === "reference") found.push(part);
      if (part.kind === "name") {
        const meaning = this.meaningOf(part.name);
        if (meaning?.kind === "reference") found.push(meaning);
      }
    }
    return found;
  }
}

export const addressOf = ({ row, column }: { readonly row: number; readonly column: number }): string =>
  cellName(row, column);

export const fullAddress = (place: Place): string => `${place.sheet}!${addressOf(place)}`;
