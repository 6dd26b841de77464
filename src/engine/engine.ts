import {
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type ICellData,
  type IObjectMatrixPrimitiveType,
  type IRange,
  type Injector,
  type Nullable,
} from "@univerjs/core";
import {
  CalculateFormulaService,
  FormulaDataModel,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  ISuperTableService,
  UniverFormulaEnginePlugin,
  type ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
  type IFormulaDatasetConfig,
} from "@univerjs/engine-formula";
import { areaOf, cellName, placeOf, cellsOfArea, type Area } from "../cells/addresses";
import { tokensOf, type TokenKind } from "../cells/formulaTokens";
import { spokenWords } from "./cellError";
import { engineError, fromEngineCell, fromValueObject, isEngineError, type EngineValue } from "./engineValue";
import { explainName } from "./explainName";
import type { EngineFunction } from "./oxygenFunction";
import { registerFunctions } from "./registerFunctions";

/** A cell that is typed in: a value, or a formula in its typed form with the leading "=". */
export type SheetCell =
  | { readonly value: number | string | boolean; readonly formula?: undefined }
  | {
      readonly formula: string;
      /** The cells its result filled when it was saved ("A1:C5"); these are not taken as typed in. */
      readonly ref?: string;
      readonly value?: unknown;
    };

export interface SheetInput {
  readonly name: string;
  /** By address: "B2". */
  readonly cells: Readonly<Record<string, SheetCell>>;
}

export interface WorkbookNames {
  /** Workbook-wide names: `{ Rate: "Plan!$B$2" }`, or a formula with "=". */
  readonly names?: Readonly<Record<string, string>>;
  readonly tables?: readonly TableInput[];
}

export interface TableInput {
  readonly name: string;
  readonly sheet: string;
  /** With its header row. */
  readonly ref: string;
  readonly columns: readonly string[];
}

/** What a formula cell shows; `spill` holds all its cells when it fills more than one. */
export interface ComputedCell {
  readonly value: EngineValue;
  readonly spill?: EngineValue[][];
  /** The filled area, "A1:C5"; one cell "A1" if it doesn't spill. */
  readonly area: string;
}

export interface ComputedSheet {
  readonly name: string;
  /** Formula cells only, by address. */
  readonly cells: Readonly<Record<string, ComputedCell>>;
}

export interface Engine {
  /** Every formula's value as a 2-D array. Formulas see no cells. The "=" may be left out. */
  calculate(formulas: readonly string[]): Promise<EngineValue[][][]>;
  /** @throws CircularFormulaError when formulas depend on themselves. */
  calculateWorkbook(sheets: readonly SheetInput[], names?: WorkbookNames): Promise<ComputedSheet[]>;
  /** All function names known, built-in ones and OXYGEN.<ID>. */
  readonly functionNames: readonly string[];
  dispose(): void;
}

const most = { rows: 1_048_576, columns: 16_384 };

/** Room beyond what a workbook uses for spills that grow: little at first, since whole columns are read to the end. */
const margins = [
  { rows: 2_000, columns: 200 },
  { rows: 100_000, columns: 2_000 },
];

/** What a result becomes when it leaves the sheet; SEQUENCE says #REF!. */
const mayLackRoom = new Set(["#SPILL!", "#REF!"]);

/** A chain of spills that feed on each other's inner cells settles one link a pass. */
const mostPasses = 50;

let unitCount = 0;

interface Session {
  readonly univer: Univer;
  readonly injector: Injector;
  readonly unitId: string;
}

type CellRows = Record<number, Record<number, ICellData>>;

