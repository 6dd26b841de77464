import { check, down, workbook, type GivenSheet } from "./book";
import type { CheckedWorkbook } from "../../src/check/workbook";

type Case = readonly [what: string, book: CheckedWorkbook, rule: string, cell: string, words: RegExp];

const one = (cells: GivenSheet, more: Parameters<typeof workbook>[1] = {}): CheckedWorkbook =>
  workbook({ Plan: cells }, more);
const date = (serial: number) => ({ value: serial, format: "yyyy-mm-dd" });
const demandTable = { formula: 'OXYGEN.DEMAND_TABLE({"a";"b"},{1;2},{5;6})', value: "kind", spill: "A1:H4" };

const kinds: readonly Case[] = [
  [
    "gas as liquid",
    one({ A1: "=OXYGEN.GAS_FROM_LIQUID(18)", A2: "=OXYGEN.HOURS_TO_FILL(A1,1.4)" }),
    "wrong kind",
    "A2",
    /capacity.*gas.*860/,
  ],
  ["gas as liquid, nested", one({ A1: "=OXYGEN.GROSS_DRAW(OXYGEN.GAS_FROM_LIQUID(18))" }), "wrong kind", "A1", /860/],
  [
    "liquid as gas",
    one({ A1: "=OXYGEN.LIQUID_MADE(20,1.4)", A2: "=OXYGEN.CYLINDERS_NEEDED(A1,6800)" }),
    "wrong kind",
    "A2",
    /liquid/,
  ],
  ["gross as net", one({ A1: "=OXYGEN.GROSS_DRAW(18)", A2: "=OXYGEN.TRANSFER_LOSS(A1)" }), "wrong kind", "A2", /drawn/],
  ["net as gross", one({ A1: "=OXYGEN.NET_FILL(25)", A2: "=OXYGEN.NET_FILL(A1)" }), "wrong kind", "A2", /filled/],
  [
    "the mean where the peak is sized",
    one({ A1: "=OXYGEN.AVERAGE_CENSUS(3,6)", A2: "=OXYGEN.DESIGN_FLOW(A1,10,6,0.75)" }),
    "wrong kind",
    "A2",
    /average.*worst hour/,
  ],
  [
    "absolute as gauge",
    one({ A1: "=OXYGEN.AIR_PRESSURE(2400)", A2: "=OXYGEN.BOILING_POINT(A1)" }),
    "wrong kind",
    "A2",
    /absolute/,
  ],
  [
    "gauge as absolute",
    one({ A1: "=OXYGEN.SATURATION_PRESSURE(-175)", A2: "=OXYGEN.ALTITUDE_FROM_PRESSURE(A1)" }),
    "wrong kind",
    "A2",
    /gauge/,
  ],
  [
    "content as water volume",
    one({ A1: "=OXYGEN.CYLINDER_CONTENT(47,140)", A2: "=OXYGEN.CYLINDER_PRESSURE(A1,6000)" }),
    "wrong kind",
    "A2",
    /water volume/,
  ],
  [
    "a gas flow as make rate",
    one({ A1: "=OXYGEN.DELIVERED_FLOW(1.4)", A2: "=OXYGEN.HOURS_TO_FILL(55,A1)" }),
    "wrong kind",
    "A2",
    /gas a minute/,
  ],
  [
    "a make rate as gas flow",
    one({ A1: "=OXYGEN.DERATED_RATE(1.4,1800,31)", A2: "=OXYGEN.PATIENTS_CARRIED(A1,6)" }),
    "wrong kind",
    "A2",
    /liquid an hour/,
  ],
  [
    "hours as days",
    one({ A1: "=OXYGEN.HOURS_TO_FILL(55,1.4)", A2: "=OXYGEN.LEVEL_LEFT(A1,30,55)" }),
    "wrong kind",
    "A2",
    /days.*hours/,
  ],
  [
    "minutes as hours",
    one({ A1: "=OXYGEN.CYLINDER_MINUTES(6800,9)", A2: "=OXYGEN.LIQUID_MADE(A1,1.4)" }),
    "wrong kind",
    "A2",
    /hours.*minutes/,
  ],
  [
    "a mass as liquid",
    one({ A1: "=OXYGEN.LIQUID_MASS(18)", A2: "=OXYGEN.GROSS_DRAW(A1)" }),
    "wrong kind",
    "A2",
    /mass/,
  ],
  [
    "kinds kept by SUM over a column",
    one({
      ...down("A1", ["=OXYGEN.GAS_FROM_LIQUID(4)", "=OXYGEN.GAS_FROM_LIQUID(5)", "=OXYGEN.GAS_FROM_LIQUID(6)"]),
      A5: "=SUM(A1:A3)",
      A6: "=OXYGEN.GROSS_DRAW(A5)",
    }),
    "wrong kind",
    "A6",
    /860/,
  ],
  [
    "kinds kept by MAX, ROUND and IF",
    one({
      A1: "=OXYGEN.GAS_FROM_LIQUID(4)",
      A2: "=ROUND(MAX(A1,10),0)",
      A3: "=IF(B9>1,A2,0)",
      A4: "=OXYGEN.GROSS_DRAW(A3)",
    }),
    "wrong kind",
    "A4",
    /860/,
  ],
  [
    "kinds kept by a margin",
    one({ A1: "=OXYGEN.GAS_FROM_LIQUID(4)", A2: "=A1*1.15", A3: "=OXYGEN.GROSS_DRAW(A2)" }),
    "wrong kind",
    "A3",
    /860/,
  ],
  [
    "kinds through a name",
    one({ A1: "=OXYGEN.GAS_FROM_LIQUID(4)", A2: "=OXYGEN.GROSS_DRAW(Wanted)" }, { names: { Wanted: "Plan!$A$1" } }),
    "wrong kind",
    "A2",
    /860/,
  ],
  [
    "kinds through LET",
    one({ A1: "=LET(g,OXYGEN.GAS_FROM_LIQUID(4),OXYGEN.GROSS_DRAW(g))" }),
    "wrong kind",
    "A1",
    /860/,
  ],
  [
    "kinds through IFERROR",
    one({ A1: "=OXYGEN.GROSS_DRAW(IFERROR(OXYGEN.GAS_FROM_LIQUID(B1),B2))", B1: 4, B2: 5 }),
    "wrong kind",
    "A1",
    /860/,
  ],
  [
    "a column of a spilled table",
    one({ A1: demandTable, F2: 7200, F3: 17280, J1: "=OXYGEN.GROSS_DRAW(F2)" }),
    "wrong kind",
    "J1",
    /gas a day/,
  ],
  [
    "a column taken out by INDEX",
    one({ A1: demandTable, J1: "=OXYGEN.DAILY_LOSS(INDEX(A1#,2,6))" }),
    "wrong kind",
    "J1",
    /gas a day/,
  ],
  [
    "liquid and gas added",
    one({ A1: "=OXYGEN.GAS_FROM_LIQUID(4)", A2: "=OXYGEN.LIQUID_MADE(20,1.4)", A3: "=A1+A2" }),
    "wrong kind",
    "A3",
    /adds/,
  ],
  [
    "hours taken from days",
    one({ A1: "=OXYGEN.DAYS_UNTIL_EMPTY(30,55)", A2: "=OXYGEN.HOURS_TO_FILL(55,1.4)", A3: "=A1-A2" }),
    "wrong kind",
    "A3",
    /takes/,
  ],
  [
    "watts as kilowatts",
    one({ A1: "=OXYGEN.HEAT_LEAK(4)", A2: "=OXYGEN.LINE_CURRENT(A1,230)" }),
    "wrong kind",
    "A2",
    /W/,
  ],
  [
    "fuel an hour as fuel a day",
    one({ A1: "=OXYGEN.FUEL_RATE(9,15,{0.25,0.5,0.75,1},{1.6,2.4,3.3,4.4})", A2: "=OXYGEN.FUEL_DAYS(400,A1)" }),
    "wrong kind",
    "A2",
    /fuel/,
  ],
];

