import { CellValueType, type ICellData, type IStyleData, type Nullable, type Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { isCellDate } from "../cells/cellValues";
import { cellName, placeOf } from "../cells/addresses";
import { isSameValue } from "../engine/compareWithSaved";
import { withEquals } from "../engine/cellContent";
import { engineError, fromEngineCell, type EngineValue } from "../engine/engineValue";
import { withFormats } from "../engine/file/numberFormats";
import type { SavedWorkbook } from "../engine/file/readWorkbook";
import { valuesOnly, withChanges, type Entry } from "../engine/file/writeWorkbook";
import { holdSaved } from "../engine/holdSaved";
import { errorAt } from "../engine/registerFunctions";
import type { ComputedCell, ComputedSheet, SheetCell, SheetInput } from "../engine/workbookInput";
import type { CellOfSheet } from "../engine/dependencies";
import type { Grid } from "./grid";
import type { OpenedWorkbook } from "./openWorkbook";

/** Number format codes of cells by sheet name and address. */
export type Formats = ReadonlyMap<string, ReadonlyMap<string, string>>;

/** What differs between the grid and the file that was opened. */
export interface GridChanges {
  readonly entries: Map<string, Map<string, Entry>>;
  readonly formats: Map<string, Map<string, string>>;
}

/** A copy of the opened workbook with what was changed in the grid. */
export interface GridContent extends GridChanges {
  /** What is typed in now. */
  readonly inputs: readonly SheetInput[];
  readonly computed: readonly ComputedSheet[];
}

/** A text or a number as typed in; undefined for an empty cell. */
const typedValue = (cell: ICellData): number | string | boolean | undefined => {
  if (cell.p) return cell.p.body?.dataStream.replace(/\r?\n$/, "").replace(/\r/g, "\n") || undefined;
  const { v: value, t: type } = cell;
  if (value === null || value === undefined || value === "") return undefined;
  if (type === CellValueType.BOOLEAN || typeof value === "boolean") {
    return value === true || value === 1 || value === "1" || value === "TRUE";
  }
  if (type === CellValueType.NUMBER) return Number(value);
  return value;
};

const formatOf = (style: Nullable<IStyleData>): string => style?.n?.pattern ?? "";

/** The number formats a workbook comes with. */
export const openedFormats = ({ data }: OpenedWorkbook): Formats =>
  new Map(
    Object.values(data.sheets).map(({ name = "", cellData = {} }) => {
      const formats = new Map<string, string>();
      for (const [row, cells] of Object.entries(cellData)) {
        for (const [column, cell] of Object.entries((cells ?? {}) as Record<string, ICellData>)) {
          const style = typeof cell.s === "string" ? data.styles[cell.s] : cell.s;
          const format = formatOf(style);
          if (format !== "") formats.set(cellName(Number(row), Number(column)), format);
        }
      }
      return [name, formats];
    }),
  );

const isSameInput = (one: SheetCell | undefined, other: SheetCell | undefined): boolean =>
  one?.formula !== undefined || other?.formula !== undefined
    ? one?.formula !== undefined &&
      other?.formula !== undefined &&
      withEquals(one.formula) === withEquals(other.formula)
    : one?.value === other?.value ||
      (one === undefined && other?.value === "") ||
      (other === undefined && one?.value === "");

interface ReadCells {
  readonly cells: Record<string, SheetCell>;
  readonly computed: Record<string, ComputedCell>;
  readonly formats: Map<string, string>;
}

const readCells = (grid: Grid, sheet: Worksheet, circular: ReadonlyMap<string, string>): ReadCells => {
  const unitId = grid.workbook.getUnitId();
  const sheetId = sheet.getSheetId();
  const model = grid.injector.get(FormulaDataModel);
  const filled = model.getArrayFormulaCellData()[unitId]?.[sheetId];
  const ranges = model.getArrayFormulaRange()[unitId]?.[sheetId];
  const styles = grid.workbook.getStyles();
  const cells: Record<string, SheetCell> = {};
  const computed: Record<string, ComputedCell> = {};
  const formats = new Map<string, string>();
  const valueAt = (row: number, column: number, own: Nullable<ICellData>): EngineValue => {
    const error = errorAt(grid.injector, unitId, sheetId, row, column);
    return error
      ? engineError(error.error, error.message)
      : fromEngineCell(own as Parameters<typeof fromEngineCell>[0]);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    if (!cell) return;
    const address = cellName(row, column);
    const format = formatOf(styles.getStyleByCell(cell));
    if (format !== "") formats.set(address, format);
    const formula = cell.f || (cell.si ? model.getFormulaStringByCell(row, column, sheetId, unitId) : "");
    if (!formula) {
      const value = typedValue(cell);
      if (value !== undefined) cells[address] = { value };
      return;
    }
    cells[address] = { formula: withEquals(formula) };
    const round = circular.get(`${sheet.getName()}!${address}`);
    if (round !== undefined) {
      computed[address] = { value: engineError("#CYCLE!", round), area: address, isCircular: true };
      return;
    }
    const value = valueAt(row, column, cell);
    const range = ranges?.[row]?.[column];
    if (!range || (range.startRow === range.endRow && range.startColumn === range.endColumn)) {
      computed[address] = { value, area: address };
      if (isCellDate(value) && format === "") formats.set(address, value.numberFormat);
      return;
    }
    const spill: EngineValue[][] = [];
    for (let r = range.startRow; r <= range.endRow; r++) {
      const line: EngineValue[] = [];
      for (let c = range.startColumn; c <= range.endColumn; c++) {
        const inner = valueAt(r, c, filled?.[r]?.[c]);
        const own = formatOf(styles.getStyleByCell(sheet.getCellRaw(r, c)));
        if (isCellDate(inner) && own === "") formats.set(cellName(r, c), inner.numberFormat);
        line.push(inner);
      }
      spill.push(line);
    }
    computed[address] = {
      value: spill[0]?.[0] ?? value,
      spill,
      area: `${address}:${cellName(range.endRow, range.endColumn)}`,
    };
  });
  return { cells, computed, formats };
};

