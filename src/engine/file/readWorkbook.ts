import { areaOf, cellsOfArea } from "../../cells/addresses";
import { isErrorCode } from "../../cells/errorCodes";
import { shiftFormula } from "../../cells/shiftFormula";
import { toTyped } from "../../cells/storedFormula";
import { engineError, isDateFormat, isEngineError, type EngineValue } from "../engineValue";
import type { SheetCell, SheetInput, TableInput, WorkbookNames } from "../workbookInput";
import { walkPart } from "./partXml";
import { walkSheet, type StoredCell } from "./sheetPart";
import { damagedPart, mostAllowed, tooMany } from "./unusableWorkbook";
import { openPackage, relationshipsOf, someRelationshipsOf, type WorkbookPackage } from "./workbookPackage";
import { cellTextOf } from "./xmlScan";

/** What a cell showed when the workbook was saved. */
export interface SavedCell {
  /** Undefined for a cell that is only formatted. */
  readonly value: EngineValue | undefined;
  /** Its number format, "General" where it has none. */
  readonly format: string;
}

export interface SavedSheet extends SheetInput {
  readonly isHidden: boolean;
  /** By address. */
  readonly saved: ReadonlyMap<string, SavedCell>;
}

/** A workbook as it was saved: what to compute, and what its cells showed. */
export interface SavedWorkbook {
  readonly sheets: readonly SavedSheet[];
  readonly names: WorkbookNames;
  readonly file: WorkbookPackage;
  /** The saved value of a cell that holds one, by sheet name and address. */
  cached(sheet: string, address: string): EngineValue | undefined;
}

/** Formats that files name by number alone: ECMA-376 part 1, 18.8.30 (dates and times only; others show no date). */
const builtInFormats: Readonly<Record<string, string | undefined>> = {
  14: "mm-dd-yy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yy h:mm",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mmss.0",
};

const partOfType = ({ parts, mainPath }: WorkbookPackage, type: string): string | undefined =>
  relationshipsOf(parts, mainPath).find((relationship) => relationship.type === type)?.path;

/** The number format of each cell style. */
const readFormats = (file: WorkbookPackage): string[] => {
  const path = partOfType(file, "styles");
  if (path === undefined) return [];
  const codes: Record<string, string | undefined> = { ...builtInFormats };
  const formats: string[] = [];
  let isInCells = false;
  walkPart(file.parts, path, "styleSheet", {
    open: (tag, attributes) => {
      if (tag === "numFmt" && attributes.numFmtId !== undefined) codes[attributes.numFmtId] = attributes.formatCode;
      if (tag === "cellXfs") isInCells = true;
      if (tag === "xf" && isInCells) formats.push(attributes.numFmtId ?? "0");
    },
    close: (tag) => {
      if (tag === "cellXfs") isInCells = false;
    },
  });
  return formats.map((id) => codes[id] ?? "General");
};

const readSharedTexts = (file: WorkbookPackage): string[] => {
  const path = partOfType(file, "sharedStrings");
  if (path === undefined) return [];
  const texts: string[] = [];
  let text = "";
  let isReading = false;
  let isReadingOfCharacters = false;
  walkPart(file.parts, path, "sst", {
    open: (tag) => {
      if (tag === "si") text = "";
      if (tag === "rPh") isReadingOfCharacters = true;
      if (tag === "t") isReading = !isReadingOfCharacters;
    },
    text: (piece) => {
      if (isReading) text += piece;
    },
    close: (tag) => {
      if (tag === "t") isReading = false;
      if (tag === "rPh") isReadingOfCharacters = false;
      if (tag === "si") texts.push(cellTextOf(text));
    },
  });
  return texts;
};

/** Days from 1899-12-31, with the day that 1900 did not have: ISO 8601 to a serial of the 1900 system. */
const serialOf = (iso: string): number => {
  const milliseconds = Date.parse(/T/.test(iso) ? `${iso.replace(/Z$/, "")}Z` : `${iso}T00:00:00Z`);
  return milliseconds / 86_400_000 + 25_569;
};

