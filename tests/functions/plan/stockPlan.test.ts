import fc from "fast-check";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { CellError } from "../../../src/cells/cellValues";
import worked from "../../reference/stockPlanTenDays.json";
import { columnOf, consecutive, firstOfMarch, records, workedCells } from "./planCells";
import { simulatedPlan } from "./simulatedPlan";
import { evenly } from "../../evenly";

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

const quarterHours = (most: number) => fc.integer({ min: 0, max: most * 4 }).map((quarters) => quarters / 4);
const someAmount = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 200 }), evenly(0, 300));

/** Plans in quarters of an hour, with the cells that STOCK_PLAN takes. */
const simulatedPlans = fc.integer({ min: 1, max: 15 }).chain((days) =>
  fc.record({
    need: fc.array(someAmount, { minLength: days, maxLength: days }),
    received: fc.array(someAmount, { minLength: days, maxLength: days }),
    power: fc.array(fc.oneof(fc.constant(24), fc.constant(0), quarterHours(24)), { minLength: days, maxLength: days }),
    kinds: fc.array(
      fc.record({
        count: fc.integer({ min: 0, max: 4 }),
        on: fc.integer({ min: -300, max: 500 }),
        start: quarterHours(50),
        rate: evenly(0.01, 5),
        capacity: evenly(1, 120),
      }),
      { minLength: 1, maxLength: 4 },
    ),
    share: evenly(0, 1),
    ratio: evenly(1, 2),
    emptyDays: evenly(0.5, 30),
    restart: quarterHours(40),
    sameDay: fc.boolean(),
  }),
);

test("any plan agrees with one simulated by quarters of an hour with code of its own", () => {
  fc.assert(
    fc.property(simulatedPlans, ({ share, ...plan }) => {
      const roomAtFirst = plan.kinds.reduce(
        (sum, { count, on, capacity }) => sum + (on < 96 ? count * capacity : 0),
        0,
      );
      const opening = share * roomAtFirst;
      const rows = records(
        stockPlan(
          consecutive(plan.need.length),
          columnOf(plan.need),
          columnOf(plan.received),
          columnOf(plan.power),
          plan.kinds.map(({ count, on, start, rate, capacity }) => [
            count,
            firstOfMarch + on / 96,
            start,
            rate,
            capacity,
          ]),
          [[opening]],
          [[plan.ratio]],
          [[plan.emptyDays]],
          [[plan.restart]],
          [[plan.sameDay]],
        ),
      );
      simulatedPlan({ ...plan, opening }).forEach((day, index) => {
        for (const [name, value] of Object.entries(day))
          expect([name, rows[index]![name]]).toEqual([name, expect.closeTo(value, 6)]);
      });
    }),
    { numRuns: 400 },
  );
});

test("an outage before start-up has begun adds no restart; one after its first powered hour does", () => {
  const made = (power: number[], switchOn: number, start: number) =>
    records(
      stockPlan(
        consecutive(power.length),
        columnOf(power.map(() => 0)),
        columnOf(power.map(() => 0)),
        columnOf(power),
        [[1, firstOfMarch + switchOn, start, 1, 1000]],
        [[0]],
        undefined,
        undefined,
        [[5]],
      ),
    ).map((row) => row.made);
  // Switched on at noon of a day without power: nothing has begun, so that the next day loses its start-up alone.
  expect(made([0, 24], 0.5, 10)).toEqual([0, 14]);
  expect(made([0, 24], 0.5, 0)).toEqual([0, 24]);
  // A day earlier it had 12 h of power, and 5 h of restart come on top of what start-up still needs.
  expect(made([0, 24], -0.5, 14)).toEqual([0, 17]);
  expect(made([0, 24], -0.5, 10)).toEqual([0, 19]);
});

