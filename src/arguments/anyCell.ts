import { isErrorCell } from "../cells/cellValues";
import { type CellArgument, type Failure, isBlank, plainCell, refuse } from "./argument";

/** A cell as it stands: number, text or flag. A blank is refused and an error cell goes out unchanged. */
export class AnyCellArgument implements CellArgument<number | string | boolean> {
  readonly shape = "cell";
  readonly kind = "value";
  readonly unit = "";
  readonly optional = false;
  readonly defaultValue = undefined;
  /** No fast path: numbers go through `read` too. */
  readonly min = Infinity;
  readonly max = -Infinity;
  readonly wholeOnly = false;

  read(cell: unknown, label: string): number | string | boolean | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) return refuse(label, "is blank; enter the cell to check");
    if (typeof plain === "number" || typeof plain === "string" || typeof plain === "boolean") return plain;
    return refuse(label, "is of a kind that is neither number nor text");
  }
}

export const anyCell = new AnyCellArgument();
