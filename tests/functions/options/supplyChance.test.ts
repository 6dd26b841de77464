import fc from "fast-check";
import { enoughUnitsChance } from "../../../src/functions/options/enoughUnitsChance";
import { supplyChance } from "../../../src/functions/options/supplyChance";

const supply = (outputs: number[], availabilities: number[], need: number): any =>
  supplyChance(
    outputs.map((each) => [each]),
    availabilities.map((each) => [each]),
    [[need]],
  )[0]![0];
const enough = (units: unknown, needed: unknown, availability: unknown): any =>
  enoughUnitsChance([[units]], [[needed]], [[availability]])[0]![0];

/** Every combination of units up and down, one by one; outputs are whole, so that sums are exact. */
function byEnumeration(outputs: number[], availabilities: number[], need: number): number {
  let chance = 0;
  for (let state = 0; state < 2 ** outputs.length; state++) {
    let sum = 0;
    let each = 1;
    outputs.forEach((output, unit) => {
      const works = (state >> unit) & 1;
      sum += works * output;
      each *= works ? availabilities[unit]! : 1 - availabilities[unit]!;
    });
    if (sum >= need) chance += each;
  }
  return chance;
}

const unit = fc.record({
  output: fc.integer({ min: 0, max: 40 }),
  availability: fc.integer({ min: 0, max: 100 }).map((percent) => percent / 100),
});

describe("SUPPLY_CHANCE", () => {
  it.each([
    [0.01, 1 - 0.000008],
    [3.01, 1 - 0.000792],
    [5.01, 1 - 0.001184],
    [6, 1 - 0.001184],
    [8, 1 - 0.020392],
    [11, 1 - 0.058808],
  ])(
    "agrees with the capacity outage table of Billinton & Allan (units 3, 3, 5 MW, outage rate 0.02; from memory) at %d MW",
    (need, wanted) => {
      expect(supply([3, 3, 5], [0.98, 0.98, 0.98], need)).toBeCloseTo(wanted, 9);
    },
  );

  it("agrees with trying every combination, up to 12 unequal units", () => {
    fc.assert(
      fc.property(fc.array(unit, { minLength: 1, maxLength: 12 }), fc.integer({ min: 0, max: 300 }), (units, need) => {
        const outputs = units.map((each) => each.output).sort((a, b) => b - a);
        const availabilities = units.map((each) => each.availability);
        expect(supply(outputs, availabilities, need)).toBeCloseTo(byEnumeration(outputs, availabilities, need), 11);
      }),
      { numRuns: 200, seed: 71 },
    );
  });

  it("agrees with the binomial of ENOUGH_UNITS_CHANCE for 30 alike units", () => {
    for (const needed of [0, 1, 15, 24, 27, 30]) {
      expect(supply(Array(30).fill(0.1), Array(30).fill(0.9), needed * 0.1)).toBeCloseTo(enough(30, needed, 0.9), 12);
    }
  });

  it("answers 30 unequal units, and complements itself", () => {
    const outputs = Array.from({ length: 30 }, (_, index) => Math.sqrt(index + 2));
    const availabilities = outputs.map((_, index) => 0.7 + index / 100);
    const whole = outputs.reduce((total, each) => total + each, 0);
    const met = supply(outputs, availabilities, whole * 0.8);
    // The units that are down add up to less than a fifth: the same question asked of the complement.
    const down = supply(
      outputs,
      availabilities.map((each) => 1 - each),
      whole * 0.2 * (1 + 1e-9),
    );
    expect(met + down).toBeCloseTo(1, 9);
  });

  it("never rises with the need and never falls with an availability", () => {
    fc.assert(
      fc.property(
        fc.array(unit, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10),
        fc.integer({ min: 0, max: 1000 }).map((tenths) => tenths / 10),
        (units, a, b) => {
          const outputs = units.map((each) => each.output).sort((a, b) => b - a);
          const availabilities = units.map((each) => each.availability);
          const low = supply(outputs, availabilities, Math.min(a, b));
          expect(supply(outputs, availabilities, Math.max(a, b))).toBeLessThanOrEqual(low + 1e-12);
          expect(
            supply(
              outputs,
              availabilities.map((each, index) => (index === 0 ? 1 : each)),
              Math.min(a, b),
            ),
          ).toBeGreaterThanOrEqual(low - 1e-12);
        },
      ),
    );
  });

  it("meets a need that floating sums miss by a hair, whatever the order", () => {
    expect(0.7 + 0.1).toBeLessThan(0.8);
    expect(supply([0.7, 0.1], [1, 1], 0.8)).toBe(1);
    expect(supply([0.1, 0.7], [1, 1], 0.8)).toBe(1);
    expect(supply(Array(10).fill(0.1), Array(10).fill(1), 1)).toBe(1);
    expect(supply([0.7, 0.1], [1, 1], 0.8001)).toBe(0);
  });

  it("refuses a total row at the end of the units", () => {
    expect(supply([3, 5, 8], [0.9, 0.9, 0.9], 8).message).toMatch(/looks like a total row.*put the largest first/);
    expect(supply([8, 3, 5], [1, 1, 1], 8)).toBe(1);
  });

  it("refuses 31 units and unequal lists", () => {
    expect(supply(Array(31).fill(1), Array(31).fill(0.9), 3).message).toContain("30 at most");
    expect(supply([1, 2], [0.9], 3).message).toContain("unit_outputs has 2 and availabilities has 1");
  });
});

describe("ENOUGH_UNITS_CHANCE", () => {
  it("agrees with a worked example of a reliability course: of 150 units at outage rate 0.01, two are down with chance 0.25250", () => {
    expect(enough(150, 148, 0.99) - enough(150, 149, 0.99)).toBeCloseTo(0.2525, 5);
  });
  it("agrees with the same example at 0.06: 0.00424", () => {
    expect(enough(150, 148, 0.94) - enough(150, 149, 0.94)).toBeCloseTo(0.00424, 4);
  });
  it("agrees with 3 × 0.81 × 0.1 + 0.729 for two of three at 0.9", () => {
    expect(enough(3, 2, 0.9)).toBeCloseTo(0.972, 12);
  });
  it("has its ends", () => {
    expect(enough(5, 6, 1)).toBe(0);
    expect(enough(5, 5, 1)).toBe(1);
    expect(enough(5, 0, 0)).toBe(1);
    expect(enough(5, 1, 0)).toBe(0);
    expect(enough(0, 0, 0.5)).toBe(1);
    expect(enough(5, 5, "90%")).toBeCloseTo(0.59049, 12);
    expect(enough(5, 5, 90).message).toContain("looks like a percent");
  });
});
