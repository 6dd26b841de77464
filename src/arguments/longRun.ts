import { invalid, isErrorCell } from "../cells/cellValues";
import { type CellArgument, type Failure, isBlank, isFailure, plainCell, refuse } from "./argument";
import { minutes } from "./quantity";

const longRun = /^long[ -]?run$/i;

/** Minutes, or "long run" (also left out): then reads as undefined, so that an input cell need not be empty. */
class MinutesOrLongRun implements CellArgument<number | undefined> {
  readonly shape = "cell";
  readonly kind = "minutes";
  readonly unit = minutes.unit;
  readonly optional = true;
  readonly defaultValue = undefined;
  readonly min = minutes.min;
  readonly max = minutes.max;
  readonly wholeOnly = false;

  read(cell: unknown, label: string): number | undefined | Failure {
    if (isErrorCell(cell)) return cell;
    const given = plainCell(cell);
    if (isBlank(given))
      return refuse(label, 'is blank: enter minutes or "long run", or leave the argument out of the formula');
    if (typeof given === "string" && longRun.test(given.trim())) return undefined;
    const value = minutes.read(cell, label);
    return isFailure(value) && typeof given === "string" ? invalid(`${value.message} or "long run"`) : value;
  }
}

/** Time since something steady began [min], or "long run" for when it has settled. */
export const minutesOrLongRun = new MinutesOrLongRun();
