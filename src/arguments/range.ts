import type { CellError } from "../cells/cellValues";
import { isErrorCell } from "../cells/cellValues";
import { TextArgument } from "./text";
import {
  type CellArgument,
  type Cells,
  type Failure,
  type Primitive,
  type RangeArgument,
  isBlank,
  isFailure,
  isMissing,
  isTakenUnread,
  plainCell,
  refuse,
} from "./argument";

/** A cell's place as error words give it: "row 3" of a column, "cell 3" of a row, "row 2, column 3" of a block. */
function placeIn(cells: Cells, row: number, column: number): string {
  if (cells[0]!.length === 1) return cells.length === 1 ? "" : ` row ${row + 1}`;
  return cells.length === 1 ? ` cell ${column + 1}` : ` row ${row + 1}, column ${column + 1}`;
}

/** A row or column (or block, read row by row) of values of one kind. */
export class ListArgument<
  E extends Primitive,
  T extends readonly E[] | undefined = readonly E[],
> implements RangeArgument<T> {
  readonly shape = "range";
  readonly defaultValue = undefined;

  constructor(
    readonly element: CellArgument<E>,
    readonly optional = false,
  ) {}

  get unit(): string {
    return this.element.unit;
  }

  mayBeOmitted(): ListArgument<E, readonly E[] | undefined> {
    return new ListArgument<E, readonly E[] | undefined>(this.element, true);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    if (isMissing(cells)) {
      if (this.optional) return undefined as T;
      const missing = this.element.read(null, label);
      if (isFailure(missing)) return missing;
    }
    const { element } = this;
    const values: E[] = [];
    const rows = cells as Cells;
    for (let row = 0; row < rows.length; row++) {
      const line = rows[row]!;
      for (let column = 0; column < line.length; column++) {
        const cell = line[column];
        if (isTakenUnread(cell, element)) {
          values.push(cell as E);
          continue;
        }
        const value = element.read(cell, `${label}${placeIn(rows, row, column)}`);
        if (isFailure(value)) return value;
        values.push(value);
      }
    }
    return values as readonly E[] as T;
  }
}

/** A row or column of values; every cell must hold one. */
export const list = <E extends Primitive>(element: CellArgument<E>): ListArgument<E> => new ListArgument<E>(element);

/** A column of a table: its header word and how its cells are read. */
export type Columns = Readonly<Record<string, CellArgument>>;
export type Row<C extends Columns> = { [K in keyof C]: C[K] extends CellArgument<infer V> ? V : never };

/**
 * A range of records, one row each. A header row is passed over: a first row in which every cell that should hold a
 * number, date or flag holds text that is none. Rows that are wholly blank are passed over too.
 */
export class TableArgument<
  C extends Columns,
  T extends readonly Row<C>[] | undefined = readonly Row<C>[],
> implements RangeArgument<T> {
  readonly shape = "range";
  readonly unit = "";
  readonly defaultValue = undefined;

  constructor(
    readonly columns: C,
    readonly optional = false,
    /** Widths allowed besides the full one: columns after them read as blank. */
    private readonly shorterWidths: readonly number[] = [],
  ) {}

  mayBeOmitted(): TableArgument<C, readonly Row<C>[] | undefined> {
    return new TableArgument<C, readonly Row<C>[] | undefined>(this.columns, true, this.shorterWidths);
  }

  /** Also takes the first `width` columns alone; the rest must be optional columns. */
  orWidth(width: number): TableArgument<C, T> {
    return new TableArgument<C, T>(this.columns, this.optional, [...this.shorterWidths, width]);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    const names = Object.keys(this.columns);
    const shorter = this.shorterWidths.map((each) => `, or the first ${each} of them`).join("");
    const wanted = `enter a range with the columns ${names.map((name) => name.replace(/_/g, " ")).join(", ")}${shorter}`;
    if (isMissing(cells)) return this.optional ? (undefined as T) : refuse(label, `is blank; ${wanted}`);
    const width = cells[0]!.length;
    if (width !== names.length && !this.shorterWidths.includes(width)) {
      const error = firstErrorIn(cells);
      if (error) return error;
      return refuse(label, `has ${width} column${width === 1 ? "" : "s"}; ${wanted}`);
    }
    const readers = names.map((name) => this.columns[name]!);
    const rows: Row<C>[] = [];
    for (let index = this.startsWithHeader(cells, readers) ? 1 : 0; index < cells.length; index++) {
      const line = cells[index]!;
      if (line.every((cell) => isBlank(plainCell(cell)))) continue;
      const record: Record<string, unknown> = {};
      for (let column = 0; column < names.length; column++) {
        const value = readers[column]!.read(
          line[column],
          `${label} row ${index + 1}, ${names[column]!.replace(/_/g, " ")}`,
        );
        if (isFailure(value)) return value;
        record[names[column]!] = value;
      }
      rows.push(record as Row<C>);
    }
    if (rows.length === 0) return refuse(label, `has no row with values; ${wanted}`);
    return rows as readonly Row<C>[] as T;
  }

  private startsWithHeader(cells: Cells, readers: readonly CellArgument[]): boolean {
    const first = cells[0]!.map(plainCell);
    if (!first.every((cell) => isBlank(cell) || typeof cell === "string")) return false;
    const told = first.filter((cell, column) => !isBlank(cell) && !(readers[column] instanceof TextArgument));
    return (
      told.length > 0 &&
      first.every(
        (cell, column) =>
          isBlank(cell) || readers[column] instanceof TextArgument || isFailure(readers[column]!.read(cell, "")),
      )
    );
  }
}

/** A range of records, one row each, with or without a header row. */
export const table = <C extends Columns>(columns: C): TableArgument<C> => new TableArgument<C>(columns);

/** A range as it stands, for functions that read it in a way of their own; error cells are left in it. */
export class RawRange<T extends Cells | undefined = Cells> implements RangeArgument<T> {
  readonly shape = "range";
  readonly unit = "";
  readonly defaultValue = undefined;

  constructor(readonly optional = false) {}

  mayBeOmitted(): RawRange<Cells | undefined> {
    return new RawRange<Cells | undefined>(true);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    if (isMissing(cells)) return this.optional ? (undefined as T) : refuse(label, "is blank; enter a range");
    return cells.map((line) => line.map(plainCell)) as unknown as T;
  }
}

export const rawRange = new RawRange();

/** The first error cell of a range, which goes out unchanged. */
export function firstErrorIn(cells: Cells): CellError | undefined {
  for (const line of cells) for (const cell of line) if (isErrorCell(cell)) return cell;
  return undefined;
}
