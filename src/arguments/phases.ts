import { defaults } from "../models/defaults";
import { type CellError, invalid } from "../cells/cellValues";
import { number } from "./quantity";

/** Phases of an electric supply, 1 or 3; 2 is refused by the check below, with its reason. */
export const phases = number.between(1, 3).whole().default(defaults.phases);

/** Words against two phases, which is what a split supply is often called. */
export const refuseTwoPhases = (given: number): CellError | undefined =>
  given === 2
    ? invalid(
        "phases must be 1 or 3; this is 2. A load between two lines of a split supply is 1 phase at the line-to-line voltage",
      )
    : undefined;
