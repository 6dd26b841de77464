import fc from "fast-check";
import { availabilityFromLog } from "../../../src/functions/service/availabilityFromLog";
import { evenly } from "../../evenly";
import { records } from "../plan/planCells";
import { on } from "./serviceCells";

const { jStat } = require("jstat") as {
  jStat: { centralF: { inv(share: number, one: number, other: number): number } };
};

const [from, to] = [on("2026-01-01"), on("2026-01-31")];
const column = (values: unknown[]): unknown[][] => values.map((value) => [value]);
const asked = (stops: unknown[], starts: unknown[], first: unknown = from, last: unknown = to): any[][] =>
  availabilityFromLog(column(stops), column(starts), [[first]], [[last]]);
const found = (...given: Parameters<typeof asked>): Record<string, number> => {
  const table = asked(...given);
  if (table.length < 2) throw new Error(table[0]![0].message);
  return records(table)[0]!;
};
const refused = (...given: Parameters<typeof asked>): string => {
  const [[error]] = asked(...given) as [[any]];
  return `${error.code} ${error.message}`;
};

describe("published worked cases (Trivedi, Probability and Statistics …, 2001, example 10.27, read)", () => {
  // Ten failures, 9990 h up and 10 h down: availability 0.999. The book's two-sided limits use F(20, 20); the one-sided
  // 95 % point of the printed table is 2.124.
  const start = on("2026-01-01");
  const hour = 1 / 24;
  const stops = Array.from({ length: 10 }, (_, index) => start + (999 + 1000 * index) * hour);
  const starts = stops.map((stop) => stop + hour);

  test("ten stops of an hour in 10,000 hours", () => {
    const row = found(stops, starts, start, start + 10000 * hour);
    expect(row.availability).toBeCloseTo(0.999, 9);
    expect(row.stops).toBe(10);
    expect(row["mean hours up"]).toBeCloseTo(999, 6);
    expect(row["mean hours down"]).toBeCloseTo(1, 6);
    expect(row["cautious availability"]).toBeCloseTo(9990 / (9990 + 10 * 2.124), 6);
    // Above the lower of the book's two-sided limits of 95 %, 0.9975, which leaves 2.5 % below it in place of 5.
    expect(row["cautious availability"]).toBeGreaterThan(0.9975);
  });
  test("one stop of an hour in 1,000 hours: the same availability, far less sure", () => {
    const row = found([stops[0]], [starts[0]], start, start + 1000 * hour);
    expect(row.availability).toBeCloseTo(0.999, 9);
    expect(row["cautious availability"]).toBeCloseTo(999 / (999 + 19), 9);
    expect(row["cautious availability"]).toBeGreaterThan(0.9624);
  });
});

test("by hand: 12 + 12 + 30 h down of 720, the last stop still open; a blank start, a missing cell and to_date are one", () => {
  const stops = ["2026-01-05 08:00", "2026-01-13 20:00", "2026-01-29 18:00"];
  const starts = ["2026-01-05 20:00", "2026-01-14 08:00"];
  const row = found(stops, [...starts, ""]);
  expect(row.availability).toBeCloseTo(666 / 720, 12);
  expect([row.stops, row["mean hours up"], row["mean hours down"]]).toEqual([
    3,
    expect.closeTo(222, 6),
    expect.closeTo(18, 6),
  ]);
  for (const last of [[], [null], ["2026-01-31"]]) {
    const same = found(stops, [...starts, ...last]);
    for (const name of Object.keys(row)) expect(same[name]).toBeCloseTo(row[name]!, 9);
  }
});

test("down all the time is 0, in both shares", () => {
  expect(found([from], [null])).toMatchObject({ availability: 0, "cautious availability": 0, "mean hours up": 0 });
  expect(found([from], [""]).stops).toBe(1);
});

test("headings are passed over; headings alone are a log without a stop, which is no availability", () => {
  const plain = found([from + 1], [from + 2]);
  expect(found(["down", from + 1], ["up", from + 2])).toEqual(plain);
  expect(found(["down", from + 1, null], ["up", from + 2])).toEqual(plain);
  for (const starts of [["up"], [null], ["up", ""]])
    expect(refused(["down"], starts)).toMatch(/^#N\/A no stop in 720 hours seen up/);
  expect(refused([null], [null])).toMatch(/^#VALUE! stops is blank; give the range with its heading/);
});

test("agrees with hours counted one by one, and the cautious share with jStat's F", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 30 })), {
        minLength: 1,
        maxLength: 12,
      }),
      fc.integer({ min: 1, max: 50 }),
      (gaps, tail) => {
        const state: boolean[] = [];
        const [stops, starts]: [number[], number[]] = [[], []];
        for (const [up, down] of gaps) {
          for (let hour = 0; hour < up; hour++) state.push(true);
          stops.push(from + state.length / 24);
          for (let hour = 0; hour < down; hour++) state.push(false);
          starts.push(from + state.length / 24);
        }
        for (let hour = 0; hour < tail; hour++) state.push(true);
        const up = state.filter(Boolean).length;
        const down = state.length - up;
        const row = found(stops, starts, from, from + state.length / 24);
        expect(row.availability).toBeCloseTo(up / state.length, 9);
        expect(row["mean hours up"]).toBeCloseTo(up / gaps.length, 5);
        expect(row["mean hours down"]).toBeCloseTo(down / gaps.length, 5);
        const f = jStat.centralF.inv(0.95, 2 * gaps.length, 2 * gaps.length);
        expect(row["cautious availability"]).toBeCloseTo(up / (up + down * f), 6);
      },
    ),
    { numRuns: 60 },
  );
});

