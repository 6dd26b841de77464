import fc from "fast-check";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { CellError } from "../../../src/cells/cellValues";
import worked from "../../reference/stockPlanTenDays.json";
import { columnOf, consecutive, firstOfMarch, records, workedCells } from "./planCells";

const messageOf = (table: any[][]): string => {
  const cell = table[0]![0];
  if (!(cell instanceof CellError)) throw new Error("an error was wanted");
  return `${cell.code} ${cell.message}`;
};

describe("the ten-day plan worked by hand", () => {
  for (const [name, sameDay, expected] of [
    ["drawn from the next day on", undefined, worked.nextDay],
    ["drawn from the next day on, said outright", false, worked.nextDay],
    ["drawn the same day", true, worked.sameDay],
  ] as const) {
    const rows = records(stockPlan(...(workedCells(sameDay) as [any, any, any, any, any, any])));
    test.each(expected.map((row, index) => [row.period, row, index] as const))(
      `period %d, ${name}`,
      (_period, row, index) => {
        expect(rows[index]).toEqual({
          date: firstOfMarch + index,
          opening: row.opening,
          made: row.made,
          received: row.received,
          drawn: row.drawn,
          "boil-off": row.boilOff,
          vented: row.vented,
          closing: row.closing,
          short: row.short,
          "held back": row.heldBack,
          room: row.room,
        });
      },
    );
  }
});

/** Whole-hour simulation of one plant: the outage comes first in each day; a counter of hours to wait runs down under power. */
function hourByHour(powerHours: readonly number[], startHours: number, restartHours: number): number[] {
  let start = startHours;
  let restart = 0;
  return powerHours.map((power) => {
    let made = 0;
    for (let hour = 0; hour < 24; hour++) {
      const powered = hour >= 24 - power;
      if (!powered && !(power === 0 && start === startHours && start > 0)) restart = restartHours;
      if (!powered) continue;
      if (start > 0) start--;
      else if (restart > 0) restart--;
      else made++;
    }
    return made;
  });
}

test("start-up, outages and restarts agree with a plant simulated hour by hour", () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.constant(24), fc.constant(0), fc.integer({ min: 0, max: 24 })), {
        minLength: 1,
        maxLength: 12,
      }),
      fc.integer({ min: 0, max: 60 }),
      fc.option(fc.integer({ min: 0, max: 60 })),
      (power, startHours, restartHours) => {
        const none = columnOf(power.map(() => 0));
        const table = stockPlan(
          consecutive(power.length),
          none,
          none,
          columnOf(power),
          [[1, firstOfMarch, startHours, 1, 1e6]],
          [[0]],
          undefined,
          undefined,
          [[restartHours]],
          undefined,
        );
        const got = records(table).map((row) => row.made);
        hourByHour(power, startHours, restartHours ?? startHours).forEach((made, day) =>
          expect(got[day]).toBeCloseTo(made, 6),
        );
      },
    ),
    { numRuns: 300 },
  );
});

test("restart hours that a part day is too short for carry into the next", () => {
  const rows = records(
    stockPlan(
      consecutive(3),
      columnOf([0, 0, 0]),
      columnOf([0, 0, 0]),
      columnOf([24, 4, 24]),
      [[1, firstOfMarch - 10, 0, 1, 1000]],
      [[0]],
      undefined,
      undefined,
      [[10]],
    ),
  );
  expect(rows.map((row) => row.made)).toEqual([24, 0, 18]);
});

test("start-up hours run from the switch-on date, also before the first row", () => {
  const made = (daysBefore: number) =>
    records(
      stockPlan(
        consecutive(2),
        columnOf([0, 0]),
        columnOf([0, 0]),
        columnOf([24, 24]),
        [[1, firstOfMarch - daysBefore, 30, 1, 1000]],
        [[0]],
      ),
    ).map((row) => row.made);
  expect(made(0)).toEqual([0, 18]);
  expect(made(1)).toEqual([18, 24]);
  expect(made(2)).toEqual([24, 24]);
});

test("a kind adds room and liquid from its switch-on date", () => {
  const rows = records(
    stockPlan(
      consecutive(4),
      columnOf([0, 0, 0, 0]),
      columnOf([0, 0, 0, 0]),
      columnOf([24, 24, 24, 24]),
      [
        ["count", "switched on", "start-up h", "L/h", "L"],
        [2, firstOfMarch, 0, 1, 40],
        [3, firstOfMarch + 2, 0, 2, 10],
        [0, firstOfMarch, 0, 9, 99],
      ],
      [[0]],
    ),
  );
  expect(rows.map((row) => row.room)).toEqual([80, 80, 110, 110]);
  expect(rows.map((row) => row.made)).toEqual([48, 32, 30, 0]);
  expect(rows.map((row) => row["held back"])).toEqual([0, 16, 162, 192]);
});

