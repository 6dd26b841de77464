import {
  BooleanNumber,
  DataValidationErrorStyle,
  LocaleType,
  type ICellData,
  type IRange,
  type ISheetDataValidationRule,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import {
  CFRuleType,
  CFSubRuleType,
  CFValueType,
  type IConditionFormattingRule,
} from "@univerjs/sheets-conditional-formatting";
import type { Cell, ConditionalRule, DataValidation, Sheet } from "hucre";
import { readXlsx } from "hucre/xlsx";
import { areaOf, cellName, placeOf, type Area } from "../cells/addresses";
import { cellContent, withEquals } from "../engine/cellContent";
import { blankPackage } from "../engine/file/blankPackage";
import { partText } from "../engine/file/partXml";
import { readWorkbook, type SavedWorkbook } from "../engine/file/readWorkbook";
import { storeParts } from "../engine/file/zipParts";
import type { SheetInput, WorkbookNames } from "../engine/workbookInput";
import { colourReader, gridStyle, type ReadColour } from "./cellStyle";

/** What a file says about a cell that is meant to be changed. */
export interface Prompt {
  readonly area: Area;
  readonly words: string;
}

export interface SheetNotes {
  /** Addresses of the cells that stay open when the sheet is protected. */
  readonly inputs: ReadonlySet<string>;
  readonly prompts: readonly Prompt[];
  /** Where a cell's link leads within the workbook ("Plan!A1"), by address. */
  readonly links: Readonly<Record<string, string>>;
  readonly hasCharts: boolean;
  /** Set for a protected sheet: all cells but the inputs are locked. */
  readonly protection?: { readonly hasPassword: boolean };
}

export interface OpenedWorkbook {
  readonly title: string;
  readonly fileName: string;
  /** The file as it was opened. */
  readonly saved: SavedWorkbook;
  readonly data: IWorkbookData;
  readonly names: WorkbookNames;
  /** By sheet id. */
  readonly notes: Readonly<Record<string, SheetNotes>>;
}

/** Room beyond what is filled, so that a spill can grow. */
const spare = { rows: 500, columns: 12 };
const least = { rows: 1_000, columns: 26 };

const gridLook = { defaultColumnWidth: 64, defaultRowHeight: 20 };

/** Wide enough for a date with its time and for any number: the grid cuts both off without a sign. */
const widthToWriteIn = 136;

/** Widths count digits of an 11-point Calibri, 7 pixels wide; heights count points. */
const pixelsOfWidth = (characters: number): number => Math.round(characters * 7);
const pixelsOfHeight = (points: number): number => Math.round((points * 4) / 3);

const rangesOf = (reference: string): IRange[] =>
  reference
    .trim()
    .split(/\s+/)
    .map((part) => ({ ...areaOf(part) }));

const scaleKinds: Record<string, CFValueType> = {
  min: CFValueType.min,
  max: CFValueType.max,
  num: CFValueType.num,
  percent: CFValueType.percent,
  percentile: CFValueType.percentile,
};

/** The two kinds that the sample workbooks use; other kinds are left out. */
const conditionalFormat = (rule: ConditionalRule, id: string, colourOf: ReadColour): IConditionFormattingRule[] => {
  const base = { cfId: id, ranges: rangesOf(rule.range), stopIfTrue: rule.stopIfTrue ?? false };
  const formula = Array.isArray(rule.formula) ? rule.formula[0] : rule.formula;
  if (rule.type === "expression" && formula) {
    const { bl, it, cl, bg, bd } = gridStyle(rule.style ?? {}, colourOf);
    return [
      {
        ...base,
        rule: {
          type: CFRuleType.highlightCell,
          subType: CFSubRuleType.formula,
          value: withEquals(formula),
          style: { bl, it, cl, bg, bd },
        },
      },
    ];
  }
  if (rule.type === "colorScale" && rule.colorScale) {
    const { cfvo, colors } = rule.colorScale;
    return [
      {
        ...base,
        rule: {
          type: CFRuleType.colorScale,
          config: cfvo.map(({ type, value }, index) => ({
            index,
            color: `#${(colors[index] ?? "FFFFFF").slice(-6)}`,
            value: {
              type: scaleKinds[type] ?? CFValueType.num,
              ...(value === undefined ? {} : { value: Number(value) }),
            },
          })),
        },
      },
    ];
  }
  return [];
};

const refusals = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
};

