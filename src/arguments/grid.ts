import { type Kind } from "./kinds";
import { type CellArgument, type Cells, type Failure, type Primitive, type RangeArgument, isFailure } from "./argument";
import { countedRows, isEmpty } from "./rows";

/** A block of values of one kind, kept as rows and columns; every cell must hold one. */
export class GridArgument<E extends Primitive> implements RangeArgument<readonly (readonly E[])[]> {
  readonly shape = "range";
  readonly optional = false;
  readonly defaultValue = undefined;

  constructor(readonly element: CellArgument<E>) {}

  get unit(): string {
    return this.element.unit;
  }

  get kind(): Kind {
    return this.element.kind;
  }

  readRange(cells: Cells | null | undefined, label: string): readonly (readonly E[])[] | Failure {
    if (isEmpty(cells)) return this.element.read(null, label) as Failure;
    const { from, to } = countedRows(cells, () => this.element);
    const single = cells.length === 1 && cells[0]!.length === 1;
    const grid: E[][] = [];
    for (let row = from; row < to; row++) {
      const line: E[] = [];
      for (let column = 0; column < cells[row]!.length; column++) {
        const value = this.element.read(
          cells[row]![column],
          single ? label : `${label} row ${row + 1}, column ${column + 1}`,
        );
        if (isFailure(value)) return value;
        line.push(value);
      }
      grid.push(line);
    }
    return grid;
  }
}

/** A block of values of one kind; every cell must hold one. */
export const grid = <E extends Primitive>(element: CellArgument<E>): GridArgument<E> => new GridArgument<E>(element);
