import { type CellError, type CellResult, type CellTable, type Cells, invalid, noAnswer } from "../cells/cellValues";
import {
  type Argument,
  type CellArgument,
  type Primitive,
  type RangeArgument,
  isFailure,
  isLeftOut,
  isTakenUnread,
} from "./argument";
import { filledRows } from "./rows";

/** Arguments as Excel hands them over: 2-D arrays, a single cell as [[v]], omitted ones as null or undefined. */
export type Given = readonly (Cells | null | undefined)[];

export type Values<A extends Readonly<Record<string, Argument>>> = {
  [K in keyof A]: A[K] extends CellArgument<infer V> ? V : A[K] extends RangeArgument<infer R> ? R : never;
};

/** The arguments of one function, in order, with their readers. */
export interface CellArguments<A extends Readonly<Record<string, Argument>>> {
  readonly byName: A;
  readonly names: readonly (keyof A & string)[];
  readonly readers: readonly Argument[];
  readonly takesRange: boolean;
  /** One value a cell, or a table with a header row. */
  readonly gives: "cells" | "table";
  /**
   * Gives a list of values, one an argument in order, their names. Names that stand once on a prototype are read several
   * times quicker than names set on an object for each call.
   */
  readonly Named: new (inOrder: readonly unknown[]) => object;
}

/** The arguments of a function that returns a table. */
export interface TableArguments<A extends Readonly<Record<string, Argument>>> extends CellArguments<A> {
  readonly gives: "table";
}

type Named = Readonly<Record<string, Argument>>;

/** Names the arguments of a function of single values (snake_case, in order) and how each is read. */
export const cellArguments = <A extends Named>(byName: A): CellArguments<A> => ({
  ...inOrder(byName),
  gives: "cells",
});

/** The same for a function that returns a table. */
export const tableArguments = <A extends Named>(byName: A): TableArguments<A> => ({
  ...inOrder(byName),
  gives: "table",
});

function inOrder<A extends Named>(byName: A): Omit<CellArguments<A>, "gives"> {
  const names = Object.keys(byName) as (keyof A & string)[];
  const readers = names.map((name) => byName[name]!);
  class Named {
    constructor(readonly inOrder: readonly unknown[]) {}
  }
  names.forEach((name, index) => {
    Object.defineProperty(Named.prototype, name, {
      get(this: Named) {
        return this.inOrder[index];
      },
    });
  });
  return { byName, names, readers, takesRange: readers.some((reader) => reader.shape === "range"), Named };
}

/** A number that a cell can hold, or an error with words in place of NaN and infinity. */
function asResult(value: CellResult): CellResult {
  if (typeof value !== "number") return value;
  if (Number.isFinite(value)) return value === 0 ? 0 : value;
  return invalid("the result is too large or has no value for these inputs; check their size");
}

/** The fast path: a plain number in range. Anything else is read with care. */
const readCell = (reader: CellArgument, cell: unknown, name: string): Primitive | CellError =>
  isTakenUnread(cell, reader) ? cell : reader.read(cell, name);

/** What stands for an argument that is left out of the formula: its default, or the words on a missing one. */
const leftOut = (reader: CellArgument, name: string): Primitive | CellError =>
  reader.optional ? reader.defaultValue : reader.read(null, name);

/**
 * Applies a formula of single values to cells, broadcasting: a one-row or one-column argument stretches over the others.
 * A cell with no partner becomes #N/A with words; a bad cell spoils only its own result; an error cell goes out unchanged.
 * Range arguments are read once and handed to every call whole. The result has the shape that its arguments ask for,
 * whatever is wrong with them.
 */
export function eachCell<A extends Named>(
  args: CellArguments<A>,
  given: Given,
  formula: (values: Values<A>) => CellResult,
): CellTable {
  const { names, readers } = args;
  const list: unknown[] = [];
  for (let index = 0; index < names.length; index++) {
    const cells = given[index];
    const reader = readers[index]!;
    if (reader.shape === "range") {
      const range = reader.readRange(cells, names[index]!);
      if (isFailure(range)) return failEverywhere(args, given, range);
      list.push(range);
      continue;
    }
    let value: Primitive | CellError;
    if (isLeftOut(cells)) value = leftOut(reader, names[index]!);
    else if (cells.length === 1 && cells[0]!.length === 1) value = readCell(reader, cells[0]![0], names[index]!);
    else return broadcast(args, given, formula);
    if (typeof value === "object") return broadcast(args, given, formula);
    list.push(value);
  }
  return [[asResult(formula(new args.Named(list) as Values<A>))]];
}

interface Extent {
  rows: number;
  columns: number;
}

/** Above this many rows a range is a whole column or a large part of one: its blank end is not calculated. */
const longestFilledByHand = 16384;

/** Rows of an argument that get a result. */
const rowsOf = (cells: Cells): number =>
  cells.length > longestFilledByHand ? Math.max(1, filledRows(cells)) : cells.length;

function extentOf(readers: readonly Argument[], given: Given): Extent {
  let rows = 1;
  let columns = 1;
  readers.forEach((reader, index) => {
    const cells = given[index];
    if (reader.shape === "range" || isLeftOut(cells) || cells.length === 0) return;
    rows = Math.max(rows, rowsOf(cells));
    columns = Math.max(columns, cells[0]!.length);
  });
  return { rows, columns };
}

