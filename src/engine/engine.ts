import {
  CalculateFormulaService,
  ICalculateFormulaService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  type ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";
import { cellName, cellsOfArea, placeOf, sheetSize } from "../cells/addresses";
import { calculateSession, type Calculated, type CalculationLimits } from "./calculateSession";
import { cellContent, withEquals } from "./cellContent";
import { spokenWords } from "./cellError";
import { Dependencies, fullAddress } from "./dependencies";
import { engineError, fromEngineCell, fromValueObject, isEngineError, type EngineValue } from "./engineValue";
import { explainName } from "./explainName";
import { giveNames } from "./giveNames";
import type { EngineFunction } from "./oxygenFunction";
import { openSession, sheetIdAt, type CellRows } from "./session";
import { syntaxWords } from "./syntaxWords";
import { usedSize, type SheetRoom } from "./usedSize";
import type { ComputedCell, ComputedSheet, SheetCell, SheetInput, WorkbookNames } from "./workbookInput";

/** Formulas depend on themselves by a way that their texts do not tell, as through INDIRECT or OFFSET. */
export class UntracedCircle extends Error {
  constructor() {
    super("has formulas that depend on themselves in a circle that can't be traced, as through INDIRECT or OFFSET");
  }
}

export interface Engine {
  /** Every formula's value as a 2-D array. Formulas see no cells. The "=" may be left out. */
  calculate(formulas: readonly string[]): Promise<EngineValue[][][]>;
  /**
   * Formulas that depend on themselves, and no others, show #CYCLE! with the way round.
   * @throws CalculationTooLong past the limit's moment; UntracedCircle.
   */
  calculateWorkbook(
    sheets: readonly SheetInput[],
    names?: WorkbookNames,
    limits?: CalculationLimits,
  ): Promise<ComputedSheet[]>;
  /** All function names known, built-in ones and OXYGEN.<ID>. */
  readonly functionNames: readonly string[];
  dispose(): void;
}

/** Room beyond what a workbook uses for spills that grow: little at first, since whole columns are read to the end. */
const margins: readonly SheetRoom[] = [
  { rows: 2_000, columns: 200 },
  { rows: 100_000, columns: 2_000 },
];

/** What a result becomes when it leaves the sheet; SEQUENCE says #REF!. */
const mayLackRoom = new Set(["#SPILL!", "#REF!"]);

const tableOf = (variant: FunctionVariantType): EngineValue[][] => {
  const value = variant.isReferenceObject()
    ? (variant as BaseReferenceObject).toArrayValueObject(false)
    : (variant as BaseValueObject);
  if (!value.isArray()) return [[fromValueObject(value)]];
  const array = value as ArrayValueObject;
  const width = array.getColumnCount();
  return array.getArrayValue().map((row) => Array.from({ length: width }, (_, column) => fromValueObject(row[column])));
};

const unreadable = (formula: string): EngineValue => engineError("#ERROR!", syntaxWords(formula));

type Rewordable = { formula: string; known: readonly string[]; names: readonly string[] };

/** The engine gives #NAME? without saying which name; the formula tells. */
const nameExplained = (value: EngineValue, { formula, known, names }: Rewordable): EngineValue => {
  if (!isEngineError(value) || value.error !== "#NAME?" || value.message !== spokenWords("#NAME?", "")) return value;
  return engineError("#NAME?", explainName(formula, known, names));
};

interface PlacedFormula {
  /** Its sheet's index. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/** The engine's cells of each sheet: what was typed in, without the cells that a formula filled when it was saved. */
const layOut = (
  sheets: readonly SheetInput[],
): { formulas: PlacedFormula[]; inputs: { name: string; cells: CellRows }[] } => {
  const formulas: PlacedFormula[] = [];
  const inputs = sheets.map(({ name, cells }, sheet) => {
    const rows: CellRows = {};
    const filled = new Set<string>();
    for (const [address, cell] of Object.entries(cells)) {
      if (cell.formula === undefined || !cell.ref) continue;
      for (const inner of cellsOfArea(cell.ref)) if (inner !== address) filled.add(inner);
    }
    for (const [address, cell] of Object.entries(cells)) {
      if (filled.has(address) && cell.formula === undefined) continue;
      const { row, column } = placeOf(address);
      if (cell.formula !== undefined) formulas.push({ sheet, row, column, formula: withEquals(cell.formula) });
      (rows[row] ??= {})[column] = cellContent(cell);
    }
    return { name, cells: rows };
  });
  return { formulas, inputs };
};

type Explain = (value: EngineValue, formula: string) => EngineValue;

/** What a formula's cell and those it fills show. */
const computedCell = (
  { sheet, row, column, formula }: PlacedFormula,
  { values, ranges, cells }: Calculated,
  unitId: string,
  explain: Explain,
): ComputedCell => {
  const sheetId = sheetIdAt(sheet);
  const shown = values[sheetId]?.[row]?.[column];
  const isReadable = shown !== undefined && syntaxWords(formula) === "";
  const value = isReadable ? explain(fromEngineCell(shown), formula) : unreadable(formula);
  const range = ranges[unitId]?.[sheetId]?.[row]?.[column];
  const address = cellName(row, column);
  const isBlocked = isEngineError(value) && value.error === "#SPILL!";
  if (!range || isBlocked) return { value, area: address };
  const filled = cells[unitId]?.[sheetId];
  const spill: EngineValue[][] = [];
  for (let r = range.startRow; r <= range.endRow; r++) {
    const line: EngineValue[] = [];
    for (let c = range.startColumn; c <= range.endColumn; c++) {
      line.push(explain(fromEngineCell(filled?.[r]?.[c]), formula));
    }
    spill.push(line);
  }
  return { value, spill, area: `${address}:${cellName(range.endRow, range.endColumn)}` };
};

/** The same formulas filling what they fill now. */
const filledNow = (sheets: readonly SheetInput[], computed: readonly ComputedSheet[]): SheetInput[] =>
  sheets.map((sheet, index) => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]): [string, SheetCell] => {
        const area = computed[index]?.cells[address]?.area;
        return [address, cell.formula !== undefined && area !== undefined ? { ...cell, ref: area } : cell];
      }),
    ),
  }));

