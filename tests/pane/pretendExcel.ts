/**
 * Stands in for Excel in a page, in place of office.js: sheets of cells with the members of Excel's interface that
 * src/excel/openWorkbook.ts uses. Unlike Excel's its values are there before `sync`; what is loaded is not checked.
 */
export const pretendExcel = (): void => {
  type Cell = { formula: unknown; value: unknown; format?: string; validation?: unknown; fill?: string };
  const sheets: Record<string, Record<string, Cell>> = { Sheet1: {}, Inputs: {} };
  const spills: Record<string, string> = {};
  let active = { sheet: "Sheet1", cell: "C4", selection: "C4" };
  const handlers: (() => Promise<unknown>)[] = [];

  const column = (letters: string): number =>
    [...letters].reduce((sum, each) => sum * 26 + each.charCodeAt(0) - 64, 0) - 1;
  const letters = (at: number): string =>
    at < 26 ? String.fromCharCode(65 + at) : letters(Math.floor(at / 26) - 1) + letters(at % 26);
  const place = (address: string) => {
    const [, name, digits] = /^([A-Z]+)(\d+)$/.exec(address)!;
    return { row: Number(digits) - 1, column: column(name!) };
  };
  const name = (row: number, at: number): string => `${letters(at)}${row + 1}`;

  class Range {
    isNullObject = false;
    format = { font: {} as Record<string, unknown>, fill: {} as Record<string, unknown>, wrapText: false };
    dataValidation: Record<string, unknown> = {};
    constructor(
      readonly sheet: string,
      readonly top: number,
      readonly left: number,
      readonly rows: number,
      readonly columns: number,
    ) {
      const { format, dataValidation } = this;
      const cell = () => (sheets[sheet]![name(top, left)] ??= { formula: "", value: "" });
      Object.defineProperty(format.fill, "color", { set: (colour: string) => (cell().fill = colour) });
      Object.defineProperty(dataValidation, "rule", { set: (rule: unknown) => (cell().validation = rule) });
    }
    load(): void {}
    private grid<Value>(of: (cell: Cell | undefined) => Value): Value[][] {
      return Array.from({ length: this.rows }, (_, down) =>
        Array.from({ length: this.columns }, (_, right) =>
          of(sheets[this.sheet]![name(this.top + down, this.left + right)]),
        ),
      );
    }
    get address(): string {
      const quoted = /^\w+$/.test(this.sheet) ? this.sheet : `'${this.sheet}'`;
      const first = name(this.top, this.left);
      const last = name(this.top + this.rows - 1, this.left + this.columns - 1);
      return `${quoted}!${first}${first === last ? "" : `:${last}`}`;
    }
    get formulas(): unknown[][] {
      return this.grid((cell) => cell?.formula ?? "");
    }
    set formulas(rows: unknown[][]) {
      rows.forEach((row, down) =>
        row.forEach((content, right) => {
          if (content !== "")
            sheets[this.sheet]![name(this.top + down, this.left + right)] = { formula: content, value: content };
        }),
      );
    }
    get values(): unknown[][] {
      return this.grid((cell) => cell?.value ?? "");
    }
    set values(rows: unknown[][]) {
      this.formulas = rows;
    }
    get valueTypes(): string[][] {
      return this.grid((cell) =>
        cell === undefined || cell.value === ""
          ? "Empty"
          : String(cell.value).startsWith("#")
            ? "Error"
            : typeof cell.value === "number"
              ? "Double"
              : "String",
      );
    }
    get numberFormat(): string[][] {
      return this.grid((cell) => cell?.format ?? "General");
    }
    set numberFormat(rows: string[][]) {
      sheets[this.sheet]![name(this.top, this.left)]!.format = rows[0]![0]!;
    }
    get rowCount(): number {
      return this.rows;
    }
    getResizedRange(rows: number, columns: number): Range {
      return new Range(this.sheet, this.top, this.left, this.rows + rows, this.columns + columns);
    }
    getCell(down: number, right: number): Range {
      return new Range(this.sheet, this.top + down, this.left + right, 1, 1);
    }
    getUsedRange(): Range {
      return this;
    }
    getSpillingToRange(): Range {
      return rangeIn(this.sheet, spills[`${this.sheet}!${name(this.top, this.left)}`]!);
    }
    getSpillingToRangeOrNullObject(): Range {
      const area = spills[`${this.sheet}!${name(this.top, this.left)}`];
      return area
        ? rangeIn(this.sheet, area)
        : Object.assign(new Range(this.sheet, 0, 0, 1, 1), { isNullObject: true });
    }
    select(): void {
      active = { sheet: this.sheet, cell: name(this.top, this.left), selection: name(this.top, this.left) };
    }
  }
  const rangeIn = (sheet: string, address: string): Range => {
    const [first, last = first] = address.split(":") as [string, string?];
    const [one, other] = [place(first!), place(last!)];
    return new Range(sheet, one.row, one.column, other.row - one.row + 1, other.column - one.column + 1);
  };
  const usedIn = (sheet: string): Range => {
    const places = Object.keys(sheets[sheet]!).map(place);
    if (places.length === 0) return Object.assign(new Range(sheet, 0, 0, 1, 1), { isNullObject: true });
    const rows = Math.max(...places.map(({ row }) => row)) + 1;
    return new Range(sheet, 0, 0, rows, Math.max(...places.map((each) => each.column)) + 1);
  };
  const sheetOf = (sheet: string) => ({
    name: sheet,
    visibility: "Visible",
    isNullObject: !(sheet in sheets),
    activate: () => (active = { ...active, sheet }),
    getRange: (address: string) => rangeIn(sheet, address),
    getUsedRange: () => usedIn(sheet),
    getUsedRangeOrNullObject: () => usedIn(sheet),
  });
  const workbook = {
    getActiveCell: () => rangeIn(active.sheet, active.cell),
    getSelectedRange: () => rangeIn(active.sheet, active.selection),
    onSelectionChanged: { add: (handler: () => Promise<unknown>) => handlers.push(handler) },
    names: { items: [], load() {}, getItemOrNullObject: () => ({ isNullObject: true }) },
    tables: { items: [], load() {} },
    worksheets: {
      load() {},
      get items() {
        return Object.keys(sheets).map(sheetOf);
      },
      getActiveWorksheet: () => sheetOf(active.sheet),
      getItem: (sheet: string) => sheetOf(sheet),
      getItemOrNullObject: (sheet: string) => sheetOf(sheet),
      add: (sheet: string) => {
        sheets[sheet] = {};
        return sheetOf(sheet);
      },
    },
  };
  const application = { decimalSeparator: ".", load() {} };
  const put = (sheet: string, address: string, formula: unknown, value: unknown = formula, format?: string): void => {
    sheets[sheet]![address] = { formula, value, ...(format ? { format } : {}) };
  };
  const select = (cell: string, selection = cell): Promise<unknown> => {
    active = { sheet: active.sheet, cell, selection };
    return Promise.all(handlers.map((handler) => handler()));
  };
  const told = { sheets, application, put, select, active: () => active, spills };
  Object.assign(window, {
    pretend: told,
    Office: { HostType: { Excel: "Excel" }, onReady: () => Promise.resolve({ host: "Excel" }) },
    Excel: {
      run: (batch: (context: unknown) => unknown) =>
        Promise.resolve(batch({ workbook, application, sync: () => Promise.resolve() })),
    },
  });
};

export interface Pretend {
  sheets: Record<
    string,
    Record<string, { formula: unknown; value: unknown; format?: string; validation?: unknown; fill?: string }>
  >;
  application: { decimalSeparator: string };
  put(sheet: string, address: string, formula: unknown, value?: unknown, format?: string): void;
  select(cell: string, selection?: string): Promise<unknown>;
  active(): { sheet: string; cell: string };
  spills: Record<string, string>;
}
