import { cellArguments, eachCell } from "../../src/arguments/eachCell";
import { litres } from "../../src/arguments/quantity";
import { list } from "../../src/arguments/range";
import type { CellError } from "../../src/cells/cellValues";

const args = cellArguments({
  amount: litres.positive(),
  factor: litres.default({ value: 2, unit: "L", source: "made up" }),
});
const times = (amount: unknown, factor?: unknown): unknown[][] =>
  eachCell(args, [amount, factor] as never, (given) => given.amount * given.factor);
const words = (cell: unknown): string => (cell as CellError).message;
const column = (length: number, value: unknown): unknown[][] => Array.from({ length }, () => [value]);

it("keeps the shape that the other arguments ask for when a single one is bad", () => {
  const result = times([["x"]], [[1], [2], [3]]);
  expect(result).toHaveLength(3);
  for (const [cell] of result) expect(words(cell)).toMatch(/^amount "x" is not a number/);
  expect(times([[1], [2], [3]], [["x"]])).toHaveLength(3);
});

it("gives each blank cell its own error and neither stops nor shortens the spill", () => {
  const result = times([[1], [null], [3], [""]]);
  expect(result.map(([cell]) => (typeof cell === "number" ? cell : words(cell)))).toEqual([
    2,
    expect.stringMatching(/^amount is blank/),
    6,
    expect.stringMatching(/^amount is blank/),
  ]);
});

it("speaks where a range comes without a cell", () => {
  for (const nothing of [[], [[]]]) {
    expect(words(times(nothing)[0]![0])).toMatch(/^amount is blank/);
    expect(words(times([[1]], nothing)[0]![0])).toMatch(/^factor is blank: enter 2/);
  }
});

it("leaves the blank end of a whole column alone, and says when a result is too large", () => {
  const whole = column(1048576, null);
  whole[0] = [1];
  whole[2] = [3];
  expect(times(whole).map(([cell]) => (typeof cell === "number" ? cell : "words"))).toEqual([2, "words", 6]);
  expect(times(column(16384, null))).toHaveLength(16384);
  const large = times(column(200001, 1));
  expect([large.length, words(large[0]![0])]).toEqual([1, expect.stringContaining("at most 200000 cells")]);
  expect(times(column(200000, 1))).toHaveLength(200000);
});

it("keeps the shape when a list is bad", () => {
  const withList = cellArguments({ amount: litres, parts: list(litres) });
  const result = eachCell(withList, [column(4, 1), [["x"]]] as never, (given) => given.amount);
  expect(result).toHaveLength(4);
  expect(words(result[3]![0])).toMatch(/^parts/);
});