/** The formulas of a workbook that depend on themselves, with what each of them shows, by full address. */
const findCircles = (
  sheets: readonly SheetInput[],
  names: WorkbookNames,
  computed: readonly ComputedSheet[],
): Map<string, EngineValue> => {
  const byTexts = new Dependencies(sheets, names).circles();
  const circles = byTexts.length > 0 ? byTexts : new Dependencies(filledNow(sheets, computed), names).circles();
  if (circles.length === 0) throw new UntracedCircle();
  const errors = new Map<string, EngineValue>();
  for (const circle of circles) {
    const way = circle.way.map(fullAddress);
    const shown = way.length > 8 ? [...way.slice(0, 6), `${way.length - 7} more`, way[way.length - 1]] : way;
    const words = `the formula depends on itself: ${shown.join(" → ")}`;
    for (const cell of circle.cells) errors.set(fullAddress(cell), engineError("#CYCLE!", words));
  }
  return errors;
};

/** The same sheets with errors in the place of some formulas. */
const withErrors = (sheets: readonly SheetInput[], errors: ReadonlyMap<string, EngineValue>): SheetInput[] =>
  sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]): [string, SheetCell] => {
        const error = errors.get(`${sheet.name}!${address}`);
        return [address, isEngineError(error) ? { value: error.error, words: error.message } : cell];
      }),
    ),
  }));