const units: readonly Case[] = [
  [
    "psi in a label",
    one({ A1: "Store pressure (psi)", B1: 12, B2: "=OXYGEN.LIQUID_DENSITY(B1)" }),
    "other unit",
    "B2",
    /psi.*12 psi/,
  ],
  [
    "°F beside the number",
    one({ A1: "Air", B1: 30, C1: "°F", B2: "=OXYGEN.AIR_DENSITY_RATIO(500,B1)" }),
    "other unit",
    "B2",
    /°F/,
  ],
  [
    "feet in a number format",
    one({ B1: { value: 5200, format: '0 "ft"' }, B2: "=OXYGEN.AIR_PRESSURE(B1)" }),
    "other unit",
    "B2",
    /number format says ft/,
  ],
  [
    "gallons in a heading",
    one({ A1: "Fill, gal", ...down("A2", [4, 5, 6]), B2: "=OXYGEN.GROSS_DRAW(A2:A4)" }),
    "other unit",
    "B2",
    /gal/,
  ],
  [
    "cubic metres in a label",
    one({ A1: "Gas wanted [m³]", B1: 90, B2: "=OXYGEN.CYLINDERS_NEEDED(B1,6800)" }),
    "other unit",
    "B2",
    /m³/,
  ],
  [
    "minutes where hours are taken",
    one({ A1: "Running time (min)", B1: 90, B2: "=OXYGEN.LIQUID_MADE(B1,1.4)" }),
    "other unit",
    "B2",
    /min/,
  ],
  [
    "pounds in a label",
    one({ A1: "Weight on the scale (lb)", B1: 96, B2: "=OXYGEN.LIQUID_FROM_MASS(B1)" }),
    "other unit",
    "B2",
    /lb/,
  ],
  [
    "litres an hour where a minute is taken",
    one({ A1: "Flow", B1: 9, C1: "L/h", B2: "=OXYGEN.JOURNEY_GAS(B1,120)" }),
    "other unit",
    "B2",
    /L\/h/,
  ],
  [
    "weeks where days are taken",
    one({ A1: "Standing time (weeks)", B1: 2, B2: "=OXYGEN.LEVEL_LEFT(B1,30,55)" }),
    "other unit",
    "B2",
    /weeks/,
  ],
  [
    "a percent label over a plain fraction",
    one({ A1: "Purity (%)", B1: 0.93, B2: "=OXYGEN.PURE_OXYGEN(5000,B1)" }),
    "other unit",
    "B2",
    /%/,
  ],
];