/** The most cells one formula fills; more than a sheet is read by, and a load that would stop Excel for long. */
const mostCells = 200000;

const tooMany = ({ rows, columns }: Extent): CellError =>
  invalid(
    `the result would fill ${rows} rows and ${columns} columns; at most ${mostCells} cells are filled by one formula: give a shorter range, such as the filled rows alone`,
  );

function failEverywhere<A extends Named>(args: CellArguments<A>, given: Given, failure: CellError): CellTable {
  const extent = extentOf(args.readers, given);
  const { rows, columns } = extent;
  if (rows * columns > mostCells) return [[tooMany(extent)]];
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => failure));
}

const sizeWords = (cells: Cells, byRow: boolean): string => {
  const size = byRow ? cells.length : cells[0]!.length;
  return `${size} ${byRow ? "row" : "column"}${size === 1 ? "" : "s"}`;
};

function broadcast<A extends Named>(
  args: CellArguments<A>,
  given: Given,
  formula: (values: Values<A>) => CellResult,
): CellTable {
  const { names, readers } = args;
  const extent = extentOf(readers, given);
  const { rows, columns } = extent;
  /** Ranges are read once; the places of single cells are filled anew for each result. */
  const ranges: unknown[] = new Array(names.length);
  const cellIndexes: number[] = [];
  for (let index = 0; index < names.length; index++) {
    const reader = readers[index]!;
    if (reader.shape === "cell") {
      cellIndexes.push(index);
      continue;
    }
    const range = reader.readRange(given[index], names[index]!);
    if (isFailure(range)) return failEverywhere(args, given, range);
    ranges[index] = range;
  }
  if (rows * columns > mostCells) return [[tooMany(extent)]];

  const noPartner = (index: number, byRow: boolean): CellError => {
    const widest = cellIndexes.filter((other) => {
      const cells = given[other];
      return cells && cells.length > 0 && (byRow ? rowsOf(cells) === rows : cells[0]!.length === columns);
    })[0]!;
    return noAnswer(
      `no partner here: ${names[index]!} has ${sizeWords(given[index]!, byRow)} and ${names[widest]!} has ${sizeWords(given[widest]!, byRow)}`,
    );
  };

  const result: CellTable = [];
  for (let row = 0; row < rows; row++) {
    const line: CellResult[] = [];
    for (let column = 0; column < columns; column++) {
      const list = ranges.slice();
      let failure: CellError | undefined;
      for (const index of cellIndexes) {
        const cells = given[index];
        const reader = readers[index] as CellArgument;
        let value: Primitive | CellError;
        if (isLeftOut(cells)) value = leftOut(reader, names[index]!);
        else {
          const height = cells.length;
          const width = height === 0 ? 0 : cells[0]!.length;
          if (height > 1 && row >= height) value = noPartner(index, true);
          else if (width > 1 && column >= width) value = noPartner(index, false);
          else
            value = readCell(
              reader,
              height === 0 ? null : cells[height === 1 ? 0 : row]![width === 1 ? 0 : column],
              names[index]!,
            );
        }
        if (typeof value === "object") {
          failure = value;
          break;
        }
        list[index] = value;
      }
      line.push(failure ?? asResult(formula(new args.Named(list) as Values<A>)));
    }
    result.push(line);
  }
  return result;
}

/**
 * Runs a function that returns a table (or one value) from ranges and single cells. A single-cell argument that is given
 * a range is refused; any bad cell or error cell makes the whole result that error.
 */
export function wholeTable<A extends Named>(
  args: TableArguments<A>,
  given: Given,
  formula: (values: Values<A>) => CellTable | CellError,
): CellTable {
  const { names, readers } = args;
  const list: unknown[] = [];
  for (let index = 0; index < names.length; index++) {
    const name = names[index]!;
    const reader = readers[index]!;
    const cells = given[index];
    if (reader.shape === "range") {
      const range = reader.readRange(cells, name);
      if (isFailure(range)) return [[range]];
      list.push(range);
      continue;
    }
    if (!isLeftOut(cells) && cells.length > 0 && (cells.length > 1 || cells[0]!.length > 1)) {
      return [[invalid(`${name} must be a single cell here; it has ${sizeWords(cells, cells.length > 1)}`)]];
    }
    const value = isLeftOut(cells)
      ? leftOut(reader, name)
      : readCell(reader, cells.length > 0 ? cells[0]![0] : null, name);
    if (typeof value === "object") return [[value]];
    list.push(value);
  }
  const result = formula(new args.Named(list) as Values<A>);
  if (!Array.isArray(result)) return [[result]];
  if (result.length * result[0]!.length > mostCells)
    return [[tooMany({ rows: result.length, columns: result[0]!.length })]];
  return result.map((line) => line.map(asResult));
}

/** Two or more lists that go together row by row must be equally long. */
export function sameLength(lists: Readonly<Record<string, readonly unknown[] | undefined>>): CellError | undefined {
  const given: [name: string, values: readonly unknown[]][] = [];
  for (const name of Object.keys(lists)) {
    const values = lists[name];
    if (values !== undefined) given.push([name, values]);
  }
  const first = given[0];
  if (!first) return undefined;
  const other = given.find(([, values]) => values.length !== first[1].length);
  if (!other) return undefined;
  return invalid(
    `${first[0]} has ${first[1].length} and ${other[0]} has ${other[1].length} cells; they must go together one by one`,
  );
}
