/**
 * Numbers spelled in every way Excel takes. Expected values are plain arithmetic or the documented meaning of the
 * function; 15 digits: Microsoft, "Excel specifications and limits" and "Floating-point arithmetic may give inaccurate
 * results in Excel".
 */
import { readNumber } from "../../src/cells/numberText";
import { toStored, toTyped } from "../../src/cells/storedFormula";
import { typedFormula } from "../../src/cells/typedFormula";
import { createEngine, type Engine } from "../../src/engine/engine";
import type { EngineValue } from "../../src/engine/engineValue";
import { registerFunctions } from "../../src/engine/registerFunctions";
import type { SheetCell } from "../../src/engine/workbookInput";
import { openLiveSheet } from "./liveSheet";
import { standIns } from "./standInFunctions";

const table: [formula: string, value: EngineValue][] = [
  ["=1.50", 1.5],
  ["=2.0", 2],
  ["=.5", 0.5],
  ["=5.", 5],
  ["=007", 7],
  ["=60.0", 60],
  ["=0.0", 0],
  ["=1E3", 1000],
  ["=1e3", 1000],
  ["=1.5E+3", 1500],
  ["=1.E+3", 1000],
  ["=.5E+2", 50],
  ["=1.50E-3", 0.0015],
  ["=25E-1*2.0", 5],
  ["=-1.50", -1.5],
  ["=+.5", 0.5],
  ["=-.5", -0.5],
  ["=2--1.0", 3],
  ["= 1.50", 1.5],
  ["=( 1.50 )", 1.5],
  ["=1.50 +  2.50", 4],
  ["=(1.50)*(2.0)", 3],
  ["=1.50%", 0.015],
  ["=50.0%*2", 1],
  ["=.5^2.0", 0.25],
  ["=2.0^-1.0", 0.5],
  ["=1.50=1.5", true],
  ["=1.0<2.00", true],
  ["=10.0>9.50", true],
  ["=2.0<>2", false],
  ["=0.1+0.2=0.30", true],
  ["=123456789012345678", 123456789012345000],
  ["=0.00123456789012345678", 0.00123456789012345],
  ['=IF(0.30>=0.95,"above","below")', "below"],
  ['=IF(1.50>1,"go to B","stop")', "go to B"],
  ['=IF(12<7.50,"ORDER NOW","ok")', "ok"],
  ["=IF(0.0,1,2)", 2],
  ["=IF(1.0,1.10,2)", 1.1],
  ['=IFS(1.0=2,"a",TRUE,"b")', "b"],
  ['=SWITCH(2.0,1,"a",2,"b")', "b"],
  ["=AND(1.0,0.0)", false],
  ["=NOT(0.0)", true],
  ["=SUM({1.50,2})", 3.5],
  ["=SUM({.5;-2.0;1E3})", 998.5],
  ["=SUM({ 1.50 , -.5 })", 1],
  ['=MAX({1.0,"a";TRUE,2.50})', 2.5],
  ["=AVERAGE({1.0;2.0})", 1.5],
  ['=COUNT({1.50,"1.50"})', 1],
  ["=INDEX({1.50;2.50;3.50},2.0)", 2.5],
  ["=MATCH(1.50,{1,1.5,2},0)", 2],
  ["=MATCH(2.50,{1.0,2.0,3.0})", 2],
  ['=XLOOKUP(1.50,{1,1.5},{"a","b"})', "b"],
  ['=VLOOKUP(2.0,{1,"a";2,"b"},2.0,FALSE)', "b"],
  ['=CHOOSE(2.0,"a","b")', "b"],
  ["=ISNUMBER(1.50)", true],
  ['=ISTEXT("1.50")', true],
  ['=ISTEXT(INDEX({"1.50"},1))', true],
  ["=LEN(1.50)", 3],
  ['=LEN("1.50")', 4],
  ['=1.50&" L"', "1.5 L"],
  ['="1.50"&" L"', "1.50 L"],
  ['=TEXT(1.50,"0.000")', "1.500"],
  ['="1.50"+1', 2.5],
  ['=VALUE(".5")', 0.5],
  ["=N(1.0)", 1],
  ["=ROUND(2.456,2.0)", 2.46],
  ["=MOD(7.50,2.0)", 1.5],
  ["=LET(x,1.50,x*2)", 3],
  ["=LET(x_1,2.0,y,x_1+.5,y)", 2.5],
  ["=LAMBDA(x,x*2.0)(1.50)", 3],
  ["=SUM(MAP({1.0;2.0},LAMBDA(x,x+.5)))", 4],
  ["=SUM(SEQUENCE(2.0,1,1.50,.25))", 3.25],
  ["=OXYGEN.PLUS(1.50,2.0)", 3.5],
  ["=OXYGEN.PLUS(.5)", 100.5],
  ["=SUM(OXYGEN.PLUS({1.50;2.0},1E1))", 23.5],
  ["=OXYGEN.ECHO(1.50)", 1.5],
  ['=OXYGEN.ECHO("1.50")', "1.50"],
  ['=OXYGEN.ECHO("90 min")&1.0', "90 min1"],
  // Texts beside them, with the quotation mark that is doubled.
  ['="say ""1.50"""&1.50', 'say "1.50"1.5'],
  ['=LEN("""""")', 2],
  ['=IF(1.50>1,"a""b, c","stop")', 'a"b, c'],
  ['=INDEX({"a""b",1.50;"x;""y",2.50},2,1)', 'x;"y'],
  ['=INDEX({"a""b",1.50;"x;""y",2.50},1,2)', 1.5],
];

