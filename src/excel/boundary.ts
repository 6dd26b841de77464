import { isFileError } from "../cells/errorCodes";
import { formattedDates } from "../cells/program";
import { type CellCall, isCellDate, isErrorCell, CellError } from "../cells/cellValues";

/** The most characters one Excel cell can hold (Microsoft, "Excel specifications and limits"). */
const mostCharacters = 32767;

const spoken = (code: string, words?: string): unknown =>
  new CustomFunctions.Error(code as CustomFunctions.ErrorCode, words);

const unexpected = (what: string): unknown =>
  spoken("#VALUE!", `This is a fault in the add-in, not in your figures: ${what}. Please report it with the formula.`);

const passOn = (error: unknown): unknown => {
  const { basicValue, code } = error as { basicValue?: unknown; code?: unknown };
  const shown = typeof basicValue === "string" ? basicValue : code;
  // #SPILL!, #CALC! and others can only be passed on as they came.
  if (error instanceof CustomFunctions.Error || typeof shown !== "string" || !isFileError(shown)) return error;
  return spoken(shown);
};

const toHost = (cell: unknown): unknown => {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : unexpected(`the result came out as ${cell}`);
  if (typeof cell === "boolean") return cell;
  if (typeof cell === "string") {
    return cell.length <= mostCharacters ? cell : unexpected("the text is longer than a cell can hold");
  }
  if (cell instanceof CellError) return spoken(cell.code, cell.message);
  if (isErrorCell(cell)) return passOn(cell);
  if (isCellDate(cell)) {
    if (!Number.isFinite(cell.basicValue)) return unexpected(`the date came out as ${cell.basicValue}`);
    return formattedDates ? cell : cell.basicValue;
  }
  return unexpected("a result is missing");
};

/**
 * Excel takes 5 MB at most from a custom function and stays at #BUSY! beyond it (OfficeDev/office-js 4654, 2786); the rest
 * is for what is sent with a result. Numbers alone never come near in the cells that one formula may fill.
 */
const mostSent = 4500000;
const fewToSend = 10000;

const sendable = (rows: unknown[][], width: number): unknown[][] =>
  rows.length * width > fewToSend && JSON.stringify(rows).length > mostSent
    ? [
        [
          spoken(
            "#VALUE!",
            `the result of ${rows.length} rows is larger than the 5 MB that Excel takes from one formula: give a shorter range, such as the filled rows alone`,
          ),
        ],
      ]
    : rows;

const tableToHost = (table: unknown): unknown[][] => {
  if (!Array.isArray(table) || table.length === 0) return [[unexpected("there is no result")]];
  const rows = table.map((row: unknown) => (Array.isArray(row) ? row : [row]));
  const width = rows.reduce((widest, row) => Math.max(widest, row.length), 1);
  return sendable(
    rows.map((row) => Array.from({ length: width }, (_, column) => toHost(row[column]))),
    width,
  );
};

/** The runtime appends an object about the call, which must never land in an omitted argument's place. */
const isInvocation = (given: unknown): boolean =>
  typeof given === "object" && given !== null && !Array.isArray(given) && !("type" in given);

/** Excel hands ranges over as 2-D arrays; a bare value and an omitted argument are brought to the functions' shapes. */
const fromHost = (given: unknown): unknown =>
  given === null || given === undefined || Array.isArray(given) ? given : [[given]];

/**
 * Makes a pure function fit for `CustomFunctions.associate`.
 *
 * The result is always a rectangle of numbers, texts, booleans, formatted doubles and `CustomFunctions.Error`s: NaN,
 * infinities, undefined, null and BigInt lose their meaning or block a whole batch on the way to Excel, and a thrown
 * error loses its words, so each becomes #VALUE! with words.
 *
 * `CustomFunctions.Error` exists only once the host runtime is up; it is named here inside calls alone.
 */
export const wrapForExcel =
  (call: CellCall) =>
  (...given: unknown[]): unknown[][] => {
    try {
      const cells = given.filter((cell) => !isInvocation(cell)).slice(0, call.length);
      return tableToHost(call(...cells.map(fromHost)));
    } catch (fault) {
      return [[unexpected(fault instanceof Error ? fault.message : "the calculation stopped")]];
    }
  };
