import poissonMass from "@stdlib/stats-base-dists-poisson-pmf";
import fc from "fast-check";
import { poisson } from "../../src/models/counts";
import { type Kind, commonStep, flowAtLevel, mergeKinds } from "../../src/models/flowAtLevel";
import { flowByCombinations } from "../../src/models/sumByCombinations";
import { stepsByFrequencies } from "../../src/models/sumByFrequencies";
import { stepsAtLevel } from "../../src/models/sumByRecursion";
import { evenly } from "../evenly";

/** The same by listing every combination up to far tails and adding chances from the smallest flow upwards. */
function listed(
  means: readonly number[],
  flows: readonly number[],
): (level: number) => { flow: number; margin: number } {
  let sums = new Map<number, number>([[0, 1]]);
  means.forEach((mean, kind) => {
    const next = new Map<number, number>();
    for (const [sum, chance] of sums) {
      for (let n = 0; n <= mean + 8 * Math.sqrt(mean) + 12; n++) {
        const flow = Number((sum + n * flows[kind]!).toPrecision(12));
        next.set(flow, (next.get(flow) ?? 0) + chance * poissonMass(n, mean));
      }
    }
    sums = next;
  });
  const rising = [...sums].sort(([a], [b]) => a - b);
  return (level) => {
    let below = 0;
    for (const [flow, chance] of rising) {
      below += chance;
      if (below >= level) return { flow, margin: Math.min(below - level, level - below + chance) };
    }
    throw new Error("the listing ends before the level");
  };
}

