import { valueCheck } from "../../../src/functions/records/valueCheck";
import { overdueDays } from "../../../src/functions/service/overdueDays";
import { errorOf, oneCell } from "../oneCell";

const check = (value: unknown, kind: string) => oneCell(valueCheck, value, kind);

// What a tired clerk types. Conversions: NIST SP 811 (°C = (°F − 32)/1.8; 1 psi = 0.06894757 bar; K − 273.15).
test.each([
  [93, "fraction", "93 looks like a percent: enter 93% or 0.93"],
  [-0.1, "fraction", /below 0/],
  [930, "fraction", /above 100 %/],
  [85, "temperature", /looks like °F: 85 °F is 29\.44 °C/],
  [104, "temperature", /looks like °F: 104 °F is 40 °C/],
  [293.15, "temperature", /looks like kelvin: .* is 20 °C/],
  [-120, "temperature", "ok"],
  [-100, "temperature", /colder than any air and warmer than liquid oxygen/],
  [-300, "temperature", /absolute zero/],
  [-230, "temperature", /colder than oxygen freezes/],
  [2000, "pressure", /looks like psi: 2000 psi is 137\.9 bar/],
  [15000, "pressure", /looks like kPa: 15000 kPa is 150 bar/],
  [-2, "pressure", /below vacuum/],
  [14400, "flow", /14400 L\/day is 10 L\/min/],
  [-1, "flow", /below 0/],
  [-1, "level", /below 0/],
  [250000, "level", /largest site vessels/],
  [2.5, "count", /not a whole number/],
  [-1, "count", /below 0/],
  [20260301, "date", /run together/],
  [2026, "date", /year alone/],
  [43, "date", /small number/],
  [32873, "date", /outside 1990 to 2100/],
  [73416, "date", /outside 1990 to 2100/],
  [1e9, "date", /too large/],
  [true, "count", /TRUE is no count/],
])("%p as a %s", (value, kind, words) => {
  expect(check(value, kind)).toEqual(typeof words === "string" ? words : expect.stringMatching(words));
});

test.each([
  ["12.5", "level", /looks like a number/],
  ["12,5", "fraction", /looks like a number/],
  ["1 200", "flow", /looks like a number/],
  ["1\u00a0200", "flow", /looks like a number/],
  ["’93", "count", /looks like a number/],
  ["05/03/2026", "date", /looks like a date/],
  ["5 March 2026", "date", /looks like a date/],
  ["2026-03-05", "date", /looks like a date/],
  ["5.3.26", "date", /looks like a date/],
  ["46083", "date", /looks like a number/],
  ["3/2", "level", /not a number|not known/],
  ["5-Mar-26", "count", /looks like a date/],
  ["soon", "date", /is text, not a date/],
  ["full", "level", /"full" is not a number/],
  ["35 psi", "level", /is a pressure/],
])("text %p as a %s", (value, kind, words) => {
  expect(check(value, kind)).toMatch(words);
});

test.each([
  [0.93, "fraction"],
  ["93%", "fraction"],
  [0, "fraction"],
  [1, "fraction"],
  [10, "flow"],
  ["15 ft3/h", "flow"],
  [0, "level"],
  ["20 gal", "level"],
  [-183, "temperature"],
  [21.1, "temperature"],
  [56.7, "temperature"],
  [-89.2, "temperature"],
  ["85 °F", "temperature"],
  [137, "pressure"],
  ["2000 psi", "pressure"],
  [0, "count"],
  [46083, "date"],
  [46083.5, "date"],
  [32874, "date"],
  [73415.9, "date"],
])("%p as a %s is ok", (value, kind) => {
  expect(check(value, kind)).toBe("ok");
});

test("text with a unit is judged in the base unit", () => {
  expect(check("150 °F", "temperature")).toMatch(/^"150 °F" is hotter than any air/);
  expect(check("9000 psi", "pressure")).toMatch(/above the fullest cylinders/);
});

test("a column is checked cell by cell, blanks are told in their own cell", () => {
  const result = valueCheck([[0.5], [93], [null]], [["fraction"]]);
  expect(result[0]![0]).toBe("ok");
  expect(result[1]![0]).toMatch(/percent/);
  expect(result[2]![0]).toBe("blank: nothing is entered; a fraction is wanted here");
  expect(errorOf(valueCheck, 5, "mood")).toMatch(/kind is "mood"; enter fraction, flow/);
});

// 1990-01-01 and 2100-12-31 as serials: python's date(1990, 1, 1) − date(1899, 12, 30), and so on.
test("a date that VALUE_CHECK passes is a date that the other functions take, and the other way round", () => {
  for (const serial of [32873, 32874, 40000, 73415, 73416, 60, 2026, 20260301])
    expect([serial, check(serial, "date") === "ok"]).toEqual([
      serial,
      typeof oneCell(overdueDays, serial, 46000) === "number",
    ]);
});

test("a blank is never ok, of whatever kind", () => {
  for (const kind of ["fraction", "flow", "level", "temperature", "pressure", "date", "count"])
    for (const blank of [null, "", "  "]) expect(check(blank, kind)).toMatch(/^blank: nothing is entered/);
});
