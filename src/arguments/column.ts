import {
  type CellArgument,
  type Cells,
  type Failure,
  type Primitive,
  type RangeArgument,
  isFailure,
  isMissing,
  isTakenUnread,
  plainCell,
  refuse,
} from "./argument";

/** What a clerk writes for "no value": never a header, so that it is refused and not passed over. */
const placeholder = /^(n\/?a|none|nil|unknown|tbd|pending)$/i;

/** Letters of any script as plain ranges: the oldest runtimes of Excel don't know Unicode classes in expressions. */
const letter = "A-Za-z\\u00C0-\\u065F\\u066A-\\u1FFF\\u2C00-\\uFFFF";
const letterFirst = new RegExp(`^[${letter}]`);
/** "about 12" and "March 1" are values written out, "O2 need" is a header. */
const numberInside = new RegExp(`[^${letter}\\d]\\d`);

/** Text at the head of a column: it begins with a letter, holds no number and can't be read as a value. */
export const isHeader = (cell: unknown, element: CellArgument): boolean => {
  const plain = plainCell(cell);
  if (typeof plain !== "string") return false;
  const text = plain.trim();
  return (
    letterFirst.test(text) && !numberInside.test(text) && !placeholder.test(text) && isFailure(element.read(text, ""))
  );
};

function readLine<E extends Primitive>(
  line: readonly unknown[],
  element: CellArgument<E>,
  label: string,
  place: string,
): E[] | Failure {
  const values: E[] = [];
  for (let index = line.length > 1 && isHeader(line[0], element) ? 1 : 0; index < line.length; index++) {
    const cell = line[index];
    if (isTakenUnread(cell, element)) {
      values.push(cell as E);
      continue;
    }
    const value = element.read(cell, line.length === 1 ? label : `${label} ${place} ${index + 1}`);
    if (isFailure(value)) return value;
    values.push(value);
  }
  return values;
}

/** One column (or one row) of values; a header text in its first cell is passed over, a blank is refused. */
export class ColumnArgument<E extends Primitive> implements RangeArgument<readonly E[]> {
  readonly shape = "range";
  readonly optional = false;
  readonly defaultValue = undefined;

  constructor(readonly element: CellArgument<E>) {}

  get unit(): string {
    return this.element.unit;
  }

  readRange(cells: Cells | null | undefined, label: string): readonly E[] | Failure {
    if (isMissing(cells)) return readLine([null], this.element, label, "") as Failure;
    if (cells.length === 1) return readLine(cells[0]!, this.element, label, "cell");
    if (cells[0]!.length > 1) {
      return refuse(label, `has ${cells.length} rows and ${cells[0]!.length} columns; enter one column or one row`);
    }
    return readLine(
      cells.map((line) => line[0]),
      this.element,
      label,
      "row",
    );
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
 * of the other functions have them. A header row is passed over, a blank is refused.
 */
export class DailyAmountsArgument implements RangeArgument<readonly DailyAmount[]> {
  readonly shape = "range";
  readonly optional = false;
  readonly defaultValue = undefined;

  constructor(
    readonly element: CellArgument<number>,
    private readonly dayReader: CellArgument<number>,
  ) {}

  get unit(): string {
    return this.element.unit;
  }

  readRange(cells: Cells | null | undefined, label: string): readonly DailyAmount[] | Failure {
    if (isMissing(cells) || cells.length === 1 || cells[0]!.length !== 2) {
      const amounts = new ColumnArgument(this.element).readRange(cells, label);
      return isFailure(amounts) ? amounts : amounts.map((amount) => ({ day: undefined, amount }));
    }
    const [days, amounts] = [0, 1].map((index) => cells.map((line) => line[index]));
    const headed = isHeader(days![0], this.dayReader) && isHeader(amounts![0], this.element);
    const rows: DailyAmount[] = [];
    for (let index = headed ? 1 : 0; index < cells.length; index++) {
      const cell = plainCell(days![index]);
      // Day numbers start at 1; the date reader takes serials from 61 on and text.
      const day =
        typeof cell === "number" && Number.isInteger(cell) && cell >= 0
          ? cell
          : this.dayReader.read(cell, `${label} row ${index + 1}, date`);
      if (isFailure(day)) return day;
      const amount = this.element.read(amounts![index], `${label} row ${index + 1}`);
      if (isFailure(amount)) return amount;
      rows.push({ day, amount });
    }
    return rows;
  }
}