const isFormula = (text: string): boolean => text !== "" && !/^[-+]?[\d.]+(?:e[-+]?\d+)?$/i.test(text);

const validationRule = (rule: DataValidation, uid: string): ISheetDataValidationRule => {
  const criterion = (text: string | undefined): string | undefined =>
    text === undefined ? undefined : isFormula(text) ? withEquals(text) : text;
  return {
    uid,
    type: rule.type,
    ranges: rangesOf(rule.range),
    // A list's values are joined with commas, whether the file or the reader split them.
    formula1: rule.values ? rule.values.join(",") : criterion(rule.formula1),
    formula2: criterion(rule.formula2),
    operator: rule.operator as ISheetDataValidationRule["operator"],
    allowBlank: rule.allowBlank ?? true,
    showErrorMessage: rule.showErrorMessage ?? false,
    error: rule.errorMessage,
    errorTitle: rule.errorTitle,
    errorStyle: refusals[rule.errorStyle ?? "stop"],
    showDropDown: true,
  };
};

const promptsOf = (rules: readonly DataValidation[]): Prompt[] =>
  rules.flatMap(({ range, inputMessage }) =>
    inputMessage
      ? range
          .trim()
          .split(/\s+/)
          .map((part) => ({ area: areaOf(part), words: inputMessage }))
      : [],
  );

interface ReadSheet {
  sheet: Partial<IWorksheetData>;
  notes: SheetNotes;
  conditional: IConditionFormattingRule[];
  validation: ISheetDataValidationRule[];
}

const readSheet = (
  id: string,
  input: SheetInput,
  look: Sheet,
  colourOf: ReadColour,
  styleId: (style: IStyleData) => string,
): ReadSheet => {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const inputs = new Set<string>();
  const links: Record<string, string> = {};
  let [lastRow, lastColumn] = [0, 0];
  const put = (row: number, column: number, cell: ICellData): void => {
    const line = (cellData[row] ??= {});
    line[column] = { ...line[column], ...cell };
    lastRow = Math.max(lastRow, row);
    lastColumn = Math.max(lastColumn, column);
  };
  for (const [address, cell] of Object.entries(input.cells)) {
    const { row, column } = placeOf(address);
    put(row, column, cellContent(cell));
  }
  for (const [key, { style, hyperlink }] of look.cells ?? new Map<string, Cell>()) {
    const [row = 0, column = 0] = key.split(",").map(Number);
    if (hyperlink?.location) links[cellName(row, column)] = hyperlink.location;
    if (!style) continue;
    put(row, column, { s: styleId(gridStyle(style, colourOf)) });
    if (look.protection && style.protection?.locked === false) inputs.add(cellName(row, column));
  }

  const validations = look.dataValidations ?? [];
  const { rows = 0, columns = 0 } = look.freezePane ?? {};
  return {
    sheet: {
      id,
      name: input.name,
      hidden: look.hidden || look.veryHidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
      tabColor: colourOf(look.view?.tabColor) ?? "",
      ...gridLook,
      rowCount: Math.max(least.rows, lastRow + 1 + spare.rows),
      columnCount: Math.max(least.columns, lastColumn + 1 + spare.columns),
      cellData,
      showGridlines: look.view?.showGridLines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      freeze: {
        xSplit: columns,
        ySplit: rows,
        startRow: rows > 0 ? rows : -1,
        startColumn: columns > 0 ? columns : -1,
      },
      mergeData: (look.merges ?? []).map(({ startRow, startCol, endRow, endCol }) => ({
        startRow,
        startColumn: startCol,
        endRow,
        endColumn: endCol,
      })),
      columnData: Object.fromEntries(
        (look.columns ?? []).flatMap(({ width, hidden }, column) =>
          width || hidden
            ? [
                [
                  column,
                  { ...(width ? { w: pixelsOfWidth(width) } : {}), ...(hidden ? { hd: BooleanNumber.TRUE } : {}) },
                ],
              ]
            : [],
        ),
      ),
      rowData: Object.fromEntries(
        [...(look.rowDefs ?? [])].map(([row, { height, hidden }]) => [
          row,
          {
            ...(height ? { h: pixelsOfHeight(height), ia: BooleanNumber.FALSE } : {}),
            ...(hidden ? { hd: BooleanNumber.TRUE } : {}),
          },
        ]),
      ),
    },
    notes: { inputs, links, prompts: promptsOf(validations), hasCharts: (look.charts ?? []).length > 0 },
    conditional: [...(look.conditionalRules ?? [])]
      .sort((a, b) => a.priority - b.priority)
      .flatMap((rule, index) => conditionalFormat(rule, `${id}-format${index}`, colourOf)),
    validation: validations.map((rule, index) => validationRule(rule, `${id}-entry${index}`)),
  };
};