type ValueOf = (cell: StoredCell) => EngineValue | undefined;

const valueReader = (path: string, sheet: string, texts: readonly string[], formats: readonly string[]): ValueOf => {
  const numberOf = (address: string, value: string, format: string): EngineValue => {
    const number = Number(value);
    if (value.trim() === "" || !Number.isFinite(number)) {
      throw damagedPart(path, `gives ${sheet}!${address} the value "${value.slice(0, 40)}", which is no number`);
    }
    return isDateFormat(format)
      ? { type: "Double", basicType: "Double", basicValue: number, numberFormat: format }
      : number;
  };
  return ({ address, attributes: { t: type = "n", s: style = "0" }, value, inlineText }) => {
    if (type === "inlineStr") return inlineText;
    if (value === undefined) return undefined;
    const format = formats[Number(style)] ?? "General";
    switch (type) {
      case "s": {
        const text = texts[Number(value)];
        if (value.trim() === "" || text === undefined) {
          throw damagedPart(path, `gives ${sheet}!${address} text ${value}, which the workbook does not hold`);
        }
        return text;
      }
      case "str":
        return cellTextOf(value);
      case "b":
        return value === "1" || value === "true";
      case "e":
        return engineError(value);
      case "d":
        return numberOf(address, String(serialOf(value)), isDateFormat(format) ? format : "yyyy-mm-dd hh:mm");
      case "n":
        return value === "" ? undefined : numberOf(address, value, format);
      default:
        throw damagedPart(path, `gives ${sheet}!${address} a value of an unknown kind, "${type}"`);
    }
  };
};

/** An error's text, which the engine takes for the error; a code it does not know must not pass for a text. */
const errorText = (code: string): string => (isErrorCode(code) ? code : "#VALUE!");

const mayBeStored = /_xl|ANCHORARRAY|SINGLE/i;

const typedFormula = (stored: string, ids: readonly string[]): string =>
  mayBeStored.test(stored) ? toTyped(stored, ids) : `=${stored}`;

const sizeOf = (range: string, fault: () => Error): number => {
  try {
    const { startRow, startColumn, endRow, endColumn } = areaOf(range);
    return (endRow - startRow + 1) * (endColumn - startColumn + 1);
  } catch {
    throw fault();
  }
};

interface Counts {
  cells: number;
  /** Cells that formulas fill. */
  filled: number;
  formulas: number;
}

const readSheet = (
  { name, path, isHidden }: WorkbookPackage["sheets"][number],
  file: WorkbookPackage,
  ids: readonly string[],
  valueOf: ValueOf,
  formats: readonly string[],
  counts: Counts,
): SavedSheet => {
  const cells: Record<string, SheetCell> = {};
  const saved = new Map<string, SavedCell>();
  const shared = new Map<string, { text: string; row: number; column: number }>();
  const filled = new Set<string>();
  walkSheet(file.parts, path, {
    cell: (cell) => {
      const { address, row, column, formula, attributes } = cell;
      if (++counts.cells > mostAllowed.cells) throw tooMany("cells", mostAllowed.cells);
      const value = valueOf(cell);
      saved.set(address, { value, format: formats[Number(attributes.s ?? 0)] ?? "General" });
      if (formula === undefined) {
        if (value === undefined || filled.has(address)) return;
        if (isEngineError(value)) cells[address] = { value: errorText(value.error) };
        else cells[address] = { value: typeof value === "object" ? value.basicValue : value };
        return;
      }
      if (++counts.formulas > mostAllowed.formulas) throw tooMany("formulas", mostAllowed.formulas);
      const { t: type, si = "", ref } = formula.attributes;
      let { text } = formula;
      if (type === "shared") {
        const first = shared.get(si);
        if (text !== "") shared.set(si, { text, row, column });
        else if (first) text = shiftFormula(first.text, row - first.row, column - first.column);
      }
      if (text === "" && type !== "dataTable") {
        throw damagedPart(path, `has a formula in ${name}!${address} whose text is missing`);
      }
      const fills = type === "array" || type === "dataTable" ? ref : undefined;
      if (fills !== undefined) {
        counts.filled += sizeOf(fills, () =>
          damagedPart(path, `has a formula in ${name}!${address} that fills "${fills}"`),
        );
        if (counts.filled > mostAllowed.cells) throw tooMany("cells", mostAllowed.cells);
        for (const inner of cellsOfArea(fills)) if (inner !== address) filled.add(inner);
      }
      cells[address] =
        type === "dataTable"
          ? { formula: "=TABLE()", ...(fills ? { ref: fills } : {}) }
          : { formula: typedFormula(text, ids), ...(fills ? { ref: fills } : {}) };
    },
  });
  return { name, isHidden, cells, saved };
};

