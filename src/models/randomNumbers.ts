/** Numbers by chance that are the same for the same seed on every machine and engine: whole 32-bit steps alone. */
import { exponential, naturalLog } from "./logarithm";

/** Largest seed. */
export const mostSeed = 0xffffffff;

/** Mixes the bits of a 32-bit number: the finalizer of MurmurHash3 (A. Appleby, public domain); no two numbers give the same. */
export function mixBits(word: number): number {
  let mixed = word;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}

/** 2³² over the golden ratio, odd: the step from one word of a seeded state to the next, as in SplitMix (Steele, Lea & Flood 2014). */
const goldenStep = 0x9e3779b9;

/** xoshiro128** 1.1 (D. Blackman & S. Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47, 2021; public domain). */
export class RandomNumbers {
  private spare = 0;
  private hasSpare = false;

  /** @param state four words of 32 bits, not all 0 */
  constructor(private readonly state: Int32Array) {}

  /** The numbers of a seed; different streams of one seed have nothing to do with each other. */
  static seeded(seed: number, stream: number): RandomNumbers {
    const state = new Int32Array(4);
    for (let word = 0; word < 4; word++) state[word] = mixBits(seed + Math.imul(stream * 4 + word + 1, goldenStep));
    return new RandomNumbers(state);
  }

  /** A whole number from 0 to 2³² − 1. */
  next(): number {
    const { state } = this;
    const second = state[1]!;
    const fivefold = Math.imul(second, 5);
    const result = Math.imul((fivefold << 7) | (fivefold >>> 25), 9);
    state[2]! ^= state[0]!;
    state[3]! ^= second;
    state[1]! ^= state[2]!;
    state[0]! ^= state[3]!;
    state[2]! ^= second << 9;
    state[3] = (state[3]! << 11) | (state[3]! >>> 21);
    return result >>> 0;
  }

  /** From 0 to just under 1, 53 bits of two numbers (as genrand_res53 of M. Matsumoto & T. Nishimura). */
  uniform(): number {
    const high = this.next() >>> 5;
    return (high * 67108864 + (this.next() >>> 6)) / 9007199254740992;
  }

  /** Standard normal: the polar method of G. Marsaglia & T. A. Bray (SIAM Review 6, 1964), which gives two at a time. */
  normal(): number {
    if (this.hasSpare) {
      this.hasSpare = false;
      return this.spare;
    }
    let x: number;
    let y: number;
    let square: number;
    do {
      x = 2 * this.uniform() - 1;
      y = 2 * this.uniform() - 1;
      square = x * x + y * y;
    } while (square >= 1 || square === 0);
    // Engines take the root from the processor, which rounds it as IEEE 754 asks.
    const scale = Math.sqrt((-2 * naturalLog(square)) / square);
    this.spare = y * scale;
    this.hasSpare = true;
    return x * scale;
  }

  /**
   * Gamma of a shape and scale 1: G. Marsaglia & W. W. Tsang, "A simple method for generating gamma variables", ACM TOMS
   * 26, 2000; under shape 1 by their note, gamma(shape + 1) × uniform^(1/shape).
   */
  gamma(shape: number): number {
    if (shape < 1) {
      const exponent = naturalLog(1 - this.uniform()) / shape;
      return exponent < -700 ? 0 : this.gamma(shape + 1) * exponential(exponent);
    }
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.normal();
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      const u = 1 - this.uniform();
      const square = x * x;
      if (u < 1 - 0.0331 * square * square || naturalLog(u) < 0.5 * square + d * (1 - v + naturalLog(v))) return d * v;
    }
  }

  /** Whole number from 0 with chance `stays`ⁿ of n or more (geometric), by its inverse. */
  geometric(logOfStays: number): number {
    return Math.floor(naturalLog(1 - this.uniform()) / logOfStays);
  }
}
