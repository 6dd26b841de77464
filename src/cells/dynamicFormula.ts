import { parseFormula, significant, type FormulaNode } from "./formulaTree";

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
