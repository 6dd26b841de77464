import poissonMass from "@stdlib/stats-base-dists-poisson-pmf";
import fc from "fast-check";
import { outbreakCensus } from "../../../src/functions/demand/outbreakCensus";
import { surgeDemand } from "../../../src/functions/demand/surgeDemand";

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const listed = (arrivals: readonly number[], stay: unknown, level?: number): number[][] =>
  outbreakCensus(column(arrivals), [[stay]], level === undefined ? undefined : [[level]]).slice(1);
const answer = (arrivals: unknown[][], stay: unknown, level?: unknown): unknown =>
  outbreakCensus(arrivals, [[stay]], level === undefined ? undefined : [[level]])[0]![0];

/** The rule as it is written: Σ arrivals(t − k)·exp(−k/stay) over k = 0 … t − 1. */
const meanOn = (day: number, arrivals: readonly number[], stay: number): number => {
  let mean = 0;
  for (let k = 0; k < day; k++) mean += arrivals[day - 1 - k]! * Math.exp(-k / stay);
  return mean;
};

/** P(N ≤ places), @stdlib's masses added up. */
const atMost = (places: number, mean: number): number => {
  let sum = 0;
  for (let n = 0; n <= places; n++) sum += poissonMass(n, mean);
  return sum;
};

const someArrivals = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 60 });

test("means by the sum written out; the last column is the least count with the level, by @stdlib's Poisson", () => {
  fc.assert(
    fc.property(
      someArrivals,
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 50, max: 99 }),
      (tenfold, tenths, percent) => {
        const arrivals = tenfold.map((each) => each / 10);
        listed(arrivals, tenths / 10, percent / 100).forEach(([day, mean, enough], index) => {
          expect(day).toBe(index + 1);
          expect(mean).toBeCloseTo(meanOn(day!, arrivals, tenths / 10), 8);
          if (mean === 0) expect(enough).toBe(0);
          else {
            expect(atMost(enough!, mean!)).toBeGreaterThan(percent / 100 - 1e-10);
            if (enough! > 0) expect(atMost(enough! - 1, mean!)).toBeLessThan(percent / 100 + 1e-10);
          }
        });
      },
    ),
    { seed: 5, numRuns: 40 },
  );
});

test("the same number each day settles at the geometric sum a/(1 − e^(−1/stay)), half a day's arrivals above Little's law", () => {
  const settled = listed(new Array(200).fill(6), 8)[199]![1]!;
  expect(settled).toBeCloseTo(6 / (1 - Math.exp(-1 / 8)), 6);
  // 1/(1 − e^(−x)) = 1/x + 1/2 + x/12 − …
  expect(settled - 6 * 8).toBeCloseTo(6 * (1 / 2 + 1 / (12 * 8)), 3);
});

/** The published generator of Park & Miller, Comm. ACM 31 (1988) 1192: 16807 and 2³¹ − 1. */
function parkMiller(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}

test("an outbreak run through 20,000 times: mean and level are met on each day", () => {
  const random = parkMiller(20261125);
  const arrivals = [4, 7, 12, 9, 3, 1];
  const [stay, level, runs] = [3.5, 0.9, 20000];
  const sums = arrivals.map(() => 0);
  const table = listed(arrivals, stay, level);
  const enough = arrivals.map(() => 0);
  for (let run = 0; run < runs; run++) {
    const there = arrivals.map(() => 0);
    arrivals.forEach((mean, day) => {
      // Poisson by the product of uniforms (Knuth); each leaves after an exponential stay.
      for (let product = random(); product > Math.exp(-mean); product *= random()) {
        const leaves = day - stay * Math.log(random());
        for (let on = day; on < arrivals.length && on < leaves; on++) there[on]!++;
      }
    });
    there.forEach((count, day) => {
      sums[day]! += count;
      if (count <= table[day]![2]!) enough[day]!++;
    });
  }
  table.forEach(([, mean], day) => {
    // Four standard errors of a mean of Poisson numbers, and of a share.
    expect(Math.abs(sums[day]! / runs - mean!)).toBeLessThan(4 * Math.sqrt(mean! / runs));
    expect(enough[day]! / runs).toBeGreaterThan(level - 4 * Math.sqrt(0.09 / runs));
  });
});

test("the level is 95 % where it is left out, and a higher one never takes fewer", () => {
  expect(listed([8, 16, 26], 5)).toEqual(listed([8, 16, 26], 5, 0.95));
  expect(listed([8, 16, 26], 5, 0.99)[2]![2]).toBeGreaterThan(listed([8, 16, 26], 5)[2]![2]!);
});

test("reads SURGE_DEMAND's table, one with dates, headings, and a row", () => {
  const surge = surgeDemand([[4]], [[9]], [[2]], [[3]], [[3]], [[2]], [[2]]);
  const bare = outbreakCensus(
    surge.slice(1).map((row) => [row[1]]),
    [["6 days"]],
  );
  expect(bare).toHaveLength(10);
  expect(outbreakCensus(surge, [[6]])).toEqual(bare);
  expect(outbreakCensus([["arrivals"], [4], [7]], [[6]])).toEqual(outbreakCensus([[4, 7]], [[6]]));
});

test("gaps between days, blanks, no stay, certainty and endless lists are refused with words", () => {
  const refused = (words: string) => ({ code: "#VALUE!", message: expect.stringContaining(words) });
  expect(
    answer(
      [
        ["2026-03-01", 4],
        ["2026-03-03", 5],
      ],
      6,
    ),
  ).toMatchObject(refused("with a gap of 1 day"));
  expect(answer(column([4, null, 5]), 6)).toMatchObject(refused("arrivals row 2 is blank"));
  expect(answer(column([4, -1]), 6)).toMatchObject(refused("arrivals row 2 must be between 0 and 1000000"));
  expect(answer(column([4]), 0)).toMatchObject(refused("stay must be more than 0"));
  expect(answer(column([4]), 6, 1)).toMatchObject(refused("level 1 asks for certainty"));
  expect(answer(column(new Array(1001).fill(1)), 6)).toMatchObject(refused("at most 1000 are reckoned"));
  expect(outbreakCensus(column(new Array(1000).fill(1)), [[6]])).toHaveLength(1001);
  expect(answer(column([900000, 900000]), 6)).toMatchObject(refused("patients at once; at most 1000000"));
});
