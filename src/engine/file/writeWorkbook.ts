import { cellName, placeOf } from "../../cells/addresses";
import { isDynamic } from "../../cells/dynamicFormula";
import { toStored } from "../../cells/storedFormula";
import type { EngineValue } from "../engineValue";
import type { ComputedSheet } from "../workbookInput";
import { dynamicMark } from "./dynamicMark";
import { editSheet, type CellChange } from "./editSheet";
import { partText, setPart } from "./partXml";
import { walkSheet } from "./sheetPart";
import { dropParts, openPackage, type WorkbookPackage } from "./workbookPackage";
import { packParts } from "./zipParts";

/** Every cell a computed formula fills, with its address. */
export const filledCells = (
  address: string,
  cell: { value: EngineValue; spill?: EngineValue[][] },
): [string, EngineValue][] => {
  if (!cell.spill) return [[address, cell.value]];
  const { row, column } = placeOf(address);
  return cell.spill.flatMap((line, down) =>
    line.map((value, right): [string, EngineValue] => [cellName(row + down, column + right), value]),
  );
};

/** A cell as it was typed in: a value, or a formula in its typed form with what it shows and fills. */
export type Entry =
  | { readonly value: EngineValue | undefined; readonly formula?: undefined }
  | { readonly formula: string; readonly value: EngineValue | undefined; readonly area?: string };

/** By sheet name and address. */
export type Entries = ReadonlyMap<string, ReadonlyMap<string, Entry>>;

/** Without an order of calculation Excel makes its own; with a wrong one it calls the file damaged. */
const orderOfCalculation = ["calcChain"];

const copyOf = (file: WorkbookPackage): WorkbookPackage => ({ ...file, parts: { ...file.parts } });

/**
 * The same workbook with changed cells: what was typed in, and what its formulas show now. Everything else stays as it is:
 * styles, names, validation, protection, charts, print set-up. `unchanged` tells of results that the file holds already.
 */
export const withChanges = (
  original: WorkbookPackage,
  entries: Entries,
  computed: readonly ComputedSheet[],
  unchanged: (sheet: string, address: string, value: EngineValue) => boolean = () => false,
): Uint8Array => {
  const file = copyOf(original);
  let hasOtherFormulas = false;
  let mark: number | undefined;
  for (const { name, path } of file.sheets) {
    const own = entries.get(name) ?? new Map<string, Entry>();
    const changes = new Map<string, CellChange>();
    const results = computed.find((sheet) => sheet.name === name)?.cells ?? {};
    for (const [address, cell] of Object.entries(results)) {
      if (own.has(address)) continue;
      for (const [inner, value] of filledCells(address, cell)) {
        const isFirst = inner === address;
        if (!isFirst && !unchanged(name, inner, value)) changes.set(inner, { kind: "value", value });
        if (isFirst) changes.set(inner, { kind: "result", value, area: cell.area });
      }
    }
    for (const [address, entry] of own) {
      if (entry.formula === undefined) {
        changes.set(address, { kind: "value", value: entry.value });
        continue;
      }
      const isArray = isDynamic(entry.formula);
      if (isArray) mark ??= dynamicMark(file);
      changes.set(address, {
        kind: "formula",
        stored: toStored(entry.formula),
        value: entry.value,
        ...(isArray ? { area: entry.area ?? address, mark } : {}),
      });
    }
    dropUnchanged(file, path, name, changes, unchanged);
    if (changes.size > 0 && editSheet(file.parts, path, changes)) hasOtherFormulas = true;
  }
  if (hasOtherFormulas) dropParts(file, orderOfCalculation);
  return packParts(file.parts);
};

/** Results that show and fill what the file says already are not written again. */
const dropUnchanged = (
  { parts }: WorkbookPackage,
  path: string,
  sheet: string,
  changes: Map<string, CellChange>,
  unchanged: (sheet: string, address: string, value: EngineValue) => boolean,
): void => {
  walkSheet(parts, path, {
    cell: ({ address, formula }) => {
      const change = changes.get(address);
      if (change?.kind !== "result" || !unchanged(sheet, address, change.value)) return;
      const { t, ref = address } = formula?.attributes ?? {};
      if (t !== "array" || change.area === undefined || ref === change.area) changes.delete(address);
    },
  });
};

/** Parts that only formulas need: the marks of dynamic arrays and the order of calculation. */
const partsOfFormulas = ["sheetMetadata", ...orderOfCalculation];

const withoutFormulaNames = (xml: string): string =>
  xml
    .replace(/<definedName\b[^>]*>([^<]*)<\/definedName>/g, (tag, formula: string) =>
      /_xlf|_xldudf|_xludf/i.test(formula) ? "" : tag,
    )
    .replace(/<definedNames>\s*<\/definedNames>/, "");

/**
 * The same workbook with values in place of formulas, for people without the add-in: styles, widths, charts, names and
 * everything else stay as they are. Formulas that were not computed leave what they showed when the file was saved. Names
 * that stand for formulas go, as do the marks of dynamic arrays.
 */
export const valuesOnly = (
  original: WorkbookPackage,
  computed: readonly ComputedSheet[],
  entries: Entries = new Map(),
): Uint8Array => {
  const file = copyOf(original);
  for (const { name, path } of file.sheets) {
    const results = computed.find((sheet) => sheet.name === name)?.cells ?? {};
    const changes = new Map<string, CellChange>();
    for (const [address, { value }] of entries.get(name) ?? []) changes.set(address, { kind: "value", value });
    const frozen = new Map<string, CellChange>();
    walkSheet(file.parts, path, {
      cell: ({ address, formula, attributes }) => {
        const isMarked = attributes.cm !== undefined || attributes.vm !== undefined;
        if (formula || isMarked) frozen.set(address, { kind: "frozen" });
      },
    });
    for (const [address, cell] of Object.entries(results)) {
      for (const [inner, value] of filledCells(address, cell)) changes.set(inner, { kind: "value", value });
    }
    for (const [address, change] of frozen) if (!changes.has(address)) changes.set(address, change);
    if (changes.size > 0) editSheet(file.parts, path, changes);
  }
  dropParts(file, partsOfFormulas);
  setPart(file.parts, file.mainPath, withoutFormulaNames(partText(file.parts, file.mainPath)));
  for (const path of Object.keys(file.parts).filter((name) => /^xl\/tables\/[^/]+\.xml$/.test(name))) {
    const xml = partText(file.parts, path);
    setPart(file.parts, path, xml.replace(/<(calculatedColumnFormula|totalsRowFormula)\b[^>]*>[^<]*<\/\1>/g, ""));
  }
  return packParts(file.parts);
};

/** The same workbook showing what it showed when it was saved, without formulas. */
export const withoutFormulas = (bytes: Uint8Array): Uint8Array => valuesOnly(openPackage(bytes), []);
