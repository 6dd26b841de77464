import { leftOver } from "./counts";

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

/** Steps times kinds that are gone through in some 20 ms. */
const mostWork = 2e6;

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
  if (last * units.length > mostWork) return undefined;
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
