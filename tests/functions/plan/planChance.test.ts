import fc from "fast-check";
import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import { planChance } from "../../../src/functions/plan/planChance";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { columnOf, consecutive, firstOfMarch, records, workedCells } from "./planCells";
import { simulatedPlan } from "./simulatedPlan";
import { evenly } from "../../evenly";

const { jStat } = require("jstat") as { jStat: any };

interface Chanced {
  need: number[];
  received?: unknown[][];
  power?: number[];
  plants: unknown[][];
  opening: number;
  ratio?: number;
  restart?: number;
  sameDay?: boolean;
  spread?: number;
  availability?: number;
  repair?: number;
  late?: number;
  runs?: number;
  seed?: number;
}

const cell = (value: unknown): unknown[][] | undefined => (value === undefined ? undefined : [[value]]);

const chance = (plan: Chanced): any[][] =>
  planChance(
    consecutive(plan.need.length),
    columnOf(plan.need),
    plan.received ?? columnOf(plan.need.map(() => 0)),
    columnOf(plan.power ?? plan.need.map(() => 24)),
    plan.plants,
    [[plan.opening]],
    [[plan.ratio ?? 1]],
    undefined,
    cell(plan.restart),
    cell(plan.sameDay),
    [[plan.spread ?? 0]],
    [[plan.availability ?? 1]],
    cell(plan.repair),
    cell(plan.late),
    [[plan.runs ?? 4000]],
    [[plan.seed ?? 1]],
  );
const rowsOf = (plan: Chanced) => records(chance(plan));

/** Holds the stock and never makes anything. */
const vessel = (capacity: number): unknown[][] => [[1, firstOfMarch, 1e6, 1, capacity]];
const seeds = [1, 2, 3, 4, 5];

const within = (found: number, expected: number, runs: number): void =>
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(4 * Math.sqrt((expected * (1 - expected)) / runs));

