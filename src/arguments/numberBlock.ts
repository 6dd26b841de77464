import { type Cells, type Failure, type RangeArgument, refuse } from "./argument";
import { GridArgument } from "./grid";
import { number } from "./quantity";
import { isEmpty } from "./rows";

/**
 * A block of numbers, one row a case and one column a measure. A first row of headings is passed over, blank rows at the
 * end are cut off, and a blank in between is refused.
 */
export class NumberBlock implements RangeArgument<readonly (readonly number[])[]> {
  readonly shape = "range";
  readonly kind = "number";
  readonly unit = "";
  readonly optional = false;
  readonly defaultValue = undefined;

  readRange(cells: Cells | null | undefined, label: string): readonly (readonly number[])[] | Failure {
    if (isEmpty(cells)) return refuse(label, "is blank; enter a range of numbers, one row each");
    return new GridArgument(number).readRange(cells, label);
  }
}

export const numberBlock = new NumberBlock();
