import fc from "fast-check";
import { cascadeFill } from "../../../src/functions/cylinders/cascadeFill";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { CellError } from "../../../src/cells/cellValues";
import rows from "../../reference/cylinders.json";
import { oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const fill = (
  volume: number,
  pressure: number,
  volumes: readonly unknown[],
  pressures: readonly unknown[],
  t?: number,
): any[][] =>
  cascadeFill([[volume]], [[pressure]], column(volumes), column(pressures), t === undefined ? undefined : [[t]]);

test("one bank and three banks: equation of state, three successive balances, computed outside this project", () => {
  const one = rows.find((row) => row.id === "eq-real")!;
  expect(
    Math.abs(fill(10, 10 - 1.01325, [50], [150 - 1.01325], 20)[1]![2] + 1.01325 - one.expected),
  ).toBeLessThanOrEqual(one.tolerance);
  const three = rows.find((row) => row.id === "cascade-3")!;
  const table = fill(
    10,
    10 - 1.01325,
    [50, 50, 50],
    [60, 100, 150].map((bar) => bar - 1.01325),
    20,
  );
  expect(Math.abs(table[3]![2] + 1.01325 - three.expected)).toBeLessThanOrEqual(three.tolerance);
});

test("lowest bank first, whatever the order of the list; ties by list order; a lower bank is not opened", () => {
  const table = fill(10, 50, [40, 40, 40, 40], [180, 60, 40, 60]);
  expect(table[0]).toEqual(["bank", "bank after", "cylinder after"]);
  expect(table.slice(1).map((line) => line[0])).toEqual([3, 2, 4, 1]);
  expect(table[1]).toEqual([3, 40, 50]);
});

test("mass is kept, and the cylinder never falls nor passes the bank", () => {
  const pressure = evenly(0, 300);
  fc.assert(
    fc.property(
      pressure,
      fc.array(fc.tuple(evenly(1, 80), pressure), { minLength: 1, maxLength: 5 }),
      (start, banks) => {
        const volumes = banks.map(([volume]) => volume);
        const pressures = banks.map(([, bar]) => bar);
        const steps = fill(10, start, volumes, pressures).slice(1) as [number, number, number][];
        const before = pressures.reduce(
          (sum, bar, i) => sum + oneNumber(cylinderContent, volumes[i], bar),
          oneNumber(cylinderContent, 10, start),
        );
        let after = oneNumber(cylinderContent, 10, steps[steps.length - 1]![2]);
        let last = start;
        for (const [bank, bankAfter, cylinder] of steps) {
          after += oneNumber(cylinderContent, volumes[bank - 1], bankAfter);
          expect(cylinder).toBeGreaterThanOrEqual(last - 1e-6);
          expect(bankAfter).toBeLessThanOrEqual(pressures[bank - 1]! + 1e-6);
          last = cylinder;
        }
        expect(after / before).toBeCloseTo(1, 8);
      },
    ),
    { numRuns: 40 },
  );
});

test("three banks in turn fill higher than the three joined into one at their mean", () => {
  const inTurn = fill(10, 0, [50, 50, 50], [50, 100, 150])[3]![2];
  const joined = fill(10, 0, [150], [100])[1]![2];
  expect(inTurn).toBeGreaterThan(joined);
});

test("lists of unequal length are refused with both named, a bad cell with its row", () => {
  expect((fill(10, 0, [50, 50], [100])[0]![0] as CellError).message).toMatch(
    /bank_volumes has 2 and bank_pressures has 1 cells/,
  );
  expect((fill(10, 0, [50, 50], [100, 301])[0]![0] as CellError).message).toMatch(
    /bank_pressures row 2 must be between -0\.51325 and 300\.31175 bar/,
  );
});

test("a bank may be a bundle of more than 250 L, the cylinder to fill may not: banks of 10 × 46.7 L are one of 467 L", () => {
  // Ideal gas law for the order of size: (10.2 × 16 + 467 × 141)/477.2 bar absolute.
  const bundle = fill(10.2, 15, [467], [140])[1]![2];
  expect(Math.abs(bundle - ((10.2 * 16.01325 + 467 * 141.01325) / 477.2 - 1.01325))).toBeLessThan(0.5);
  expect((fill(467, 15, [467], [140])[0]![0] as CellError).message).toMatch(/water_volume must be .*is this the gas/);
});
