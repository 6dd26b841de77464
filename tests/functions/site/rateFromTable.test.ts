import fc from "fast-check";
import { rateFromTable } from "../../../src/functions/site/rateFromTable";
import { CellError } from "../../../src/cells/cellValues";
import { evenly } from "../../evenly";

const altitudes = [[0], [2000]];
const temperatures = [[20, 40]];
const rates = [
  [1, 0.85],
  [0.8, 0.66],
];
const at = (
  altitude: unknown,
  temperature: unknown,
  rows = altitudes as unknown[][],
  columns = temperatures as unknown[][],
  table = rates as unknown[][],
): unknown => rateFromTable([[altitude]], [[temperature]], rows, columns, table)[0]![0];
const words = (...given: Parameters<typeof at>): string => {
  const result = at(...given);
  expect(result).toBeInstanceOf(CellError);
  return `${(result as CellError).code} ${(result as CellError).message}`;
};

test("bilinear identity: 0.8275 in the middle, 0.913 125 at a quarter of each way (worked outside this project)", () => {
  expect(at(1000, 30)).toBeCloseTo(0.8275, 12);
  expect(at(500, 25)).toBeCloseTo(0.913125, 12);
});

test("every corner is given as it stands, °F and feet rounding to a corner too", () => {
  for (let row = 0; row < 2; row++)
    for (let column = 0; column < 2; column++)
      expect(at(altitudes[row]![0], temperatures[0]![column])).toBe(rates[row]![column]);
  expect(at("0 ft", "68 °F")).toBe(1);
  expect(at(2000, "104 °F")).toBe(0.66);
});

test("a plane is reproduced everywhere inside an uneven grid", () => {
  const rows = [-100, 0, 700, 3000];
  const columns = [-10, 15, 21.1, 50];
  const plane = (a: number, t: number): number => 5 - a / 1000 - t / 100;
  const table = rows.map((a) => columns.map((t) => plane(a, t)));
  fc.assert(
    fc.property(evenly(-100, 3000), evenly(-10, 50), (a, t) => {
      expect(
        at(
          a,
          t,
          rows.map((each) => [each]),
          [columns],
          table,
        ),
      ).toBeCloseTo(plane(a, t), 9);
    }),
  );
});

test("one row and one column answer for their own point only", () => {
  expect(at(0, 20, [[0]], [[20]], [[1.5]])).toBe(1.5);
  expect(words(1, 20, [[0]], [[20]], [[1.5]])).toMatch(/altitude 1 m is outside the table, which goes from 0 to 0 m/);
});

test("never extrapolates, on any side", () => {
  expect(words(2001, 30)).toMatch(
    /#VALUE! altitude 2001 m is outside the table, which goes from 0 to 2000 m; nothing is extrapolated/,
  );
  expect(words(-1, 30)).toMatch(/altitude -1 m is outside/);
  expect(words(1000, 40.1)).toMatch(/temperature 40.1 °C is outside the table, which goes from 20 to 40 °C/);
  expect(words(1000, 19.9)).toMatch(/temperature 19.9 °C is outside/);
});

test("axes must rise; the offender is named", () => {
  expect(words(1000, 30, [[2000], [0]])).toMatch(
    /#VALUE! altitudes must rise .* number 2 \(0 m\) is not above number 1 \(2000 m\)/,
  );
  expect(words(1000, 30, altitudes, [[20, 20]])).toMatch(
    /temperatures must rise .* number 2 \(20 °C\) is not above number 1 \(20 °C\)/,
  );
});

test("the offending cell of the table is named", () => {
  expect(
    words(1000, 30, altitudes, temperatures, [
      [1, 0.85],
      [null, 0.66],
    ]),
  ).toMatch(/rates row 2, column 1 is blank/);
  expect(
    words(1000, 30, altitudes, temperatures, [
      [1, "n/a"],
      [0.8, 0.66],
    ]),
  ).toMatch(/rates row 1, column 2 "n\/a" is not a number/);
  expect(
    words(1000, 30, altitudes, temperatures, [
      [1, -0.85],
      [0.8, 0.66],
    ]),
  ).toMatch(/rates row 1, column 2 must be 0 L\/h or more/);
});

test("a table of another shape is refused with both sizes", () => {
  expect(words(1000, 30, altitudes, temperatures, [[1, 0.85]])).toMatch(
    /rates has 1 row and 2 columns; with 2 altitudes and 2 temperatures/,
  );
});

test("a rate may carry its unit (NIST SP 811: 1 gal = 3.785 411 784 L)", () => {
  expect(at(0, 20, [[0]], [[20]], [["10 gal/day"]])).toBeCloseTo(37.85411784 / 24, 12);
});
