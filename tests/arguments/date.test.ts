import { date, dateTime, isoDay, serialOfIso } from "../../src/arguments/date";
import { CellError } from "../../src/cells/cellValues";

/**
 * ECMA-376 part 1, 18.17.4.1 (1900 date base): serial 1 is 1900-01-01, 59 is 28 February, 61 is 1 March;
 * 1 January 2008 is 39448 (Excel's documentation of DATEVALUE and DATE).
 */
it.each([
  ["1900-03-01", 61],
  ["2008-01-01", 39448],
  ["1970-01-01", 25569],
  ["9999-12-31", 2958465],
  ["2024-02-29", 45351],
])("%s is serial %i", (iso, serial) => {
  expect(serialOfIso(iso)).toBe(serial);
  expect(isoDay(serial)).toBe(iso);
});

it("reads ISO text and serials, and cuts the time off a date", () => {
  expect(date.read("2008-01-01", "x")).toBe(39448);
  expect(date.read(39448.75, "x")).toBe(39448);
  expect(dateTime.read(39448.75, "x")).toBe(39448.75);
  expect(dateTime.read("2008-01-01 18:00", "x")).toBeCloseTo(39448.75, 9);
});

it.each([60, 0, -1, 3e6, "2023-02-29", "2023-13-01", "03/04/2026", "tomorrow", true, null])(
  "refuses %p with words",
  (cell) => {
    const result = date.read(cell, "due");
    expect(result).toBeInstanceOf(CellError);
    expect((result as unknown as CellError).message).toMatch(/^due .*date/);
  },
);

it.each([
  [2026, "looks like a year"],
  [20260301, "write 2026-03-01"],
  [0, "no date from 1990-01-01"],
  [32873, "the date 1989-12-31"],
  ["1926-03-01", "check the year"],
  [73416, "the date 2101-01-01"],
])("refuses %p and says what it may be", (cell, words) => {
  expect(date.read(cell, "due")).toMatchObject({ message: expect.stringContaining(words) });
});

it("takes 1990-01-01 to 2100-12-31", () => {
  expect([date.read(32874, "x"), date.read(73415, "x"), dateTime.read(73415.99, "x")]).toEqual([
    32874, 73415, 73415.99,
  ]);
});
