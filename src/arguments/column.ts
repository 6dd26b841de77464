import { type Kind } from "./kinds";
import {
  type CellArgument,
  type Cells,
  type Failure,
  type Primitive,
  type RangeArgument,
  refuse,
  isFailure,
} from "./argument";
import { ListArgument } from "./range";
import { countedRows, isEmpty } from "./rows";
import { readDay } from "./date";

/** One column (or one row) of values. */
export class ColumnArgument<E extends Primitive> extends ListArgument<E> {
  override readRange(cells: Cells | null | undefined, label: string): readonly E[] | Failure {
    if (!isEmpty(cells) && cells.length > 1 && cells[0]!.length > 1)
      return refuse(label, `has ${cells.length} rows and ${cells[0]!.length} columns; enter one column or one row`);
    return super.readRange(cells, label);
  }
}

export const column = <E extends Primitive>(element: CellArgument<E>): ColumnArgument<E> =>
  new ColumnArgument<E>(element);

/** An amount of one day; `day` is the date's serial or the day's number where the range has a column of them. */
export interface DailyAmount {
  readonly day: number | undefined;
  readonly amount: number;
}

/**
 * Amounts day by day: one column (or row), or two columns of which the first holds dates or day numbers, as the tables
 * of the other functions have them.
 */
export class DailyAmountsArgument implements RangeArgument<readonly DailyAmount[]> {
  readonly shape = "range";
  readonly optional = false;
  readonly defaultValue = undefined;

  constructor(
    readonly element: CellArgument<number>,
    /** Deliveries: any range two cells wide is dates and amounts, and headings alone are no delivery. */
    private readonly deliveries = false,
  ) {}

  get unit(): string {
    return this.element.unit;
  }

  get kind(): Kind {
    return this.element.kind;
  }

  readRange(cells: Cells | null | undefined, label: string): readonly DailyAmount[] | Failure {
    const twoWide = !isEmpty(cells) && cells[0]!.length === 2 && (this.deliveries || cells.length > 1);
    if (!twoWide) {
      const amounts = new ColumnArgument(this.element).readRange(cells, label);
      return isFailure(amounts) ? amounts : amounts.map((amount) => ({ day: undefined, amount }));
    }
    const readerOf = (index: number): CellArgument => (index === 0 ? readDay : this.element);
    const { from, to } = countedRows(cells, readerOf);
    if (this.deliveries && to === 1 && countedRows([cells[0]!, cells[0]!], readerOf).from === 1) return [];
    const rows: DailyAmount[] = [];
    for (let index = from; index < to; index++) {
      const day = readDay.read(cells[index]![0], `${label} row ${index + 1}, date`);
      if (isFailure(day)) return day;
      const amount = this.element.read(cells[index]![1], `${label} row ${index + 1}`);
      if (isFailure(amount)) return amount;
      rows.push({ day, amount });
    }
    return rows;
  }
}