/** What the grid holds now, and how it differs from the opened file. `circular` are formulas that depend on themselves. */
export const readGrid = (
  grid: Grid,
  saved: SavedWorkbook,
  opened: Formats,
  circular: ReadonlyMap<string, string> = new Map(),
): GridContent => {
  const entries = new Map<string, Map<string, Entry>>();
  const formats = new Map<string, Map<string, string>>();
  const inputs: SheetInput[] = [];
  const computed: ComputedSheet[] = [];
  for (const sheet of grid.workbook.getSheets()) {
    const name = sheet.getName();
    const before = saved.sheets.find((one) => one.name === name)?.cells ?? {};
    const now = readCells(grid, sheet, circular);
    const own = new Map<string, Entry>();
    for (const [address, cell] of Object.entries(now.cells)) {
      if (isSameInput(cell, before[address])) continue;
      const result = now.computed[address];
      own.set(
        address,
        cell.formula === undefined
          ? { value: cell.value }
          : { formula: cell.formula, value: result?.value, area: result?.area ?? address },
      );
    }
    for (const address of Object.keys(before)) {
      if (!(address in now.cells) && !isSameInput(undefined, before[address])) own.set(address, { value: undefined });
    }
    entries.set(name, own);
    const changedFormats = new Map<string, string>();
    for (const [address, format] of now.formats) {
      if ((opened.get(name)?.get(address) ?? "") !== format) changedFormats.set(address, format);
    }
    for (const address of opened.get(name)?.keys() ?? []) {
      if (!now.formats.has(address)) changedFormats.set(address, "General");
    }
    formats.set(name, changedFormats);
    inputs.push({ name, cells: now.cells });
    computed.push({ name, cells: now.computed });
  }
  return { entries, formats, inputs, computed };
};

/** Formulas that can't be calculated here keep what the file says they showed. */
const withoutHeld = (saved: SavedWorkbook, content: GridContent, known: readonly string[]): ComputedSheet[] => {
  const changed: CellOfSheet[] = [];
  const { held } = holdSaved(content.inputs, saved.names, saved.cached, known, changed);
  const kept = new Set(held.filter(({ isLost }) => !isLost).map(({ sheet, address }) => `${sheet}!${address}`));
  return content.computed.map(({ name, cells }) => ({
    name,
    cells: Object.fromEntries(
      Object.entries(cells).filter(
        ([address]) => !kept.has(`${name}!${address}`) || content.entries.get(name)?.has(address),
      ),
    ),
  }));
};

/** The opened workbook with the cells that changed, formulas as files keep them. */
export const savedCopy = (saved: SavedWorkbook, content: GridContent, known: readonly string[]): Uint8Array =>
  withFormats(
    withChanges(saved.file, withSpills(content), withoutHeld(saved, content, known), (sheet, address, value) =>
      isSameValue(value, saved.cached(sheet, address)),
    ),
    content.formats,
  );

/** The same with what the formulas show in their place. */
export const valuesCopy = (saved: SavedWorkbook, content: GridContent, known: readonly string[]): Uint8Array =>
  withFormats(valuesOnly(saved.file, withoutHeld(saved, content, known), content.entries), content.formats);

/** What a new formula fills is written with it. */
const withSpills = ({ entries, computed }: GridContent): Map<string, Map<string, Entry>> =>
  new Map(
    [...entries].map(([name, own]) => {
      const all = new Map(own);
      const cells = computed.find((sheet) => sheet.name === name)?.cells ?? {};
      for (const [address, entry] of own) {
        const spill = entry.formula === undefined ? undefined : cells[address]?.spill;
        if (!spill) continue;
        const { row, column } = placeOf(address);
        spill.forEach((line, down) =>
          line.forEach((value, right) => {
            const inner = cellName(row + down, column + right);
            if (inner !== address) all.set(inner, { value });
          }),
        );
      }
      return [name, all];
    }),
  );
