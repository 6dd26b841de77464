import { rounding } from "./exceeds";
import { countAtLevel, poisson } from "./counts";
import { flowByCombinations } from "./sumByCombinations";
import { stepsByFrequencies } from "./sumByFrequencies";
import { stepsAtLevel } from "./sumByRecursion";

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
    const each = kinds.map(({ mean }) => mean);
    const steps = stepsAtLevel(each, step.units, level) ?? stepsByFrequencies(each, step.units, level);
    // 15 digits: a step such as 0.1 L/min must not show as 0.30000000000000004.
    if (steps !== undefined) return Number(((steps * kinds[0]!.flow) / step.parts).toPrecision(15));
  }
  const flow = flowByCombinations(
    kinds.map((kind) => ({ flow: kind.flow, ...poisson(kind.mean) })),
    level,
  );
  return flow === undefined ? undefined : Number(flow.toPrecision(15));
}
