import fc from "fast-check";
import { deliveryDates } from "../../../src/functions/plan/deliveryDates";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { columnOf, consecutive, firstOfMarch, records } from "./planCells";

const dates = (needs: number[], opening: number, batch: number, keep: number, sameDay?: boolean): any[][] =>
  deliveryDates(
    consecutive(needs.length),
    columnOf(needs),
    [[opening]],
    [[batch]],
    [[keep]],
    sameDay === undefined ? undefined : [[sameDay]],
  );

test("an opening below what is to be kept is made good on the first day, if its delivery counts at once", () => {
  expect(records(dates([0, 0], 5, 10, 30, true))).toEqual([{ date: firstOfMarch, amount: 30 }]);
  for (const sameDay of [undefined, false]) {
    expect(dates([0, 0], 5, 10, 30, sameDay)[0]![0]).toMatchObject({
      code: "#N/A",
      message: expect.stringContaining("2026-03-01"),
    });
  }
});

test("tenths are no reason for one batch more: 3 × 0.1 from batches of 0.1", () => {
  expect(records(dates([0.1, 0.1, 0.1], 0, 0.1, 0, true)).map((row) => row.amount)).toEqual([0.1, 0.1, 0.1]);
  expect(records(dates([0.1, 0.1, 0.1], 0.1, 0.1, 0)).map((row) => row.date)).toEqual([firstOfMarch, firstOfMarch + 1]);
});

test("no delivery needed is the heading alone; a gap and a batch of 0 are refused", () => {
  expect(dates([10, 10], 20, 5, 0)).toEqual([["date", "amount"]]);
  expect(dates([10], 20, 0, 0)[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("batch must be more than 0"),
  });
  expect(deliveryDates([[46082], [46085]], [[1], [1]], [[0]], [[1]], [[0]])[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("gap of 2 days"),
  });
  expect(dates([1e308, 1e308], 20, 5, 0)[0]![0]).toMatchObject({ code: "#VALUE!" });
});

test.each([false, true])(
  "no day's use leaves less than keep, whole batches only, and any one a day later would fail (same_day %s)",
  (sameDay) => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 30 }),
        (needs, opening, batch, keep) => {
          const table = dates(needs, opening, batch, keep, sameDay);
          const isError = table[0]!.length === 1;
          expect(isError).toBe(!sameDay && opening - needs[0]! < keep);
          if (isError) return;
          const rows = records(table);
          const brought = needs.map((_, day) => rows.find((row) => row.date === firstOfMarch + day)?.amount ?? 0);
          const wholeDays = (deliveries: number[]): boolean => {
            let stock = opening;
            return needs.every((need, day) => {
              const ready = stock + (sameDay ? deliveries[day]! : 0);
              stock += deliveries[day]! - need;
              return ready - need >= keep;
            });
          };
          expect(wholeDays(brought)).toBe(true);
          brought.forEach((amount, day) => {
            expect(amount % batch).toBe(0);
            if (amount === 0) return;
            const later = brought.map((each, at) => (at === day ? each - batch : at === day + 1 ? each + batch : each));
            expect(wholeDays(later)).toBe(false);
          });
        },
      ),
    );
  },
);

test("its table feeds the received column of STOCK_PLAN and ends the shortfall", () => {
  const needs = [40, 40, 40, 40];
  const cells = [
    consecutive(4),
    columnOf(needs),
    columnOf([0, 0, 0, 0]),
    columnOf([24, 24, 24, 24]),
    [
      [1, firstOfMarch + 9, 0, 1, 1],
      [1, firstOfMarch, 500, 1, 200],
    ],
    [[100]],
    [[1]],
  ];
  const before = records(stockPlan(...(cells as [any, any, any, any, any, any])));
  expect(before.map((row) => row.short)).toEqual([0, 0, 20, 40]);
  cells[2] = deliveryDates(consecutive(4), columnOf(needs), [[100]], [[50]], [[0]]);
  const after = records(stockPlan(...(cells as [any, any, any, any, any, any])));
  expect(after.map((row) => row.received)).toEqual([0, 50, 50, 0]);
  expect(after.map((row) => row.short)).toEqual([0, 0, 0, 0]);
});
