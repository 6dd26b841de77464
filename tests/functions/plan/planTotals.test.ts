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

test("any one cell of the seven overtyped shows in the balance, and two can't cancel out", () => {
  const balanceOf = (overtype: (table: any[][]) => void): number => {
    const table = plan();
    overtype(table);
    return records(planTotals(table))[0]!.balance;
  };
  for (let column = 1; column <= 7; column++) {
    for (const row of [1, 5, 10]) expect(balanceOf((table) => (table[row]![column] += 3))).toBeGreaterThanOrEqual(3);
  }
  // A closing inside the table is out in its row and against the next opening; the last one in its row alone.
  expect(balanceOf((table) => (table[5]![7] += 3))).toBe(6);
  expect(balanceOf((table) => (table[10]![7] += 3))).toBe(3);
  expect(
    balanceOf((table) => {
      table[2]![4] += 3;
      table[6]![4] -= 3;
    }),
  ).toBe(6);
});

test("what is left of rounding under a billionth of a litre is no imbalance", () => {
  const row = [46082, 0.1, 0.2, 0, 0, 0, 0, 0.30000000000000004, 0, 0, 9];
  expect(records(planTotals([row]))[0]!.balance).toBe(0);
  row[7] = 0.3 + 5e-10;
  expect(records(planTotals([row]))[0]!.balance).toBe(0);
  row[7] = 0.3 + 2e-9;
  expect(records(planTotals([row]))[0]!.balance).toBeCloseTo(2e-9, 15);
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