/** In column A: 12, 1.5, the text "1.50", 2, 1000. */
const cells: Record<string, SheetCell> = {
  A1: { value: 12 },
  A2: { value: 1.5 },
  A3: { value: "1.50" },
  A4: { value: 2 },
  A5: { value: 1000 },
};

const ofCells: [formula: string, value: EngineValue][] = [
  ['=IF(A1<7.50,"ORDER NOW","ok")', "ok"],
  ["=A2=1.50", true],
  ["=A3=1.50", false],
  ["=ISTEXT(A3)", true],
  ["=MATCH(1E3,A1:A5,0)", 5],
  ["=SUMPRODUCT((A4:A5>1.50)*1.0)", 2],
  ['=COUNTIF(A1:A5,">1.50")', 3],
  ['=COUNTIF(A1:A5,"=2.0")', 1],
  ['=COUNTIF(A1:A5,">=1E3")', 1],
  ['=COUNTIF(A1:A5,"<>2.0")', 4],
  ['=COUNTIFS(A1:A5,">.5",A1:A5,"<2.50")', 2],
  ['=SUMIF(A1:A5,">=1E3")', 1000],
  ['=AVERAGEIF(A1:A5,">1.0")', (12 + 1.5 + 2 + 1000) / 4],
  ['=MAXIFS(A1:A5,A1:A5,"<12.0")', 2],
  ['=MAXIFS(A1:A5,A1:A5,"<0.50")', 0],
  ["=Half*2", 1],
  ["=2/Half", 4],
  ["=Half^2.0", 0.25],
  ["=-More*1.50", -4.5],
  ['=Half&" ""x"""', '0.5 "x"'],
  ["=SUM(Rates)", 3.5],
  ["=Said", 'a "1.50" b'],
];

const names = { Half: "=1.50/3.0", More: "=1.0+2.0", Rates: "={1.50,2.0}", Said: '="a ""1.50"" b"' };

let engine: Engine;
beforeAll(() => {
  engine = createEngine(standIns);
});
afterAll(() => engine.dispose());

test("every formula alone", async () => {
  const values = await engine.calculate(table.map(([formula]) => formula));
  expect(table.map(([formula], index) => [formula, values[index]])).toEqual(
    table.map(([formula, value]) => [formula, [[value]]]),
  );
});

test("every formula in a workbook", async () => {
  const formulas = [...table, ...ofCells];
  const placed = formulas.map(([formula], row): [string, SheetCell] => [`C${row + 1}`, { formula }]);
  const [sheet] = await engine.calculateWorkbook(
    [{ name: "Plan", cells: { ...cells, ...Object.fromEntries(placed) } }],
    { names },
  );
  expect(formulas.map(([formula], row) => [formula, sheet!.cells[`C${row + 1}`]?.value])).toEqual(formulas);
});

test("every formula in a sheet that calculates as one in a page does", async () => {
  const placed = table.slice(0, 90).map(([formula], row) => [`C${row + 1}`, { f: formula }]);
  const sheet = await openLiveSheet(Object.fromEntries(placed), [], (injector) =>
    registerFunctions(injector, standIns),
  );
  const shown = table.slice(0, 90).map(([formula], row) => [formula, sheet.cell(`C${row + 1}`).v]);
  sheet.close();
  expect(shown).toEqual(
    table.slice(0, 90).map(([formula, value]) => [formula, typeof value === "boolean" ? Number(value) : value]),
  );
});

test("every formula is stored as it was typed, and shown as it was stored", () => {
  for (const [formula] of [...table, ...ofCells]) {
    expect(toTyped(toStored(formula), ["PLUS", "ECHO"])).toBe(formula.replace(/^= /, "="));
    expect(typedFormula(formula, () => true)).toBe(formula);
  }
});

test("what was typed in small letters is shown in capitals, numbers and texts as they came", () => {
  const isFunction = (name: string): boolean => ["IF", "SUM", "OXYGEN.JOURNEY_GAS"].includes(name);
  expect(typedFormula('=if(a1>1.50,"go to b1",sum(plan!b$2:c3,true))', isFunction)).toBe(
    '=IF(A1>1.50,"go to b1",SUM(plan!B$2:C3,TRUE))',
  );
  expect(typedFormula('=oxygen.journey_gas(10.0,"90 min")', isFunction)).toBe('=OXYGEN.JOURNEY_GAS(10.0,"90 min")');
  expect(typedFormula("=if(doubled(rate)>.5,Kinds[a1],'my sum(a1)'!a1)", isFunction)).toBe(
    "=IF(doubled(rate)>.5,Kinds[a1],'my sum(a1)'!A1)",
  );
});

test.each([
  ["=0x10", "0x10 is neither a number nor a name"],
  ["=5kg", "5kg is neither a number nor a name"],
  ["=1.2.3", "1.2.3 is neither a number nor a name"],
])("%s is no formula", async (formula, message) => {
  expect((await engine.calculate([formula]))[0]).toEqual([[{ error: "#ERROR!", message }]]);
});

test("a number's text is read whole or not at all", () => {
  expect(["1.50", ".5", "2.", "1E3", "1e-3", "007"].map(readNumber)).toEqual([1.5, 0.5, 2, 1000, 0.001, 7]);
  expect(["", ".", "1e", "e3", "-1", "1 ", "0x10", "1,5", "Infinity"].map(readNumber)).toEqual(
    Array.from({ length: 9 }, () => undefined),
  );
  expect(["999999999999999", "9999999999999999", "0.0000000000000001234567890123456789e3"].map(readNumber)).toEqual([
    999999999999999, 9999999999999990, 1.23456789012345e-13,
  ]);
});
