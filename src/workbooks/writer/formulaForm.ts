import { callsIn, parseFormula, significant, type FormulaNode } from "../../cells/formulaTree";
import { toStored } from "../../cells/storedFormula";

/** Recalculated on every change, or on opening: a file with one never keeps its cached values. */
const volatile = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY", "OFFSET", "INDIRECT", "INFO", "CELL"]);

/** Functions of Excel 2007 and before that take whole ranges and give one value. */
const takesRanges = new Set(
  (
    "SUM SUMIF SUMIFS SUMPRODUCT COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS AVERAGE AVERAGEIF AVERAGEIFS MIN MAX MEDIAN " +
    "AND OR ROWS COLUMNS SMALL LARGE STDEV VAR PRODUCT NPV IRR SLOPE INTERCEPT RSQ CORREL RANK"
  ).split(" "),
);

/** Functions of Excel 2007 and before that take single values. */
const takesCells = new Set(
  (
    "IF IFERROR NOT ISNUMBER ISTEXT ISBLANK ISERROR ISNA ISLOGICAL N T NA ABS SIGN INT TRUNC ROUND ROUNDUP ROUNDDOWN " +
    "CEILING FLOOR MOD SQRT EXP LN LOG LOG10 POWER PI SIN COS TAN ATAN RADIANS DEGREES DATE DATEVALUE TIME YEAR MONTH " +
    "DAY HOUR MINUTE SECOND WEEKDAY WEEKNUM EDATE EOMONTH TEXT VALUE CONCATENATE LEFT RIGHT MID LEN FIND SEARCH " +
    "SUBSTITUTE REPT TRIM UPPER LOWER PROPER EXACT CHOOSE PMT"
  ).split(" "),
);

const givesOneValue = (nodes: readonly FormulaNode[], singleCellNames: ReadonlySet<string>): boolean =>
  nodes.every((node) => {
    switch (node.kind) {
      case "text":
        return node.token === "quoted" || !/[:{[]/.test(node.text);
      case "name":
        return /^(?:TRUE|FALSE)$/i.test(node.text) || singleCellNames.has(node.text.toUpperCase());
      case "group":
        return givesOneValue(node.items, singleCellNames);
      case "call": {
        const name = node.name.toUpperCase();
        if (takesCells.has(name)) return node.args.every((argument) => givesOneValue(argument, singleCellNames));
        if (!takesRanges.has(name)) return false;
        return node.args.every((argument) => {
          const parts = significant(argument);
          const [only] = parts;
          const isWholeRange = parts.length === 1 && (only?.kind === "text" || only?.kind === "name");
          return isWholeRange || givesOneValue(argument, singleCellNames);
        });
      }
      default:
        return false;
    }
  });

/**
 * Whether a formula must be kept in the dynamic-array form. A plain `<f>` is read with the implicit intersection of
 * older Excels: `=SUM(A1:A9*2)` in it would come back as `=SUM(@A1:A9*2)`. So everything that isn't plainly one value
 * goes into the dynamic form, which does no harm to a formula that doesn't need it.
 */
export const isDynamic = (formula: string, singleCellNames: ReadonlySet<string> = new Set()): boolean =>
  !givesOneValue(parseFormula(formula), singleCellNames);

/** The formula for `<f>`; refuses volatile functions. */
export const storedFormula = (formula: string): string => {
  const calls = callsIn(parseFormula(formula));
  const found = calls.find((call) => volatile.has(call.name.toUpperCase()));
  if (found) throw new Error(`${formula}: ${found.name} is volatile and would spoil the cached values`);
  return toStored(formula);
};

/** A formula for a validation, a conditional format or a defined name, where Excel runs no add-in's functions. */
export const builtInFormula = (formula: string): string => {
  const stored = storedFormula(formula);
  if (stored.includes("_xldudf_")) throw new Error(`${formula}: Excel runs no custom function here; refer to a cell`);
  return stored;
};
