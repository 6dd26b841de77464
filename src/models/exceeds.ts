/** More by more than rounding: the 0.30000000000000004 of a sum in a cell does not exceed 0.3. */
export const exceeds = (value: number, limit: number): boolean =>
  value > limit && value - limit > 1e-12 * Math.max(Math.abs(value), Math.abs(limit));
