import { DailyAmountsArgument, column } from "../../src/arguments/column";
import { date } from "../../src/arguments/date";
import { litres } from "../../src/arguments/quantity";
import { isHeading } from "../../src/arguments/rows";

test.each(["need", "O2 need", "L/day", "Bedarf täglich", "потребность", "需求", "الطلب", " date "])(
  "%p heads a column",
  (text) => {
    expect(isHeading(text, litres)).toBe(true);
  },
);

test.each(["12,5", "about 12", "n/a", "None", "5 L", "’93", "−5", "٣", "", null, 7, "2026-13-01", "l2", "O.5"])(
  "%p is no header",
  (cell) => {
    expect(isHeading(cell, litres)).toBe(false);
  },
);

test("a date written out is no header", () => {
  expect([isHeading("March 1", date), isHeading("Date", date), isHeading("2026-03-01", date)]).toEqual([
    false,
    true,
    false,
  ]);
});

test("a column, a row and a single cell are read; a block is refused", () => {
  expect(column(litres).readRange([["need"], [1], ["2 L"]], "need")).toEqual([1, 2]);
  expect(column(litres).readRange([[1, 2, "", null]], "need")).toEqual([1, 2]);
  expect(column(litres).readRange([["need", 1, 2]], "need")).toMatchObject({
    message: expect.stringMatching(/^need cell 1 "need" is not a number/),
  });
  expect(column(litres).readRange([[3]], "need")).toEqual([3]);
  expect(
    column(litres).readRange(
      [
        [1, 2, 3],
        [4, 5, 6],
      ],
      "need",
    ),
  ).toMatchObject({ message: "need has 2 rows and 3 columns; enter one column or one row" });
});

test("the place of a bad cell is counted as the user sees it, header included", () => {
  expect(column(litres).readRange([["need"], [1], [-2]], "need")).toMatchObject({
    message: expect.stringContaining("need row 3 must be"),
  });
  expect(
    new DailyAmountsArgument(litres).readRange(
      [
        [1, 5],
        [2, null],
      ],
      "need",
    ),
  ).toMatchObject({ message: expect.stringContaining("need row 2 is blank") });
});
