import { firstShortDate } from "../../../src/functions/plan/firstShortDate";
import worked from "../../reference/stockPlanTenDays.json";
import { errorOf, oneCell } from "../oneCell";
import { firstOfMarch, plainCell, workedCells } from "./planCells";

type Cells = [any, any, any, any, any, any];

test.each([undefined, false, true])(
  "the ten-day plan worked by hand is first short in period 7 (same_day %s)",
  (sameDay) => {
    expect(plainCell(firstShortDate(...(workedCells(sameDay) as Cells))[0]![0])).toBe(
      firstOfMarch + worked.firstShort - 1,
    );
  },
);

test("its first six periods have no shortfall", () => {
  const cells = workedCells().map((cell, index) => (index < 4 ? cell!.slice(0, 6) : cell));
  const result = firstShortDate(...(cells as Cells))[0]![0];
  expect(result).toMatchObject({ code: "#N/A", message: "no shortfall in these dates" });
});

test("a column of openings gives a column of dates", () => {
  const cells = workedCells();
  cells[5] = [[0], [12.5], [37.5]];
  expect(firstShortDate(...(cells as Cells)).map(([cell]) => plainCell(cell) - firstOfMarch + 1)).toEqual([1, 2, 7]);
});

test("an opening above the room is refused", () => {
  expect(errorOf(firstShortDate, firstOfMarch, 1, 0, 24, undefined, 5)).toMatch(/#VALUE! plants is blank/);
  const cells = workedCells();
  cells[5] = [[60]];
  expect(firstShortDate(...(cells as Cells))[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("above the room of 50 L"),
  });
  expect(oneCell(() => firstShortDate(...(workedCells() as Cells)))).toBe(46088);
});
