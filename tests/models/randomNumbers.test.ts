import { RandomNumbers, mixBits } from "../../src/models/randomNumbers";

const { jStat } = require("jstat") as { jStat: any };

/**
 * Outputs of the authors' reference program xoshiro128starstar.c from the state 1, 2, 3, 4, as the tests of the library
 * rand_xoshiro 0.7 list them (read).
 */
const published = [11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804];

test("the generator gives the published outputs of xoshiro128**", () => {
  const numbers = new RandomNumbers(Int32Array.of(1, 2, 3, 4));
  expect(published.map(() => numbers.next())).toEqual(published);
});

/** The same two steps by arithmetic of whole numbers without end, after the published programs. */
const word = 2n ** 32n;
const murmurFinalizer = (given: number): number => {
  let h = ((BigInt(given) % word) + word) % word;
  h ^= h >> 16n;
  h = (h * 0x85ebca6bn) % word;
  h ^= h >> 13n;
  h = (h * 0xc2b2ae35n) % word;
  return Number(h ^ (h >> 16n));
};
function* xoshiro(state: bigint[]): Generator<number> {
  const rotated = (x: bigint, by: bigint): bigint => ((x << by) | (x >> (32n - by))) % word;
  for (;;) {
    yield Number((rotated((state[1]! * 5n) % word, 7n) * 9n) % word);
    const t = (state[1]! << 9n) % word;
    state[2]! ^= state[0]!;
    state[3]! ^= state[1]!;
    state[1]! ^= state[2]!;
    state[0]! ^= state[3]!;
    state[2]! ^= t;
    state[3] = rotated(state[3]!, 11n);
  }
}

test.each([0, 1, 7, 123456789, 0xffffffff])("seed %d: the same numbers by arithmetic without end", (seed) => {
  for (const stream of [0, 1, 2]) {
    const state = [1, 2, 3, 4].map((place) =>
      BigInt(murmurFinalizer(Number((BigInt(seed) + BigInt(stream * 4 + place) * 0x9e3779b9n) % word))),
    );
    expect(mixBits(seed)).toBe(murmurFinalizer(seed));
    const expected = xoshiro(state);
    const numbers = RandomNumbers.seeded(seed, stream);
    for (let at = 0; at < 200; at++) expect(numbers.next()).toBe(expected.next().value);
  }
});

/** Largest distance between the share of sorted values and a distribution (Kolmogorov–Smirnov). */
function distance(values: number[], cdf: (x: number) => number): number {
  values.sort((a, b) => a - b);
  return values.reduce((largest, value, at) => {
    const chance = cdf(value);
    return Math.max(largest, Math.abs(chance - at / values.length), Math.abs(chance - (at + 1) / values.length));
  }, 0);
}

const drawn = 20_000;
/** Passed by chance once in some 3,000 times (Kolmogorov's limit law, 2·exp(−2·2²)); seeds are fixed. */
const tooFar = 2 / Math.sqrt(drawn);
const many = (seed: number, draw: (numbers: RandomNumbers) => number): number[] => {
  const numbers = RandomNumbers.seeded(seed, 0);
  return Array.from({ length: drawn }, () => draw(numbers));
};

// Distributions from jStat, a general library.
test.each([1, 2, 3])("uniform and normal numbers have their distributions (seed %d)", (seed) => {
  expect(
    distance(
      many(seed, (numbers) => numbers.uniform()),
      (x) => x,
    ),
  ).toBeLessThan(tooFar);
  expect(
    distance(
      many(seed, (numbers) => numbers.normal()),
      (x) => jStat.normal.cdf(x, 0, 1),
    ),
  ).toBeLessThan(tooFar);
});

test.each([
  [0.25, 1],
  [0.7, 2],
  [1, 3],
  [1.5, 4],
  [4, 5],
  [25, 6],
  [400, 7],
])("gamma numbers of shape %d have their distribution", (shape, seed) => {
  expect(
    distance(
      many(seed, (numbers) => numbers.gamma(shape)),
      (x) => jStat.gamma.cdf(x, shape, 1),
    ),
  ).toBeLessThan(tooFar);
  // The check sees a shape that is off by a tenth.
  expect(
    distance(
      many(seed, (numbers) => numbers.gamma(shape)),
      (x) => jStat.gamma.cdf(x, shape * 1.1, 1),
    ),
  ).toBeGreaterThan(tooFar);
});

test.each([0.3, 2, 15])("geometric numbers of mean %d: n or more with the chance (mean/(1 + mean))ⁿ", (mean) => {
  const stays = mean / (1 + mean);
  const values = many(11, (numbers) => numbers.geometric(Math.log(stays)));
  for (const n of [1, 2, 3, 10]) {
    const chance = stays ** n;
    const share = values.filter((value) => value >= n).length / drawn;
    expect(Math.abs(share - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / drawn));
  }
});
