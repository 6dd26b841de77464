import { parseFormula, printFormula } from "../../src/cells/formulaTree";
import { toStored, toTyped } from "../../src/cells/storedFormula";

const ids = ["HOURS_TO_FILL", "FULL_AT", "STOCK_PLAN", "TWO.PARTS"];

/**
 * How Excel keeps newer functions: XlsxWriter documentation, "Working with Formulas" (future functions, dynamic arrays,
 * the spill operator, LAMBDA); Microsoft [MS-XLSX] 2.2.2. `_xldudf_` is how custom functions appear in public files
 * that Excel saved; not tried in Excel here.
 */
const pairs: [typed: string, stored: string][] = [
  ["=OXYGEN.HOURS_TO_FILL(60,1.5)", "_xldudf_OXYGEN_HOURS_TO_FILL(60,1.5)"],
  ["=SUM(A1:A3)", "SUM(A1:A3)"],
  ["=STDEV.S(B1:B10)", "_xlfn.STDEV.S(B1:B10)"],
  ["=COUNTA(F2#)", "COUNTA(_xlfn.ANCHORARRAY(F2))"],
  ["=SUM('Fill plan'!$D$4#)", "SUM(_xlfn.ANCHORARRAY('Fill plan'!$D$4))"],
  ["=LEN(@A1:A3)", "LEN(_xlfn.SINGLE(A1:A3))"],
  ["=SORT(FILTER(A1:A6,A1:A6>10))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A6,A1:A6>10))"],
  ["=LAMBDA(temp,(5/9)*(temp-32))(32)", "_xlfn.LAMBDA(_xlpm.temp,(5/9)*(_xlpm.temp-32))(32)"],
  ["=LET(x,A1+1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1+1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
  [
    "=LET(f,LAMBDA(h,[late],h+1),f(OXYGEN.FULL_AT(A1,B2)))",
    "_xlfn.LET(_xlpm.f,_xlfn.LAMBDA(_xlpm.h,_xlop.late,_xlpm.h+1),_xlpm.f(_xldudf_OXYGEN_FULL_AT(A1,B2)))",
  ],
  ["=WORKDAY.INTL(A1,5)", "WORKDAY.INTL(A1,5)"],
];

describe("a formula as typed and as stored", () => {
  test.each(pairs)("%s", (typed, stored) => {
    expect(toStored(typed)).toBe(stored);
    expect(toTyped(stored, ids)).toBe(typed);
  });

  test("the equals sign may be left out", () => {
    expect(toStored("OXYGEN.FULL_AT(1,2)")).toBe("_xldudf_OXYGEN_FULL_AT(1,2)");
  });

  test("a function typed in small letters is stored in capitals", () => {
    expect(toStored("=oxygen.full_at(1,xlookup(1,A:A,B:B))")).toBe(
      "_xldudf_OXYGEN_FULL_AT(1,_xlfn.XLOOKUP(1,A:A,B:B))",
    );
  });

  test("a dot of an id comes back, though the file holds an underscore", () => {
    expect(toStored("=OXYGEN.TWO.PARTS(1)")).toBe("_xldudf_OXYGEN_TWO_PARTS(1)");
    expect(toTyped("_xldudf_OXYGEN_TWO_PARTS(1)", ids)).toBe("=OXYGEN.TWO.PARTS(1)");
  });

  test("an id that is not listed still reads as a function of its namespace", () => {
    expect(toTyped("_xldudf_OXYGEN_NEW_ONE(1)", ids)).toBe("=OXYGEN.NEW_ONE(1)");
  });

  test("texts, sheet names, structured references and array constants are not touched", () => {
    const formula = `=IF("SORT(LET(x,1,x))"="",'LET(x)'!A1,Kinds[[#All],[SORT (L)]])&{"FILTER(";"a""b}"}`;
    expect(toStored(formula)).toBe(formula.slice(1));
    expect(toTyped(formula.slice(1), ids)).toBe(formula);
  });

  test("a name of LET is marked only inside its LET", () => {
    expect(toStored("=x+LET(x,2,x)+x")).toBe("x+_xlfn.LET(_xlpm.x,2,_xlpm.x)+x");
  });

  test("an error value is no spill", () => {
    expect(toStored("=IFERROR(#N/A,#VALUE!)")).toBe("IFERROR(#N/A,#VALUE!)");
  });

  test("every reading prints back as it came", () => {
    for (const formula of [
      'IF( A1 >= 1.5E-3 , "a, b)" , -(B$2:$C4) % )',
      "Sheet1!A1:B2+Sheet1:Sheet3!A1+[1]Data!name",
      "LOG10(A1)+SUM(3:5)+#REF!+Sheet1!#REF!",
      "OXYGEN.FULL_AT(,,1",
      "1+)(",
      "",
    ]) {
      expect(printFormula(parseFormula(formula)).replace(/\)$/, "")).toBe(formula.replace(/\)$/, ""));
    }
  });
});