const amount = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 200 }), fc.double({ min: 0, max: 300, noNaN: true }));
const power = fc.oneof(fc.constant(24), fc.constant(0), fc.double({ min: 0, max: 24, noNaN: true }));
const anyPlan = fc.integer({ min: 1, max: 25 }).chain((days) =>
  fc.record({
    need: fc.array(amount, { minLength: days, maxLength: days }),
    received: fc.array(amount, { minLength: days, maxLength: days }),
    power: fc.array(power, { minLength: days, maxLength: days }),
    plants: fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: firstOfMarch - 3, max: firstOfMarch + 6 }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        fc.double({ min: 1, max: 120, noNaN: true }),
      ),
      { minLength: 1, maxLength: 4 },
    ),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    ratio: fc.double({ min: 1, max: 2, noNaN: true }),
    emptyDays: fc.double({ min: 0.2, max: 30, noNaN: true }),
    restart: fc.option(fc.double({ min: 0, max: 40, noNaN: true })),
    sameDay: fc.boolean(),
  }),
);
type AnyPlan = typeof anyPlan extends fc.Arbitrary<infer P> ? P : never;

const run = (plan: AnyPlan, plants: unknown[][] = plan.plants, opening?: number): Record<string, any>[] => {
  const room = plan.plants.reduce(
    (sum, [count, on, , , capacity]) => sum + (on <= firstOfMarch ? count * capacity : 0),
    0,
  );
  return records(
    stockPlan(
      consecutive(plan.need.length),
      columnOf(plan.need),
      columnOf(plan.received),
      columnOf(plan.power),
      plants,
      [[opening ?? plan.share * room]],
      [[plan.ratio]],
      [[plan.emptyDays]],
      [[plan.restart]],
      [[plan.sameDay]],
    ),
  );
};

describe("for any plan", () => {
  test("the balance is exact in every row and in sums of rows, each opening is the closing before", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const rows = run(plan);
        let [into, out] = [rows[0]!.opening, 0];
        rows.forEach((row, index) => {
          expect(row.opening + row.made + row.received).toBe(row.drawn + row["boil-off"] + row.vented + row.closing);
          if (index > 0) expect(row.opening).toBe(rows[index - 1]!.closing);
          into += row.made + row.received;
          out += row.drawn + row["boil-off"] + row.vented;
        });
        expect(into).toBe(out + rows[rows.length - 1]!.closing);
      }),
      { numRuns: 150 },
    );
  });

  test("nothing is negative and closing stays within the room", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const wrong = run(plan).filter(
          (row) =>
            Object.values(row).some((value) => !(value >= 0)) || row.closing > row.room || row.vented > row.received,
        );
        expect(wrong).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test("drawn and short make up the gross need; vented only into a full room; held back only when closing full", () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        run(plan).forEach((row, day) => {
          expect(row.drawn + row.short).toBeCloseTo(plan.need[day]! * plan.ratio, 6);
          if (row["held back"] > 0) expect(row.closing).toBe(row.room);
          if (row.vented > 0) expect(row.opening - row["boil-off"] + row.received - row.vented).toBe(row.room);
          if (row.short > 0 && !plan.sameDay) expect(row.closing).toBe(row.made);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("with power all day more plants are never shorter on any day", () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 1, max: 3 }), (plan, more) => {
        const powered = { ...plan, power: plan.power.map(() => 24) };
        const opening =
          plan.share *
          plan.plants.reduce((sum, [count, on, , , capacity]) => sum + (on <= firstOfMarch ? count * capacity : 0), 0);
        const [first, ...others] = plan.plants;
        const few = run(powered, plan.plants, opening);
        const many = run(powered, [[first![0] + more, ...first!.slice(1)], ...others], opening);
        many.forEach((row, day) => {
          expect(row.short).toBeLessThanOrEqual(few[day]!.short + 1e-6);
          expect(row.closing).toBeGreaterThanOrEqual(few[day]!.closing - 1e-6);
        });
      }),
      { numRuns: 150 },
    );
  });

  test("a higher opening, a larger delivery or drawing on the same day is never shorter in all", () => {
    const total = (rows: Record<string, any>[]) => rows.reduce((sum, row) => sum + row.short, 0);
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const rows = run({ ...plan, sameDay: false });
        expect(total(run({ ...plan, sameDay: true }))).toBeLessThanOrEqual(total(rows) + 1e-6);
        expect(
          total(run({ ...plan, sameDay: false, received: plan.received.map((litres) => litres + 5) })),
        ).toBeLessThanOrEqual(total(rows) + 1e-6);
        expect(total(run({ ...plan, sameDay: false, share: Math.min(1, plan.share + 0.1) }))).toBeLessThanOrEqual(
          total(rows) + 1e-6,
        );
      }),
      { numRuns: 150 },
    );
  });
});

test("decimal noise makes no shortfall: 0.3 L covers 0.1 L three times", () => {
  const rows = records(
    stockPlan(
      consecutive(3),
      columnOf([0.1, 0.1, 0.1]),
      columnOf([0, 0, 0]),
      columnOf([24, 24, 24]),
      [[1, firstOfMarch, 100, 1, 1]],
      [[0.3]],
      [[1]],
    ),
  );
  expect(rows.map((row) => row.short)).toEqual([0, 0, 0]);
});