test("the time of day of the switch-on counts: at 18:00 with 3 h of start-up, 3 h of making are left", () => {
  const first = (switchOn: unknown, power: number) =>
    records(
      stockPlan(consecutive(1), [[0]], [[0]], [[power]], [[1, switchOn, 3, 1.25, 100]], [[0]], undefined, undefined, [
        [0],
      ]),
    )[0]!;
  expect(first(firstOfMarch + 0.75, 24)).toMatchObject({ made: 3.75, room: 100 });
  expect(first("2026-03-01 18:00", 24).made).toBe(3.75);
  expect(first(firstOfMarch, 24).made).toBe(26.25);
  // 20:00 leaves 4 h, and of 3.5 h of power half an hour is over.
  expect(first("2026-03-01 20:00", 3.5).made).toBe(0.625);
  expect(first("2026-03-01 20:00", 24).made).toBe(1.25);
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

const amount = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 200 }), evenly(0, 300));
const power = fc.oneof(fc.constant(24), fc.constant(0), evenly(0, 24));
const anyPlan = fc.integer({ min: 1, max: 25 }).chain((days) =>
  fc.record({
    need: fc.array(amount, { minLength: days, maxLength: days }),
    received: fc.array(amount, { minLength: days, maxLength: days }),
    power: fc.array(power, { minLength: days, maxLength: days }),
    plants: fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 4 }),
        fc.integer({ min: firstOfMarch - 3, max: firstOfMarch + 6 }),
        evenly(0, 50),
        evenly(0.01, 5),
        evenly(1, 120),
      ),
      { minLength: 1, maxLength: 4 },
    ),
    share: evenly(0, 1),
    ratio: evenly(1, 2),
    emptyDays: evenly(0.5, 30),
    restart: evenly(0, 40),
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
          const before = row.opening - row["boil-off"] - (plan.sameDay ? 0 : row.drawn);
          if (row.vented > 0) expect(before + row.received - row.vented).toBe(row.room);
          if (row.short > 0 && !plan.sameDay) expect(row.closing).toBe(row.made + row.received - row.vented);
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

  test("a higher opening or a larger delivery is never shorter in all, nor drawing on the same day where nothing is delivered", () => {
    const total = (rows: Record<string, any>[]) => rows.reduce((sum, row) => sum + row.short, 0);
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const rows = run({ ...plan, sameDay: false });
        const alone = { ...plan, received: plan.received.map(() => 0) };
        expect(total(run({ ...alone, sameDay: true }))).toBeLessThanOrEqual(
          total(run({ ...alone, sameDay: false })) + 1e-6,
        );
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
  test("restart hours are needed as soon as a day has less than 24 h of power, also with no plant on; not else", () => {
    const run = (power: number[], restart: unknown[][] | undefined, plants = [[0, 46100, 3, 1, 50]]) =>
      stockPlan(
        consecutive(2),
        columnOf([0, 0]),
        columnOf([0, 0]),
        columnOf(power),
        plants,
        [[0]],
        undefined,
        undefined,
        restart,
      );
    expect(messageOf(run([24, 23.9], undefined))).toMatch(
      /^#VALUE! restart_hours is needed: hours after the power is back until liquid accumulates, about 3 \(2026-03-02 has 23\.9 h of power\)/,
    );
    expect(run([24, 23.9], [[0]])).toHaveLength(3);
    expect(run([24, 24], undefined)).toHaveLength(3);
  });
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
  const given: [undefined, undefined, number[][]] = [undefined, undefined, [[3]]];
  const bare = stockPlan(
    consecutive(2),
    columnOf([10, 20]),
    columnOf([0, 30]),
    columnOf([24, 12]),
    plants,
    [[50]],
    ...given,
  );
  test("columns with a header in each", () => {
    const headed = stockPlan(
      [["date"], ...consecutive(2)],
      [["O2 need"], [10], [20]],
      [["received"], [0], [30]],
      [["power h"], [24], [12]],
      plants,
      [[50]],
      ...given,
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
        ...given,
      );
      expect(fed).toEqual(bare);
    }
  });
  test("dated deliveries in any order; those of one day add up, those outside the days are left out", () => {
    const dated = [
      ["date", "amount"],
      [firstOfMarch + 5, 500],
      [firstOfMarch + 1, 18],
      [firstOfMarch - 1, 90],
      [firstOfMarch + 1, 12],
      [null, ""],
    ];
    const fed = (received: unknown[][]) =>
      stockPlan(consecutive(2), columnOf([10, 20]), received, columnOf([24, 12]), plants, [[50]], ...given);
    expect(fed(dated)).toEqual(bare);
    expect(fed([[firstOfMarch + 1, 30]])).toEqual(bare);
    const none = fed(columnOf([0, 0]));
    expect(none).not.toEqual(bare);
    expect(fed([["date", "amount"]])).toEqual(none);
    expect(fed([[firstOfMarch + 7, 30]])).toEqual(none);
  });
  test("a delivery with half a row, or two amounts side by side, are refused", () => {
    const refused = (received: unknown[][]) =>
      messageOf(stockPlan(consecutive(2), columnOf([10, 20]), received, columnOf([24, 24]), plants, [[50]]));
    expect(
      refused([
        [firstOfMarch, 30],
        [firstOfMarch + 1, null],
      ]),
    ).toMatch(/^#VALUE! received row 2 is blank/);
    expect(
      refused([
        [firstOfMarch, 30],
        [null, 5],
      ]),
    ).toMatch(/^#VALUE! received row 2, date is blank/);
    expect(
      refused([
        [firstOfMarch, 30],
        [null, null],
        [firstOfMarch + 1, 5],
      ]),
    ).toMatch(/^#VALUE! received row 2, date is blank/);
    expect(refused([[0, 30]])).toMatch(
      /^#VALUE! received is two cells wide, which is dates and amounts, and 0 is no date/,
    );
    expect(refused([[firstOfMarch, -30]])).toMatch(/^#VALUE! received row 1 must be 0 L or more/);
    expect(refused([[null, null]])).toMatch(/^#VALUE! received is blank/);
  });
  test("needs with other dates than the plan's are refused", () => {
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