/**
 * Reads an .xlsx file's bytes into what the grid shows: contents, formulas as typed, looks, names, conditional formats
 * and rules for entries. Charts, pictures and comments are left out. `ids` are the add-in's function ids.
 * @throws UnusableWorkbook, whose words follow the file's name.
 */
export const openWorkbook = async (
  bytes: Uint8Array,
  ids: readonly string[],
  fileName: string,
): Promise<OpenedWorkbook> => {
  const saved = readWorkbook(bytes, ids);
  const file = await readXlsx(storeParts(saved.file.parts), { readStyles: true });
  const colourOf = colourReader(file.themeColors);

  const styles: Record<string, IStyleData> = {};
  const known = new Map<string, string>();
  const styleId = (style: IStyleData): string => {
    const key = JSON.stringify(style);
    let id = known.get(key);
    if (id === undefined) {
      id = `s${known.size}`;
      known.set(key, id);
      styles[id] = style;
    }
    return id;
  };

  const read = saved.sheets.map((input, index) =>
    readSheet(
      `sheet${index}`,
      input,
      file.sheets.find(({ name }) => name === input.name) ?? { name: input.name, rows: [] },
      colourOf,
      styleId,
    ),
  );
  // By the sheet's place: whether a password holds the protection. ECMA-376 part 1, 18.3.1.85.
  const protectedSheets = new Map<number, boolean>();
  saved.file.sheets.forEach(({ path }, index) => {
    const tag = /<(?:\w+:)?sheetProtection\b[^>]*>/.exec(partText(saved.file.parts, path))?.[0] ?? "";
    if (/\ssheet="(?:1|true)"/.test(tag)) protectedSheets.set(index, /\s(?:password|hashValue)="[^"]/.test(tag));
  });
  const byId = <Value>(pick: (sheet: ReadSheet) => Value): Record<string, Value> =>
    Object.fromEntries(read.map((sheet, index) => [`sheet${index}`, pick(sheet)]));

  return {
    title: file.properties?.title || fileName.replace(/\.xlsx$/i, ""),
    fileName,
    saved,
    names: saved.names,
    notes: Object.fromEntries(
      Object.entries(byId(({ notes }) => notes)).map(([id, notes], index) => [
        id,
        protectedSheets.has(index) ? { ...notes, protection: { hasPassword: protectedSheets.get(index)! } } : notes,
      ]),
    ),
    data: {
      id: "workbook",
      name: fileName,
      appVersion: "",
      locale: LocaleType.EN_US,
      styles,
      sheetOrder: read.map((_, index) => `sheet${index}`),
      sheets: byId(({ sheet }) => sheet),
      resources: [
        { name: "SHEET_CONDITIONAL_FORMATTING_PLUGIN", data: JSON.stringify(byId(({ conditional }) => conditional)) },
        { name: "SHEET_DATA_VALIDATION_PLUGIN", data: JSON.stringify(byId(({ validation }) => validation)) },
      ],
    },
  };
};

/** An empty sheet to write in. */
export const blankWorkbook = (): OpenedWorkbook => ({
  title: "Blank sheet",
  fileName: "sheet.xlsx",
  saved: readWorkbook(blankPackage("Sheet1"), []),
  names: {},
  notes: {},
  data: {
    id: "workbook",
    name: "Blank sheet",
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: ["sheet0"],
    sheets: {
      sheet0: {
        id: "sheet0",
        name: "Sheet1",
        ...gridLook,
        defaultColumnWidth: widthToWriteIn,
        rowCount: least.rows,
        columnCount: least.columns,
        cellData: {},
      },
    },
  },
});