describe("with nothing left to chance it is STOCK_PLAN to the last digit", () => {
  test.each([undefined, true])("the ten days worked by hand (same_day %s)", (sameDay) => {
    const cells = workedCells(sameDay) as [any, any, any, any, any, any];
    const plan = records(stockPlan(...cells));
    while (cells.length < 10) cells.push(undefined);
    const table = planChance(...cells, [[0]], [[1]], undefined, undefined, [[3]]);
    let shortBy = 0;
    records(table).forEach((row, day) => {
      const short = plan[day]!.short > 0 ? 1 : 0;
      shortBy = Math.max(shortBy, short);
      const { closing } = plan[day]!;
      expect(Object.values(row)).toEqual([plan[day]!.date, short, shortBy, closing, closing, closing]);
    });
  });

  const amount = evenly(0, 200);
  test("any plan, dated deliveries of one day included", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }).chain((days) =>
          fc.record({
            need: fc.array(amount, { minLength: days, maxLength: days }),
            power: fc.array(fc.constantFrom(24, 24, 0, 11.3), { minLength: days, maxLength: days }),
            deliveries: fc.array(fc.tuple(fc.integer({ min: -1, max: days }), amount), { maxLength: 6 }),
            plants: fc.array(
              fc.tuple(fc.integer({ min: 0, max: 4 }), evenly(-3, 6), evenly(0, 50), evenly(0.01, 5), evenly(1, 120)),
              { minLength: 1, maxLength: 3 },
            ),
            restart: evenly(0, 30),
            sameDay: fc.boolean(),
            seed: fc.integer({ min: 0, max: 1000 }),
          }),
        ),
        ({ need, power, deliveries, plants, restart, sameDay, seed }) => {
          const plan = [
            consecutive(need.length),
            columnOf(need),
            [["date", "amount"], ...deliveries.map(([day, litres]) => [firstOfMarch + day, litres])],
            columnOf(power),
            plants.map(([count, on, ...rest]) => [count, firstOfMarch + on, ...rest]),
            [[0]],
            undefined,
            undefined,
            [[restart]],
            [[sameDay]],
          ] as unknown as [any, any, any, any, any, any];
          const expected = records(stockPlan(...plan)).map(({ closing }) => closing);
          const found = records(planChance(...plan, [[0]], [[1]], undefined, undefined, [[2]], [[seed]]));
          for (const name of ["closing low", "closing middle", "closing high"])
            expect(found.map((row) => row[name])).toEqual(expected);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe("closed forms, within four standard errors", () => {
  // Without making, deliveries and boil-off a plan is short by day n when the sum of n gamma needs passes the opening:
  // one minus the regularized incomplete gamma function of shape n/spread² (jStat).
  test.each(seeds)("needs: the sum of gammas (seed %d)", (seed) => {
    for (const [spread, opening] of [
      [0.2, 62],
      [0.6, 70],
      [1.4, 75],
    ] as const) {
      const runs = 4000;
      const rows = rowsOf({ need: Array(6).fill(10), plants: vessel(100), opening, spread, runs, seed });
      rows.forEach((row, day) => {
        const shape = (day + 1) / spread ** 2;
        const expected = 1 - jStat.gamma.cdf(opening, shape, 10 * spread ** 2);
        within(row["chance short by then"], expected, runs);
      });
    }
  });

  // One plant makes exactly what is drawn the same day, with nothing in store: short whenever it is down.
  // A two-state Markov chain: down on any day with 1 − A, never down on n days with A·(1 − (1 − A)/(A·repair))ⁿ⁻¹.
  test.each(seeds)("plants: one plant's availability (seed %d)", (seed) => {
    for (const [availability, repair] of [
      [0.9, 2],
      [0.7, 1],
      [0.5, 6],
    ] as const) {
      const runs = 4000;
      const rows = rowsOf({ need: Array(9).fill(48), plants: [[1, firstOfMarch - 9, 0, 2, 60]], opening: 0, sameDay: true, availability, repair, runs, seed }); // prettier-ignore
      rows.forEach((row, day) => {
        within(row["chance short that day"], 1 - availability, runs);
        const neverDown = availability * (1 - (1 - availability) / (availability * repair)) ** day;
        within(row["chance short by then"], 1 - neverDown, runs);
      });
    }
  });

  // Three plants of which two are enough: binomial.
  test.each(seeds)("plants: two of three needed (seed %d)", (seed) => {
    const plants = [
      [2, firstOfMarch - 9, 0, 2, 60],
      [1, firstOfMarch - 2, 0, 2, 60],
    ];
    const rows = rowsOf({
      need: Array(5).fill(96),
      plants,
      opening: 0,
      sameDay: true,
      availability: 0.8,
      repair: 3,
      seed,
    });
    // What a day with all three leaves over carries into the next; the first day has nothing.
    within(rows[0]!["chance short that day"], 1 - (0.8 ** 3 + 3 * 0.8 ** 2 * 0.2), 4000);
  });

  // A delivery is n or more days late with (m/(1 + m))ⁿ; the day that needs it is short when it comes on that day or after.
  test.each(seeds)("deliveries: lateness (seed %d)", (seed) => {
    for (const late of [0.4, 1, 3]) {
      const runs = 4000;
      for (const slack of [1, 2, 4]) {
        const need = Array.from({ length: 8 }, (_, day) => (day === slack ? 30 : 0));
        const rows = rowsOf({ need, received: [[firstOfMarch, 30]], plants: vessel(50), opening: 0, late, runs, seed });
        within(rows[7]!["chance short by then"], (late / (1 + late)) ** slack, runs);
      }
    }
  });

  test("two deliveries are late each by itself", () => {
    const received = [
      [firstOfMarch, 30],
      [firstOfMarch, 30],
    ];
    const row = rowsOf({ need: [0, 60], received, plants: vessel(90), opening: 0, late: 1, runs: 8000 })[1]!;
    within(row["chance short that day"], 1 - 0.25, 8000);
  });

  test("percentiles of a normal limit: sixty days of needs", () => {
    const runs = 10_000;
    const last = rowsOf({ need: Array(60).fill(10), plants: vessel(2000), opening: 2000, spread: 0.2, runs })[59]!;
    const sd = 10 * 0.2 * Math.sqrt(60);
    for (const [name, level] of [
      ["closing low", 0.05],
      ["closing middle", 0.5],
      ["closing high", 0.95],
    ] as const) {
      // The standard error of a percentile is √(p(1 − p)/runs)/density; the skew of the sum (0.05) moves it by under 0.02 sd.
      const z = normalQuantile(level, 0, 1);
      const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
      const error = 4 * (Math.sqrt((level * (1 - level)) / runs) / density) + 0.02;
      expect(Math.abs((last[name] - 1400) / sd - z)).toBeLessThan(error);
    }
  });

  test("percentiles are those of PERCENTILE.INC: linear between the order statistics", () => {
    // The first runs of a seed are the same, however many follow: so their closings are known one by one.
    const plan = { need: [10], plants: vessel(100), opening: 90, spread: 0.5, seed: 8 };
    const [one, two, three] = [1, 2, 3].map((runs) => rowsOf({ ...plan, runs })[0]!) as [any, any, any];
    const first = one["closing middle"];
    expect([one["closing low"], one["closing high"]]).toEqual([first, first]);
    const second = 2 * two["closing middle"] - first;
    const [less, more] = [first, second].sort((a, b) => a - b) as [number, number];
    expect(more - less).toBeGreaterThan(1);
    expect(two["closing low"]).toBeCloseTo(less + 0.05 * (more - less), 9);
    expect(two["closing high"]).toBeCloseTo(more - 0.05 * (more - less), 9);
    // Of three, low lies a tenth of the way from the least to the middle one, and high nine tenths from it to the most.
    const middle = three["closing middle"];
    const least = (three["closing low"] - 0.1 * middle) / 0.9;
    const most = (three["closing high"] - 0.1 * middle) / 0.9;
    for (const known of [first, second]) {
      expect(Math.min(...[least, middle, most].map((each) => Math.abs(each - known)))).toBeLessThan(1e-9);
    }
  });

  test("sixteen times as many runs come four times as close", () => {
    const expected = 1 - jStat.gamma.cdf(62, 6 / 0.04, 0.4);
    const rootMeanSquare = (runs: number): number => {
      const misses = Array.from({ length: 60 }, (_, seed) => {
        const rows = rowsOf({ need: Array(6).fill(10), plants: vessel(100), opening: 62, spread: 0.2, runs, seed });
        return rows[5]!["chance short by then"] - expected;
      });
      return Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / misses.length);
    };
    const [few, many] = [rootMeanSquare(100), rootMeanSquare(1600)];
    // A root mean square of 60 is known to about a tenth, their ratio to 13 %.
    expect(few / many).toBeGreaterThan(4 / 1.6);
    expect(few / many).toBeLessThan(4 * 1.6);
    expect(few).toBeGreaterThan(0.7 * Math.sqrt((expected * (1 - expected)) / 100));
    expect(few).toBeLessThan(1.4 * Math.sqrt((expected * (1 - expected)) / 100));
  });
});

test("a plant down boils off, makes nothing and restarts as one without power, simulated with code of its own", () => {
  // Availability 0.5 with repair within a day: up and down by turns, so that only two histories are possible.
  fc.assert(
    fc.property(
      fc.record({
        need: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 7, maxLength: 7 }),
        power: fc.array(fc.constantFrom(24, 24, 24, 12, 0), { minLength: 7, maxLength: 7 }),
        on: fc.integer({ min: -200, max: 95 }),
        start: fc.integer({ min: 0, max: 40 }),
        restart: fc.integer({ min: 0, max: 30 }),
        sameDay: fc.boolean(),
      }),
      ({ need, power, on, start, restart, sameDay }) => {
        const simulated = [0, 1].map((parity) =>
          simulatedPlan({
            need,
            received: need.map(() => 0),
            power,
            kinds: [{ count: 1, on, start, rate: 2.5, capacity: 90, down: need.map((_, day) => day % 2 === parity) }],
            opening: 70,
            ratio: 1,
            emptyDays: 8,
            restart,
            sameDay,
          }).map(({ closing }) => closing),
        );
        const plants = [[1, firstOfMarch + on / 96, start, 2.5, 90]];
        rowsOf({ need, power, plants, opening: 70, restart, sameDay, availability: 0.5, repair: 1, runs: 60 }).forEach(
          (row, day) => {
            const closings = simulated.map((each) => each[day]!);
            expect(row["closing low"]).toBeCloseTo(Math.min(...closings), 6);
            expect(row["closing high"]).toBeCloseTo(Math.max(...closings), 6);
          },
        );
      },
    ),
    { numRuns: 100 },
  );
});

