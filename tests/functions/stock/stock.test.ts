import fc from "fast-check";
import { daysOfSupply } from "../../../src/functions/stock/daysOfSupply";
import { economicOrder } from "../../../src/functions/stock/economicOrder";
import { expectedShortage } from "../../../src/functions/stock/expectedShortage";
import { fillRate } from "../../../src/functions/stock/fillRate";
import { orderQuantity } from "../../../src/functions/stock/orderQuantity";
import { orderUpTo } from "../../../src/functions/stock/orderUpTo";
import { reorderPoint } from "../../../src/functions/stock/reorderPoint";
import { safetyStock } from "../../../src/functions/stock/safetyStock";
import { stockLevels } from "../../../src/functions/stock/stockLevels";
import { stockOutChance } from "../../../src/functions/stock/stockOutChance";
import { stockOutOn } from "../../../src/functions/stock/stockOutOn";
import rows from "../../reference/stock.json";
import { checkRows } from "../../reference/rows";
import { errorOf, oneCell, oneNumber } from "../oneCell";

const { jStat } = require("jstat") as {
  jStat: {
    normal: { cdf(x: number, mean: number, sd: number): number; inv(p: number, mean: number, sd: number): number };
  };
};

/** The level that a book's rounded z stands for. */
const levelOf = (z: number): number => jStat.normal.cdf(z, 0, 1);
/** Standard loss L(z), from a reorder point z above a mean of 100 with sd 1. */
const unitLoss = ({ z }: { z: number }): number => oneNumber(expectedShortage, 100 + z, 100, 1);

checkRows("stock", rows, {
  "inv-01": ({ level }) => oneNumber(safetyStock, 1, 1, 1, level),
  "inv-02": ({ mean, sd, lead, z }) => oneNumber(reorderPoint, mean, sd, lead, levelOf(z)),
  "inv-03": ({ mean, sd, lead, level }) => oneNumber(reorderPoint, mean, sd, lead, level),
  // Constant demand: sd as good as 0. Weeks are read as days.
  "inv-06": ({ mean, lead_weeks, lead_sd_weeks, z }) =>
    oneNumber(reorderPoint, mean / 7, 1e-9, `${lead_weeks} weeks`, levelOf(z), `${lead_sd_weeks} weeks`),
  // The lead time's own mean and sd, as those of one day.
  "inv-09": ({ reorder, mean_lead, sd_lead }) => 1 - oneNumber(stockOutChance, reorder, mean_lead, sd_lead, 1),
  "inv-11": ({ order, reorder, mean_lead, sd_lead }) => oneNumber(fillRate, order, reorder, mean_lead, sd_lead),
  "inv-13": ({ reorder, mean_lead, sd_lead }) => oneNumber(expectedShortage, reorder, mean_lead, sd_lead),
  "inv-14a": unitLoss,
  "inv-14b": unitLoss,
  "inv-14c": unitLoss,
  "inv-14d": unitLoss,
  "inv-15": ({ use, order_cost, hold }) => oneNumber(economicOrder, use, order_cost, hold),
  // The reorder point whose loss is 0.08 sd: searched for, mean 100 and sd 25 a lead time.
  "inv-17": ({ loss }) => {
    let point = 100;
    while (oneNumber(expectedShortage, point, 100, 25) > loss * 25) point += 0.01;
    return point;
  },
  "sand-safety": ({ mean, sd, lead, level }) => oneNumber(safetyStock, mean, sd, lead, level),
  "sand-reorder": ({ mean, sd, lead, level }) => oneNumber(reorderPoint, mean, sd, lead, level),
});

const amount = fc.integer({ min: 1, max: 10000 }).map((tenths) => tenths / 10);
const level = fc.integer({ min: 5000, max: 9999 }).map((parts) => parts / 10000);