const openSession = (
  functions: readonly EngineFunction[],
  sheets: readonly { name: string; cells: CellRows }[],
  size: { rows: number; columns: number },
): Session => {
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  // The engine's caches are shared by all engines of a process and keyed by unit, so each session needs its own id.
  const unitId = `unit${++unitCount}`;
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, {
    id: unitId,
    sheetOrder: sheets.map((_, index) => `sheet${index}`),
    sheets: Object.fromEntries(
      sheets.map(({ name, cells }, index) => [
        `sheet${index}`,
        { id: `sheet${index}`, name, rowCount: size.rows, columnCount: size.columns, cellData: cells },
      ]),
    ),
  });
  const injector = univer.__getInjector();
  registerFunctions(injector, functions);
  return { univer, injector, unitId };
};

const withEquals = (formula: string): string => {
  const trimmed = formula.trim();
  return trimmed.startsWith("=") ? trimmed : `=${trimmed}`;
};

const tableOf = (variant: FunctionVariantType): EngineValue[][] => {
  const value = variant.isReferenceObject()
    ? (variant as BaseReferenceObject).toArrayValueObject(false)
    : (variant as BaseValueObject);
  if (!value.isArray()) return [[fromValueObject(value)]];
  const array = value as ArrayValueObject;
  const width = array.getColumnCount();
  return array.getArrayValue().map((row) => Array.from({ length: width }, (_, column) => fromValueObject(row[column])));
};

/** Why a formula can't even be read, "" if it can. */
const syntaxWords = (formula: string): string => {
  const tokens = tokensOf(formula.replace(/^=/, ""));
  if (tokens.every(({ kind }) => kind === "space")) return "the formula is empty";
  if (tokens.some(({ kind, isOpen }) => kind === "quoted" && isOpen)) return "a text lacks its closing quotation mark";
  const count = (kind: TokenKind): number => tokens.filter((token) => token.kind === kind).length;
  const open = count("open") - count("close");
  if (open > 0) return `${open} closing parenthes${open === 1 ? "is is" : "es are"} missing`;
  if (open < 0) return "there is a closing parenthesis too many";
  // "0x10", "5kg", "1.2.3": digits and letters that run together are neither a number nor a name.
  const joined = tokens.findIndex(
    ({ kind }, index) => kind === "number" && /^(?:name|number|reference)$/.test(tokens[index + 1]?.kind ?? ""),
  );
  if (joined >= 0) return `${tokens[joined]!.text}${tokens[joined + 1]!.text} is neither a number nor a name`;
  return "";
};

const unreadable = (formula: string): EngineValue => engineError("#ERROR!", syntaxWords(formula));

type Rewordable = { formula: string; known: readonly string[]; names: readonly string[] };

/** The engine gives #NAME? without saying which name; the formula tells. */
const nameExplained = (value: EngineValue, { formula, known, names }: Rewordable): EngineValue => {
  if (!isEngineError(value) || value.error !== "#NAME?" || value.message !== spokenWords("#NAME?", "")) return value;
  return engineError("#NAME?", explainName(formula, known, names));
};

const formulaDataset = (injector: Injector, spilled: SpillState): IFormulaDatasetConfig => ({
  formulaData: injector.get(FormulaDataModel).getFormulaData(),
  arrayFormulaCellData: spilled.cells,
  arrayFormulaRange: spilled.ranges,
  forceCalculate: true,
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
});

interface SpillState {
  cells: IFormulaDatasetConfig["arrayFormulaCellData"];
  ranges: IFormulaDatasetConfig["arrayFormulaRange"];
}

interface Pass extends SpillState {
  /** By sheet id, row and column. */
  values: Record<string, CellRows>;
}

/** Formulas that feed on themselves in a circle have no value; the engine would stop somewhere on the way round. */
export class CircularFormulaError extends Error {
  constructor() {
    super("formulas of this workbook depend on themselves in a circle");
  }
}