/** A small generator for the comparison alone (mulberry32 of T. Ettinger, public domain). */
const otherChance = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

test("all kinds of chance together agree with runs by another generator through a simulation of its own", () => {
  const days = 12;
  const need = Array.from({ length: days }, (_, day) => 60 + 5 * day);
  const power = need.map((_, day) => (day === 5 ? 0 : day === 8 ? 12 : 24));
  const kinds = [
    { count: 2, on: -300, start: 10, rate: 1.1, capacity: 60 },
    { count: 1, on: 288, start: 24, rate: 1.5, capacity: 50 },
  ];
  const [availability, repair, late] = [0.8, 2.5, 1.5];
  const runs = 3000;
  const random = otherChance(99);
  const exponentialNumber = (): number => -Math.log(1 - random());
  const short = need.map(() => 0);
  const shortBy = need.map(() => 0);
  const closings: number[][] = need.map(() => []);
  for (let run = 0; run < runs; run++) {
    const single = kinds.reduce<typeof kinds>(
      (all, kind) => [...all, ...Array(kind.count).fill({ ...kind, count: 1 })],
      [],
    );
    const received = need.map(() => 0);
    for (const [day, litres] of [
      [2, 50],
      [7, 60],
    ] as const) {
      let comes = day;
      while (random() >= 1 / (1 + late)) comes++;
      if (comes < days) received[comes]! += litres;
    }
    const simulated = simulatedPlan({
      // Spread 0.5 is shape 4: a quarter of the sum of four exponential numbers.
      need: need.map((each) => (each * (exponentialNumber() + exponentialNumber() + exponentialNumber() + exponentialNumber())) / 4), // prettier-ignore
      received,
      power,
      kinds: single.map((kind) => {
        let up = random() < availability;
        const down = need.map((_, day) => {
          if (day > 0) up = up ? random() >= (1 - availability) / (availability * repair) : random() < 1 / repair;
          return !up;
        });
        return { ...kind, down };
      }),
      opening: 100,
      ratio: 1,
      emptyDays: 8,
      restart: 4,
      sameDay: false,
    });
    let been = 0;
    simulated.forEach((day, at) => {
      if (day.short > 1e-9) been = 1;
      short[at]! += day.short > 1e-9 ? 1 : 0;
      shortBy[at]! += been;
      closings[at]!.push(day.closing);
    });
  }
  const rows = rowsOf({
    need,
    power,
    received: [
      [firstOfMarch + 2, 50],
      [firstOfMarch + 7, 60],
    ],
    plants: kinds.map(({ count, on, start, rate, capacity }) => [count, firstOfMarch + on / 96, start, rate, capacity]),
    opening: 100,
    restart: 4,
    spread: 0.5,
    availability,
    repair,
    late,
    runs: 12_000,
    seed: 4,
  });
  rows.forEach((row, day) => {
    for (const [name, count] of [
      ["chance short that day", short[day]!],
      ["chance short by then", shortBy[day]!],
    ] as const) {
      const share = count / runs;
      expect(Math.abs(row[name] - share)).toBeLessThan(
        4 * Math.sqrt(share * (1 - share) * (1 / runs + 1 / 12_000)) + 1e-3,
      );
    }
    const sorted = closings[day]!.sort((a, b) => a - b);
    expect(Math.abs(row["closing middle"] - sorted[runs / 2]!)).toBeLessThan(6);
    expect(Math.abs(row["closing high"] - sorted[Math.floor(runs * 0.95)]!)).toBeLessThan(9);
  });
  expect(rows[days - 1]!["chance short by then"]).toBeGreaterThan(0.3);
});

