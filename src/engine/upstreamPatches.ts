import type { Injector } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseReferenceObject,
  CELL_INVERTED_INDEX_CACHE,
  FormulaRuntimeService,
  functionLookup,
  IFunctionService,
  Interpreter,
  LexerTreeBuilder,
  ValueObjectFactory,
  type BaseFunction,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { errorWithWords, wordsOfCell, type EngineCell } from "./cellError";
import { AnchorArray, Single, spellOutOperators } from "./spillReference";

/**
 * Everything that Univer 0.25.1 gets wrong for this project, put right from outside. Each patch has a test under
 * tests/engine/upstreamPatches.test.ts that shows the fault without it, so an upstream change is noticed.
 */

interface Patchable {
  prototype: object;
}

const patched = new WeakMap<object, Set<string>>();

/** Replaces a method once, however often the engine is set up in one process or page. */
const replaceMethod = <Method extends (...args: never[]) => unknown>(
  owner: Patchable,
  name: string,
  replacement: (original: Method) => Method,
): void => {
  const target = owner.prototype as Record<string, unknown>;
  const done = patched.get(target) ?? new Set<string>();
  if (done.has(name)) return;
  patched.set(target, done.add(name));
  const original = target[name];
  if (typeof original !== "function") throw new Error(`the engine has no method ${name} any more`);
  target[name] = replacement(original as Method);
};

/** SORT sorts the rows of the array it is given in place, and ranges are shared between formulas. */
const copyBeforeSort = (): void => {
  const sort = functionLookup.find(([, name]) => String(name) === "SORT")?.[0] as unknown as Patchable | undefined;
  if (!sort) throw new Error("the engine has no SORT any more");
  type Calculate = (this: BaseFunction, array: BaseValueObject, ...rest: BaseValueObject[]) => BaseValueObject;
  replaceMethod<Calculate>(
    sort,
    "calculate",
    (original) =>
      function (array, ...rest) {
        if (!array?.isArray()) return original.call(this, array, ...rest);
        const shared = array as ArrayValueObject;
        const copy = ArrayValueObject.create({
          calculateValueList: shared.getArrayValue().map((row) => [...row]),
          rowCount: shared.getRowCount(),
          columnCount: shared.getColumnCount(),
          unitId: shared.getUnitId(),
          sheetId: shared.getSheetId(),
          row: shared.getCurrentRow(),
          column: shared.getCurrentColumn(),
        });
        return original.call(this, copy, ...rest);
      },
  );
};

/**
 * Comparisons look values up in an index keyed by sheet and cell. Arrays that a function computes on the way claim the
 * place of the formula's own cell, so SORT({8;7;9})=2 finds what another array held there; and keeping the index up to
 * date takes time with the square of a spill's length. Without it, comparisons read the values themselves.
 */
const compareWithoutIndex = (): void => {
  Object.assign(CELL_INVERTED_INDEX_CACHE, {
    set: () => undefined,
    setContinueBuildingCache: () => undefined,
    canUseCache: () => ({ rowsInCache: [], rowsNotInCache: [] }),
  } satisfies Partial<typeof CELL_INVERTED_INDEX_CACHE>);
};

/** Splits at a mark that stands outside quoted texts. */
const splitOutsideTexts = (words: string, mark: "," | ";"): string[] =>
  words.match(new RegExp(`${mark}|(?:"[^"]*"|[^"${mark}])+`, "g"))!.filter((part) => part !== mark);

/** An array constant is cut at every comma and semicolon, also at those inside its texts: {"12,5";7} gets two columns. */
const keepTextsOfConstants = (): void => {
  type Format = (this: ArrayValueObject, raw: string | object) => BaseValueObject[][];
  replaceMethod<Format>(
    ArrayValueObject as unknown as Patchable,
    "_formatValue",
    (original) =>
      function (raw) {
        if (typeof raw !== "string" || !/"[^"]*[,;]/.test(raw)) return original.call(this, raw);
        const rows = splitOutsideTexts(raw.slice(1, -1), ";").map((row) =>
          splitOutsideTexts(row, ",").map((cell) => ValueObjectFactory.create(cell.trim())),
        );
        return original.call(this, {
          calculateValueList: rows,
          rowCount: rows.length,
          columnCount: Math.max(...rows.map((row) => row.length)),
          unitId: "",
          sheetId: "",
          row: -1,
          column: -1,
        });
      },
  );
};

