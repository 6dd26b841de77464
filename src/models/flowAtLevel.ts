import { rounding } from "./exceeds";
import { countAtLevel, leftOver, poisson } from "./counts";

/** Patients of one kind: their number is Poisson of `mean`, each takes `flow` [L/min]. */
export interface Kind {
  readonly mean: number;
  readonly flow: number;
}

/** Kinds of one flow are one kind (the sum of Poisson counts is Poisson); kinds that add nothing are dropped. */
export function mergeKinds(means: readonly number[], flows: readonly number[]): Kind[] {
  const byFlow = new Map<number, number>();
  flows.forEach((flow, kind) => {
    if (flow > 0 && means[kind]! > 0) byFlow.set(flow, (byFlow.get(flow) ?? 0) + means[kind]!);
  });
  return [...byFlow].map(([flow, mean]) => ({ mean, flow })).sort((a, b) => a.flow - b.flow);
}

/** The fraction p/q nearest to x with the least q for which it is x to 12 digits (continued fraction), or undefined. */
function denominatorOf(x: number): number | undefined {
  let [older, q] = [0, 1];
  let rest = x;
  for (let step = 0; step < 20; step++) {
    if (Math.abs(x - Math.round(x * q) / q) <= rounding * x) return q;
    const fraction = rest - Math.floor(rest);
    if (fraction < rounding) return undefined;
    rest = 1 / fraction;
    [older, q] = [q, Math.floor(rest) * q + older];
    if (q > 10000) return undefined;
  }
  return undefined;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/**
 * Whole parts of one step that every flow is made of: flow = units × smallest flow / parts. Undefined when the flows
 * have no such step coarser than a millionth of the smallest one.
 */
export function commonStep(kinds: readonly Kind[]): { parts: number; units: number[] } | undefined {
  const smallest = kinds[0]!.flow;
  let parts = 1;
  for (const { flow } of kinds) {
    const denominator = denominatorOf(flow / smallest);
    if (denominator === undefined) return undefined;
    parts *= denominator / commonDivisor(parts, denominator);
    if (parts > 1e6) return undefined;
  }
  return { parts, units: kinds.map(({ flow }) => Math.round((flow / smallest) * parts)) };
}

/**
 * Steps beyond which the sum goes with a chance under e^−60, by Chernoff's bound:
 * ln P(S ≥ x) ≤ Σ mean·(e^(t·units) − 1) − t·x, the best of a row of t.
 */
function lastStep(means: readonly number[], units: readonly number[]): number {
  const most = Math.max(...units);
  let best = Infinity;
  for (let theta = 1e-4; theta < 20; theta *= 1.2) {
    const grown = means.reduce((sum, mean, kind) => sum + mean * Math.expm1((theta * units[kind]!) / most), 0);
    best = Math.min(best, ((grown + 60) * most) / theta);
  }
  return Math.ceil(best);
}

/** Numbers are kept below this by taking it out of the running window; e^347 a time. */
const tooLarge = 2 ** 500;

/**
 * Quantile of a sum of independent Poisson counts in whole steps, by Panjer's recursion for a compound Poisson sum:
 *
 *   g(0) = e^−Σmean,  g(s) = (1/s)·Σ mean·units·g(s − units)
 *
 * Panjer, ASTIN Bulletin 12 (1981). Every term is positive, so nothing cancels. g(0) would underflow, so it starts at 1
 * and is scaled on the way; that the chances then sum up to e^Σmean proves that nothing was lost.
 *
 * @returns Steps, or undefined if that sum is not met or the work would be too much for a cell
 */
export function stepsAtLevel(means: readonly number[], units: readonly number[], level: number): number | undefined {
  const last = lastStep(means, units);
  if (last > 8e6 || last * units.length > 6e7) return undefined;
  const widest = Math.max(...units);
  const weights = means.map((mean, kind) => mean * units[kind]!);
  const chances = new Float64Array(last + 1);
  chances[0] = 1;
  /** Steps up to each of these were left behind when the window was scaled. */
  const leftBehind: number[] = [];
  for (let step = 1; step <= last; step++) {
    let sum = 0;
    for (let kind = 0; kind < units.length; kind++) {
      const from = step - units[kind]!;
      if (from >= 0) sum += weights[kind]! * chances[from]!;
    }
    chances[step] = sum / step;
    if (chances[step]! > tooLarge) {
      for (let back = Math.max(0, step - widest + 1); back <= step; back++) chances[back]! /= tooLarge;
      leftBehind.push(step - widest);
    }
  }

  const scalings = leftBehind.length;
  const fromTheTop = (visit: (step: number, chance: number) => boolean): void => {
    let scale = 1;
    let next = scalings - 1;
    for (let step = last; step >= 0; step--) {
      while (next >= 0 && step <= leftBehind[next]!) {
        scale /= tooLarge;
        next--;
      }
      if (scale === 0 || !visit(step, chances[step]! * scale)) return;
    }
  };

  let total = 0;
  fromTheTop((_step, chance) => {
    total += chance;
    return true;
  });
  const together = means.reduce((sum, mean) => sum + mean, 0);
  if (!(Math.abs(Math.log(total) + scalings * Math.log(tooLarge) - together) < 1e-6)) return undefined;

  const mayExceed = leftOver(level) * total;
  let above = 0;
  let answer = 0;
  fromTheTop((step, chance) => {
    answer = step;
    above += chance;
    return above <= mayExceed;
  });
  return answer;
}

/**
 * The same quantile for flows without a common step: every combination of all kinds but the one that varies most is
 * listed with its chance, and that kind's own distribution answers for the rest.
 *
 * @returns L/min, or undefined if there are too many combinations
 */
export function flowByCombinations(kinds: readonly Kind[], level: number): number | undefined {
  const inOrder = kinds
    .map((kind) => ({ flow: kind.flow, ...poisson(kind.mean) }))
    .sort((a, b) => a.chances.length - b.chances.length);
  const widest = inOrder.pop()!;
  if (inOrder.reduce((product, { chances }) => product * chances.length, 1) > 1e6) return undefined;

  let sums = [0];
  let weights = [1];
  for (const { flow, first, chances } of inOrder) {
    const nextSums: number[] = [];
    const nextWeights: number[] = [];
    sums.forEach((sum, at) =>
      chances.forEach((chance, index) => {
        const weight = weights[at]! * chance;
        if (weight < 1e-25) return;
        nextSums.push(sum + flow * (first + index));
        nextWeights.push(weight);
      }),
    );
    sums = nextSums;
    weights = nextWeights;
  }

  /** over[i]: chance of more than first + i − 1 of the widest kind */
  const over = new Float64Array(widest.chances.length + 1);
  for (let index = widest.chances.length - 1; index >= 0; index--)
    over[index] = over[index + 1]! + widest.chances[index]!;
  const countUnder = (sum: number, flow: number): number => Math.floor((flow - sum) / widest.flow);
  const chanceAbove = (flow: number): number =>
    sums.reduce((chance, sum, at) => {
      const index = countUnder(sum, flow) - widest.first + 1;
      return chance + weights[at]! * over[Math.min(Math.max(index, 0), over.length - 1)]!;
    }, 0);

  const mayExceed = leftOver(level);
  let high = sums.reduce((most, sum) => Math.max(most, sum), 0) + widest.flow * (widest.first + widest.chances.length);
  let low = -high;
  const resolution = high * 1e-13;
  while (high - low > resolution) {
    const middle = (low + high) / 2;
    if (chanceAbove(middle) <= mayExceed) high = middle;
    else low = middle;
  }
  // The jump between low and high stands at the largest sum that is reached there.
  const reach = high + resolution;
  return sums.reduce((most, sum) => {
    const count = countUnder(sum, reach);
    return count < 0 ? most : Math.max(most, sum + widest.flow * count);
  }, 0);
}

/**
 * Flow [L/min] that is enough with a chance of at least `level` for kinds of patients whose numbers are independent and
 * Poisson: an exact sum, by steps where the flows have a common one, by combinations where not.
 *
 * @returns Undefined when neither can be done in the time of a cell
 */
export function flowAtLevel(means: readonly number[], flows: readonly number[], level: number): number | undefined {
  const kinds = mergeKinds(means, flows);
  if (kinds.length === 0) return 0;
  if (kinds.length === 1) return kinds[0]!.flow * countAtLevel(poisson(kinds[0]!.mean), level);
  const step = commonStep(kinds);
  if (step) {
    const steps = stepsAtLevel(
      kinds.map(({ mean }) => mean),
      step.units,
      level,
    );
    // 15 digits: a step such as 0.1 L/min must not show as 0.30000000000000004.
    if (steps !== undefined) return Number(((steps * kinds[0]!.flow) / step.parts).toPrecision(15));
  }
  const flow = flowByCombinations(kinds, level);
  return flow === undefined ? undefined : Number(flow.toPrecision(15));
}
