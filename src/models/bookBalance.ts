import { rounding } from "./exceeds";
import { exactSum } from "./exactSum";

/** Closing stock less what the book says it should be, in the unit of the amounts; negative is missing. */
export function bookBalance(
  opening: number,
  made: number,
  received: number,
  drawn: number,
  lost: number,
  closing: number,
): number {
  const difference = exactSum([closing, -opening, -made, -received, drawn, lost]);
  const noise = rounding * Math.max(closing, opening, made, received, drawn, lost);
  return Math.abs(difference) <= noise ? 0 : difference;
}
