import { planTotals } from "../../../src/functions/plan/planTotals";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import worked from "../../reference/stockPlanTenDays.json";
import { records, workedCells } from "./planCells";

const plan = () => stockPlan(...(workedCells() as [any, any, any, any, any, any]));

test("the sums worked by hand, from the table with and without its header", () => {
  const { sums } = worked;
  for (const table of [plan(), plan().slice(1)]) {
    const totals = records(planTotals(table))[0]!;
    expect(totals).toEqual({
      opening: worked.opening,
      made: sums.made,
      received: sums.received,
      drawn: sums.drawn,
      "boil-off": sums.boilOff,
      vented: sums.vented,
      closing: 90,
      short: sums.short,
      balance: 0,
    });
    expect(totals.opening + totals.made + totals.received).toBe(sums.balanceSide);
  }
});

test("an overtyped cell shows in the balance", () => {
  const table = plan();
  table[5]![4] += 3;
  expect(records(planTotals(table))[0]!.balance).toBe(-3);
});

test("a filtered or wrongly sized table is refused, an error goes out unchanged", () => {
  const table = plan();
  expect(planTotals(table.filter((_, row) => row !== 4))[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("plan: 2026-03-05 follows 2026-03-03, with a gap of 1 day"),
  });
  expect(planTotals(table.map((row) => row.slice(0, 10)))[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("plan has 10 columns"),
  });
  const refused = stockPlan([[1]], [[1]], [[1]], [[1]], [[1]], [[1]]);
  expect(planTotals(refused)[0]![0]).toBe(refused[0]![0]);
});

test("sums stay exact over 2,000 rows of tenths", () => {
  const table = Array.from({ length: 2000 }, (_, day) => [46082 + day, 0, 0.1, 0, 0.1, 0, 0, 0, 0, 0, 1]);
  // Exact rational arithmetic: the double nearest 0.1, 2,000 times, rounded once, is the double nearest 200.
  expect(records(planTotals(table))[0]).toMatchObject({ made: 200, drawn: 200, balance: 0 });
});
