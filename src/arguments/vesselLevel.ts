import { type CellError, invalid } from "../cells/cellValues";
import { exceeds } from "../models/exceeds";
import { formatNumber } from "./argument";

const levelAbove = (level: number, volume: number, volumeWords: string, of: string): CellError | undefined =>
  exceeds(level, volume)
    ? invalid(
        `level${of} is ${formatNumber(level)} L, above the ${volumeWords} of ${formatNumber(volume)} L; check which is which`,
      )
    : undefined;

/** Words when a level [L] is above the capacity [L] of its vessel; `of` tells which vessel of a list. */
export const levelAboveCapacity = (level: number, capacity: number, of = ""): CellError | undefined =>
  levelAbove(level, capacity, "capacity", of);

/** Words when a level [L] is above the volume to the brim [L] of its vessel. */
export const levelAboveBrim = (level: number, brimVolume: number): CellError | undefined =>
  levelAbove(level, brimVolume, "brim_volume", "");
