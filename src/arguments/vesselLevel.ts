import { type CellError, invalid } from "../excel/cellValues";
import { formatNumber } from "./argument";

/** Words when a level [L] is above the capacity [L] of its vessel; `place` tells the row of a list. */
export const levelAboveCapacity = (level: number, capacity: number, place = ""): CellError | undefined =>
  level > capacity
    ? invalid(
        `level${place} of ${formatNumber(level)} L is above the capacity of ${formatNumber(capacity)} L; check which is which`,
      )
    : undefined;