describe("flow at a level", () => {
  test.each([
    [
      [6, 2],
      [10, 30],
    ],
    [
      [6, 2, 0.5],
      [10, 30, 60],
    ],
    [
      [3.3, 1.7],
      [2.5, 7.25],
    ],
    [
      [5, 2],
      [0.1, 0.25],
    ],
    [
      [2, 3],
      [Math.PI, Math.E],
    ],
    [
      [1, 2, 1],
      [Math.SQRT2, 5, 100 / 6],
    ],
  ])("means %p, flows %p: as by listing every combination", (means, flows) => {
    const atLevel = listed(means, flows);
    for (const level of [0.05, 0.3, 0.5, 0.8, 0.9, 0.95, 0.99, 0.999]) {
      expect(flowAtLevel(means, flows, level)).toBeCloseTo(atLevel(level).flow, 8);
    }
  });

  test("any three kinds in quarter litres", () => {
    const quarter = fc.integer({ min: 1, max: 80 }).map((quarters) => quarters / 4);
    const mean = evenly(0.01, 4);
    fc.assert(
      fc.property(
        fc.tuple(mean, mean, mean),
        fc.tuple(quarter, quarter, quarter),
        evenly(0.05, 0.995),
        (means, flows, level) => {
          const { flow, margin } = listed(means, flows)(level);
          fc.pre(margin > 1e-9);
          expect(flowAtLevel(means, flows, level)).toBeCloseTo(flow, 8);
        },
      ),
      { numRuns: 40 },
    );
  });

  /** Each way that takes the case; the others give it up. */
  const everyWay = (kinds: readonly Kind[], level: number): (number | undefined)[] => {
    const { parts, units } = commonStep(kinds)!;
    const means = kinds.map(({ mean }) => mean);
    const flowOf = (steps: number | undefined): number | undefined =>
      steps === undefined ? undefined : (steps * kinds[0]!.flow) / parts;
    return [
      flowOf(stepsAtLevel(means, units, level)),
      flowOf(stepsByFrequencies(means, units, level)),
      flowByCombinations(
        kinds.map(({ mean, flow }) => ({ flow, ...poisson(mean) })),
        level,
      ),
    ];
  };

  test.each([
    [[6, 2], [10, 30], 3],
    [[3.3, 1.7, 0.2], [2.5, 7.25, 60], 3],
    [[0.05, 0.02], [10, 30], 3],
    [[1000, 1000], [1, 1000], 2],
    [[20000, 26000], [10, 30], 3],
    [[20000, 50], [7.5, 60], 3],
    [[20000, 5000, 1000, 20000], [10, 30, 60, 5], 2],
    [[600, 200, 100, 50, 30, 20, 10], [0.25, 1, 2, 4, 10, 30, 60], 2],
  ])("means %p, flows %p: recursion, frequencies and combinations agree, %i of them", (means, flows, ways) => {
    const kinds = mergeKinds(means, flows);
    for (const level of [0.001, 0.05, 0.5, 0.95, 0.9999, 1 - 1e-9]) {
      const answers = everyWay(kinds, level).filter((flow): flow is number => flow !== undefined);
      expect(answers.length).toBeGreaterThanOrEqual(ways);
      for (const flow of answers) expect(flow).toBeCloseTo(answers[0]!, 6);
      expect(flowAtLevel(means, flows, level)).toBeCloseTo(answers[0]!, 6);
    }
  });

  test("any kinds in half litres, by recursion and by frequencies", () => {
    const kind = fc.tuple(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 1, max: 120 }));
    fc.assert(
      fc.property(
        fc.array(kind, { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 1, max: 9999 }),
        (pairs, tenThousandths) => {
          const kinds = mergeKinds(
            pairs.map(([tenths]) => tenths / 10),
            pairs.map(([, halves]) => halves / 2),
          );
          const [byRecursion, byFrequencies] = everyWay(kinds, tenThousandths / 10000);
          fc.pre(byRecursion !== undefined && byFrequencies !== undefined);
          expect(byFrequencies).toBeCloseTo(byRecursion!, 6);
        },
      ),
      { seed: 44, numRuns: 60 },
    );
  });

  test.each([
    [
      [100000, 100000],
      [10, 30],
    ],
    [
      [20000, 5000, 1000, 46000],
      [10, 30, 60, 0.5],
    ],
    [
      [1e6, 1e6, 1e6],
      [10, 30, 7.5],
    ],
    [
      [30000, 10000, 5000],
      [3.1416, 2.7183, 1.4142],
    ],
  ])("means %p, flows %p: as Cornish and Fisher expand the quantile, to a hundredth of a patient", (means, flows) => {
    // Cornish and Fisher to the second order with the cumulants Σ mean × flow^r (Abramowitz & Stegun 26.2.49).
    const cumulant = (power: number): number =>
      means.reduce((sum, mean, kind) => sum + mean * flows[kind]! ** power, 0);
    const sd = Math.sqrt(cumulant(2));
    const [skew, excess] = [cumulant(3) / sd ** 3, cumulant(4) / sd ** 4];
    for (const [level, z] of [
      [0.5, 0],
      [0.95, 1.6448536],
      [0.999, 3.0902323],
    ] as const) {
      const expanded =
        cumulant(1) +
        sd *
          (z + ((z * z - 1) * skew) / 6 + ((z ** 3 - 3 * z) * excess) / 24 - ((2 * z ** 3 - 5 * z) * skew * skew) / 36);
      // Between two attainable sums it may differ by the flow of the step that they share.
      expect(Math.abs(flowAtLevel(means, flows, level)! - expanded)).toBeLessThan(0.01 * flows[0]! + 5);
    }
  });

  test("kinds of one flow are one kind; kinds without flow or patients add nothing", () => {
    expect(flowAtLevel([2, 4], [10, 10], 0.95)).toBe(flowAtLevel([6], [10], 0.95));
    expect(flowAtLevel([6, 2, 9, 0], [10, 30, 0, 50], 0.95)).toBe(210);
    expect(flowAtLevel([0, 5], [10, 0], 0.95)).toBe(0);
  });

  test("too many kinds without a common step are given up, not guessed", () => {
    expect(flowAtLevel([1000, 200, 300, 400], [Math.PI, Math.E, Math.SQRT2, 1.7], 0.95)).toBeUndefined();
  });
});

test("the common step of flows", () => {
  const unitsOf = (flows: number[]): number[] | undefined =>
    commonStep(flows.map((flow) => ({ mean: 1, flow })))?.units;
  expect(unitsOf([10, 30])).toEqual([1, 3]);
  expect(unitsOf([10, 15])).toEqual([2, 3]);
  expect(unitsOf([0.1, 0.25, 0.3])).toEqual([2, 5, 6]);
  expect(unitsOf([1000 / 60, 25])).toEqual([2, 3]);
  expect(unitsOf([Math.E, Math.PI])).toBeUndefined();
});
