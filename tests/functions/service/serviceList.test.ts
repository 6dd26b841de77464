import { EDATE } from "@formulajs/formulajs";
import fc from "fast-check";
import { evenly } from "../../evenly";
import { nextServiceDate } from "../../../src/functions/service/nextServiceDate";
import { partsNeeded } from "../../../src/functions/service/partsNeeded";
import { serviceDue } from "../../../src/functions/service/serviceDue";
import { serviceList } from "../../../src/functions/service/serviceList";
import { records } from "../plan/planCells";
import { oneNumber } from "../oneCell";
import { on } from "./serviceCells";

const listed = (tasks: unknown[][], from: string, to: string, harsh?: number) =>
  serviceList(tasks, [[on(from)]], [[on(to)]], harsh === undefined ? undefined : [[harsh]]);
const parts = (tasks: unknown[][], from: string, to: string, harsh?: number) =>
  partsNeeded(tasks, [[on(from)]], [[on(to)]], harsh === undefined ? undefined : [[harsh]]);
const dates = (table: any[][]) => records(table).map((row) => row.date);

describe("SERVICE_LIST", () => {
  test("monthly from 31 January comes back to the 31st: 28 February, 31 March, 30 April, 31 May (counted from the anchor)", () => {
    expect(dates(listed([["a", on("2026-01-31"), 1]], "2026-02-01", "2026-05-31"))).toEqual(
      ["2026-02-28", "2026-03-31", "2026-04-30", "2026-05-31"].map(on),
    );
  });

  test("yearly from 29 February: the 28th in common years, the 29th in leap years (Gregorian calendar, ISO 8601)", () => {
    expect(dates(listed([["a", on("2024-02-29"), 12]], "2025-01-01", "2028-12-31"))).toEqual(
      ["2025-02-28", "2026-02-28", "2027-02-28", "2028-02-29"].map(on),
    );
  });

  test("every date equals formulajs EDATE of the anchor, with the harsh factor on the days since", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 45000, max: 46500 }),
        fc.integer({ min: 1, max: 14 }),
        fc.constantFrom(1, 0.5, 0.75),
        (anchor, months, harsh) => {
          const table = serviceList([["a", anchor, months]], [[anchor + 1]], [[anchor + 1500]], [[harsh]]);
          const expected: number[] = [];
          for (let k = 1; k < 400; k++) {
            const theirs = EDATE(anchor, k * months) as unknown;
            const end = theirs instanceof Date ? Math.round(theirs.getTime() / 86400000 + 25569) : (theirs as number);
            const date = anchor + Math.floor(harsh * (end - anchor));
            if (date > anchor && date <= anchor + 1500) expected.push(date);
          }
          expect(dates(table)).toEqual(expected);
          expect(dates(table)[0]).toBe(oneNumber(nextServiceDate, anchor, months, harsh));
        },
      ),
    );
  });

  test("whichever rule is first, by hand: 500 h at 10 h a day is 50 days; 31 January to 28 February is 28", () => {
    const hours = ["hours", on("2026-01-31"), 3, 0, 500, "", 10, "", ""];
    const months = ["months", on("2026-01-31"), 1, 0, 500, "", 10, "", ""];
    const onlyHours = ["only hours", on("2026-01-31"), "", "", 240, "", 24, "", ""];
    expect(records(listed([hours, months, onlyHours], "2026-02-01", "2026-04-01"))).toEqual([
      { date: on("2026-02-10"), task: "only hours", occurrence: 1 },
      { date: on("2026-02-20"), task: "only hours", occurrence: 2 },
      { date: on("2026-02-28"), task: "months", occurrence: 1 },
      { date: on("2026-03-02"), task: "only hours", occurrence: 3 },
      { date: on("2026-03-12"), task: "only hours", occurrence: 4 },
      { date: on("2026-03-22"), task: "hours", occurrence: 1 },
      { date: on("2026-03-22"), task: "only hours", occurrence: 5 },
      { date: on("2026-03-31"), task: "months", occurrence: 2 },
      { date: on("2026-04-01"), task: "only hours", occurrence: 6 },
    ]);
  });

  test("a task overdue at the start comes first, once, with the date it was due", () => {
    const table = listed(
      [
        ["a", on("2026-02-20"), 1],
        ["old", on("2025-06-15"), 1],
      ],
      "2026-03-01",
      "2026-04-20",
    );
    expect(records(table)).toEqual([
      { date: on("2025-07-15"), task: "old", occurrence: 1 },
      { date: on("2026-03-15"), task: "old", occurrence: 9 },
      { date: on("2026-03-20"), task: "a", occurrence: 1 },
      { date: on("2026-04-15"), task: "old", occurrence: 10 },
      { date: on("2026-04-20"), task: "a", occurrence: 2 },
    ]);
  });

  test("the meter on the first day counts: by hand, 500 h from 1000 h with 1420 h on it and 16 h a day", () => {
    const task = ["engine", on("2025-12-01"), 12, 1000, 500, 1420, 16, "", ""];
    // 80 h are left on 1 February, 5 days; then 31.25 days each, counted from the first day and cut down.
    expect(records(listed([task], "2026-02-01", "2026-05-15"))).toEqual([
      { date: on("2026-02-06"), task: "engine", occurrence: 1 },
      { date: on("2026-03-09"), task: "engine", occurrence: 2 },
      { date: on("2026-04-09"), task: "engine", occurrence: 3 },
      { date: on("2026-05-10"), task: "engine", occurrence: 4 },
    ]);
    // Without the meter the same task counts 31.25 days each from 1 December: 1 January is overdue.
    const guessed = [...task.slice(0, 5), "", ...task.slice(6)];
    expect(dates(listed([guessed], "2026-02-01", "2026-03-31"))).toEqual(
      ["2026-01-01", "2026-02-01", "2026-03-04"].map(on),
    );
  });

  test("a meter past its service is overdue by SERVICE_DUE's date; missed ones are skipped and the numbers go on", () => {
    // 1280 h over 500 h: due 780 h ago (48.75 days), the second 280 h ago, the third in 220 h (13.75 days).
    const task = ["engine", on("2025-10-01"), 12, 1000, 500, 2280, 16, "", ""];
    expect(records(listed([task], "2026-02-01", "2026-03-01"))).toEqual([
      { date: on("2026-02-01") - 49, task: "engine", occurrence: 1 },
      { date: on("2026-02-14"), task: "engine", occurrence: 3 },
    ]);
  });

  test("the first date is SERVICE_DUE's on the first day, whatever the meter says", () => {
    fc.assert(
      fc.property(
        fc.record({
          since: fc.integer({ min: 0, max: 400 }),
          months: fc.integer({ min: 1, max: 24 }),
          interval: fc.integer({ min: 1, max: 3000 }),
          run: fc.integer({ min: 0, max: 4000 }),
          perDay: evenly(1, 24),
          harsh: evenly(0.2, 1),
        }),
        ({ since, months, interval, run, perDay, harsh }) => {
          const from = on("2026-03-01");
          const row = ["a", from - since, months, 700, interval, 700 + run, perDay, "", ""];
          const table = serviceList([row], [[from]], [[from + 1000]], [[harsh]]);
          fc.pre(table.length > 1);
          expect(records(table)[0]).toEqual({
            date: oneNumber(serviceDue, from, from - since, months, 700, interval, 700 + run, perDay, harsh),
            task: "a",
            occurrence: 1,
          });
        },
      ),
    );
  });

  test("due on the first day is not overdue; header and blank rows are passed over", () => {
    const bare = listed([["a", on("2026-01-15"), 1]], "2026-02-15", "2026-02-15");
    expect(records(bare)).toEqual([{ date: on("2026-02-15"), task: "a", occurrence: 1 }]);
    expect(
      listed(
        [
          ["task", "last date", "months"],
          ["a", on("2026-01-15"), 1],
          [null, null, null],
        ],
        "2026-02-15",
        "2026-02-15",
      ),
    ).toEqual(bare);
  });

  test("2,000 rows are given, one more is refused, and so is a task that is due many times a day", () => {
    const daily = (days: number) =>
      serviceList([["a", 45000, "", "", 24, "", 24, "", ""]], [[45001]], [[45000 + days]]);
    expect(daily(2000)).toHaveLength(2001);
    expect(daily(2001)[0]![0]).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("more than 2000 services"),
    });
    for (const interval of [1e-9, 1e-300]) {
      expect(serviceList([["a", 45000, "", "", interval, "", 24, "", ""]], [[45001]], [[45002]])[0]![0]).toMatchObject({
        code: "#VALUE!",
        message: expect.stringContaining("more than 2000"),
      });
    }
  });

  test.each([
    [["a", 46000, "", "", "", "", "", "", ""], /"a" has neither months nor interval hours/],
    [["a", 46000, 1, "", 100, "", "", "", ""], /has interval hours but hours per day is blank/],
    [["a", 46000, 1, "", "", "", 10, "", ""], /has hours per day but interval hours is blank/],
    [["a", 46000, 1, "", "", 700, "", "", ""], /has hours now but interval hours is blank/],
    [["a", 46000, 1, "", 100, 700, 10, "", ""], /has hours now but last hours is blank/],
    [["a", 46000, 1, 800, 100, 700, 10, "", ""], /"a" can't be counted: hours now 700 h is below last hours 800 h/],
    [
      ["a", 46500, 1, 500, 100, 700, 10, "", ""],
      /was last done on 2027-04-23, after to_date 2026-12-31; check the year/,
    ],
    [["a", 46200, 1, 500, 100, 700, 10, "", ""], /was last done on 2026-06-27, after from_date 2026-01-01/],
    [["a", 46000, "", 0, 1, 1e6, 0.1, "", ""], /"a" would have been due before 1900-03-01/],
    [["a", 46000, 1, 500, "", "", "", "", ""], /has last hours but interval hours is blank/],
    [["a", 46000, 1, "", "", "", "", "belt", ""], /has the part "belt" but quantity is blank/],
    [["a", 46000, 1, "", "", "", "", "", 2], /has a quantity but part is blank/],
    [["a", 46000, 0, "", 100, "", 10, "", ""], /tasks row 1, months must be 1/],
    [["a", "", 1, "", "", "", "", "", ""], /tasks row 1, last date is blank/],
    [["a", 46000, 1, "", "", "", "", ""], /tasks has 8 columns; .*hours now, .*or the first 3 of them/],
    [["a", 46000, 1, ""], /tasks has 4 columns; .*quantity, or the first 3 of them/],
  ])("what can't be counted is refused: %j", (task, words) => {
    const error = listed([task], "2026-01-01", "2026-12-31")[0]![0];
    expect(error).toMatchObject({ code: "#VALUE!" });
    expect(error.message).toMatch(words);
  });

  test("nothing due is #N/A; dates the wrong way round are refused", () => {
    expect(listed([["a", on("2026-01-15"), 12]], "2026-02-01", "2026-03-01")[0]![0]).toMatchObject({
      code: "#N/A",
      message: "no service is due in these dates",
    });
    expect(listed([["a", on("2026-01-15"), 12]], "2026-03-01", "2026-02-01")[0]![0]).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("to_date 2026-02-01 is before from_date"),
    });
  });
});

