import fc from "fast-check";
import { cylindersToOwn } from "../../../src/functions/cylinders/cylindersToOwn";
import { errorOf, oneNumber } from "../oneCell";

test("cumulative Poisson tables: mean 4 at 95 % is 8, mean 20 at 99 % is 31, mean 5 at 50 % is 5", () => {
  expect(oneNumber(cylindersToOwn, 2, 2, 0.95)).toBe(8);
  expect(oneNumber(cylindersToOwn, 4, 5, 0.99)).toBe(31);
  expect(oneNumber(cylindersToOwn, 0.5, 10, 0.5)).toBe(5);
});

test("means 24 at 90 % and 14 at 98 % by SciPy, outside this project: 30 and 22", () => {
  expect(oneNumber(cylindersToOwn, 12, 2, "90%")).toBe(30);
  expect(oneNumber(cylindersToOwn, 2, "1 week", "98%")).toBe(22);
});

test("seldom used, still two: mean 0.5, P(≤ 1) = 0.9098 and P(≤ 2) = 0.9856 (cumulative Poisson tables)", () => {
  expect(oneNumber(cylindersToOwn, 0.1, 5, 0.9)).toBe(1);
  expect(oneNumber(cylindersToOwn, 0.1, 5, 0.95)).toBe(2);
});

/** The published generator of Park & Miller, Comm. ACM 31 (1988) 1192: 16807 and 2³¹ − 1. */
function parkMiller(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

test.each([
  ["all alike", (mean: number) => mean],
  ["half at once, half twice as long", (mean: number, u: number) => (u < 0.5 ? 0 : 2 * mean)],
  ["exponential", (mean: number, u: number) => -mean * Math.log(u)],
] as const)(
  "a yard run through 60,000 days, turnaround %s: with that many a full one is at hand at the level, with one fewer it is not",
  (_words, turnaround) => {
    const [used, mean, level] = [2.5, 3.2, 0.9];
    const random = parkMiller(20261125);
    const days = 60000;
    const away = new Int32Array(days + 100);
    let clock = 0;
    while (clock < days) {
      clock -= Math.log(random()) / used;
      const back = clock + turnaround(mean, random());
      // Seen once a day, at the same hour.
      for (let day = Math.ceil(clock); day < back && day < away.length; day++) away[day]!++;
    }
    const share = (owned: number): number => {
      let enough = 0;
      for (let day = 100; day < days; day++) if (away[day]! <= owned) enough++;
      return enough / (days - 100);
    };
    const owned = oneNumber(cylindersToOwn, used, mean, level);
    expect(share(owned)).toBeGreaterThan(level - 0.005);
    expect(share(owned - 1)).toBeLessThan(level + 0.005);
  },
);

test("those in use come on top, part ones rounded up; with no use or no turnaround they are all", () => {
  expect(oneNumber(cylindersToOwn, 2, 2, 0.95, 6.1)).toBe(8 + 7);
  expect(oneNumber(cylindersToOwn, 0, 5, 0.95, 4)).toBe(4);
  expect(oneNumber(cylindersToOwn, 5, 0, 0.95, 4)).toBe(4);
  expect(oneNumber(cylindersToOwn, 5, 0, 0.95)).toBe(0);
});

test("only the product counts, and more of it or a higher level never takes fewer", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: 50, max: 99 }),
      (used, days, percent) => {
        const owned = oneNumber(cylindersToOwn, used / 10, days, percent / 100);
        expect(oneNumber(cylindersToOwn, days, used / 10, percent / 100)).toBe(owned);
        expect(oneNumber(cylindersToOwn, used / 10 + 1, days, percent / 100)).toBeGreaterThanOrEqual(owned);
        expect(oneNumber(cylindersToOwn, used / 10, days, percent / 100 + 0.005)).toBeGreaterThanOrEqual(owned);
        expect(owned).toBeGreaterThanOrEqual(Math.floor((used / 10) * days));
      },
    ),
    { seed: 15 },
  );
});

test("certainty, nothing, a percent without its sign, and more than a million away are refused", () => {
  expect(errorOf(cylindersToOwn, 2, 2, 1)).toMatch(/#VALUE! level 1 asks for certainty/);
  expect(errorOf(cylindersToOwn, 2, 2, 0)).toMatch(/#VALUE! level 0 asks for nothing/);
  expect(errorOf(cylindersToOwn, 2, 2, 95)).toMatch(/95 looks like a percent/);
  expect(errorOf(cylindersToOwn, -1, 2, 0.95)).toMatch(/#VALUE! used_per_day must be between 0 and 1000000/);
  expect(errorOf(cylindersToOwn, 200000, 30, 0.95)).toMatch(/6000000 cylinders away; at most 1000000/);
  expect(oneNumber(cylindersToOwn, 100000, 10, 0.95)).toBeGreaterThan(1e6);
});
