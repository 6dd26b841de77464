import { areaOf, cellName, isOnSheet, overlaps, placeOf, rangeOf } from "../../src/cells/addresses";
import { tokensOf } from "../../src/cells/formulaTokens";

// A sheet has 1,048,576 rows and columns to XFD: Microsoft, "Excel specifications and limits".
test("addresses to the last cell of a sheet are read, others refused", () => {
  expect(placeOf("XFD1048576")).toEqual({ row: 1_048_575, column: 16_383 });
  expect(placeOf("$b$3")).toEqual({ row: 2, column: 1 });
  for (const bad of ["XFE1", "A1048577", "A0", "A", "3", "", "A1:B2", "Plan!A1"]) expect(() => placeOf(bad)).toThrow();
});

test("areas, whole columns and whole rows", () => {
  expect(areaOf("B3:$C$5")).toEqual({ startRow: 2, startColumn: 1, endRow: 4, endColumn: 2 });
  expect(areaOf("B:C")).toEqual({ startRow: 0, startColumn: 1, endRow: 1_048_575, endColumn: 2 });
  expect(areaOf("$3:$9")).toEqual({ startRow: 2, startColumn: 0, endRow: 8, endColumn: 16_383 });
  expect(() => areaOf("C5:B3")).toThrow("runs backwards");
  expect(rangeOf(areaOf("B3:B3"))).toBe("B3");
  expect(overlaps(areaOf("A1:B2"), areaOf("B2:C3"))).toBe(true);
  expect(overlaps(areaOf("A1:B2"), areaOf("C1:C3"))).toBe(false);
});

test("what lies beyond the sheet is a name in a formula", () => {
  expect(tokensOf("XFD1+XFE1+A10:A9+ABC9999999").map(({ kind }) => kind)).toEqual([
    "reference",
    "other",
    "name",
    "other",
    "reference",
    "other",
    "name",
  ]);
  expect(["$XFD$1", "XFD", "1048576"].every(isOnSheet)).toBe(true);
  expect(["XFE1", "XFE", "1048577"].some(isOnSheet)).toBe(false);
  expect(cellName(0, 16_383)).toBe("XFD1");
});

test.each(["C0", "$C$0", "C01", "0"])("%s is no corner of a reference", (corner) => {
  expect(isOnSheet(corner)).toBe(false);
});
