import fc from "fast-check";
import { breakEvenDays } from "../../../src/functions/options/breakEvenDays";
import { costPerDay } from "../../../src/functions/options/costPerDay";
import { oneUnitDown } from "../../../src/functions/options/oneUnitDown";

const value = (call: (...cells: any[]) => any[][], ...cells: unknown[]): any =>
  call(...cells.map((each) => (Array.isArray(each) ? each : [[each]])))[0]![0];
const money = fc.integer({ min: 0, max: 100000 });

describe("BREAK_EVEN_DAYS", () => {
  it("is the day on which both have cost the same; before it A was dearer or cheaper throughout", () => {
    fc.assert(
      fc.property(money, money, money, money, (fixedA, dailyA, fixedB, dailyB) => {
        const days = value(breakEvenDays, fixedA, dailyA, fixedB, dailyB);
        const lead = (day: number): number => fixedA + dailyA * day - fixedB - dailyB * day;
        if (typeof days === "object") {
          expect(days.code).toBe("#N/A");
          const last = /cheaper only for the first ([\d.e+-]+) days/.exec(days.message);
          // Dearer at last, whichever it was at first.
          expect(lead(1e6)).toBeGreaterThan(0);
          expect(last !== null).toBe(lead(0) < 0);
          if (last) expect(Math.abs(lead(Number(last[1])))).toBeLessThan(0.1);
          else expect(days.message).toContain("never pays back");
        } else if (days === 0) {
          expect(lead(0)).toBeLessThanOrEqual(0);
          expect(lead(1e6)).toBeLessThanOrEqual(0);
        } else {
          expect(days).toBeGreaterThan(0);
          expect(Math.abs(lead(days))).toBeLessThan(1e-3);
          expect(lead(0)).toBeGreaterThan(0);
          expect(lead(days * 2)).toBeLessThan(0);
        }
      }),
      { numRuns: 500 },
    );
  });
  it("is 0 for twins and never for one dearer each day alone", () => {
    expect(value(breakEvenDays, 5, 5, 5, 5)).toBe(0);
    expect(value(breakEvenDays, 5, 6, 5, 5).code).toBe("#N/A");
    expect(value(breakEvenDays, 6, 5, 5, 5).code).toBe("#N/A");
  });
});

describe("COST_PER_DAY", () => {
  it("adds straight-line depreciation, running and crew (by hand: 36500/3650 + 12 + 30)", () => {
    expect(value(costPerDay, 36500, 3650, 12, 30)).toBe(52);
    expect(value(costPerDay, 700, "10 weeks", 0)).toBe(10);
  });
  it("refuses a life of nothing", () => {
    expect(value(costPerDay, 100, 0, 1).message).toContain("life_days must be more than 0");
  });
});

describe("ONE_UNIT_DOWN", () => {
  it("is what the rest gives, whichever place the largest stands in", () => {
    const outputs = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(outputs, fc.integer({ min: 1, max: 300 }), (units, need) => {
        const sum = units.reduce((total, each) => total + each, 0);
        fc.pre(units.length < 3 || units[units.length - 1] === 0 || units[units.length - 1]! * 2 !== sum);
        const rest = [...units].sort((a, b) => a - b).slice(0, -1);
        expect(
          value(
            oneUnitDown,
            units.map((each) => [each]),
            need,
          ),
        ).toBeCloseTo(rest.reduce((total, each) => total + each, 0) / need, 12);
      }),
    );
  });
  it("refuses a total row, also one of floating sums, but not two equal units, nor the same put first", () => {
    expect(value(oneUnitDown, [[40, 40, 80]], 60).message).toMatch(/looks like a total row.*put the largest first/);
    expect(value(oneUnitDown, [[0.1, 0.2, 0.3]], 60).message).toContain("looks like a total row");
    expect(value(oneUnitDown, [[40, 40]], 80)).toBe(0.5);
    expect(value(oneUnitDown, [[80, 40, 40]], 80)).toBe(1);
    expect(value(oneUnitDown, [[40, 40, 81]], 80)).toBe(1);
    expect(value(oneUnitDown, [[0, 0, 0]], 80)).toBe(0);
  });
  it("may pass 1 (by hand: 3 × 40 − 40 over 60)", () => {
    expect(value(oneUnitDown, [[40, 40, 40]], 60)).toBeCloseTo(4 / 3, 12);
  });
});
