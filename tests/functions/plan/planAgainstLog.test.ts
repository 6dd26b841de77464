import fc from "fast-check";
import { planAgainstLog } from "../../../src/functions/plan/planAgainstLog";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import worked from "../../reference/stockPlanTenDays.json";
import { columnOf, firstOfMarch, plainCell, workedCells } from "./planCells";
import { evenly } from "../../evenly";

const { jStat } = require("jstat") as { jStat: any };

const plan = () => stockPlan(...(workedCells() as [any, any, any, any, any, any]));
const compare = (readings: [number, number][]): any[][] =>
  planAgainstLog(
    plan(),
    columnOf(readings.map(([day]) => firstOfMarch + day)),
    columnOf(readings.map(([, level]) => level)),
  );

test("by hand: planned closings of the ten-day plan against readings, in order of date, others left out", () => {
  const table = compare([
    [4, 80],
    [-1, 12],
    [0, 24],
    [10, 55],
    [1, 41],
  ]);
  expect(table.map((row) => row.map(plainCell))).toEqual([
    ["date", "planned", "read", "difference"],
    [firstOfMarch, 25, 24, -1],
    [firstOfMarch + 1, 42.5, 41, -1.5],
    [firstOfMarch + 4, 85, 80, -5],
    // Differences −1, −1.5, −5 on days 0, 1, 4: x̄ 5/3, ȳ −2.5; Sxy −9, Sxx 26/3.
    ["a day", "", "", expect.closeTo(-27 / 26, 12)],
  ]);
});

test("fewer than three readings, or all of one day, have no slope", () => {
  expect(compare([[0, 24], [1, 41]])[3]).toEqual(["a day", "", "", ""]); // prettier-ignore
  expect(compare([[0, 24], [0, 26], [0, 25]])[4]).toEqual(["a day", "", "", ""]); // prettier-ignore
});

test("the slope is that of a general library's regression", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 9 }), evenly(0, 100)), {
        minLength: 3,
        maxLength: 10,
        selector: ([day]) => day,
      }),
      (readings) => {
        const table = compare(readings);
        const [, expected] = jStat.models.ols(
          readings.map(([day, level]) => level - worked.nextDay[day]!.closing),
          readings.map(([day]) => [1, day]),
        ).coef;
        expect(table[table.length - 1]![3]).toBeCloseTo(expected, 8);
      },
    ),
  );
});

test("no reading inside the plan is #N/A; lists of unequal length are refused", () => {
  expect(compare([[12, 40], [-3, 40]])[0]![0]).toMatchObject({ code: "#N/A", message: "no reading is inside the plan, which runs from 2026-03-01 to 2026-03-10" }); // prettier-ignore
  expect(planAgainstLog(plan(), columnOf([firstOfMarch, firstOfMarch + 1]), [[40]])[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringMatching(/dates has 2 and levels has 1/),
  });
});