describe("what can't be a plan is refused in words", () => {
  const cells = () => workedCells() as [any, any, any, any, any, any];
  const withDates = (dates: unknown[]) => {
    const given = cells();
    given[0] = columnOf(dates);
    for (const index of [1, 2, 3]) given[index] = given[index].slice(0, dates.length);
    return messageOf(stockPlan(...given));
  };
  test("dates with a gap, twice, or out of order", () => {
    expect(withDates([46082, 46084])).toMatch(/#VALUE! dates: 2026-03-03 follows 2026-03-01, with a gap of 1 day;/);
    expect(withDates([46082, 46082])).toMatch(/#VALUE! dates: 2026-03-01 stands there twice/);
    expect(withDates([46082, 46081])).toMatch(/#VALUE! dates: 2026-02-28 follows 2026-03-01, which is out of order/);
  });
  test("more than 2,000 days; 2,000 are taken", () => {
    const plan = (days: number) => {
      const zeros = Array.from({ length: days }, () => [0]);
      return stockPlan(
        consecutive(days),
        zeros,
        zeros,
        Array.from({ length: days }, () => [24]),
        [[1, 46000, 0, 1, 50]],
        [[0]],
      );
    };
    expect(plan(2000)).toHaveLength(2001);
    expect(messageOf(plan(2001))).toMatch(/dates has 2001 days; at most 2000/);
  });
  test.each([
    [1, "need"],
    [2, "received"],
    [3, "power_hours"],
  ])("a blank in argument %d", (index, name) => {
    const given = cells();
    given[index as 1] = given[index as 1].map((line: unknown[], row: number) => (row === 4 ? [null] : line));
    expect(messageOf(stockPlan(...given))).toMatch(new RegExp(`#VALUE! ${name} row 5 is blank`));
  });
  test.each([
    [1, "need"],
    [2, "received"],
    [3, "power_hours"],
  ])("lists of unequal length name both (argument %d)", (index, name) => {
    const given = cells();
    given[index as 1] = given[index as 1].slice(1);
    expect(messageOf(stockPlan(...given))).toBe(
      `#VALUE! dates has 10 and ${name} has 9 cells; they must go together one by one`,
    );
  });
  test("an opening above the room", () => {
    const given = cells();
    given[5] = [[51]];
    expect(messageOf(stockPlan(...given))).toMatch(
      /#VALUE! opening 51 L is above the room of 50 L in the plants switched on by 2026-03-01/,
    );
  });
  test("25 hours of power, a plant of capacity 0, a blank rate", () => {
    const hours = cells();
    hours[3] = columnOf(Array.from({ length: 10 }, () => 25));
    expect(messageOf(stockPlan(...hours))).toMatch(/power_hours row 1 must be between 0 and 24 h/);
    const plants = cells();
    plants[4] = [[1, 46082, 0, 1, 0]];
    expect(messageOf(stockPlan(...plants))).toMatch(/plants row 1, capacity each must be more than 0/);
    plants[4] = [[1, 46082, 0, null, 10]];
    expect(messageOf(stockPlan(...plants))).toMatch(/plants row 1, rate is blank/);
  });
});

describe("tables of other functions feed it, with or without header", () => {
  const plants = [[1, firstOfMarch, 0, 1, 100]];
  const bare = stockPlan(consecutive(2), columnOf([10, 20]), columnOf([0, 30]), columnOf([24, 12]), plants, [[50]]);
  test("columns with a header in each", () => {
    const headed = stockPlan(
      [["date"], ...consecutive(2)],
      [["O2 need"], [10], [20]],
      [["received"], [0], [30]],
      [["power h"], [24], [12]],
      plants,
      [[50]],
    );
    expect(headed).toEqual(bare);
  });
  test("need as day and demand, received as date and amount of the days with a delivery", () => {
    for (const header of [[], [["day", "demand"]]]) {
      const fed = stockPlan(
        consecutive(2),
        [...header, [1, 10], [2, 20]],
        [[firstOfMarch + 1, 30]].concat([[firstOfMarch + 1, 0]]),
        columnOf([24, 12]),
        plants,
        [[50]],
      );
      expect(fed).toEqual(bare);
    }
  });
  test("dates that are not those of the plan are refused", () => {
    const late = stockPlan(
      consecutive(2),
      columnOf([10, 20]),
      [
        ["date", "amount"],
        [firstOfMarch + 5, 30],
      ],
      columnOf([24, 12]),
      plants,
      [[50]],
    );
    expect(messageOf(late)).toMatch(/received: 2026-03-06 is outside the dates 2026-03-01 to 2026-03-02/);
    const shifted = stockPlan(
      consecutive(2),
      [
        [firstOfMarch + 1, 10],
        [firstOfMarch + 2, 20],
      ],
      columnOf([0, 0]),
      columnOf([24, 12]),
      plants,
      [[50]],
    );
    expect(messageOf(shifted)).toMatch(/need: 2026-03-02 stands beside 2026-03-01/);
  });
});