test("safety stock, reorder point and order-up-to level by jStat's normal quantile", () => {
  fc.assert(
    fc.property(amount, amount, amount, amount, level, amount, (mean, sd, lead, review, service, leadSd) => {
      const z = jStat.normal.inv(service, 0, 1);
      const over = (time: number): number => z * Math.sqrt(time * sd * sd + mean * mean * leadSd * leadSd);
      const close = (got: number, wanted: number): void =>
        expect(Math.abs(got - wanted)).toBeLessThan(1e-6 * (1 + Math.abs(wanted)));
      close(oneNumber(safetyStock, mean, sd, lead, service, leadSd), over(lead));
      close(oneNumber(reorderPoint, mean, sd, lead, service, leadSd), mean * lead + over(lead));
      close(
        oneNumber(orderUpTo, mean, sd, lead, review, service, leadSd),
        mean * (lead + review) + over(lead + review),
      );
    }),
  );
});

test("the chance of running out at the reorder point is what the level leaves", () => {
  fc.assert(
    fc.property(amount, amount, amount, level, amount, (mean, sd, lead, service, leadSd) => {
      const point = oneNumber(reorderPoint, mean, sd, lead, service, leadSd);
      expect(oneNumber(stockOutChance, point, mean, sd, lead, leadSd)).toBeCloseTo(1 - service, 9);
    }),
  );
});

test("the expected shortage is the integral of the chance of running out above the reorder point", () => {
  // E[(X − R)⁺] = ∫ P(X > x) dx from R on; trapezoids of jStat's normal cdf.
  for (const point of [80, 100, 110, 135]) {
    const step = 0.01;
    let sum = 0;
    for (let x = point; x < 100 + 10 * 12; x += step) sum += step * (1 - jStat.normal.cdf(x + step / 2, 100, 12));
    expect(oneNumber(expectedShortage, point, 100, 12)).toBeCloseTo(sum, 4);
  }
});

test("shortage and fill rate stay in bounds far from the mean", () => {
  expect(oneNumber(expectedShortage, 1e6, 100, 1)).toBe(0);
  expect(oneNumber(expectedShortage, 0, 100, 1)).toBeCloseTo(100, 9);
  expect(oneNumber(fillRate, 10, 0, 100, 1)).toBe(0);
  expect(oneNumber(fillRate, 10, 1000, 100, 1)).toBe(1);
});

test("the economic order is the cheapest: neighbours cost more", () => {
  fc.assert(
    fc.property(amount, amount, amount, (use, orderCost, holding) => {
      const cost = (quantity: number): number => (use / quantity) * orderCost + (quantity / 2) * holding;
      const best = oneNumber(economicOrder, use, orderCost, holding);
      for (const other of [0.9, 0.99, 1.01, 1.1]) expect(cost(best * other)).toBeGreaterThan(cost(best));
    }),
  );
});

test("days of supply and its date", () => {
  expect(oneNumber(daysOfSupply, 600, 45, 5)).toBe(12);
  expect(oneNumber(daysOfSupply, 100, 50, 0, 100)).toBe(0);
  expect(errorOf(daysOfSupply, 0, 0, 0)).toContain("#VALUE! daily_use and daily_loss are both 0");
  // Left out, the loss would flatter a vessel of liquid.
  expect(errorOf(daysOfSupply, 600, 45)).toContain("daily_loss is blank");
  expect(errorOf(stockOutOn, 46082, 600, 45)).toContain("daily_loss is blank");
  // 0.3/0.1 is 2.9999999999999996 in doubles, and 3 days all the same.
  expect(oneCell(stockOutOn, "2026-03-01", 0.3, 0.1, 0)).toBe(46082 + 3);
  expect(oneCell(stockOutOn, "2028-02-28", 100, 50, 0)).toBe(oneCell(stockOutOn, "2028-03-01", 0, 50, 0));
  expect(errorOf(stockOutOn, 46082, 1e9, 1, 0)).toContain("#N/A the stock lasts beyond the year 9999");
});