describe("seeds", () => {
  const plan = { need: Array(5).fill(40), plants: [[2, firstOfMarch - 9, 0, 1, 60]], opening: 60, spread: 0.3, availability: 0.8, repair: 2, restart: 3, late: 1, received: [[firstOfMarch + 1, 40]], runs: 200 }; // prettier-ignore
  test("the same seed gives the same answer, another one another", () => {
    expect(chance({ ...plan, seed: 5 })).toEqual(chance({ ...plan, seed: 5 }));
    expect(chance({ ...plan, seed: 6 })).not.toEqual(chance({ ...plan, seed: 5 }));
  });
  test("left out, the chances are those of the stated defaults", () => {
    const cells = (rest: unknown[]) => [consecutive(5), columnOf(plan.need), plan.received, columnOf(Array(5).fill(24)), plan.plants, [[60]], undefined, undefined, [[3]], undefined, ...rest] as any; // prettier-ignore
    const run = planChance as (...given: any[]) => any[][];
    const stated = run(...cells([[[0.2]], [[0.9]], [[2]], [[0]], [[1000]], [[1]]]));
    expect(run(...cells([]))).toEqual(stated);
    for (const [at, value] of [0.21, 0.91, 2.5, 0.1, 1001, 2].entries()) {
      const others: unknown[] = Array(6).fill(undefined);
      others[at] = [[value]];
      expect(run(...cells(others))).not.toEqual(stated);
    }
  });
});

