import { isErrorCell } from "../cells/cellValues";
import { type CellArgument, type Failure, isBlank, plainCell, refuse } from "./argument";

type Plain = number | string | boolean;

/** A cell as it stands: number, text or flag; a blank one reads as undefined. An error cell goes out unchanged. */
class AnyCellArgument implements CellArgument<Plain | undefined> {
  readonly shape = "cell";
  readonly kind = "value";
  readonly unit = "";
  readonly optional = false;
  readonly mayBeBlank = true;
  readonly defaultValue = undefined;
  /** No fast path: numbers go through `read` too. */
  readonly min = Infinity;
  readonly max = -Infinity;
  readonly wholeOnly = false;

  read(cell: unknown, label: string): Plain | undefined | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) return undefined;
    if (typeof plain === "number" || typeof plain === "string" || typeof plain === "boolean") return plain;
    return refuse(label, "is of a kind that is neither number nor text");
  }
}

export const anyCell = new AnyCellArgument();
