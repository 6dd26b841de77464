import { cellJson, cellText, fifteenDigits, dateText } from "../../src/engine/cellText";
import { cellName, placeOf, cellsOfArea } from "../../src/cells/addresses";
import { isDateFormat } from "../../src/engine/engineValue";
import { explainName } from "../../src/engine/explainName";

test("numbers keep the 15 significant digits that Excel keeps", () => {
  // Microsoft, "Excel specifications and limits": number precision 15 digits.
  expect(fifteenDigits(0.1 + 0.2)).toBe(0.3);
  expect(cellText(2 / 3)).toBe("0.666666666666667");
  expect(cellText(1e21)).toBe("1E+21");
  expect(cellJson(0.1 + 0.2)).toBe(0.3);
});

test("dates are ISO from March 1900, with the time if the format shows it", () => {
  // Microsoft's DATEVALUE page: serial 1 is 1 January 1900, serial 39448 is 1 January 2008.
  expect(dateText(39448, "yyyy-mm-dd")).toBe("2008-01-01");
  expect(dateText(39448.999, "yyyy-mm-dd")).toBe("2008-01-01");
  expect(dateText(39448.5, "yyyy-mm-dd hh:mm")).toBe("2008-01-01 12:00");
  expect(dateText(39448 + 1 - 1e-9, "yyyy-mm-dd hh:mm")).toBe("2008-01-02 00:00");
  expect(dateText(61, "d/m/yy")).toBe("1900-03-01");
  expect(dateText(60, "yyyy-mm-dd")).toBe("60");
  expect(dateText(0.5, "hh:mm")).toBe("0.5");
});

test.each([
  ["yyyy-mm-dd", true],
  ["d mmm", true],
  ["hh:mm:ss", true],
  ["mmm", true],
  ["General", false],
  ["0.00", false],
  ['#,##0 "days"', false],
  ["0.0\\d", false],
  ["[h]:mm", false],
  ["[Red]0", false],
  ["0.00E+00", false],
])("the number format %s shows a date: %s", (format, expected) => {
  expect(isDateFormat(format)).toBe(expected);
});

test.each([
  ["A1", 0, 0],
  ["Z9", 8, 25],
  ["AA10", 9, 26],
  // The last cell of a sheet: Microsoft, "Excel specifications and limits", 1,048,576 rows by 16,384 columns.
  ["XFD1048576", 1_048_575, 16_383],
])("%s is row %d and column %d", (name, row, column) => {
  expect(placeOf(name)).toEqual({ row, column });
  expect(cellName(row, column)).toBe(name);
});

test("the cells of an area, row by row", () => {
  expect(cellsOfArea("B2:C3")).toEqual(["B2", "C2", "B3", "C3"]);
  expect(() => placeOf("1A")).toThrow("1A");
});

describe("why a formula shows #NAME?", () => {
  const known = ["SUM", "LET", "LAMBDA", "OXYGEN.HOURS_TO_FILL", "OXYGEN.DAILY_LOSS", "OXYGEN.HEAT_LEAK"];
  test.each([
    ["=OXYGEN.HOURS_TO_FIL(1)", "no function OXYGEN.HOURS_TO_FIL; did you mean OXYGEN.HOURS_TO_FILL?"],
    ["=OXYGEN.HOURS_FILL(1)", "no function OXYGEN.HOURS_FILL; did you mean OXYGEN.HOURS_TO_FILL?"],
    ["=daily_loss(1)", "no function DAILY_LOSS; did you mean OXYGEN.DAILY_LOSS?"],
    ["=dailyloss(1)", "no function DAILYLOSS; did you mean OXYGEN.DAILY_LOSS?"],
    ["=SMU(1)", "no function SMU; did you mean SUM?"],
    ["=OXIGEN.DAILY_LOSS(1)", "no function OXIGEN.DAILY_LOSS; did you mean OXYGEN.DAILY_LOSS?"],
    ["=OXYGEN.SUM(1)", "no function OXYGEN.SUM; did you mean SUM?"],
    ["=OXYGEN.WEATHER(1)", "no function OXYGEN.WEATHER"],
    ["=SUM(OXYGEN.ZZZ(1))", "no function OXYGEN.ZZZ"],
    ["=SUM(fast)", 'no name fast here; a text needs quotation marks: "fast"'],
    ["=LET(rate,1,f,LAMBDA(x,x),f(rate)+TRUE)", ""],
    ['=SUM("SMU(1)",A1:B2,Sheet1!C3)', ""],
    ["=SUM", "SUM is a function: write SUM(…)"],
  ])("%s", (formula, words) => {
    expect(explainName(formula, known)).toBe(words);
  });

  test("a defined name is known", () => {
    expect(explainName("=SUM(Rate)", known, ["rate"])).toBe("");
  });
});