describe("what can't be run is refused in words", () => {
  const plan = { need: [10, 10], plants: vessel(100), opening: 50 };
  const words = (changed: Partial<Chanced>): string => {
    const cell = chance({ ...plan, ...changed })[0]![0];
    return `${cell.code} ${cell.message}`;
  };
  test.each([
    [{ availability: 0 }, "availability must be above 0"],
    [{ availability: 90 }, "availability must be"],
    [{ repair: 0.5 }, "repair_days must be between 1 and 365"],
    [
      { availability: 0.3, repair: 2 },
      "availability 0.3 with repair_days 2 would need a working plant to break down 1.16",
    ],
    [{ spread: 3 }, "need_spread must be between 0 and 2"],
    [{ late: -1 }, "late_days must be between 0"],
    [{ runs: 0 }, "runs must be between 1 and 100000"],
    [{ runs: 2.5 }, "runs must be a whole number"],
    [{ seed: -1 }, "seed must be between 0"],
    [{ opening: 150 }, "opening 150 L is above the room of 100 L"],
    [{ power: [24, 12] }, "restart_hours is needed"],
    [{ plants: [[1001, firstOfMarch, 0, 1, 50]] }, "plants has 1001 plants; at most 1000"],
    [
      { need: Array(400).fill(1), runs: 100_000 },
      "runs is 100000; at most 11111 are run at a time with 400 days and 1 plants",
    ],
  ])("%j", (changed, expected) => {
    expect(words(changed)).toContain(`#VALUE! ${expected}`);
  });
  test("the end of availability: a plant that breaks down each working day", () => {
    expect(chance({ ...plan, availability: 0.5, repair: 1, runs: 10 })).toHaveLength(3);
  });
});

test("10,000 runs of 60 days and 3 kinds of 2 plants are done", () => {
  const plants = [1, 2, 3].map((size) => [2, firstOfMarch - 90, 24, size, 50 * size]);
  expect(
    rowsOf({
      need: Array(60).fill(200),
      plants,
      opening: 300,
      spread: 0.2,
      availability: 0.9,
      repair: 2,
      runs: 10_000,
    }),
  ).toHaveLength(60);
});
