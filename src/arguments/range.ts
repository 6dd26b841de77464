import { type Kind } from "./kinds";
import type { CellError } from "../cells/cellValues";
import { isErrorCell } from "../cells/cellValues";
import { countedRows, isEmpty } from "./rows";
import {
  type CellArgument,
  type Cells,
  type Failure,
  type Primitive,
  type RangeArgument,
  isBlank,
  isFailure,
  isBlankRow,
  isLeftOut,
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

  get kind(): Kind {
    return this.element.kind;
  }

  mayBeOmitted(): ListArgument<E, readonly E[] | undefined> {
    return new ListArgument<E, readonly E[] | undefined>(this.element, true);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    if (this.optional && isLeftOut(cells)) return undefined as T;
    const { element } = this;
    if (isEmpty(cells))
      return this.optional
        ? refuse(label, "is blank: fill it, or leave the argument out of the formula")
        : (element.read(null, label) as Failure);
    const values: E[] = [];
    const { from, to } = countedRows(cells, () => element);
    const across = cells.length === 1 ? lastFilled(cells[0]!) : cells[0]!.length;
    for (let row = from; row < to; row++) {
      const line = cells[row]!;
      for (let column = 0; column < across; column++) {
        const cell = line[column];
        if (isTakenUnread(cell, element)) {
          values.push(cell as E);
          continue;
        }
        const value = element.read(cell, `${label}${placeIn(cells, row, column)}`);
        if (isFailure(value)) return value;
        values.push(value);
      }
    }
    return values as readonly E[] as T;
  }
}

/** Number of cells up to the last filled one of a row. */
function lastFilled(line: readonly unknown[]): number {
  let cells = line.length;
  while (cells > 0 && isBlank(plainCell(line[cells - 1]))) cells--;
  return cells;
}

/** A row or column of values; every cell must hold one. */
export const list = <E extends Primitive>(element: CellArgument<E>): ListArgument<E> => new ListArgument<E>(element);

/** A column of a table: its header word and how its cells are read. */
export type Columns = Readonly<Record<string, CellArgument>>;
export type Row<C extends Columns> = { [K in keyof C]: C[K] extends CellArgument<infer V> ? V : never };

/**
 * A range of records, one row each. A first row of headings is passed over and blank rows at the end are cut off; a
 * blank row in between is refused.
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

  get kind(): readonly Kind[] {
    return Object.keys(this.columns).map((name) => this.columns[name]!.kind);
  }

  mayBeOmitted(): TableArgument<C, readonly Row<C>[] | undefined> {
    return new TableArgument<C, readonly Row<C>[] | undefined>(this.columns, true, this.shorterWidths);
  }

  /** Also takes the first `width` columns alone; the rest must be optional columns, which then read as blank. */
  orWidth(width: number): TableArgument<C, T> {
    return new TableArgument<C, T>(this.columns, this.optional, [...this.shorterWidths, width]);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    const names = Object.keys(this.columns);
    const shorter = this.shorterWidths.map((each) => `, or the first ${each} of them`).join("");
    const wanted = `enter a range with the columns ${names.map((name) => name.replace(/_/g, " ")).join(", ")}${shorter}`;
    if (this.optional && isLeftOut(cells)) return undefined as T;
    if (isEmpty(cells))
      return refuse(
        label,
        this.optional ? "is blank: fill it, or leave the argument out of the formula" : `is blank; ${wanted}`,
      );
    const width = cells[0]!.length;
    if (width !== names.length && !this.shorterWidths.includes(width)) {
      const error = firstErrorIn(cells);
      if (error) return error;
      return refuse(label, `has ${width} column${width === 1 ? "" : "s"}; ${wanted}`);
    }
    const readers = names.map((name) => this.columns[name]!);
    const rows: Row<C>[] = [];
    const { from, to } = countedRows(cells, (column) => readers[column]!);
    for (let index = from; index < to; index++) {
      const line = cells[index]!;
      if (isBlankRow(line)) return refuse(label, `row ${index + 1} is blank; leave no blank row between filled ones`);
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
    return rows as readonly Row<C>[] as T;
  }
}

/** A range of records, one row each, with or without a header row. */
export const table = <C extends Columns>(columns: C): TableArgument<C> => new TableArgument<C>(columns);

/** A range as it stands, for functions that read it in a way of their own; error cells are left in it. */
export class RawRange<T extends Cells | undefined = Cells> implements RangeArgument<T> {
  readonly shape = "range";
  readonly kind = "value";
  readonly unit = "";
  readonly defaultValue = undefined;

  constructor(readonly optional = false) {}

  mayBeOmitted(): RawRange<Cells | undefined> {
    return new RawRange<Cells | undefined>(true);
  }

  readRange(cells: Cells | null | undefined, label: string): T | Failure {
    if (this.optional && isLeftOut(cells)) return undefined as T;
    if (isEmpty(cells)) return refuse(label, "is blank; enter a range");
    return cells.map((line) => line.map(plainCell)) as unknown as T;
  }
}

export const rawRange = new RawRange();

/** The first error cell of a range, which goes out unchanged. */
export function firstErrorIn(cells: Cells): CellError | undefined {
  for (const line of cells) for (const cell of line) if (isErrorCell(cell)) return cell;
  return undefined;
}
