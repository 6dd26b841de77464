import { rounding } from "./exceeds";
import { binomial, chanceOver } from "./counts";

/** Chance that at least `needed` of alike, independent units work: binomial; 0 if more are needed than there are. */
export function enoughUnitsChance(units: number, needed: number, availability: number): number {
  if (needed > units) return 0;
  if (needed === 0) return 1;
  return chanceOver(binomial(units, availability), needed - 1);
}

/** An output that working units may add up to, and its chance. */
interface Sum {
  output: number;
  chance: number;
}

/** All sums of independent units in rising order; sums that differ by rounding alone (`noise`) are one. */
function sumsOf(outputs: readonly number[], availabilities: readonly number[], noise: number): Sum[] {
  let sums: Sum[] = [{ output: 0, chance: 1 }];
  outputs.forEach((output, unit) => {
    const works = availabilities[unit]!;
    const merged: Sum[] = [];
    const add = (sum: number, chance: number): void => {
      const last = merged[merged.length - 1];
      if (last && sum - last.output <= noise) last.chance += chance;
      else merged.push({ output: sum, chance });
    };
    let up = 0;
    for (const down of sums) {
      while (sums[up]!.output + output < down.output) {
        add(sums[up]!.output + output, sums[up]!.chance * works);
        up++;
      }
      add(down.output, down.chance * (1 - works));
    }
    for (; up < sums.length; up++) add(sums[up]!.output + output, sums[up]!.chance * works);
    sums = merged;
  });
  return sums;
}

/**
 * Chance that working units together meet a need: exact sum over every combination of units up and down. The units are
 * taken in two halves whose sums are listed in order, so that 30 unequal units need 2 × 2¹⁵ sums and not 2³⁰. A sum that
 * falls short of the need by rounding alone meets it.
 */
export function supplyChance(outputs: readonly number[], availabilities: readonly number[], need: number): number {
  const whole = outputs.reduce((total, output) => total + output, 0);
  const noise = rounding * Math.max(whole, need);
  const half = outputs.length >> 1;
  const first = sumsOf(outputs.slice(0, half), availabilities.slice(0, half), noise / outputs.length);
  const second = sumsOf(outputs.slice(half), availabilities.slice(half), noise / outputs.length);
  let chance = 0;
  let enough = 0;
  let from = second.length;
  for (const { output, chance: each } of first) {
    while (from > 0 && output + second[from - 1]!.output >= need - noise) enough += second[--from]!.chance;
    chance += each * enough;
  }
  return Math.min(1, chance);
}