describe("PARTS_NEEDED", () => {
  const tasks = [
    ["filter", on("2026-01-31"), 1, "", "", "", "", "Filter", 2],
    ["belt", on("2026-01-10"), 2, "", "", "", "", "", ""],
    ["pre-filter", on("2026-01-20"), 1, "", "", "", "", "filter", 1],
    ["oil", on("2026-01-01"), 6, 100, 500, "", 10, "oil litre", 0.1],
  ];
  test("by hand: 3 × 2 + 3 × 1 filters, oil on 20 February and 11 April", () => {
    expect(records(parts(tasks, "2026-02-01", "2026-04-30"))).toEqual([
      { part: "Filter", quantity: 9 },
      { part: "oil litre", quantity: 0.2 },
    ]);
  });
  test("is the sum of the list", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), evenly(0.3, 1), (days, harsh) => {
        const from = [[on("2026-02-01")]];
        const to = [[on("2026-02-01") + days]];
        const list = serviceList(tasks, from, to, [[harsh]]);
        const table = partsNeeded(tasks, from, to, [[harsh]]);
        const quantity: Record<string, number> = { filter: 2, belt: 0, "pre-filter": 1, oil: 0.1 };
        const rows = list.length > 1 ? records(list) : [];
        const sum = (names: string[]) =>
          rows.filter((row) => names.includes(row.task)).reduce((total, row) => total + quantity[row.task]!, 0);
        const got = table.length > 1 ? records(table) : [];
        expect(got.find((row) => row.part === "Filter")?.quantity ?? 0).toBeCloseTo(sum(["filter", "pre-filter"]), 9);
        expect(got.find((row) => row.part === "oil litre")?.quantity ?? 0).toBeCloseTo(sum(["oil"]), 9);
      }),
      { numRuns: 50 },
    );
  });
  test("no part is #N/A, also where tasks has three columns", () => {
    expect(parts([["a", on("2026-01-15"), 1]], "2026-02-01", "2026-03-01")[0]![0]).toMatchObject({ code: "#N/A" });
  });
});