/** Text that is typed in a formula becomes a number where it looks like one: "05/03/2026" a date, in some order of its own. */
const keepTextsAsTexts = (): void => {
  type Create = (raw: unknown, ignorePattern?: boolean) => BaseValueObject;
  replaceMethod<Create>(
    { prototype: ValueObjectFactory },
    "create",
    (original) => (raw, ignorePattern) =>
      original.call(ValueObjectFactory, raw, ignorePattern || (typeof raw === "string" && /^\s*"[^]*"\s*$/.test(raw))),
  );
};

/** The engine reads "#" as nothing or #VALUE! and refuses "@" before a single cell. */
const readSpillAndSingle = (): void => {
  type Build = (this: LexerTreeBuilder, formula: string, ...rest: unknown[]) => unknown;
  replaceMethod<Build>(
    LexerTreeBuilder,
    "treeBuilder",
    (original) =>
      function (formula, ...rest) {
        return original.call(this, spellOutOperators(formula), ...rest);
      },
  );
};

/** An error read from a cell comes without its words. */
const keepWordsOfReferences = (): void => {
  type Read = (this: BaseReferenceObject, cell: EngineCell) => BaseValueObject;
  replaceMethod<Read>(
    BaseReferenceObject as unknown as Patchable,
    "getCellValueObject",
    (original) =>
      function (cell) {
        const value = original.call(this, cell);
        const words = value.isError() ? wordsOfCell(cell) : "";
        return words ? errorWithWords(String(value.getValue()), words) : value;
      },
  );
};

/** A new result leaves the custom data of the old one in the cell, so old words would stay beside a new error. */
const clearWordsWithResult = (): void => {
  type Write = (this: FormulaRuntimeService, value: BaseValueObject) => EngineCell | undefined;
  replaceMethod<Write>(
    FormulaRuntimeService as unknown as Patchable,
    "_getValueObjectOfRuntimeData",
    (original) =>
      function (value) {
        const cell = original.call(this, value);
        if (cell && cell.custom === undefined) cell.custom = null;
        return cell;
      },
  );
};

/** A throw in any function ends the recalculation without a result and without a sign. */
const surviveThrows = (): void => {
  type Execute = (this: Interpreter, node: unknown) => unknown;
  replaceMethod<Execute>(
    Interpreter as unknown as Patchable,
    "execute",
    (original) =>
      function (node) {
        try {
          return original.call(this, node);
        } catch (thrown) {
          const words = thrown instanceof Error ? thrown.message : String(thrown);
          return errorWithWords("#VALUE!", `the calculation failed: ${words}`);
        }
      },
  );
};

/** Puts all class-wide patches in place; safe to call again. */
export const patchEngine = (): void => {
  copyBeforeSort();
  compareWithoutIndex();
  keepTextsOfConstants();
  keepTextsAsTexts();
  readSpillAndSingle();
  keepWordsOfReferences();
  clearWordsWithResult();
  surviveThrows();
};

/** Gives one engine the functions that the patches write into formulas. */
export const registerPatchFunctions = (injector: Injector): void => {
  injector.get(IFunctionService).registerExecutors(new AnchorArray("ANCHORARRAY"), new Single("SINGLE"));
};

interface Alert {
  key?: string;
  message?: unknown;
  location: { unitId: string; subUnitId: string; row: number; col: number };
}

/** The part of CellAlertManagerService (@univerjs/sheets-ui) that shows a pop-up beside a cell. */
export interface AlertService {
  showAlert(alert: Alert): void;
}

/** Marks the pop-ups of formula errors among all pop-ups of cells. */
const formulaAlertKey = "SHEET_FORMULA_ALERT";

/** The pop-up of an error cell explains the code only; this puts the cell's own words in. */
export const speakErrorAlerts = (
  alerts: AlertService,
  wordsAt: (unitId: string, sheetId: string, row: number, column: number) => string,
): void => {
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { unitId, subUnitId, row, col } = alert.location;
    const words = alert.key === formulaAlertKey ? wordsAt(unitId, subUnitId, row, col) : "";
    show(words ? { ...alert, message: words } : alert);
  };
};
