/**
 * What the pane does with the workbook that is open in Excel. Absent in a plain browser. All of Excel's own interface
 * that the pane needs is here, so that a stand-in for it can take its place in a test.
 */
import { addressOf, placeOf } from "../cells/addresses";
import { isFileError } from "../cells/errorCodes";

export interface ActiveCell {
  readonly sheet: string;
  /** "C4" */
  readonly address: string;
  /** "" when the cell holds none. */
  readonly formula: string;
}

/** One cell of a block that is laid out: what stands in it and how. */
export interface BlockCell {
  readonly content: string | number | boolean;
  readonly format?: string;
  readonly look: "title" | "label" | "input" | "answer" | "caution" | "plain";
  /** Lets a number or a text with a unit through, and says what is wanted. */
  readonly entry?: { readonly title: string; readonly words: string };
}

export type BlockRows = readonly (readonly BlockCell[])[];

/** A sheet as Excel tells of it, from its first used cell on. */
export interface SheetContent {
  readonly name: string;
  readonly hidden: boolean;
  readonly first: string;
  readonly formulas: readonly (readonly unknown[])[];
  readonly values: readonly (readonly unknown[])[];
  readonly formats: readonly (readonly string[])[];
  /** Areas that formulas fill, by the cell of the formula. */
  readonly spills: Readonly<Record<string, string>>;
}

export interface WorkbookContent {
  readonly sheets: readonly SheetContent[];
  readonly names: Readonly<Record<string, string>>;
  readonly tables: readonly { name: string; sheet: string; area: string; columns: string[] }[];
}

export interface OpenWorkbook {
  /**
   * Writes a formula into the active cell, whose result fills so many rows and columns. Cells that hold something are left
   * alone unless `replace` is true, because Excel can't undo what an add-in overwrote; `full` names the first of them.
   */
  write(formula: string, size: Size, replace: boolean): Promise<Written>;
  /** Lays rows of cells out from the active cell on, under the same condition; the rows are made for its address. */
  writeBlock(rowsAt: (address: string) => BlockRows, replace: boolean): Promise<Written>;
  /** Tells of the active cell now and after each move. */
  watch(tell: (cell: ActiveCell | undefined) => void): Promise<void>;
  /** The selected range as a formula names it: "B4:B9", "'Other sheet'!B4". */
  selection(): Promise<string>;
  /** What a reference of a formula in the active sheet holds, as a function gets it: blank as null, errors as error cells. */
  read(reference: string): Promise<unknown[][]>;
  /** The value that the active cell shows. */
  shown(): Promise<unknown>;
  decimalSign(): Promise<string>;
  goTo(sheet: string, cell: string): Promise<void>;
  content(): Promise<WorkbookContent>;
  /** Adds a line to a sheet of this name, which is made with these headings where it is missing. */
  addLine(sheet: string, headings: readonly string[], line: readonly string[]): Promise<void>;
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

export interface Written {
  readonly address: string;
  readonly written: boolean;
  /** The first cell in the way that holds something. */
  readonly full?: string;
}

const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1);
const sheetName = (address: string): string =>
  address.slice(0, address.lastIndexOf("!")).replace(/^'|'$/g, "").replace(/''/g, "'");
const quotedSheet = (name: string): string => (/^[A-Za-z_]\w*$/.test(name) ? name : `'${name.replace(/'/g, "''")}'`);

/** A cell of Excel as a function gets it. */
const asGiven = (value: unknown, type: string): unknown => {
  if (type === "Empty") return null;
  if (type === "Error" || (typeof value === "string" && isFileError(value)))
    return { type: "Error", basicType: "Error", basicValue: value };
  return value;
};

