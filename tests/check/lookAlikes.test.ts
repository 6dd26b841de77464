import { check, down, workbook, type GivenSheet } from "./book";
import type { CheckedWorkbook } from "../../src/check/workbook";

const one = (cells: GivenSheet, more: Parameters<typeof workbook>[1] = {}): CheckedWorkbook =>
  workbook({ Plan: cells }, more);
const date = (serial: number) => ({ value: serial, format: "yyyy-mm-dd" });
const demandTable = { formula: 'OXYGEN.DEMAND_TABLE({"a";"b"},{1;2},{5;6})', value: "kind", spill: "A1:H4" };
const rows = Array.from({ length: 12 }, (_, index) => index + 1);
const amounts = down("A1", [1, 2, 3, 4, 5]);

/** Each looks like a planted fault and is none. */
const peaceful: readonly (readonly [what: string, book: CheckedWorkbook])[] = [
  ["liquid as liquid", one({ A1: "=OXYGEN.LIQUID_MADE(20,1.4)", A2: "=OXYGEN.DRAIN_HOURS(A1,30)" })],
  ["gas as gas", one({ A1: "=OXYGEN.GAS_FROM_LIQUID(18)", A2: "=OXYGEN.CYLINDERS_NEEDED(A1,6800)" })],
  ["net as net", one({ A1: "=OXYGEN.NET_FILL(25)", A2: "=OXYGEN.GROSS_DRAW(A1)" })],
  ["gross as gross", one({ A1: "=OXYGEN.GROSS_DRAW(18)", A2: "=OXYGEN.NET_FILL(A1)" })],
  ["any liquid as net", one({ A1: "=OXYGEN.LEVEL_LEFT(3,30,55)", A2: "=OXYGEN.GROSS_DRAW(A1)" })],
  [
    "the peak where the peak is sized",
    one({ A1: "=OXYGEN.CENSUS_AT_LEVEL(18,0.95)", A2: "=OXYGEN.DESIGN_FLOW(A1,10,6,0.75)" }),
  ],
  [
    "the mean where the mean is taken",
    one({ A1: "=OXYGEN.AVERAGE_CENSUS(3,6)", A2: "=OXYGEN.CENSUS_AT_LEVEL(A1,0.95)" }),
  ],
  ["a day's liquid as a plan's need", one({ A1: "=OXYGEN.DAILY_LOSS(55)", A2: "=OXYGEN.GROSS_DRAW(A1)" })],
  [
    "pressure of air turned into altitude",
    one({ A1: "=OXYGEN.AIR_PRESSURE(2400)", A2: "=OXYGEN.ALTITUDE_FROM_PRESSURE(A1)" }),
  ],
  ["a gauge corrected", one({ A1: "=OXYGEN.GAUGE_CORRECTED(1.5,2700)", A2: "=OXYGEN.LIQUID_DENSITY(A1)" })],
  ["a rate derated", one({ A1: "=OXYGEN.DERATED_RATE(1.4,1800,31)", A2: "=OXYGEN.HOURS_TO_FILL(55,A1)" })],
  ["a flow carried on", one({ A1: "=OXYGEN.DELIVERED_FLOW(1.4)", A2: "=OXYGEN.PATIENTS_CARRIED(A1,6)" })],
  ["days as days", one({ A1: "=OXYGEN.DAYS_UNTIL_EMPTY(30,55)", A2: "=OXYGEN.LEVEL_LEFT(A1,30,55)" })],
  [
    "hours turned into days by a factor",
    one({ A1: "=OXYGEN.HOURS_TO_FILL(55,1.4)", A2: "=OXYGEN.LEVEL_LEFT(A1/24,30,55)" }),
  ],
  [
    "minutes turned into hours by a factor",
    one({ A1: "=OXYGEN.CYLINDER_MINUTES(6800,9)", A2: "=OXYGEN.LIQUID_MADE(A1/60,1.4)" }),
  ],
  [
    "a flow made a day's gas by factors",
    one({ A1: "=OXYGEN.DEMAND_FLOW({2;3},{6;8})", A2: "=OXYGEN.CYLINDERS_NEEDED(A1*60*24,6800)" }),
  ],
  [
    "litres made cubic metres by a thousand",
    one({ A1: "=OXYGEN.GAS_FROM_LIQUID(18)", A2: "=A1/1000", A3: "=OXYGEN.GROSS_DRAW(A2)" }),
  ],
  [
    "a date and days added",
    one({
      A1: { formula: "OXYGEN.EMPTY_ON(46100,30,55)", value: 46103, format: "yyyy-mm-dd" },
      A2: { formula: "A1+7", value: 46110, format: "yyyy-mm-dd" },
    }),
  ],
  [
    "two dates taken from each other",
    one({ A1: { formula: "OXYGEN.EMPTY_ON(46100,30,55)", value: 46103, format: "yyyy-mm-dd" }, A2: "=A1-46100" }),
  ],
  ["a sum of one kind", one({ A1: "=OXYGEN.LIQUID_MADE(20,1.4)", A2: "=OXYGEN.LEVEL_LEFT(3,30,55)", A3: "=A1+A2" })],
  ["a ratio of two kinds", one({ A1: "=OXYGEN.GAS_FROM_LIQUID(18)", A2: "=OXYGEN.LIQUID_MADE(20,1.4)", A3: "=A1/A2" })],
  ["kinds that are not known", one({ A1: "=PI()*4", A2: "=OXYGEN.GROSS_DRAW(A1)" })],
  [
    "weights in a draw ratio",
    one({ A1: "=OXYGEN.LIQUID_MASS(25)", A2: "=OXYGEN.LIQUID_MASS(20)", A3: "=OXYGEN.DRAW_RATIO(A1,A2)" }),
  ],
  ["the liquid column of a table", one({ A1: demandTable, G2: 8, J1: "=OXYGEN.GROSS_DRAW(G2)" })],
  ["a table in a table", one({ A1: demandTable, J1: "=INDEX(A1#,2,4)" })],

  [
    "the unit that is taken, in a label",
    one({ A1: "Store pressure (bar)", B1: 1.2, B2: "=OXYGEN.LIQUID_DENSITY(B1)" }),
  ],
  ["the unit beside the number", one({ A1: "Air", B1: 30, C1: "°C", B2: "=OXYGEN.AIR_DENSITY_RATIO(500,B1)" })],
  ["the unit in a number format", one({ B1: { value: 520, format: '0 "m"' }, B2: "=OXYGEN.AIR_PRESSURE(B1)" })],
  [
    "text with its own unit under another heading",
    one({ A1: "Store pressure (psi)", B1: "12 psi", B2: "=OXYGEN.LIQUID_DENSITY(B1)" }),
  ],
  [
    "a percent shown as a percent",
    one({ A1: "Purity (%)", B1: { value: 0.93, format: "0%" }, B2: "=OXYGEN.PURE_OXYGEN(5000,B1)" }),
  ],
  ["words that hold a unit's letters", one({ A1: "Plan m", B1: 5, B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" })],
  ["a label in brackets that is no unit", one({ A1: "Capacity (each)", B1: 55, B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" })],
  ["a label with a date in it", one({ A1: "Level on 3 May", B1: 55, B2: "=OXYGEN.GROSS_DRAW(B1)" })],
  ["litres as L", one({ A1: "Fill [litres]", B1: 18, B2: "=OXYGEN.GROSS_DRAW(B1)" })],
  ["hours as h", one({ A1: "Running time (hours)", B1: 18, B2: "=OXYGEN.LIQUID_MADE(B1,1.4)" })],

  ["a filled cell", one({ B1: 55, B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" })],
  ["a blank that is asked about", one({ B2: "=OXYGEN.THIS_EXCEL(B1,B3)", B3: { formula: "NA()", value: "#N/A" } })],
  ["an argument left out", one({ B2: "=OXYGEN.HOURS_TO_FILL(55,1.4,,4)" })],
  [
    "a date where a date is taken",
    one({ B1: date(46100), B2: { formula: "OXYGEN.EMPTY_ON(B1,30,55)", value: 46103, format: "yyyy-mm-dd" } }),
  ],
  [
    "an ISO date as text",
    one({ B1: "2026-03-01", B2: { formula: "OXYGEN.EMPTY_ON(B1,30,55)", value: 46085, format: "yyyy-mm-dd" } }),
  ],
  ["text with a unit", one({ B1: "15 gal", B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" })],
  [
    "a cell that another formula fills",
    one({ A1: { formula: "SEQUENCE(3)", value: 1, spill: "A1:A3" }, A2: 2, A3: 3, B1: "=OXYGEN.GROSS_DRAW(A3)" }),
  ],

  ["a range to its end", one({ ...amounts, B1: "=SUM(A1:A5)" })],
  ["a total below a range", one({ ...amounts, A6: "=SUM(A1:A5)", B1: "=OXYGEN.ONE_UNIT_DOWN(A1:A5,9)" })],
  [
    "a labelled total below a range",
    one({
      ...down("A1", ["a", "b", "c", "Total"]),
      ...down("B1", [4, 5, 6, 15]),
      D1: "=OXYGEN.ONE_UNIT_DOWN(B1:B3,9)",
    }),
  ],
  ["another list after a gap", one({ ...amounts, ...down("A7", [8, 9]), B1: "=SUM(A1:A5)" })],
  ["a whole column", one({ ...amounts, B1: "=SUM(A:A)" })],
  ["part of a row", one({ A1: 1, B1: 2, C1: 3, D1: 4, A2: "=SUM(A1:C1)" })],
  [
    "a running total",
    one({
      ...amounts,
      ...down(
        "B1",
        rows.slice(0, 5).map((row) => `=SUM(A$1:A${row})`),
      ),
    }),
  ],
  ["two cells out of a list", one({ ...amounts, B1: "=SUM(A1:A2)" })],

  [
    "a column copied down",
    one({
      ...amounts,
      ...down(
        "B1",
        rows.slice(0, 5).map((row) => `=A${row}*$D$1`),
      ),
      D1: 1.25,
    }),
  ],
  [
    "a total of another form below",
    one({
      ...amounts,
      ...down(
        "B1",
        rows.slice(0, 5).map((row) => `=A${row}*2`),
      ),
      B6: "=SUM(B1:B5)",
    }),
  ],
  [
    "an opening of another form above",
    one({
      A1: 1,
      B1: "=A1",
      ...down(
        "B2",
        rows.slice(0, 5).map((row) => `=B${row}+1`),
      ),
    }),
  ],
  ["every row of its own form", one({ B1: "=PI()", B2: "=2+A1", B3: "=A1*3", B4: "=ROUND(A1,0)", A1: 3 })],
  ["three formulas, too few to say", one({ A1: 1, A2: 2, A3: 3, B1: "=A1*2", B2: "=A2*3", B3: "=A3*2" })],

  ["an input that is used", one({ A1: "Draw ratio", B1: 1.4, B2: "=OXYGEN.GROSS_DRAW(18,B1)" })],
  ["an input of another name", one({ A1: "Draw per day", B1: 1.4, B2: "=OXYGEN.GROSS_DRAW(18)" })],
  ["a neutral default left out", one({ A1: "Level", B1: 12, B2: "=OXYGEN.HOURS_TO_FILL(55,1.4)" })],

  ["IFERROR to words that alarm", one({ A1: '=IFERROR(OXYGEN.DAYS_UNTIL_EMPTY(B1,55),"CHECK INPUTS")', B1: 3 })],
  [
    "IFNA for a question without an answer",
    one({ A1: '=IFNA(OXYGEN.DAYS_UNTIL_EMPTY(B1,55,0,8,90),"does not run empty")', B1: 3 }),
  ],
  ["IFERROR around another program's formula", one({ A1: "=IFERROR(B1/B2,0)", B1: 3, B2: 0 })],
  [
    "an error that a formula asks about",
    one({ A1: { formula: "OXYGEN.GROSS_DRAW(-1)", value: "#VALUE!" }, A2: '=IF(ISERROR(A1),"CHECK","fine")' }),
  ],
  [
    "a date shown as a date",
    one({ A1: { formula: "OXYGEN.EMPTY_ON(46100,30,55)", value: 46103, format: "d mmm yyyy" } }),
  ],
  ["a sheet that is not hidden", workbook({ Plan: { A1: "=OXYGEN.GROSS_DRAW(Store!B1)" }, Store: { B1: 12 } })],
  ["a function of another add-in", one({ A1: "=OTHER.GROSS_DRAWS(4)" })],
  [
    "a short column of single calls",
    one({
      ...down("A1", rows),
      ...down(
        "B1",
        rows.map((row) => `=OXYGEN.GROSS_DRAW(A${row})`),
      ),
    }),
  ],
  [
    "a chain of four",
    one({
      A1: "=OXYGEN.GROSS_DRAW(4)",
      ...down(
        "A2",
        rows.slice(0, 3).map((row) => `=OXYGEN.LEVEL_AFTER(5,900,1.4,A${row})`),
      ),
    }),
  ],
  [
    "one formula that spills",
    one({ ...down("A1", rows), B1: { formula: "OXYGEN.GROSS_DRAW(A1:A12)", value: 1.25, spill: "B1:B12" } }),
  ],
];

it.each(peaceful)("leaves in peace: %s", (_what, book) => {
  expect(check(book).findings.map(({ rule, cell, words }) => `${rule} ${cell}: ${words}`)).toEqual([]);
});

it("looks at sixty or more", () => {
  expect(peaceful.length).toBeGreaterThanOrEqual(60);
});

test("a finding with a reason on the sheet of notes is set aside; without one it stands", () => {
  const noted = (reason: string): CheckedWorkbook =>
    workbook({
      Plan: { A1: "=OXYGEN.GROS_DRAW(4)" },
      "Check notes": {
        A1: "sheet",
        B1: "cell",
        C1: "rule",
        D1: "reason",
        A2: "Plan",
        B2: "A1",
        C2: "unknown function",
        D2: reason,
      },
    });
  expect(check(noted("of another add-in"))).toMatchObject({ findings: [], setAside: [{ cell: "A1" }] });
  expect(check(noted("")).findings).toHaveLength(1);
});

test("the gravest come first", () => {
  const { findings } = check(one({ A1: "=OXYGEN.GROS_DRAW(4)", A2: "=OXYGEN.GROSS_DRAW(OXYGEN.GAS_FROM_LIQUID(3))" }));
  expect(findings.map(({ severity }) => severity)).toEqual(["danger", "wrong"]);
});
