import poissonMass from "@stdlib/stats-base-dists-poisson-pmf";
import fc from "fast-check";
import { commonStep, flowAtLevel, flowByCombinations, mergeKinds, stepsAtLevel } from "../../src/models/flowAtLevel";

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
    const mean = fc.double({ min: 0.01, max: 4, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(mean, mean, mean),
        fc.tuple(quarter, quarter, quarter),
        fc.double({ min: 0.05, max: 0.995, noNaN: true }),
        (means, flows, level) => {
          const { flow, margin } = listed(means, flows)(level);
          fc.pre(margin > 1e-9);
          expect(flowAtLevel(means, flows, level)).toBeCloseTo(flow, 8);
        },
      ),
      { numRuns: 40 },
    );
  });

  test.each([
    [
      [1000, 1000],
      [1, 1000],
    ],
    [
      [100000, 100000],
      [10, 30],
    ],
    [
      [20000, 50],
      [7.5, 60],
    ],
  ])("means %p, flows %p: recursion and combinations agree, beside Edgeworth's expansion", (means, flows) => {
    const kinds = mergeKinds(means, flows);
    const { parts, units } = commonStep(kinds)!;
    for (const level of [0.05, 0.95]) {
      const steps = stepsAtLevel(
        kinds.map((kind) => kind.mean),
        units,
        level,
      )!;
      const flow = (steps * kinds[0]!.flow) / parts;
      expect(flowByCombinations(kinds, level)).toBeCloseTo(flow, 6);
    }
    // Edgeworth's first correction of the normal quantile, z = 1.644854: mean + zσ + (z² − 1)·κ₃/(6σ²).
    const moment = (power: number): number => means.reduce((sum, mean, kind) => sum + mean * flows[kind]! ** power, 0);
    const sd = Math.sqrt(moment(2));
    const edgeworth = moment(1) + 1.644854 * sd + ((1.644854 ** 2 - 1) * moment(3)) / (6 * moment(2));
    expect(Math.abs(flowAtLevel(means, flows, 0.95)! - edgeworth)).toBeLessThan(0.02 * sd);
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
