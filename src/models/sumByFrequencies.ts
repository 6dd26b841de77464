import { leftOver } from "./counts";

/**
 * Quantile of a sum S of independent Poisson counts in whole steps, units a count, from its characteristic function, for
 * sums too large to go through step by step:
 *
 *   P(S = s) = (1/n)·Σ φ(θj)·e^(−i·θj·s),  θj = 2πj/n,  ln φ(θ) = Σ mean·(e^(iθ·units) − 1)
 *
 * over a window of n steps outside of which S hardly ever lies (lattice inversion: Abate & Whitt, The Fourier-series
 * method for inverting transforms of probability distributions, Queueing Systems 10 (1992) 5). With large means only few
 * frequencies count; between them whole stretches are leapt over. The law is tilted first, P(S = s)·e^(ts)/M(t), so that
 * its middle lies near the answer and a rare excess keeps its digits (Esscher's transform).
 */

/** Chances under e^−45 of the tilted law, and frequencies with |φ| under it, are left out. */
const negligible = 45;
/** Frequencies that are summed in some 10 ms. */
const mostFrequencies = 8000;
/** Frequencies that are looked at in some 10 ms, times kinds. */
const mostLooks = 250000;
/** Products of two places in the window stay whole numbers. */
const widestWindow = 9e7;

/**
 * Where Chernoff's bound of the chance to lie beyond falls to e^−rarity: the tilt t with t·K′(t) − K(t) = rarity, and K′(t).
 *
 * @param side 1 above the mean, −1 below it
 * @returns Undefined below where not even 0 is that rare
 */
function rarePlace(
  means: readonly number[],
  units: readonly number[],
  rarity: number,
  side: 1 | -1,
): { tilt: number; place: number } | undefined {
  const sum = (of: (mean: number, unit: number) => number): number =>
    means.reduce((total, mean, kind) => total + of(mean, units[kind]!), 0);
  if (side < 0 && sum((mean) => mean) <= rarity) return undefined;
  const rarityOf = (tilt: number): number =>
    sum((mean, unit) => mean * (Math.exp(tilt * unit) * (tilt * unit - 1) + 1));
  let near = 0;
  let far = side / Math.max(...units);
  while (rarityOf(far) < rarity) [near, far] = [far, 2 * far];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (near + far) / 2;
    if (rarityOf(middle) < rarity) near = middle;
    else far = middle;
  }
  return { tilt: far, place: sum((mean, unit) => mean * unit * Math.exp(far * unit)) };
}

/** Frequencies at which the characteristic function of the law counts, with its values turned to the window's start. */
interface Spectrum {
  readonly indexes: number[];
  readonly real: number[];
  readonly imaginary: number[];
}

function spectrumOf(
  means: readonly number[],
  units: readonly number[],
  first: number,
  size: number,
): Spectrum | undefined {
  const spectrum: Spectrum = { indexes: [], real: [], imaginary: [] };
  const turn = (2 * Math.PI) / size;
  const spread = Math.sqrt(means.reduce((sum, mean, kind) => sum + mean * units[kind]! ** 2, 0));
  /** √(−ln |φ|) changes by no more than spread/√2 for each radian, so that much can be leapt over. */
  const indexesForRoot = Math.SQRT2 / spread / turn;
  const root = Math.sqrt(negligible);
  const start = first % size;
  let looks = mostLooks / units.length;
  for (let index = 0; 2 * index <= size;) {
    if (--looks < 0) return undefined;
    let decay = 0;
    let phase = -turn * ((index * start) % size);
    for (let kind = 0; kind < units.length; kind++) {
      const part = (index * units[kind]!) % size;
      const angle = turn * (2 * part > size ? part - size : part);
      const half = Math.sin(angle / 2);
      decay += 2 * means[kind]! * half * half;
      phase += means[kind]! * Math.sin(angle);
    }
    const leap = Math.floor((Math.sqrt(decay) - root) * indexesForRoot);
    if (leap >= 1) {
      index += leap;
      continue;
    }
    if (spectrum.indexes.length === mostFrequencies) return undefined;
    // Each frequency stands for itself and its mirror image; the first and the middle one are their own.
    const weight = (index === 0 || 2 * index === size ? 1 : 2) * Math.exp(-decay);
    spectrum.indexes.push(index);
    spectrum.real.push(weight * Math.cos(phase));
    spectrum.imaginary.push(weight * Math.sin(phase));
    index++;
  }
  return spectrum;
}

/** @returns Steps, or undefined if the window is too wide or too many frequencies count */
export function stepsByFrequencies(
  means: readonly number[],
  units: readonly number[],
  level: number,
): number | undefined {
  const mayExceed = leftOver(level);
  const { tilt } = rarePlace(means, units, Math.max(0, -Math.log(mayExceed)), 1)!;
  const tilted = means.map((mean, kind) => mean * Math.exp(tilt * units[kind]!));
  const first = Math.floor(rarePlace(tilted, units, negligible, -1)?.place ?? 0);
  const last = Math.ceil(rarePlace(tilted, units, negligible, 1)!.place);
  const size = last - first + 1;
  if (size > widestWindow || Math.max(...units) > widestWindow) return undefined;
  const spectrum = spectrumOf(tilted, units, first, size);
  if (!spectrum) return undefined;
  const { indexes, real, imaginary } = spectrum;
  const turn = (2 * Math.PI) / size;

  // Σ q^n from n to the window's end is (q^n − q^size)/(1 − q), q = e^(−t − iθ); here its part for each frequency.
  const shrink = Math.exp(-tilt);
  indexes.forEach((index, at) => {
    const half = Math.sin((turn * index) / 2);
    const below = -Math.expm1(-tilt) + shrink * 2 * half * half;
    const across = shrink * Math.sin(turn * index);
    const square = below * below + across * across;
    if (square === 0) return;
    const [re, im] = [real[at]!, imaginary[at]!];
    real[at] = (re * below + im * across) / square;
    imaginary[at] = (im * below - re * across) / square;
  });
  const grown = means.reduce((sum, mean, kind) => sum + mean * Math.expm1(tilt * units[kind]!), 0) - tilt * first;
  const end = Math.exp(-tilt * size);

  /** Chance of first + n or more. */
  const chanceFrom = (n: number): number => {
    const power = Math.exp(-tilt * n);
    let sum = 0;
    for (let at = 0; at < indexes.length; at++) {
      const angle = turn * ((indexes[at]! * n) % size);
      sum += real[at]! * (power * Math.cos(angle) - end) + imaginary[at]! * power * Math.sin(angle);
    }
    return (Math.exp(grown) * sum) / size;
  };
  let enough = size - 1;
  let short = -1;
  while (enough - short > 1) {
    const middle = Math.floor((enough + short) / 2);
    if (chanceFrom(middle + 1) <= mayExceed) enough = middle;
    else short = middle;
  }
  return first + enough;
}