const runOnce = async ({ injector, unitId }: Session, spilled: SpillState): Promise<Pass> => {
  const service = injector.get(ICalculateFormulaService) as CalculateFormulaService;
  return new Promise<Pass>((resolve, reject) => {
    const subscription = service.executionCompleteListener$.subscribe((result) => {
      subscription.unsubscribe();
      if (injector.get(IFormulaRuntimeService).isCycleDependency()) {
        reject(new CircularFormulaError());
        return;
      }
      const plain = <T>(data: Nullable<Record<string, { getMatrix(): IObjectMatrixPrimitiveType<T> }>>) =>
        Object.fromEntries(Object.entries(data ?? {}).map(([sheet, matrix]) => [sheet, matrix.getMatrix()]));
      resolve({
        values: structuredClone(plain(result.unitData[unitId])) as Record<string, CellRows>,
        cells: { [unitId]: structuredClone(plain(result.arrayFormulaCellData[unitId])) },
        ranges: structuredClone(result.arrayFormulaRange),
      });
    });
    // A throw while dependencies are read would otherwise leave no result and no sign.
    const guarded = service as unknown as { _executeStep: () => Promise<unknown> };
    const step = CalculateFormulaService.prototype as unknown as { _executeStep: () => Promise<unknown> };
    guarded._executeStep = () =>
      step._executeStep.call(service).catch((thrown: unknown) => {
        subscription.unsubscribe();
        reject(thrown instanceof Error ? thrown : new Error(String(thrown)));
      });
    service.execute(formulaDataset(injector, spilled)).catch(reject);
  });
};

/** Calculates until no cell changes: the engine orders formulas by their anchors, not by the cells they spill into. */
const runUntilStable = async (session: Session): Promise<Pass> => {
  let spilled: SpillState = { cells: {}, ranges: {} };
  let before = "";
  for (let count = 1; ; count++) {
    const pass = await runOnce(session, spilled);
    const hasSpills = Object.values(pass.ranges).some((ranges) => Object.keys(ranges ?? {}).length > 0);
    const now = hasSpills ? JSON.stringify([pass.values, pass.cells]) : "";
    if (now === before || count === mostPasses) return pass;
    before = now;
    spilled = pass;
  }
};

const rangeAt = (pass: Pass, unitId: string, sheetId: string, row: number, column: number): IRange | undefined =>
  pass.ranges[unitId]?.[sheetId]?.[row]?.[column];

const usedSize = (sheets: readonly SheetInput[], names: WorkbookNames): { rows: number; columns: number } => {
  let rows = 1;
  let columns = 1;
  const stretch = (area: Area): void => {
    rows = Math.max(rows, area.endRow + 1);
    columns = Math.max(columns, area.endColumn + 1);
  };
  const texts = Object.values(names.names ?? {});
  for (const { cells } of sheets) {
    for (const [address, cell] of Object.entries(cells)) {
      stretch(areaOf(address));
      if (cell.formula !== undefined) texts.push(cell.formula);
    }
  }
  for (const text of texts) {
    for (const reference of text.matchAll(/\$?([A-Za-z]{1,3})\$?(\d{1,7})(?![\d.(A-Za-z_])/g)) {
      const area = areaOf(`${reference[1]!.toUpperCase()}${reference[2]!}`);
      if (area.endRow < most.rows && area.endColumn < most.columns) stretch(area);
    }
  }
  return { rows, columns };
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
    const put = (row: number, column: number, cell: ICellData): void => {
      (rows[row] ??= {})[column] = cell;
    };
    const filled = new Set<string>();
    for (const [address, cell] of Object.entries(cells)) {
      if (cell.formula === undefined || !cell.ref) continue;
      for (const inner of cellsOfArea(cell.ref)) if (inner !== address) filled.add(inner);
    }
    for (const [address, cell] of Object.entries(cells)) {
      const { row, column } = placeOf(address);
      if (cell.formula !== undefined) {
        const formula = withEquals(cell.formula);
        formulas.push({ sheet, row, column, formula });
        put(row, column, { f: formula });
      } else if (!filled.has(address)) {
        const { value } = cell;
        if (typeof value === "boolean") put(row, column, { v: value ? 1 : 0, t: 3 });
        else put(row, column, { v: value, t: typeof value === "number" ? 2 : 1 });
      }
    }
    return { name, cells: rows };
  });
  return { formulas, inputs };
};

