/** Options side by side: which is beaten outright, scores, what is left with a unit down, and money. */

import { exceeds } from "./exceeds";

/** Which way a measure is better. */
export type Better = "less" | "more";

const asGood = (a: number, b: number, better: Better): boolean => (better === "less" ? a <= b : a >= b);

/** Pareto dominance: at least as good in every measure and better in one. */
const beats = (a: readonly number[], b: readonly number[], better: readonly Better[]): boolean =>
  better.every((way, measure) => asGood(a[measure]!, b[measure]!, way)) &&
  better.some((_, measure) => a[measure] !== b[measure]);

/** For each row, the index of the first row that beats it, or -1. An undefined row takes no part. */
export const beatenBy = (rows: readonly (readonly number[] | undefined)[], better: readonly Better[]): number[] =>
  rows.map((row) =>
    row === undefined ? -1 : rows.findIndex((other) => other !== undefined && beats(other, row, better)),
  );

/**
 * Weighted sum of measures, each brought to 0 (worst of the list) … 1 (best of the list); weights are scaled to a sum of 1
 * and a measure that is the same for all counts 1.
 */
export function scores(
  rows: readonly (readonly number[])[],
  better: readonly Better[],
  weights: readonly number[],
): number[] {
  const largest = Math.max(...weights);
  const whole = weights.reduce((total, weight) => total + weight / largest, 0);
  const ends = better.map((way, measure) => {
    const values = rows.map((row) => row[measure]!);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return way === "less" ? { worst: high, best: low } : { worst: low, best: high };
  });
  return rows.map((row) => {
    const score = ends.reduce((total, { worst, best }, measure) => {
      // Halves, since the spread of the largest numbers would overflow.
      const part = best === worst ? 1 : (row[measure]! / 2 - worst / 2) / (best / 2 - worst / 2);
      return total + part * (weights[measure]! / largest);
    }, 0);
    return score / whole;
  });
}

/** Days that a stock [L] lasts at a need and a loss [L/day] that are the same each day, with nothing made. */
export const daysOfStock = (stock: number, need: number, loss: number): number => stock / (need + loss);

/**
 * Does the last of a list of outputs equal the sum of the others, within rounding? Then it is likely a total row taken in
 * with the units. Two equal units look the same and are left alone, and so is a last unit that makes nothing.
 */
export function endsInTotal(outputs: readonly number[]): boolean {
  if (outputs.length < 3) return false;
  const last = outputs[outputs.length - 1]!;
  const others = outputs.slice(0, -1).reduce((total, output) => total + output, 0);
  return last > 0 && !exceeds(last, others) && !exceeds(others, last);
}

/** Share of a need that is left with the largest unit lost. */
export const oneUnitDown = (outputs: readonly number[], need: number): number =>
  (outputs.reduce((total, output) => total + output, 0) - Math.max(...outputs)) / need;

/** Money a day: a price spread over its life [days], and daily costs. */
export const costPerDay = (buy: number, lifeDays: number, running: number, crew: number): number =>
  buy / lifeDays + running + crew;

export type BreakEven =
  /** From this day on A has cost no more than B. */
  | { readonly kind: "pays"; readonly days: number }
  /** A has cost less than B up to this day alone. */
  | { readonly kind: "cheaper first"; readonly days: number }
  | { readonly kind: "never" };

/** When A's cost so far is no more than B's. Costs are a fixed part and a part for each day. */
export function breakEvenDays(fixedA: number, dailyA: number, fixedB: number, dailyB: number): BreakEven {
  if (fixedA <= fixedB && dailyA <= dailyB) return { kind: "pays", days: 0 };
  if (fixedA >= fixedB && dailyA >= dailyB) return { kind: "never" };
  const days = (fixedA - fixedB) / (dailyB - dailyA);
  return { kind: dailyA < dailyB ? "pays" : "cheaper first", days };
}