const inputs: readonly Case[] = [
  ["a blank cell", one({ B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" }), "odd input", "B2", /blank/],
  [
    "a blank behind a name",
    one({ B2: "=OXYGEN.HOURS_TO_FILL(Vessel,1.4)" }, { names: { Vessel: "Plan!$D$4" } }),
    "odd input",
    "B2",
    /blank/,
  ],
  [
    "a number stored as text",
    one({ B1: "55", B2: "=OXYGEN.HOURS_TO_FILL(B1,1.4)" }),
    "odd input",
    "B2",
    /stored as text/,
  ],
  [
    "a number with a comma as text",
    one({ B1: "1,4", B2: "=OXYGEN.HOURS_TO_FILL(55,B1)" }),
    "odd input",
    "B2",
    /stored as text/,
  ],
  [
    "text numbers in a column",
    one({ ...down("A1", [4, "5", 6]), B2: "=OXYGEN.GROSS_DRAW(A1:A3)" }),
    "odd input",
    "B2",
    /"5"/,
  ],
  ["a date for an amount", one({ B1: date(46100), B2: "=OXYGEN.GROSS_DRAW(B1)" }), "odd input", "B2", /date/],
];

const ranges: readonly Case[] = [
  [
    "a sum that stops short",
    one({ ...down("A1", [4, 5, 6, 7]), B1: "=SUM(A1:A3)" }),
    "wrong range",
    "B1",
    /stops short/,
  ],
  [
    "a function's range that stops short",
    one({ ...down("A1", [4, 5, 6, 7]), B1: "=OXYGEN.ONE_UNIT_DOWN(A1:A3,9)" }),
    "wrong range",
    "B1",
    /stops short/,
  ],
  [
    "a total row taken in by its label",
    one({
      ...down("A1", ["a", "b", "c", "Total"]),
      ...down("B1", [4, 5, 6, 15]),
      D1: "=OXYGEN.ONE_UNIT_DOWN(B1:B4,9)",
    }),
    "wrong range",
    "D1",
    /total/,
  ],
  [
    "a total row taken in by its formula",
    one({ ...down("B1", [4, 5, 6]), B4: "=SUM(B1:B3)", D1: "=AVERAGE(B1:B4)" }),
    "wrong range",
    "D1",
    /total/,
  ],
  [
    "a subtotal taken in",
    one({ ...down("B1", [4, 5, 6]), B4: "=SUBTOTAL(9,B1:B3)", D1: "=OXYGEN.ONE_UNIT_DOWN(B1:B4,9)" }),
    "wrong range",
    "D1",
    /total/,
  ],
];

const amounts = down("A1", [1, 2, 3, 4, 5]);
const formulas: readonly Case[] = [
  [
    "one formula of a column that differs",
    one({ ...amounts, ...down("B1", ["=A1*$D$1", "=A2*$D$1", "=A3*$D$2", "=A4*$D$1", "=A5*$D$1"]), D1: 2, D2: 3 }),
    "odd formula",
    "B3",
    /another formula/,
  ],
  [
    "a number typed in",
    one({ ...amounts, ...down("B1", ["=A1*$D$1", "=A2*$D$1", "=A3*1.3", "=A4*$D$1", "=A5*$D$1"]), D1: 1.25 }),
    "odd formula",
    "B3",
    /1\.3 typed in/,
  ],
  [
    "a reference that slipped a row",
    one({
      ...amounts,
      ...down("B1", [
        "=OXYGEN.GROSS_DRAW(A1)",
        "=OXYGEN.GROSS_DRAW(A2)",
        "=OXYGEN.GROSS_DRAW(A2)",
        "=OXYGEN.GROSS_DRAW(A4)",
        "=OXYGEN.GROSS_DRAW(A5)",
      ]),
    }),
    "odd formula",
    "B3",
    /another formula/,
  ],
  [
    "another function in between",
    one({
      ...amounts,
      ...down("B1", [
        "=OXYGEN.GROSS_DRAW(A1)",
        "=OXYGEN.GROSS_DRAW(A2)",
        "=OXYGEN.NET_FILL(A3)",
        "=OXYGEN.GROSS_DRAW(A4)",
        "=OXYGEN.GROSS_DRAW(A5)",
      ]),
    }),
    "odd formula",
    "B3",
    /another formula/,
  ],
];

const defaults: readonly Case[] = [
  [
    "a draw ratio that is not used",
    one({ A1: "Draw ratio", B1: 1.4, B2: "=OXYGEN.GROSS_DRAW(18)" }),
    "input not used",
    "B2",
    /1\.4/,
  ],
  [
    "days to boil empty not used",
    one({ A1: "Days to boil empty", B1: 6.5, B2: "=OXYGEN.DAILY_LOSS(55)" }),
    "input not used",
    "B2",
    /6\.5/,
  ],
  [
    "a start delay not used",
    one({ A1: "Start delay (h)", B1: 5, B2: "=OXYGEN.HOURS_TO_FILL(55,1.4)" }),
    "input not used",
    "B2",
    /start_delay/,
  ],
  [
    "a purity not used",
    one({ A1: "Source purity", B1: 0.9, B2: "=OXYGEN.SOURCE_FLOW(12,0.5)" }),
    "input not used",
    "B2",
    /source_purity/,
  ],
  [
    "a named input not used",
    one({ B1: 1.4, B2: "=OXYGEN.GROSS_DRAW(18)" }, { names: { draw_ratio: "Plan!$B$1" } }),
    "input not used",
    "B2",
    /1\.4/,
  ],
];

const long = Array.from({ length: 25 }, (_, index) => index + 1);
const errors: readonly Case[] = [
  ["IFERROR to 0", one({ A1: "=IFERROR(OXYGEN.DAYS_UNTIL_EMPTY(B1,55),0)", B1: 3 }), "hidden error", "A1", /shows 0/],
  ["IFERROR to ok", one({ A1: '=IFERROR(OXYGEN.SERVICE_STATUS(46100,46090),"ok")' }), "hidden error", "A1", /"ok"/],
  [
    "IFERROR to safe, one cell on",
    one({ A1: "=OXYGEN.MINUTES_TO_LIMIT(40,15)", A2: '=IFERROR(A1,"safe")' }),
    "hidden error",
    "A2",
    /"safe"/,
  ],
  [
    "IF(ISERROR()) to nothing short",
    one({ A1: '=IF(ISERROR(OXYGEN.GROSS_DRAW(B1)),"nothing short",OXYGEN.GROSS_DRAW(B1))', B1: 3 }),
    "hidden error",
    "A1",
    /nothing short/,
  ],
  ["IFERROR to FALSE", one({ A1: "=IFERROR(OXYGEN.GROSS_DRAW(B1)>20,FALSE)", B1: 3 }), "hidden error", "A1", /FALSE/],
  [
    "an error with its words",
    one({ A1: { formula: "OXYGEN.GROSS_DRAW(-1)", value: "#VALUE!", words: "net_fill must be 0 L or more" } }),
    "shown wrong",
    "A1",
    /net_fill must be/,
  ],
  [
    "a blocked spill",
    one({ A1: { formula: "OXYGEN.CONSTANTS()", value: "#SPILL!" }, A3: 7 }),
    "shown wrong",
    "A1",
    /in the way/,
  ],
  [
    "a date shown as a number",
    one({ A1: { formula: "OXYGEN.EMPTY_ON(46100,30,55)", value: 46103, format: "General" } }),
    "shown wrong",
    "A1",
    /46103/,
  ],
  [
    "a date column shown as numbers",
    one({
      A1: { formula: "OXYGEN.DELIVERY_DATES(D1:D2,E1:E2,9,5,1)", value: "date", spill: "A1:B2" },
      A2: { value: 46101 },
      B2: { value: 5 },
      D1: date(46100),
      D2: date(46101),
      E1: 3,
      E2: 4,
    }),
    "shown wrong",
    "A1",
    /46101/,
  ],
  [
    "a hidden sheet",
    workbook({ Plan: { A1: "=OXYGEN.GROSS_DRAW(Store!B1)" }, Store: { B1: 12 } }, { hidden: ["Store"] }),
    "hidden sheet",
    "A1",
    /hidden/,
  ],
  ["a function that does not exist", one({ A1: "=OXYGEN.GROS_DRAW(4)" }), "unknown function", "A1", /GROSS_DRAW/],
  ["a function without its namespace", one({ A1: "=GROSS_DRAW(4)" }), "unknown function", "A1", /OXYGEN\.GROSS_DRAW/],
  [
    "a column of single calls",
    one({
      ...down("A1", long),
      ...down(
        "B1",
        long.map((row) => `=OXYGEN.GROSS_DRAW(A${row})`),
      ),
    }),
    "slow",
    "B1",
    /25 single calls/,
  ],
  [
    "a chain of seven",
    one({
      A1: "=OXYGEN.GROSS_DRAW(4)",
      ...down(
        "A2",
        long.slice(0, 6).map((row) => `=OXYGEN.LEVEL_AFTER(5,900,1.4,A${row})`),
      ),
    }),
    "slow",
    "A7",
    /chain of 7/,
  ],
];

describe.each([
  ["kinds", kinds],
  ["units", units],
  ["inputs", inputs],
  ["ranges", ranges],
  ["formulas", formulas],
  ["defaults", defaults],
  ["errors and looks", errors],
])("planted: %s", (_group, cases) => {
  it.each(cases)("%s", (_what, book, rule, cell, words) => {
    const { findings } = check(book);
    expect(findings.map((each) => `${each.rule} ${each.cell}`)).toContain(`${rule} ${cell}`);
    const found = findings.filter((each) => each.rule === rule && each.cell === cell);
    expect(found.map((each) => each.words).join(" ")).toMatch(words);
  });
});

it("plants at least sixty faults", () => {
  expect([kinds, units, inputs, ranges, formulas, defaults, errors].flat().length).toBeGreaterThanOrEqual(60);
});