const registerNames = (
  { injector, unitId }: Session,
  sheets: readonly SheetInput[],
  { names = {}, tables = [] }: WorkbookNames,
): void => {
  const definedNames = injector.get(IDefinedNamesService);
  for (const [name, formulaOrRefString] of Object.entries(names)) {
    definedNames.registerDefinedName(unitId, { id: name, name, formulaOrRefString });
  }
  const superTables = injector.get(ISuperTableService);
  for (const { name, sheet, ref, columns } of tables) {
    const index = sheets.findIndex((candidate) => candidate.name === sheet);
    if (index < 0) continue;
    superTables.registerTable(unitId, name, {
      sheetId: `sheet${index}`,
      titleMap: new Map(columns.map((column, position) => [column, position])),
      range: areaOf(ref),
    });
  }
};

/** Makes an engine with the add-in's functions beside the built-in ones. Works in Node and in a page, shows nothing. */
export const createEngine = (functions: readonly EngineFunction[]): Engine => {
  const session = openSession(functions, [{ name: "Sheet1", cells: {} }], most);
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
      runtime.setCurrent(0, 0, most.rows, most.columns, "sheet0", unitId);
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
    size: { rows: number; columns: number },
  ): Promise<ComputedSheet[]> => {
    const { formulas, inputs } = layOut(sheets);
    const workbook = openSession(functions, inputs, size);
    const { unitId } = workbook;
    try {
      registerNames(workbook, sheets, names);
      const pass = await runUntilStable(workbook);
      const known = { known: functionNames, names: Object.keys(names.names ?? {}) };
      const results: Record<string, ComputedCell>[] = sheets.map(() => ({}));
      for (const { sheet, row, column, formula } of formulas) {
        const sheetId = `sheet${sheet}`;
        const explained = (value: EngineValue): EngineValue => nameExplained(value, { formula, ...known });
        const shown = pass.values[sheetId]?.[row]?.[column];
        const isReadable = shown !== undefined && syntaxWords(formula) === "";
        const value = isReadable ? explained(fromEngineCell(shown)) : unreadable(formula);
        const range = rangeAt(pass, unitId, sheetId, row, column);
        const address = cellName(row, column);
        const isBlocked = isEngineError(value) && value.error === "#SPILL!";
        if (!range || isBlocked) {
          results[sheet]![address] = { value, area: address };
          continue;
        }
        const cells = pass.cells[unitId]?.[sheetId];
        const spill: EngineValue[][] = [];
        for (let r = range.startRow; r <= range.endRow; r++) {
          const line: EngineValue[] = [];
          for (let c = range.startColumn; c <= range.endColumn; c++)
            line.push(explained(fromEngineCell(cells?.[r]?.[c])));
          spill.push(line);
        }
        const area = `${address}:${cellName(range.endRow, range.endColumn)}`;
        results[sheet]![address] = { value, spill, area };
      }
      return sheets.map(({ name }, index) => ({ name, cells: results[index]! }));
    } finally {
      workbook.univer.dispose();
    }
  };

  const calculateWorkbook: Engine["calculateWorkbook"] = async (sheets, names = {}) => {
    const used = usedSize(sheets, names);
    let computed: ComputedSheet[] = [];
    for (const margin of margins) {
      computed = await computeAt(sheets, names, {
        rows: Math.min(most.rows, used.rows + margin.rows),
        columns: Math.min(most.columns, used.columns + margin.columns),
      });
      const lacksRoom = computed.some(({ cells }) =>
        Object.values(cells).some(({ value }) => isEngineError(value) && mayLackRoom.has(value.error)),
      );
      if (!lacksRoom) break;
    }
    return computed;
  };

  return { calculate, calculateWorkbook, functionNames, dispose: () => session.univer.dispose() };
};
