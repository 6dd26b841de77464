import fc from "fast-check";
import { stockPlan } from "../../../src/functions/plan/stockPlan";
import { logFaults } from "../../../src/functions/records/logFaults";
import { columnOf, consecutive, firstOfMarch, plainCell, records, workedCells } from "../plan/planCells";

const none = [{ row: "", date: "", fault: "no fault found" }];
const faults = (dates: unknown[], levels: unknown[], capacity = 100, rise?: number, fall?: number) =>
  records(
    logFaults(
      columnOf(dates),
      columnOf(levels),
      [[capacity]],
      rise === undefined ? undefined : [[rise]],
      fall === undefined ? undefined : [[fall]],
    ),
  );
const days = (...offsets: number[]) => offsets.map((day) => firstOfMarch + day);
const words = (found: Record<string, any>[]) => found.map(({ row, fault }) => `${row}: ${fault}`);

test("a good log has no fault", () => {
  expect(faults(days(0, 1, 2, 3), [20, 30, 25, 100], 100, 80, 10)).toEqual(none);
});

// One slip each, planted by hand.
test.each([
  ["the same date twice", days(0, 1, 1), [20, 30, 30.5], undefined, undefined, ["3: the same date as row 2"]],
  [
    "dates out of order",
    days(0, 2, 1, 3),
    [20, 30, 25, 40],
    undefined,
    undefined,
    ["3: the date is before that of row 2: out of order"],
  ],
  [
    "a level above the capacity",
    days(0, 1, 2),
    [20, 300, 30],
    15,
    15,
    ["2: level 300 L is above the capacity of 100 L"],
  ],
  [
    "a rise faster than the plants make",
    days(0, 1),
    [20, 61],
    40,
    undefined,
    ["2: rises 41 L a day since row 1, faster than 40 L a day"],
  ],
  ["a rise over two days counts by the day", days(0, 2, 3), [20, 90, 95], 35, undefined, []],
  [
    "a fall faster than is drawn",
    days(0, 1),
    [61, 20],
    undefined,
    40,
    ["2: falls 41 L a day since row 1, faster than 40 L a day"],
  ],
  [
    "a stuck gauge",
    days(0, 1, 2, 3, 4),
    [50, 40, 40, 40, 30],
    undefined,
    undefined,
    ["2: the same level in 3 readings, rows 2 to 4: is the gauge stuck?"],
  ],
  ["two equal readings", days(0, 1, 2), [50, 40, 40], undefined, undefined, []],
  [
    "a full plant in standby and an empty one",
    days(0, 1, 2, 3, 4, 5),
    [100, 100, 100, 0, 0, 0],
    undefined,
    undefined,
    [],
  ],
  ["a blank level", days(0, 1, 2), [50, null, 30], undefined, undefined, ["2: level is blank"]],
  ["a blank date", [firstOfMarch, "", firstOfMarch + 2], [50, 40, 30], undefined, undefined, ["2: date is blank"]],
  [
    "a number as text",
    days(0, 1),
    [50, "40,5"],
    undefined,
    undefined,
    ['2: level "40,5" is text that looks like a number'],
  ],
  [
    "a date as text",
    [firstOfMarch, "02/03/2026"],
    [50, 40],
    undefined,
    undefined,
    ['2: date "02/03/2026" is text that looks like a date'],
  ],
  [
    "a year typed wrong",
    [firstOfMarch, 9560],
    [50, 40],
    undefined,
    undefined,
    [expect.stringMatching(/^2: date is 9560, the date 1926-03-04; .*check the year/)],
  ],
  [
    "a year typed too late: that row, not those after it, and the changes after it are still judged",
    days(0, 1, 2 + 365 * 36, 3, 4),
    [20, 30, 40, 50, 99],
    15,
    undefined,
    ["3: the date is after that of row 4: out of order", "5: rises 49 L a day since row 4, faster than 15 L a day"],
  ],
  [
    "a day typed that comes later in its own row too",
    days(0, 4, 2, 3, 4),
    [20, 30, 40, 50, 60],
    undefined,
    undefined,
    ["2: the same date as row 5"],
  ],
  ["a negative level", days(0, 1), [50, -4], undefined, undefined, ["2: level must be 0 L or more; this is -4"]],
  [
    "a level of another unit",
    days(0, 1),
    [50, "30 psi"],
    undefined,
    undefined,
    [expect.stringContaining('2: level "30 psi" is a pressure')],
  ],
  [
    "text for a level in the first row",
    days(0, 1),
    ["n/a", 40],
    undefined,
    undefined,
    [expect.stringContaining('1: level "n/a" is not a number')],
  ],
] as const)("%s", (_name, dates, levels, rise, fall, expected) => {
  const found = faults([...dates], [...levels], 100, rise, fall);
  expect(expected.length === 0 ? found : words(found)).toEqual(expected.length === 0 ? none : expected);
});

