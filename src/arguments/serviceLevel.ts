import { type CellError, invalid } from "../cells/cellValues";
import { formatNumber } from "./argument";
import { fraction } from "./quantity";

/** A service level: the chance that what is kept is enough. Its ends are refused by the checks below, with their reasons. */
export const serviceLevel = fraction;

/** Words against a level of 0 or 1, for which no count can be named. */
export function refuseLevel(level: number): CellError | undefined {
  if (level === 1)
    return invalid("level 1 asks for certainty, which no amount gives; enter less than 1, such as 0.95 or 99%");
  if (level === 0) return invalid("level 0 asks for nothing; enter more than 0, such as 0.95 or 99%");
  return undefined;
}

/** The same, and against a level under 0.5, which would take from the mean instead of adding a safety stock to it. */
export function refuseSafetyLevel(level: number): CellError | undefined {
  if (level >= 0.5) return refuseLevel(level);
  return invalid(
    `level ${formatNumber(level)} is under 0.5 and would make the safety stock negative; enter the chance of being covered, such as 0.95, not the risk`,
  );
}
