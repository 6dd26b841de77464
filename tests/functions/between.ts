import fc from "fast-check";

/**
 * Numbers spread evenly between two ends, the ends among them. `fc.double` spreads over bit patterns: half of what it draws
 * between 0 and 500 is below 1e-164.
 */
export const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 100000 }).map((step) => (step === 100000 ? high : low + ((high - low) * step) / 100000));