test("the cautious share is above the true availability in one log of twenty (exponential times, 4,000 logs)", () => {
  // A generator of this test's own: times up of mean 100 h and down of mean 20 h, five of each; truth 100/120.
  let seed = 12345;
  const exponential = (mean: number): number => {
    seed = (seed * 48271) % 2147483647;
    return -mean * Math.log(seed / 2147483647);
  };
  let above = 0;
  const logs = 4000;
  for (let log = 0; log < logs; log++) {
    let at = from;
    const [stops, starts]: [number[], number[]] = [[], []];
    for (let k = 0; k < 5; k++) {
      stops.push((at += exponential(100) / 24));
      starts.push((at += exponential(20) / 24));
    }
    if (found(stops, starts, from, at)["cautious availability"]! > 100 / 120) above++;
  }
  // Four standard errors of a share of 0.05 in 4,000 are 0.014.
  expect(Math.abs(above / logs - 0.05)).toBeLessThan(0.014);
}, 60_000);

test("never above the plain share, and nearer to it with more stops", () => {
  fc.assert(
    fc.property(evenly(0.5, 0.99), fc.integer({ min: 1, max: 30 }), (share, stops) => {
      const cautiousOf = (count: number): number => {
        const cycle = 30 / count;
        const down = Array.from({ length: count }, (_, k) => from + (k + share) * cycle);
        return found(
          down,
          down.map((stop) => Math.min(to, stop + (1 - share) * cycle)),
        )["cautious availability"]!;
      };
      expect(cautiousOf(stops)).toBeLessThan(share);
      expect(cautiousOf(stops + 1)).toBeGreaterThan(cautiousOf(stops));
    }),
  );
});

test.each([
  [
    "a stop before the time",
    [from - 1],
    [from + 1],
    /stops: 2025-12-31 00:00 is before from_date .*\(stop 1 of the log\)/,
  ],
  ["a stop after it", [to], [to + 1], /stops: 2026-01-31 00:00 is not before to_date/],
  ["a start after it", [to - 1], [to + 1], /starts: 2026-02-01 00:00 is after to_date .*leave the last start blank/],
  [
    "a start before its stop",
    [from + 5],
    [from + 4],
    /starts: 2026-01-05 00:00 is not after its stop 2026-01-06 00:00/,
  ],
  ["a stop of no length", [from + 5], [from + 5], /is not after its stop/],
  [
    "stops that overlap",
    [from + 1, from + 3],
    [from + 4, from + 5],
    /stops: 2026-01-04 00:00 is before the start 2026-01-05 00:00 above it.*\(stop 2/,
  ],
  ["rows out of order", [from + 5, from + 1], [from + 6, from + 2], /is before the start .*the order of the rows/],
  ["a blank start in between", [from + 1, from + 3], ["", from + 5], /starts row 1 is blank/],
  [
    "two starts missing",
    [from + 1, from + 3],
    [],
    /stops has 2 and starts has 0 cells; .*only the last start may be blank/,
  ],
  ["more starts than stops", [from + 1], [from + 2, from + 3], /stops has 1 and starts has 2/],
  ["a year for a date", [2026], [from + 3], /stops is 2026, which looks like a year/],
])("%s is refused", (_name, stops, starts, words) => {
  const [first, ...rest] = [stops, starts];
  expect(refused(first, rest[0]!.length === 0 ? [null] : rest[0]!)).toMatch(/^#VALUE! /);
  expect(refused(first, rest[0]!.length === 0 ? [null] : rest[0]!)).toMatch(words);
});

test("dates the wrong way round, and a log whose times touch to the rounding", () => {
  expect(refused([from + 1], [from + 2], to, from)).toMatch(/to_date 2026-01-01 00:00 is not after from_date/);
  const third = 1 / 3;
  expect(found([from + third, from + 2 * third], [from + third + third, from + 1]).stops).toBe(2);
});
