import { type CellError, invalid } from "../cells/cellValues";
import { exceeds } from "../models/exceeds";
import { formatNumber } from "./argument";

/** Words when a level [L] is above the capacity [L] of its vessel; `of` tells which vessel of a list. */
export const levelAboveCapacity = (level: number, capacity: number, of = ""): CellError | undefined =>
  exceeds(level, capacity)
    ? invalid(
        `level${of} is ${formatNumber(level)} L, above the capacity of ${formatNumber(capacity)} L; check which is which`,
      )
    : undefined;