const readTables = ({ parts, sheets }: WorkbookPackage): TableInput[] =>
  sheets.flatMap(({ name: sheet, path }) => {
    const relationships = someRelationshipsOf(parts, path);
    for (const { path: target } of relationships) {
      if (target && !(target in parts)) throw damagedPart(target, "is missing");
    }
    return relationships
      .filter(({ type }) => type === "table")
      .map(({ path: tablePath }): TableInput => {
        let table = { name: "", ref: "A1" };
        const columns: string[] = [];
        walkPart(parts, tablePath, "table", {
          open: (tag, { displayName, name = "", ref = "A1" }) => {
            if (tag === "table") table = { name: displayName ?? name, ref };
            if (tag === "tableColumn") columns.push(cellTextOf(name));
          },
        });
        return { ...table, sheet, columns };
      });
  });

const lookLikeReference = /^=(?:'(?:[^']|'')*'|[^'!(]+)![$A-Z0-9:]+$/i;

const readNames = (file: WorkbookPackage, ids: readonly string[]): WorkbookNames["names"] => {
  const own = file.names.filter(({ name, content }) => content.trim() !== "" && !/^_xlnm\./i.test(name));
  return Object.fromEntries(
    own.map(({ name, content }) => {
      const typed = toTyped(content, ids);
      return [name, lookLikeReference.test(typed) ? typed.slice(1) : typed];
    }),
  );
};

/** Names that stand for different things on different sheets, in capitals; the engine knows one meaning of a name. */
const readAmbiguousNames = ({ names }: WorkbookPackage): string[] => {
  const meanings = new Map<string, Set<string>>();
  for (const { name, content } of names) {
    if (/^_xlnm\./i.test(name)) continue;
    const upper = name.toUpperCase();
    meanings.set(upper, (meanings.get(upper) ?? new Set()).add(content));
  }
  return [...meanings].filter(([, contents]) => contents.size > 1).map(([name]) => name);
};

/**
 * Reads an .xlsx file's bytes, formulas in their typed form. `ids` are the add-in's function ids without namespace.
 * @throws UnusableWorkbook with words for a person: what is damaged, too large or of another kind, and what to do.
 */
export const readWorkbook = (bytes: Uint8Array, ids: readonly string[]): SavedWorkbook => {
  const file = openPackage(bytes);
  const formats = readFormats(file);
  const texts = readSharedTexts(file);
  const counts = { cells: 0, filled: 0, formulas: 0 };
  const sheets = file.sheets.map((sheet) =>
    readSheet(sheet, file, ids, valueReader(sheet.path, sheet.name, texts, formats), formats, counts),
  );
  const savedOf = new Map(sheets.map(({ name, saved }) => [name, saved]));
  return {
    sheets,
    names: { names: readNames(file, ids), tables: readTables(file), ambiguous: readAmbiguousNames(file) },
    file,
    cached: (sheet, address) => savedOf.get(sheet)?.get(address)?.value,
  };
};