/** Words that Excel must not take for a formula. */
const asText = (words: string): string => (/^[=+\-@']/.test(words) ? `'${words}` : words);

/** The first filled cell of a block, as an address; its top left cell is given. */
const firstFull = (top: string, formulas: readonly (readonly unknown[])[]): string | undefined => {
  const { row, column } = placeOf(top);
  for (const [down, line] of formulas.entries())
    for (const [right, formula] of line.entries())
      if (formula !== "") return addressOf({ row: row + down, column: column + right });
  return undefined;
};

const isFormula = (content: unknown): boolean => typeof content === "string" && content.startsWith("=");
/** Asked of one cell at a time, so not of more than this. */
const mostSpills = 2000;

/** Cells whose formula has a filled cell without a formula right of it or below: it may be part of what the formula fills. */
function likelySpills(first: string, formulas: readonly (readonly unknown[])[]): string[] {
  const start = placeOf(first);
  const filled = (row: number, column: number): boolean => {
    const content = formulas[row]?.[column];
    return content !== undefined && content !== "" && !isFormula(content);
  };
  return formulas
    .flatMap((line, row) =>
      line.flatMap((content, column) =>
        isFormula(content) && (filled(row + 1, column) || filled(row, column + 1))
          ? [addressOf({ row: start.row + row, column: start.column + column })]
          : [],
      ),
    )
    .slice(0, mostSpills);
}

const lookOf = (range: Excel.Range, look: BlockCell["look"]): void => {
  const { format } = range;
  if (look === "title" || look === "answer") format.font.bold = true;
  if (look === "input") format.fill.color = "#FFF7D6";
  if (look === "answer") format.fill.color = "#E6F0F7";
  if (look === "caution") {
    format.font.bold = true;
    format.fill.color = "#FCE9DC";
    format.wrapText = true;
  }
};

const rangeOf = async (context: Excel.RequestContext, reference: string): Promise<Excel.Range> => {
  const { workbook } = context;
  const isSpill = reference.endsWith("#");
  const plain = reference.replace(/#$/, "");
  const mark = plain.lastIndexOf("!");
  if (mark < 0 && !/^\$?[A-Za-z]{0,3}\$?\d*(?::\$?[A-Za-z]{0,3}\$?\d*)?$/.test(plain)) {
    const named = workbook.names.getItemOrNullObject(plain);
    await context.sync();
    if (named.isNullObject) throw new Error(`There is no name ${plain} in this workbook.`);
    return named.getRange();
  }
  const sheet = mark < 0 ? workbook.worksheets.getActiveWorksheet() : workbook.worksheets.getItem(sheetName(plain));
  const range = sheet.getRange(withoutSheet(plain).replace(/\$/g, ""));
  if (isSpill) return range.getSpillingToRange();
  // Whole columns and rows are read as far as they are used.
  return /\d/.test(withoutSheet(plain)) && /[A-Za-z]/.test(withoutSheet(plain)) ? range : range.getUsedRange(true);
};

const inExcel: OpenWorkbook = {
  write: (formula, { rows, columns }, replace) =>
    Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      const area = cell.getResizedRange(rows - 1, columns - 1);
      cell.load("address");
      area.load("formulas");
      await context.sync();
      const address = withoutSheet(cell.address);
      const full = firstFull(address, area.formulas);
      if (full !== undefined && !replace) return { address, written: false, full };
      cell.formulas = [[formula]];
      await context.sync();
      return { address, written: true };
    }),

  writeBlock: (rowsAt, replace) =>
    Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("address");
      await context.sync();
      const address = withoutSheet(cell.address);
      const rows = rowsAt(address);
      const width = Math.max(...rows.map((row) => row.length));
      const area = cell.getResizedRange(rows.length - 1, width - 1);
      area.load("formulas");
      await context.sync();
      const full = firstFull(address, area.formulas);
      if (full !== undefined && !replace) return { address, written: false, full };
      area.formulas = rows.map((row) => Array.from({ length: width }, (_, at) => row[at]?.content ?? ""));
      for (const [down, row] of rows.entries()) {
        for (const [right, { look, format, entry }] of row.entries()) {
          const one = area.getCell(down, right);
          lookOf(one, look);
          if (format) one.numberFormat = [[format]];
          if (!entry) continue;
          const place = placeOf(address);
          const own = addressOf({ row: place.row + down, column: place.column + right });
          one.dataValidation.rule = { custom: { formula: `=OR(ISNUMBER(${own}),ISTEXT(${own}),ISLOGICAL(${own}))` } };
          one.dataValidation.ignoreBlanks = false;
          one.dataValidation.prompt = {
            showPrompt: true,
            title: entry.title.slice(0, 32),
            message: entry.words.slice(0, 255),
          };
        }
      }
      await context.sync();
      return { address, written: true };
    }),

  watch: async (tell) => {
    const look = (): Promise<ActiveCell> =>
      Excel.run(async (context) => {
        const cell = context.workbook.getActiveCell();
        cell.load("formulas, address");
        await context.sync();
        const formula: unknown = cell.formulas[0]?.[0];
        return {
          sheet: sheetName(cell.address),
          address: withoutSheet(cell.address),
          formula: typeof formula === "string" && formula.startsWith("=") ? formula : "",
        };
      });
    // A chart or picture may be selected, or a cell be in edit mode: then there is no active cell to tell about.
    const report = () => look().then(tell, () => tell(undefined));
    await Excel.run(async (context) => {
      context.workbook.onSelectionChanged.add(report);
      await context.sync();
    });
    await report();
  },

  selection: () =>
    Excel.run(async (context) => {
      const range = context.workbook.getSelectedRange();
      const active = context.workbook.getActiveCell();
      range.load("address");
      active.load("address");
      await context.sync();
      const sheet = sheetName(range.address);
      const address = withoutSheet(range.address);
      return sheet === sheetName(active.address) ? address : `${quotedSheet(sheet)}!${address}`;
    }),

  read: (reference) =>
    Excel.run(async (context) => {
      const range = await rangeOf(context, reference);
      range.load("values, valueTypes");
      await context.sync();
      return range.values.map((row, down) =>
        row.map((value: unknown, right) => asGiven(value, String(range.valueTypes[down]![right]))),
      );
    }),

  shown: () =>
    Excel.run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("values");
      await context.sync();
      return cell.values[0]?.[0];
    }),

  decimalSign: () =>
    Excel.run(async (context) => {
      context.application.load("decimalSeparator");
      await context.sync();
      return context.application.decimalSeparator;
    }),

  goTo: (sheet, cell) =>
    Excel.run(async (context) => {
      const wanted = context.workbook.worksheets.getItem(sheet);
      wanted.activate();
      wanted.getRange(cell).select();
      await context.sync();
    }),

  content: () =>
    Excel.run(async (context) => {
      const { worksheets, names, tables } = context.workbook;
      worksheets.load("items/name, items/visibility");
      names.load("items/name, items/formula");
      tables.load("items/name");
      await context.sync();
      const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject());
      for (const range of used) range.load("address, formulas, values, numberFormat");
      const parts = tables.items.map((table) => {
        const range = table.getRange();
        const header = table.getHeaderRowRange();
        range.load("address");
        header.load("values");
        return { name: table.name, range, header };
      });
      await context.sync();
      const spilling = worksheets.items.flatMap((sheet, index) => {
        const range = used[index]!;
        if (range.isNullObject) return [];
        return likelySpills(withoutSheet(range.address).split(":")[0]!, range.formulas).map((cell) => {
          const area = sheet.getRange(cell).getSpillingToRangeOrNullObject();
          area.load("address");
          return { sheet: sheet.name, cell, area };
        });
      });
      await context.sync();
      return {
        sheets: worksheets.items.map((sheet, index): SheetContent => {
          const range = used[index]!;
          const isEmpty = range.isNullObject;
          const own = spilling.filter((each) => each.sheet === sheet.name && !each.area.isNullObject);
          return {
            name: sheet.name,
            hidden: sheet.visibility !== "Visible",
            first: isEmpty ? "A1" : withoutSheet(range.address).split(":")[0]!,
            formulas: isEmpty ? [] : range.formulas,
            values: isEmpty ? [] : range.values,
            formats: isEmpty ? [] : range.numberFormat,
            spills: Object.fromEntries(own.map(({ cell, area }) => [cell, withoutSheet(area.address)])),
          };
        }),
        names: Object.fromEntries(names.items.map(({ name, formula }) => [name, String(formula)])),
        tables: parts.map(({ name, range, header }) => ({
          name,
          sheet: sheetName(range.address),
          area: withoutSheet(range.address),
          columns: (header.values[0] ?? []).map(String),
        })),
      };
    }),

  addLine: (name, headings, line) =>
    Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      let sheet = worksheets.getItemOrNullObject(name);
      await context.sync();
      if (sheet.isNullObject) {
        sheet = worksheets.add(name);
        sheet.getRange("A1").getResizedRange(0, headings.length - 1).values = [[...headings]];
      }
      const used = sheet.getUsedRange();
      used.load("rowCount");
      await context.sync();
      sheet.getRange(`A${used.rowCount + 1}`).getResizedRange(0, line.length - 1).values = [line.map(asText)];
      await context.sync();
    }),
};

/** Resolves to null in a plain browser, or when the host's library could not be loaded. */
export const connectWorkbook = async (): Promise<OpenWorkbook | null> => {
  if (typeof Office === "undefined") return null;
  const { host } = await Office.onReady();
  return host === Office.HostType.Excel ? inExcel : null;
};
