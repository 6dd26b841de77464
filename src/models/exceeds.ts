/** Share of an amount that is taken for the rounding of binary arithmetic: some thousands of roundings of 1.1e-16 of it. */
export const rounding = 1e-12;

/** Above a limit by more than rounding: 0.1 + 0.2 does not exceed 0.3. */
export const exceeds = (value: number, limit: number): boolean => value - limit > rounding * Math.abs(limit);
