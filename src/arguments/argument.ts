import { CellError, type Cells, invalid, isErrorCell } from "../cells/cellValues";

export type { Cells };

/** Anything that is not a value: our error with words, or an error cell that came in and goes out unchanged. */
export type Failure = CellError;

/** What a cell is read as. Values are never objects in a cell argument, so that a failure is told by its type. */
export type Primitive = number | string | boolean | undefined;

/** An argument that takes one cell at a time and broadcasts. */
export interface CellArgument<T extends Primitive = Primitive> {
  readonly shape: "cell";
  /** Unit of a bare number, "" where there is none. */
  readonly unit: string;
  readonly optional: boolean;
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
  readonly unit: string;
  readonly optional: boolean;
  readonly defaultValue: undefined;
  readRange(cells: Cells | null | undefined, label: string): T | Failure;
}

export type Argument = CellArgument | RangeArgument;

export const isFailure = (value: unknown): value is Failure => value instanceof CellError || isErrorCell(value);

/** Blank as a cell shows it: nothing, or a formula's empty text. */
export const isBlank = (cell: unknown): boolean =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/** A number inside Excel's data-type form (a formatted number or date) is taken out of it. */
export function plainCell(cell: unknown): unknown {
  if (typeof cell === "object" && cell !== null && !isErrorCell(cell)) {
    const { basicValue } = cell as { basicValue?: unknown };
    if (typeof basicValue === "number" || typeof basicValue === "string" || typeof basicValue === "boolean")
      return basicValue;
  }
  return cell;
}

/** A range that was left out, or is one blank cell. */
export const isMissing = (cells: Cells | null | undefined): cells is null | undefined =>
  cells === null ||
  cells === undefined ||
  cells.length === 0 ||
  (cells.length === 1 && cells[0]!.length === 1 && isBlank(plainCell(cells[0]![0])));

/** A number the fast path takes as it is. */
export const isTakenUnread = (cell: unknown, { min, max, wholeOnly }: CellArgument): cell is number =>
  typeof cell === "number" && cell >= min && cell <= max && !(wholeOnly && !Number.isInteger(cell));

/** A cell as error words quote it. */
export function quoteCell(cell: unknown): string {
  if (typeof cell === "string") return `"${cell.length > 40 ? `${cell.slice(0, 40)}…` : cell}"`;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return formatNumber(cell);
  return "this cell";
}

/** At most seven digits: enough to recognise what was typed, short enough for a message. */
export const formatNumber = (value: number): string => String(Number(value.toPrecision(7)));

export const refuse = (label: string, words: string): CellError => invalid(`${label} ${words}`);
