import fc from "fast-check";
import { plantsForPlan } from "../../../src/functions/plan/plantsForPlan";
import { columnOf, consecutive, firstOfMarch, workedCells } from "./planCells";
import { simulatedPlan } from "./simulatedPlan";
import { evenly } from "../../evenly";

type Cells = [any, any, any, any, any, any];

test("by hand: steady need n plants make exactly, with power all day", () => {
  // 24 h × 1.5 L/h = 36 L a plant; 100 L × 1.25 = 125 L a day: 125/36 = 3.47, so 4.
  const cells = [
    consecutive(30),
    columnOf(Array(30).fill(100)),
    columnOf(Array(30).fill(0)),
    columnOf(Array(30).fill(24)),
    [[9, firstOfMarch - 5, 3, 1.5, 60]],
    [[125]],
  ];
  expect(plantsForPlan(...(cells as Cells))[0]![0]).toBe(4);
  // Three days fit into the stock of three plants: 125 drawn, then 55 + 108 …
  const three = cells.map((cell, index) => (index < 4 ? (cell as unknown[][]).slice(0, 2) : cell));
  three[5] = [[180]];
  expect(plantsForPlan(...(three as Cells))[0]![0]).toBe(3);
});

test("the period-8 shortage of the plan worked by hand can't be made good by plants: what is made that day comes too late", () => {
  const result = plantsForPlan(...(workedCells() as Cells))[0]![0];
  // With n plants of kind A the room loses an eighth in period 7 and both days draw 75: 150 L must be there when it begins, less the loss.
  // Room 50(n + 1), full before at n ≥ 3: 200 × 7/8 = 175 ≥ 150, and 150 × 7/8 = 131 < 150.
  expect(result).toBe(3);
});

test("counts that don't hold the opening are passed over; an opening no count holds is refused", () => {
  const cells = [
    consecutive(2),
    columnOf([0, 0]),
    columnOf([0, 0]),
    columnOf([24, 24]),
    [[1, firstOfMarch, 0, 1, 50]],
    [[170]],
  ];
  expect(plantsForPlan(...(cells as Cells))[0]![0]).toBe(4);
  const most = plantsForPlan(...(cells as Cells), undefined, undefined, undefined, undefined, [[3]])[0]![0];
  expect(most).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("opening 170 L is above the room of 150 L"),
  });
});

test("where no count serves, the words name the day that stays short", () => {
  // 25 L drawn on the second day and 250 L on the third. Without a plant the second is short; one fills its 50 L on the first.
  const cells = [
    consecutive(4),
    columnOf([0, 20, 200, 0]),
    columnOf([0, 0, 0, 0]),
    columnOf([24, 24, 24, 24]),
    [[1, firstOfMarch, 0, 10, 50]],
    [[0]],
  ] as Cells;
  const short = plantsForPlan(...cells, undefined, undefined, undefined, undefined, [[1]])[0]![0];
  expect(short).toMatchObject({
    code: "#N/A",
    message: expect.stringContaining("from 0 to 1 avoids a shortfall; with 1 the first is on 2026-03-03."),
  });
  // 250 L of room want five plants.
  expect(plantsForPlan(...cells)[0]![0]).toBe(5);
});

test("no need takes no plant", () => {
  expect(
    plantsForPlan(
      ...([
        consecutive(2),
        columnOf([0, 0]),
        columnOf([0, 0]),
        columnOf([24, 24]),
        [[7, firstOfMarch, 0, 1, 50]],
        [[0]],
      ] as Cells),
    )[0]![0],
  ).toBe(0);
});

test("the fewest of any plan is that of a search over plans simulated with code of its own", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 1, maxLength: 8 }),
      fc.array(fc.constantFrom(24, 24, 24, 12, 0), { minLength: 8, maxLength: 8 }),
      evenly(0.5, 3),
      fc.boolean(),
      (need, power, rate, sameDay) => {
        const days = need.length;
        const short = (count: number): boolean =>
          simulatedPlan({
            need,
            received: need.map(() => 0),
            power: power.slice(0, days),
            kinds: [
              { count, on: -288, start: 5, rate, capacity: 40 },
              { count: 1, on: 96, start: 0, rate: 0.5, capacity: 30 },
            ],
            opening: 60,
            ratio: 1.3,
            emptyDays: 6,
            restart: 7,
            sameDay,
          }).some((day) => day.short > 1e-9);
        const most = 12;
        const expected = Array.from({ length: most + 1 }, (_, count) => count).find(
          (count) => count * 40 >= 60 && !short(count),
        );
        const found = plantsForPlan(
          consecutive(days),
          columnOf(need),
          columnOf(need.map(() => 0)),
          columnOf(power.slice(0, days)),
          [
            [1, firstOfMarch - 3, 5, rate, 40],
            [1, firstOfMarch + 1, 0, 0.5, 30],
          ],
          [[60]],
          [[1.3]],
          [[6]],
          [[7]],
          [[sameDay]],
          [[most]],
        )[0]![0];
        if (expected === undefined) expect(found).toMatchObject({ code: "#N/A" });
        else expect(found).toBe(expected);
      },
    ),
    { numRuns: 150 },
  );
});

test("2,000 days with outages and 1,000 plants are searched to the end", () => {
  const days = 2000;
  const found = plantsForPlan(
    consecutive(days),
    // The last day needs more than the room of 999 plants holds after an outage, and less than that of 1,000.
    columnOf(Array.from({ length: days }, (_, day) => (day === days - 1 ? 49_950 : 0))),
    columnOf(Array(days).fill(0)),
    columnOf(Array.from({ length: days }, (_, day) => (day % 9 === 4 ? 6 : 24))),
    [[1, firstOfMarch, 0, 2, 50]],
    [[0]],
    [[1]],
    undefined,
    [[3]],
    undefined,
    [[1000]],
  )[0]![0];
  expect(found).toBe(999);
});
