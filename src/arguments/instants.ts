import { type Cells, type Failure, type RangeArgument, isFailure, isLeftOut, refuse } from "./argument";
import { dateTime } from "./date";
import { countedRows, isEmpty } from "./rows";

/** A column (or row) of date-times; headings alone are a list of none. */
class Instants implements RangeArgument<readonly number[]> {
  readonly shape = "range";
  readonly kind = "date-time";
  readonly unit = dateTime.unit;
  readonly optional = false;
  readonly defaultValue = undefined;

  /** `mayBeBlank`: cells with nothing in them are a list of none too. */
  constructor(
    readonly mayBeBlank: boolean,
    private readonly whenBlank: string,
  ) {}

  readRange(cells: Cells | null | undefined, label: string): readonly number[] | Failure {
    if (isEmpty(cells)) return this.mayBeBlank && !isLeftOut(cells) ? [] : refuse(label, `is blank; ${this.whenBlank}`);
    if (cells.length > 1 && cells[0]!.length > 1)
      return refuse(label, `has ${cells.length} rows and ${cells[0]!.length} columns; enter one column or one row`);
    const single = cells[0]!.length === 1;
    const column = single ? cells : cells[0]!.map((cell) => [cell]);
    const { from, to } = countedRows(column, () => dateTime);
    if (single && to === 1 && countedRows([column[0]!, column[0]!], () => dateTime).from === 1) return [];
    const values: number[] = [];
    for (let row = single ? from : 0; row < to; row++) {
      const value = dateTime.read(
        column[row]![0],
        column.length === 1 ? label : `${label} ${single ? "row" : "cell"} ${row + 1}`,
      );
      if (isFailure(value)) return value;
      values.push(value);
    }
    return values;
  }
}

/** Date-times of which there may be none, as headings alone tell; a blank range is refused with these words. */
export const instants = (whenBlank: string): RangeArgument<readonly number[]> => new Instants(false, whenBlank);

/** The same where a blank range is a list of none. */
export const instantsOrBlank = (whenLeftOut: string): RangeArgument<readonly number[]> =>
  new Instants(true, whenLeftOut);
