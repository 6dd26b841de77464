import { type CountDistribution, leftOver } from "./counts";

/** Counts of one kind, each of which takes `flow`. */
export interface CountedFlow extends CountDistribution {
  readonly flow: number;
}

/** Sums in rising order and their chances. */
interface Sums {
  readonly sums: Float64Array;
  readonly chances: Float64Array;
}

/** Sums of one half that are listed and gone through in some 20 ms. */
const mostSums = 30000;
/** Combinations rarer than this part of what the level leaves open are left out: together under 1e-12 of it. */
const negligible = 1e-17;

/** @returns Undefined when there are too many */
function listSums(kinds: readonly CountedFlow[], rarest: number): Sums | undefined {
  let listed: [sum: number, chance: number][] = [[0, 1]];
  for (const { flow, first, chances } of kinds) {
    const next: typeof listed = [];
    for (const [sum, weight] of listed) {
      for (let index = 0; index < chances.length; index++) {
        const chance = weight * chances[index]!;
        if (chance >= rarest) next.push([sum + flow * (first + index), chance]);
      }
      if (next.length > mostSums) return undefined;
    }
    listed = next;
  }
  listed.sort(([a], [b]) => a - b);
  return {
    sums: Float64Array.from(listed.map(([sum]) => sum)),
    chances: Float64Array.from(listed.map(([, chance]) => chance)),
  };
}

/**
 * Least flow with P(Σ countᵢ × flowᵢ ≤ flow) ≥ level for flows without a common step: the kinds are parted in two halves,
 * all combinations of each half are listed in rising order, and both lists are gone through against each other.
 *
 * @returns L/min, or undefined if there are too many combinations
 */
export function flowByCombinations(kinds: readonly CountedFlow[], level: number): number | undefined {
  const halves: CountedFlow[][] = [[], []];
  const sizes = [1, 1];
  for (const kind of kinds.slice().sort((a, b) => b.chances.length - a.chances.length)) {
    const half = sizes[0]! <= sizes[1]! ? 0 : 1;
    halves[half]!.push(kind);
    sizes[half]! *= kind.chances.length;
  }
  // Of a box of combinations the likely ones fill a ball or more than a tenth: too many are told before they are listed.
  if (Math.max(...sizes) > 10 * mostSums) return undefined;
  const mayExceed = leftOver(level);
  const [some, others] = halves.map((half) => listSums(half, mayExceed * negligible));
  if (!some || !others) return undefined;

  /** over[i]: chance of the sums of the others from the i-th on */
  const over = new Float64Array(others.sums.length + 1);
  for (let index = others.sums.length - 1; index >= 0; index--) over[index] = over[index + 1]! + others.chances[index]!;
  const chanceAbove = (flow: number): number => {
    let chance = 0;
    let within = others.sums.length;
    for (let index = 0; index < some.sums.length; index++) {
      const left = flow - some.sums[index]!;
      while (within > 0 && others.sums[within - 1]! > left) within--;
      chance += some.chances[index]! * over[within]!;
    }
    return chance;
  };

  let high = some.sums[some.sums.length - 1]! + others.sums[others.sums.length - 1]!;
  let low = -high;
  const resolution = high * 1e-13;
  while (high - low > resolution) {
    const middle = (low + high) / 2;
    if (chanceAbove(middle) <= mayExceed) high = middle;
    else low = middle;
  }
  // The jump between low and high stands at the largest sum that is reached there.
  const reach = high + resolution;
  let answer = 0;
  let within = others.sums.length;
  for (let index = 0; index < some.sums.length; index++) {
    const sum = some.sums[index]!;
    while (within > 0 && sum + others.sums[within - 1]! > reach) within--;
    if (within > 0) answer = Math.max(answer, sum + others.sums[within - 1]!);
  }
  return answer;
}
