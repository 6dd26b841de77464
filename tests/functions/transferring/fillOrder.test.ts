import fc from "fast-check";
import type { CellError } from "../../../src/cells/cellValues";
import { fillOrder } from "../../../src/functions/transferring/fillOrder";
import { evenly } from "../../evenly";

const columnOf = (cells: readonly unknown[]): unknown[][] => cells.map((cell) => [cell]);
const words = (result: unknown[][]): string => {
  expect(result).toHaveLength(1);
  const error = result[0]![0] as CellError;
  return `${error.code} ${error.message}`;
};

test("worked by hand: shares 1/2, 1, 0 and 1/2 with 60 L of which 10 L stay, ratio 1.25", () => {
  const table = fillOrder(
    columnOf([10, 30, 0, 5]),
    columnOf([20, 30, 16, 10]),
    [[60]],
    [[10]],
    undefined,
    columnOf(["ward", "store", "clinic", "boat"]),
  );
  // clinic 16 (20 drawn, 40 left), ward 10 (12.5, 27.5), boat 5 (6.25, 21.25), store full
  expect(table).toEqual([
    ["vessel", "fill", "draw", "stock after"],
    ["clinic", 16, 20, 40],
    ["ward", 10, 12.5, 27.5],
    ["boat", 5, 6.25, 21.25],
    ["store", 0, 0, 21.25],
  ]);
});

test("the last gets a part fill, the rest nothing, and the kept amount stays", () => {
  expect(fillOrder(columnOf([0, 0, 0]), columnOf([8, 8, 8]), [[25]], [[10]])).toEqual([
    ["vessel", "fill", "draw", "stock after"],
    [1, 8, 10, 15],
    [2, 4, 5, 10],
    [3, 0, 0, 10],
  ]);
});

test("a stock below what is kept fills nothing and is left alone", () => {
  expect(fillOrder([[0]], [[8]], [[5]], [[10]])).toEqual([
    ["vessel", "fill", "draw", "stock after"],
    [1, 0, 0, 5],
  ]);
});

test("every vessel once, in order of share; balance; never past brim or reserve; at most one part fill", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(evenly(1, 100), evenly(0, 1)), { minLength: 1, maxLength: 12 }),
      evenly(0, 500),
      evenly(0, 100),
      evenly(1, 2),
      (vessels, stock, keep, ratio) => {
        const levels = vessels.map(([capacity, share]) => capacity * share);
        const capacities = vessels.map(([capacity]) => capacity);
        const rows = fillOrder(columnOf(levels), columnOf(capacities), [[stock]], [[keep]], [[ratio]]).slice(
          1,
        ) as number[][];
        expect(rows.map(([vessel]) => vessel).sort((a, b) => a! - b!)).toEqual(vessels.map((_, index) => index + 1));
        let left = stock;
        let lastShare = -1;
        let part = 0;
        for (const [vessel, fill, draw, after] of rows as [number, number, number, number][]) {
          const [level, capacity] = [levels[vessel - 1]!, capacities[vessel - 1]!];
          // Shares that are equal to twelve digits tie.
          expect(level / capacity).toBeGreaterThanOrEqual(lastShare - 2e-12);
          lastShare = level / capacity;
          expect(fill).toBeGreaterThanOrEqual(0);
          expect(level + fill).toBeLessThanOrEqual(capacity * (1 + 1e-12));
          expect(draw).toBeCloseTo(fill * ratio, 9);
          left -= draw;
          expect(after).toBeCloseTo(left, 9);
          if (stock >= keep) expect(after).toBeGreaterThanOrEqual(keep - 1e-9);
          if (fill > 1e-9 && level + fill < capacity - 1e-9) part++;
        }
        expect(part).toBeLessThanOrEqual(1);
      },
    ),
  );
});

test("unequal lists, a blank and a level above its capacity are refused with their place", () => {
  expect(words(fillOrder(columnOf([1, 2]), columnOf([8]), [[5]]))).toBe(
    "#VALUE! levels has 2 and capacities has 1 cells; they must go together one by one",
  );
  expect(words(fillOrder(columnOf([1, 2]), columnOf([8, 8]), [[5]], undefined, undefined, [["a"]]))).toMatch(
    /levels has 2 and names has 1 cells/,
  );
  expect(words(fillOrder(columnOf([1, null, 2]), columnOf([8, 8, 8]), [[5]]))).toMatch(/#VALUE! levels row 2 is blank/);
  expect(words(fillOrder(columnOf([1, 9]), columnOf([8, 8]), [[5]]))).toBe(
    "#VALUE! level of vessel 2 in levels is 9 L, above the capacity of 8 L; check which is which",
  );
});

test("a tie that binary fractions hide goes by the list: 1 of 10 L and 0.7 of 7 L", () => {
  // 0.7 / 7 is 0.09999999999999999 in binary.
  expect(
    fillOrder(columnOf([1, 0.7]), columnOf([10, 7]), [[40]])
      .slice(1)
      .map(([vessel]) => vessel),
  ).toEqual([1, 2]);
});

test("a stock that is used up is 0 after it, not a rest of rounding: 4 × 7 L at 1.15 from 32.2 L", () => {
  // 32.2 − 4 × 8.05 leaves 1.07e-14 in binary when taken off one by one.
  const rows = fillOrder(columnOf([0, 0, 0, 0, 0]), columnOf([7, 7, 7, 7, 8]), [[32.2]], undefined, [[1.15]]).slice(1);
  expect(rows[2]![3]).toBeCloseTo(8.05, 9);
  expect(rows[3]).toEqual([4, 7, expect.closeTo(8.05, 9), 0]);
  expect(rows[4]).toEqual([5, 0, 0, 0]);
});

test("with or without header texts, names too; a name too many is refused", () => {
  const plain = fillOrder(
    columnOf([10, 2]),
    columnOf([20, 20]),
    [[40]],
    undefined,
    undefined,
    columnOf(["ward", "boat"]),
  );
  const headed = fillOrder(
    columnOf(["level", 10, 2]),
    columnOf(["capacity", 20, 20]),
    [[40]],
    undefined,
    undefined,
    columnOf(["name", "ward", "boat"]),
  );
  expect(headed).toEqual(plain);
  const spare = fillOrder(
    columnOf([10, 2, null]),
    columnOf(["capacity", 20, 20, null]),
    [[40]],
    undefined,
    undefined,
    columnOf(["ward", "boat", ""]),
  );
  expect(spare).toEqual(plain);
  expect(plain[1]![0]).toBe("boat");
  const over = fillOrder(
    columnOf([10, 2]),
    columnOf([20, 20]),
    [[40]],
    undefined,
    undefined,
    columnOf(["a", "b", "c"]),
  );
  expect(words(over)).toMatch(/levels has 2 and names has 3 cells/);
});
