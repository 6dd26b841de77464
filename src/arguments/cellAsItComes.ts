import { isErrorCell } from "../cells/cellValues";
import {
  type Cells,
  type Failure,
  type RangeArgument,
  isBlank,
  isLeftOut,
  plainCell,
  quoteCell,
  refuse,
} from "./argument";

/** In what form the program hands a cell over; `words` completes "came as …". */
export interface CellForm {
  readonly form: "blank" | "0" | "error" | "other";
  readonly words: string;
}

function formOf(cell: unknown): CellForm {
  if (isErrorCell(cell)) return { form: "error", words: "an error" };
  const plain = plainCell(cell);
  if (isBlank(plain)) return { form: "blank", words: "a blank" };
  if (plain === 0) return { form: "0", words: "0" };
  return { form: "other", words: quoteCell(plain) };
}

/** One cell of which only the form is asked for, so that blanks and errors are answers. It is taken whole, as it comes. */
class CellAsItComes implements RangeArgument<readonly [CellForm]> {
  readonly shape = "range";
  readonly kind = "value";
  readonly unit = "";
  readonly optional = false;
  readonly takesAnything = true;
  readonly defaultValue = undefined;

  constructor(private readonly wanted: string) {}

  readRange(cells: Cells | null | undefined, label: string): readonly [CellForm] | Failure {
    if (isLeftOut(cells))
      return refuse(
        label,
        `did not come: give it ${this.wanted}. If the formula has one, this program leaves such a cell out, and what stands for an omitted argument stands for it`,
      );
    if (cells.length > 1 || (cells.length === 1 && cells[0]!.length > 1))
      return refuse(label, `is a range; give it ${this.wanted} alone`);
    return [formOf(cells.length === 0 ? null : cells[0]![0])];
  }
}

export const cellAsItComes = (wanted: string): RangeArgument<readonly [CellForm]> => new CellAsItComes(wanted);
