import type { Injector } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseReferenceObject,
  CELL_INVERTED_INDEX_CACHE,
  FormulaRuntimeService,
  functionLookup,
  functionStatistical,
  IFunctionService,
  Interpreter,
  LexerTreeBuilder,
  NumberValueObject,
  ValueObjectFactory,
  type BaseFunction,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import { cellKind } from "./cellKind";
import { errorWithWords, wordsOfCell, type EngineCell } from "./cellError";
import { parseFormula, significant } from "../cells/formulaTree";
import { readNumber } from "../cells/numberText";
import { replaceMethod } from "./replaceMethod";
import { AnchorArray, Omitted, Single, spellOutOperators } from "./spillReference";

/**
 * Everything that Univer 0.25.1 gets wrong for this project, put right from outside. Each patch has a test under
 * tests/engine/upstreamPatches.test.ts that shows the fault without it, so an upstream change is noticed.
 */

const builtIn = (name: string): unknown => {
  const found = [...functionLookup, ...functionStatistical].find(([, other]) => String(other) === name)?.[0];
  if (!found) throw new Error(`the engine has no ${name} any more`);
  return found;
};

/** SORT sorts the rows of the array it is given in place, and ranges are shared between formulas. */
const copyBeforeSort = (): void => {
  type Calculate = (this: BaseFunction, array: BaseValueObject, ...rest: BaseValueObject[]) => BaseValueObject;
  replaceMethod<Calculate>(
    builtIn("SORT"),
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
 * MAXIFS and MINIFS of no cell give an array of nothing in the place of a value. They are 0: "MAXIFS function" of
 * Microsoft's function reference, remarks.
 */
const noneIsZero = (): void => {
  type Calculate = (this: BaseFunction, ...args: BaseValueObject[]) => BaseValueObject;
  const single = (value: BaseValueObject): BaseValueObject => (value.isArray() ? NumberValueObject.create(0) : value);
  for (const name of ["MAXIFS", "MINIFS"]) {
    replaceMethod<Calculate>(
      builtIn(name),
      "calculate",
      (original) =>
        function (...args) {
          const value = original.call(this, ...args);
          if (!value.isArray()) return value;
          const array = value as ArrayValueObject;
          const isOne = array.getRowCount() === 1 && array.getColumnCount() <= 1;
          return isOne ? single(value) : array.map((cell) => single(cell));
        },
    );
  }
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
    ArrayValueObject,
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

/**
 * A number is one only if it is spelled as JavaScript would: 1.50, .5, 2.0 and 1E3 are texts, in formulas, in array
 * constants and in criteria. A text that is typed in a formula becomes a number where it looks like one: "05/03/2026" a
 * date, in some order of its own.
 */
const readNumbersAndTexts = (): void => {
  type Create = (raw: unknown, ignorePattern?: boolean) => BaseValueObject;
  replaceMethod<Create>({ prototype: ValueObjectFactory }, "create", (original) => (raw, ignorePattern) => {
    if (typeof raw !== "string") return original.call(ValueObjectFactory, raw, ignorePattern);
    const text = raw.trim();
    const [, sign = "", digits = text] = /^([-+]?)\s*([\d.].*)$/.exec(text) ?? [];
    const value = readNumber(digits);
    if (value !== undefined) return original.call(ValueObjectFactory, sign === "-" ? -value : value, ignorePattern);
    return original.call(ValueObjectFactory, raw, ignorePattern || /^"[^]*"$/.test(text));
  });
};

/** A cell without a stated kind holds what it holds; only formulas and criteria spell numbers. */
const keepTextsOfCells = (cell: EngineCell): EngineCell =>
  cell.t == null && typeof cell.v === "string" && String(Number(cell.v)) !== cell.v
    ? { ...cell, t: cellKind.text }
    : cell;

interface FormulaLexer {
  _segment: string;
  /** Index of the character that was noted last; ours. */
  lastNoted?: number;
}

/**
 * Of the two quotation marks that stand for one within a text the first is dropped: """" twice over comes out as one mark,
 * and every later place in the formula is off by one, so that edits and names cut texts.
 */
const keepDoubledQuotes = (): void => {
  type Reset = (this: FormulaLexer) => void;
  replaceMethod<Reset>(
    LexerTreeBuilder,
    "_resetTemp",
    (original) =>
      function () {
        this.lastNoted = -1;
        original.call(this);
      },
  );
  type Note = (this: FormulaLexer, notes: unknown[] | undefined, character: string, at: number) => void;
  replaceMethod<Note>(
    LexerTreeBuilder,
    "_addSequenceArray",
    (original) =>
      function (notes, character, at) {
        if (character === '"' && at === this.lastNoted! + 2) {
          original.call(this, notes, character, at - 1);
          this._segment += character;
        }
        original.call(this, notes, character, at);
        this.lastNoted = at;
      },
  );
};

/** Of numbers with an exponent and a sign 1.E+3 is cut at the sign. */
const readExponents = (): void => {
  type Test = (this: FormulaLexer, characters: readonly string[], at: number, character: string) => boolean;
  replaceMethod<Test>(
    LexerTreeBuilder,
    "_isScientificNotation",
    () =>
      function (characters, at, character) {
        const isSign = character === "+" || character === "-";
        return isSign && /\d/.test(characters[at + 1] ?? "") && /^\s*-?(?:\d+\.?\d*|\.\d+)e$/i.test(this._segment);
      },
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

/**
 * A name's content is put into the formula as text, so that Half*2 with Half =1+2 gives 5; and it misses what is done to
 * formulas here.
 */
const readNamesWhole = (): void => {
  type Nested = (this: LexerTreeBuilder, content: string, ...rest: unknown[]) => unknown;
  replaceMethod<Nested>(
    LexerTreeBuilder,
    "_handleNestedDefinedName",
    (original) =>
      function (content, ...rest) {
        if (!content.startsWith("=")) return original.call(this, content, ...rest);
        const whole = significant(parseFormula(content)).length > 1 ? `=(${content.slice(1)})` : content;
        return original.call(this, spellOutOperators(whole), ...rest);
      },
  );
};

/** An error read from a cell comes without its words. */
const keepWordsOfReferences = (): void => {
  type Read = (this: BaseReferenceObject, cell: EngineCell) => BaseValueObject;
  replaceMethod<Read>(
    BaseReferenceObject,
    "getCellValueObject",
    (original) =>
      function (cell) {
        const value = original.call(this, keepTextsOfCells(cell));
        const words = value.isError() ? wordsOfCell(cell) : "";
        return words ? errorWithWords(String(value.getValue()), words) : value;
      },
  );
};

/** A new result leaves the custom data of the old one in the cell, so old words would stay beside a new error. */
const clearWordsWithResult = (): void => {
  type Write = (this: FormulaRuntimeService, value: BaseValueObject) => EngineCell | undefined;
  replaceMethod<Write>(
    FormulaRuntimeService,
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
    Interpreter,
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
  noneIsZero();
  compareWithoutIndex();
  keepTextsOfConstants();
  readNumbersAndTexts();
  keepDoubledQuotes();
  readExponents();
  readSpillAndSingle();
  readNamesWhole();
  keepWordsOfReferences();
  clearWordsWithResult();
  surviveThrows();
};

/** Gives one engine the functions that the patches write into formulas. */
export const registerPatchFunctions = (injector: Injector): void => {
  injector
    .get(IFunctionService)
    .registerExecutors(new AnchorArray("ANCHORARRAY"), new Single("SINGLE"), new Omitted("OMITTED"));
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