test("two readings of one day are no fault when their times differ", () => {
  expect(faults([firstOfMarch + 0.25, firstOfMarch + 0.75], [20, 25], 100, 10.1)).toEqual(none);
  expect(words(faults([firstOfMarch + 0.25, firstOfMarch + 0.75], [20, 26], 100, 10.1))).toEqual([
    "2: rises 12 L a day since row 1, faster than 10.1 L a day",
  ]);
});

test("rows are counted without the header, a blank row between filled ones is a fault, those at the end are none", () => {
  const table = logFaults(
    [["date"], [firstOfMarch], [null], [firstOfMarch + 1], [null], [""]],
    [["level"], [20], [null], [200], [null]],
    [[100]],
  );
  expect(words(records(table))).toEqual(["2: the row is blank", "3: level 200 L is above the capacity of 100 L"]);
});

test("the last day without a level is told; a longer blank end of one range is not", () => {
  expect(words(faults(days(0, 1, 2), [20, 30, null]))).toEqual(["3: level is blank"]);
  expect(words(faults([...days(0, 1), null], [20, 30, 40]))).toEqual(["3: date is blank"]);
  expect(faults([...days(0, 1), null, ""], [20, 30])).toEqual(none);
  expect(words(records(logFaults([days(0, 1, 2)], [[20, 30, ""]], [[100]])))).toEqual(["3: level is blank"]);
});

test("ranges that don't go together are refused in words, an error cell goes out unchanged", () => {
  expect(
    logFaults(
      days(0, 1).map((day) => [day]),
      [[1], [2], [3]],
      [[100]],
    )[0]![0],
  ).toMatchObject({
    code: "#VALUE!",
    message: expect.stringMatching(/dates has 2 and levels has 3 cells/),
  });
  expect(
    logFaults(
      [
        [1, 2],
        [3, 4],
      ],
      [[1], [2]],
      [[100]],
    )[0]![0],
  ).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("dates has 2 rows and 2 columns") });
  const error = { type: "Error", basicType: "Error", basicValue: "#REF!" };
  expect(
    logFaults(
      days(0, 1).map((day) => [day]),
      [[1], [error]],
      [[100]],
    ),
  ).toEqual([[error]]);
});

test("the closings of the plan worked by hand pass its own limits and fail tighter ones", () => {
  const closings = stockPlan(...(workedCells() as [any, any, any, any, any, any]))
    .slice(1)
    .map((row) => plainCell(row[7]) as number);
  // Largest daily rise 45 (period 8), largest fall 70 (period 7).
  const check = (rise: number, fall: number) =>
    records(logFaults(consecutive(10), columnOf(closings), [[100]], [[rise]], [[fall]]));
  expect(check(45, 70)).toEqual(none);
  expect(words(check(44, 70))).toEqual(["8: rises 45 L a day since row 7, faster than 44 L a day"]);
  expect(words(check(45, 69))).toEqual(["7: falls 70 L a day since row 6, faster than 69 L a day"]);
});

test("a log that runs backwards is told row by row", () => {
  const backwards = days(...Array.from({ length: 5000 }, (_, index) => 5000 - index));
  const found = faults(
    backwards,
    backwards.map((_, index) => 40 + (index % 2)),
  );
  expect(found).toHaveLength(4999);
  expect(found[0]!.fault).toBe("the date is before that of row 1: out of order");
});

test("one slip planted in any good log is found in its row", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 99 }), { minLength: 4, maxLength: 30 }),
      fc.nat(),
      fc.constantFrom("twice", "year too late", "year too early", "above", "blank", "text"),
      (levels, at, slip) => {
        // Neighbours are made different, so that no gauge is stuck.
        const clean: unknown[] = levels.map((level, index) => level + (index % 2) / 2);
        const dates: unknown[] = clean.map((_, index) => firstOfMarch + index);
        // Two rows must follow a wrong year to tell which row is wrong.
        const row = 1 + (at % (levels.length - (slip.startsWith("year") ? 3 : 1)));
        expect(faults(dates, clean)).toEqual(none);
        if (slip === "twice") dates[row] = dates[row - 1];
        if (slip === "year too late") dates[row] = firstOfMarch + row + 3650;
        if (slip === "year too early") dates[row] = firstOfMarch + row - 3650;
        if (slip === "above") clean[row] = 100.1;
        if (slip === "blank") clean[row] = null;
        if (slip === "text") clean[row] = `${String(clean[row])}`;
        const found = faults(dates, clean);
        expect(found.map((fault) => fault.row)).toEqual([row + 1]);
      },
    ),
  );
});