/** Makes an engine with the add-in's functions beside the built-in ones. Works in Node and in a page, shows nothing. */
export const createEngine = (functions: readonly EngineFunction[]): Engine => {
  const session = openSession(functions, [{ name: "Sheet1", cells: {} }], sheetSize);
  const functionNames = [...session.injector.get(IFunctionService).getExecutors().keys()].map(String);

  const calculate: Engine["calculate"] = async (formulas) => {
    const { injector, unitId } = session;
    injector.get(IFormulaCurrentConfigService).loadDataLite();
    const runtime = injector.get(IFormulaRuntimeService);
    const service = injector.get(ICalculateFormulaService) as CalculateFormulaService;
    runtime.reset();
    const results: EngineValue[][][] = [];
    for (const typed of formulas) {
      const formula = withEquals(typed);
      runtime.setCurrent(0, 0, sheetSize.rows, sheetSize.columns, sheetIdAt(0), unitId);
      let table: EngineValue[][];
      try {
        const variant = syntaxWords(formula) === "" ? await service.calculate(formula) : undefined;
        table = variant ? tableOf(variant) : [[unreadable(formula)]];
      } catch {
        table = [[unreadable(formula)]];
      }
      results.push(
        table.map((row) => row.map((value) => nameExplained(value, { formula, known: functionNames, names: [] }))),
      );
    }
    return results;
  };

  const computeAt = async (
    sheets: readonly SheetInput[],
    names: WorkbookNames,
    room: SheetRoom,
    limits: CalculationLimits,
  ): Promise<{ sheets: ComputedSheet[]; isCircular: boolean }> => {
    const { formulas, inputs } = layOut(sheets);
    const workbook = openSession(functions, inputs, room);
    try {
      giveNames(workbook.injector, workbook.unitId, names, (name) => {
        const index = sheets.findIndex((sheet) => sheet.name === name);
        return index < 0 ? undefined : sheetIdAt(index);
      });
      const calculated = await calculateSession(workbook, limits);
      const known = { known: functionNames, names: Object.keys(names.names ?? {}) };
      const explain: Explain = (value, formula) => nameExplained(value, { formula, ...known });
      const results: Record<string, ComputedCell>[] = sheets.map(() => ({}));
      for (const placed of formulas) {
        const address = cellName(placed.row, placed.column);
        results[placed.sheet]![address] = computedCell(placed, calculated, workbook.unitId, explain);
      }
      return {
        sheets: sheets.map(({ name }, index) => ({ name, cells: results[index]! })),
        isCircular: calculated.isCircular,
      };
    } finally {
      workbook.univer.dispose();
    }
  };

  const computeInRoom = async (
    sheets: readonly SheetInput[],
    names: WorkbookNames,
    limits: CalculationLimits,
  ): Promise<{ sheets: ComputedSheet[]; isCircular: boolean }> => {
    const used = usedSize(sheets, names);
    for (const [index, margin] of margins.entries()) {
      const computed = await computeAt(
        sheets,
        names,
        {
          rows: Math.min(sheetSize.rows, used.rows + margin.rows),
          columns: Math.min(sheetSize.columns, used.columns + margin.columns),
        },
        limits,
      );
      const lacksRoom = computed.sheets.some(({ cells }) =>
        Object.values(cells).some(({ value }) => isEngineError(value) && mayLackRoom.has(value.error)),
      );
      if (computed.isCircular || !lacksRoom || index === margins.length - 1) return computed;
    }
    throw new Error("no room was tried");
  };

  const calculateWorkbook: Engine["calculateWorkbook"] = async (sheets, names = {}, limits = {}) => {
    const computed = await computeInRoom(sheets, names, limits);
    if (!computed.isCircular) return computed.sheets;
    const errors = findCircles(sheets, names, computed.sheets);
    const others = await computeInRoom(withErrors(sheets, errors), names, limits);
    if (others.isCircular) throw new UntracedCircle();
    return others.sheets.map(({ name, cells }, index) => {
      const circular = Object.keys(sheets[index]!.cells).flatMap((address): [string, ComputedCell][] => {
        const value = errors.get(`${name}!${address}`);
        return value === undefined ? [] : [[address, { value, area: address, isCircular: true }]];
      });
      return { name, cells: { ...cells, ...Object.fromEntries(circular) } };
    });
  };

  return { calculate, calculateWorkbook, functionNames, dispose: () => session.univer.dispose() };
};
