import {
  type Cells,
  type Failure,
  type RangeArgument,
  isBlank,
  isFailure,
  isMissing,
  plainCell,
  refuse,
} from "./argument";
import { number } from "./quantity";

/** A row of words alone, as a header is: text in one cell at least, and no cell with a number or a text of one. */
export function isWordsAlone(line: readonly unknown[]): boolean {
  const cells = line.map(plainCell);
  return (
    cells.some((cell) => !isBlank(cell)) &&
    cells.every((cell) => isBlank(cell) || (typeof cell === "string" && !Number.isFinite(Number(cell.trim()))))
  );
}

/**
 * A block of numbers, one row a case and one column a measure, with or without a header row. A wholly blank row reads as
 * undefined, so that a result beside the block stays in line with it; a blank among numbers is refused.
 */
export class NumberBlock implements RangeArgument<readonly (readonly number[] | undefined)[]> {
  readonly shape = "range";
  readonly unit = "";
  readonly optional = false;
  readonly defaultValue = undefined;

  readRange(cells: Cells | null | undefined, label: string): readonly (readonly number[] | undefined)[] | Failure {
    const wanted = "enter a range of numbers, one row each";
    if (isMissing(cells)) return refuse(label, `is blank; ${wanted}`);
    const rows: (readonly number[] | undefined)[] = [];
    for (let row = isWordsAlone(cells[0]!) ? 1 : 0; row < cells.length; row++) {
      const line = cells[row]!;
      if (line.every((cell) => isBlank(plainCell(cell)))) {
        rows.push(undefined);
        continue;
      }
      const values: number[] = [];
      for (let column = 0; column < line.length; column++) {
        const value = number.read(line[column], `${label} row ${row + 1}, column ${column + 1}`);
        if (isFailure(value)) return value;
        values.push(value);
      }
      rows.push(values);
    }
    return rows.some((row) => row !== undefined) ? rows : refuse(label, `has no row with numbers; ${wanted}`);
  }
}

export const numberBlock = new NumberBlock();
