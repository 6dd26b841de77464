import fc from "fast-check";

const steps = 100000;
/** Numbers spread evenly over a range, both ends among them; `fc.double` spreads over bit patterns, nearly all close to 0. */
export const evenly = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: steps }).map((step) => (step === steps ? max : min + ((max - min) * step) / steps));