describe("ORDER_QUANTITY", () => {
  test("whole lots up, then down to the room", () => {
    expect(oneCell(orderQuantity, 10, 0, 31, 10)).toBe(30);
    expect(oneCell(orderQuantity, 10, 0, 31, 10, 29)).toBe(20);
    expect(errorOf(orderQuantity, 10, 0, 31, 10, 9)).toContain("#N/A 21 is needed and not one lot of 10 fits");
    expect(errorOf(orderQuantity, 10, 0, 31, 10, 0)).toContain("#N/A 21 is needed");
    expect(oneCell(orderQuantity, 40, 0, 31, 10, 0)).toBe(0);
    expect(oneCell(orderQuantity, 10, 30, 31, 10)).toBe(0);
    // 2.1/0.7 is 3.0000000000000004 in doubles: three lots, not four
    expect(oneNumber(orderQuantity, 0, 0, 2.1, 0.7)).toBeCloseTo(2.1, 12);
  });

  test("never more than the room, never a lot more than is missing, always whole lots", () => {
    const whole = fc.integer({ min: 0, max: 500 });
    fc.assert(
      fc.property(whole, whole, whole, fc.integer({ min: 1, max: 60 }), whole, (hand, order, upTo, lot, room) => {
        if (upTo > hand + order && room < lot) {
          expect(errorOf(orderQuantity, hand, order, upTo, lot, room)).toContain("#N/A");
          return;
        }
        const quantity = oneNumber(orderQuantity, hand, order, upTo, lot, room);
        const missing = Math.max(0, upTo - hand - order);
        expect(quantity % lot).toBe(0);
        expect(quantity).toBeLessThanOrEqual(room);
        expect(quantity).toBeLessThan(missing + lot);
        if (room >= missing + lot) expect(quantity).toBeGreaterThanOrEqual(missing);
      }),
    );
  });
});

test("STOCK_LEVELS holds what the single functions answer", () => {
  const table = stockLevels([[30]], [[5]], [[10]], [[7]], [[0.95]], [[3]], [[1]]);
  expect(table.map((row) => row[0])).toEqual(["level", "emergency", "safety", "reorder", "order up to"]);
  expect(table.slice(1).map((row) => row[1])).toEqual([
    90,
    oneNumber(safetyStock, 30, 5, 10, 0.95, 1),
    oneNumber(reorderPoint, 30, 5, 10, 0.95, 1),
    oneNumber(orderUpTo, 30, 5, 10, 7, 0.95, 1),
  ]);
});

test("a level of 1, under 0.5 or in percent is refused with the reason", () => {
  const calls: ((service: unknown) => string)[] = [
    (service) => errorOf(safetyStock, 30, 5, 10, service),
    (service) => errorOf(reorderPoint, 30, 5, 10, service),
    (service) => errorOf(orderUpTo, 30, 5, 10, 7, service),
    (service) => errorOf(stockLevels, 30, 5, 10, 7, service, 3),
  ];
  for (const call of calls) {
    expect(call(1)).toContain("#VALUE! level 1 asks for certainty");
    expect(call(0.05)).toContain("#VALUE! level 0.05 is under 0.5");
    expect(call(95)).toContain("looks like a percent");
  }
  expect(oneCell(safetyStock, 30, 5, 10, 0.5)).toBe(0);
});

test("a mean or lead time of 0 is refused, as a blank read as 0 would flatter", () => {
  for (const [at, name] of [
    [0, "mean"],
    [2, "lead_days"],
  ] as const) {
    const cells: unknown[] = [30, 5, 10, 0.95];
    cells[at] = 0;
    expect(errorOf(reorderPoint, ...cells)).toContain(`#VALUE! ${name} must be more than 0`);
  }
});

// A steady log has no spread: what is left is plain arithmetic.
test("no spread at all is a steady demand", () => {
  expect(oneNumber(safetyStock, 30, 0, 10, 0.95)).toBe(0);
  expect(oneNumber(reorderPoint, 30, 0, 10, 0.95)).toBe(300);
  expect(oneNumber(orderUpTo, 30, 0, 10, 7, 0.95)).toBe(510);
  expect(oneNumber(stockOutChance, 299, 30, 0, 10)).toBe(1);
  expect(oneNumber(stockOutChance, 300, 30, 0, 10)).toBe(0);
  expect(oneNumber(expectedShortage, 92, 100, 0)).toBe(8);
  expect(oneNumber(expectedShortage, 108, 100, 0)).toBe(0);
  expect(oneNumber(fillRate, 50, 92, 100, 0)).toBeCloseTo(1 - 8 / 50, 12);
  expect(stockLevels([[30]], [[0]], [[10]], [[7]], [[0.95]], [[3]])[2]![1]).toBe(0);
});
