import { plansTogether } from "../../../src/functions/plan/plansTogether";
import { planTotals } from "../../../src/functions/plan/planTotals";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { columnOf, consecutive, firstOfMarch, records, workedCells } from "./planCells";

const worked = () => stockPlan(...(workedCells() as [any, any, any, any, any, any]));
const other = (days = 10, first = firstOfMarch) =>
  stockPlan(
    consecutive(days, first),
    columnOf(Array.from({ length: days }, (_, day) => 7 + day)),
    columnOf(Array(days).fill(0)),
    columnOf(Array(days).fill(24)),
    [[1, 46000, 0, 0.5, 40]],
    [[33]],
  );

test("two sites: each cell is the sum, and the totals are the sums of the totals", () => {
  const [a, b] = [worked(), other()];
  const sum = records(plansTogether(a, b));
  const [first, second] = [records(a), records(b)];
  sum.forEach((row, day) => {
    for (const name of Object.keys(row)) {
      if (name === "date") expect(row[name]).toBe(firstOfMarch + day);
      else expect(row[name]).toBeCloseTo(first[day]![name] + second[day]![name], 9);
    }
  });
  const totals = records(planTotals(plansTogether(a, b)))[0]!;
  expect(totals.balance).toBe(0);
  expect(totals.short).toBeCloseTo(92.5 + records(planTotals(b))[0]!.short, 9);
});

test("what is short at one site is not covered by another that closes full", () => {
  const full = other().map((row, index) => (index === 0 ? row : [row[0], 40, 0, 0, 0, 0, 0, 40, 0, 0, 40]));
  expect(records(plansTogether(worked(), full))[6]).toMatchObject({ short: 17.5, closing: 40 });
});

test("a third may be skipped, header rows don't matter", () => {
  const [a, b, c] = [worked(), other(), other()];
  const three = plansTogether(a, b, c);
  expect(plansTogether(a, b.slice(1), undefined, c.slice(1))).toEqual(three);
  expect(records(plansTogether(a, b, c, worked()))[3]!.room).toBe(100 + 40 + 40 + 100);
});

test("other dates are refused, by name", () => {
  expect(plansTogether(worked(), other(10, firstOfMarch + 1))[0]![0]).toMatchObject({
    code: "#VALUE!",
    message:
      "plan_2 runs from 2026-03-02 to 2026-03-11 and plan from 2026-03-01 to 2026-03-10; they must have the same dates",
  });
  expect(plansTogether(worked(), other(), other(9))[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("plan_3 runs from 2026-03-01 to 2026-03-09"),
  });
  const filtered = other().filter((_, row) => row !== 4);
  expect(plansTogether(worked(), filtered)[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("plan_2: 2026-03-05 follows 2026-03-03"),
  });
});

test("the error of a plan goes out unchanged", () => {
  const refused = stockPlan([[1]], [[1]], [[1]], [[1]], [[1]], [[1]]);
  expect(plansTogether(worked(), refused)).toEqual([[refused[0]![0]]]);
});
