/**
 * Sum of a list with one rounding at the end, whatever its order: partial sums that don't overlap
 * (J. R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates", 1997).
 */
export function exactSum(values: readonly number[]): number {
  const partials: number[] = [];
  for (const value of values) {
    let carried = value;
    let kept = 0;
    for (const partial of partials) {
      const larger = Math.abs(carried) < Math.abs(partial) ? partial : carried;
      const smaller = larger === partial ? carried : partial;
      const sum = larger + smaller;
      const lost = smaller - (sum - larger);
      if (lost !== 0) partials[kept++] = lost;
      carried = sum;
    }
    partials.length = kept;
    partials.push(carried);
  }
  return partials.reduceRight((total, partial) => total + partial, 0);
}

/** A total that grows one value at a time, its rounding errors kept beside it (A. Neumaier, ZAMM 54, 1974). */
export class RunningSum {
  private sum = 0;
  private lost = 0;

  add(value: number): void {
    const next = this.sum + value;
    this.lost += Math.abs(this.sum) >= Math.abs(value) ? this.sum - next + value : value - next + this.sum;
    this.sum = next;
  }

  get total(): number {
    return this.sum + this.lost;
  }
}
