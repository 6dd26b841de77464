import { type Kind } from "./kinds";
import { CellError, type Cells, invalid, isErrorCell } from "../cells/cellValues";

export type { Cells };

/** Anything that is not a value: our error with words, or an error cell that came in and goes out unchanged. */
export type Failure = CellError;

/** What a cell is read as. Values are never objects in a cell argument, so that a failure is told by its type. */
export type Primitive = number | string | boolean | undefined;

/** An argument that takes one cell at a time and broadcasts. */
export interface CellArgument<T extends Primitive = Primitive> {
  readonly shape: "cell";
  /** What it is, beyond its unit. */
  readonly kind: Kind;
  /** Unit of a bare number, "" where there is none. */
  readonly unit: string;
  /** May be left out of the formula; a blank cell given for it is refused all the same. */
  readonly optional: boolean;
  /** A cell of a table that may be empty and then reads as undefined. */
  readonly mayBeBlank?: boolean;
  readonly defaultValue: T | undefined;
  readonly choices?: readonly string[];
  /** A cell that is a number from `min` to `max` is taken as it is, without reading (the fast path). */
  readonly min: number;
  readonly max: number;
  /** The fast path takes whole numbers only. */
  readonly wholeOnly: boolean;
  /** Reads any cell; `label` names the argument, with its place where it stands in a list. */
  read(cell: unknown, label: string): T | Failure;
}

/** An argument that takes a range whole. Its value is an array, so a failure is told by `isFailure`. */
export interface RangeArgument<T extends readonly unknown[] | undefined = readonly unknown[] | undefined> {
  readonly shape: "range";
  /** What its cells are: of one kind, or a kind for each column. */
  readonly kind: Kind | readonly Kind[];
  readonly unit: string;
  readonly optional: boolean;
  /** Blank and error cells are answers, not faults. */
  readonly takesAnything?: boolean;
  /** A blank range has a meaning of its own. */
  readonly mayBeBlank?: boolean;
  readonly defaultValue: undefined;
  readRange(cells: Cells | null | undefined, label: string): T | Failure;
}

export type Argument = CellArgument | RangeArgument;

export const isFailure = (value: unknown): value is Failure => value instanceof CellError || isErrorCell(value);

/** Blank as a cell shows it: nothing, or a formula's empty text. */
export const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/**
 * A number, text or flag inside Excel's data-type form (a formatted number or date) is taken out of it. A picture or
 * linked data, whose fallback value is an error, stays as it is.
 */
export function plainCell(cell: unknown): unknown {
  if (typeof cell === "object" && cell !== null && !isErrorCell(cell)) {
    const { basicType, basicValue } = cell as { basicType?: unknown; basicValue?: unknown };
    if (basicType === "Error") return cell;
    if (typeof basicValue === "number" || typeof basicValue === "string" || typeof basicValue === "boolean")
      return basicValue;
  }
  return cell;
}

/** Left out of the formula: Excel hands no range over, not a range with an empty cell. */
export const isLeftOut = (cells: Cells | null | undefined): cells is null | undefined =>
  cells === null || cells === undefined;

export const isBlankRow = (line: readonly unknown[]): boolean => line.every((cell) => isBlank(plainCell(cell)));

/** A number the fast path takes as it is. */
export const isTakenUnread = (cell: unknown, { min, max, wholeOnly }: CellArgument): cell is number =>
  typeof cell === "number" && cell >= min && cell <= max && !(wholeOnly && !Number.isInteger(cell));

const longestQuote = 40;

/** A cell as error words quote it. */
export function quoteCell(cell: unknown): string {
  if (typeof cell === "string") return `"${cell.length > longestQuote ? `${cell.slice(0, longestQuote)}…` : cell}"`;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return quoteNumber(cell);
  return "this cell";
}

/** A number as it was given, with the fifteen digits that Excel shows. */
export const quoteNumber = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(15))) : "a number too large to hold";

/** A reckoned number: at most seven digits, enough to recognise it, short enough for a message. */
export const formatNumber = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(7))) : "a number too large to hold";

export const refuse = (label: string, words: string): CellError => invalid(`${label} ${words}`);

/** Of a cell that is neither number, text nor flag. */
export const strangeCell = "is a picture or linked data, not a plain value";

const defaultText = (value: Primitive): string =>
  typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : value === undefined ? "a value" : String(value);

/** A blank cell is never a number: for an optional argument the words offer the way out. */
export const refuseBlank = (reader: CellArgument, label: string, wanted: string): CellError =>
  refuse(
    label,
    reader.optional
      ? `is blank: enter ${defaultText(reader.defaultValue)}, or leave the argument out of the formula`
      : `is blank; ${wanted}`,
  );
