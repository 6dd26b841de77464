import { rounding } from "./exceeds";

/**
 * Distance from a whole number that is taken for floating noise: the usual share of it, never more than a millionth, so
 * that a large value isn't rounded the wrong way.
 */
const noise = (value: number): number => Math.min(1e-6, rounding * Math.max(1, Math.abs(value)));

const withoutNoise = (value: number): number => {
  const nearest = Math.round(value);
  return Math.abs(value - nearest) <= noise(value) ? nearest : value;
};

/** Whole things to bring: rounded up, but 3.0000000000000004 stays 3. */
export const roundUpThings = (value: number): number => Math.ceil(withoutNoise(value));

/** Whole things that can be had: cut down, but 2.9999999999999996 is 3. */
export const cutDownThings = (value: number): number => Math.floor(withoutNoise(value));
