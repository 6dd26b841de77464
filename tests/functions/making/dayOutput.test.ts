import { dayOutput } from "../../../src/functions/making/dayOutput";
import { errorOf } from "../oneCell";

// 860.5213 L gas of a litre of liquid: Schmidt & Wagner 1985, computed outside this project with CoolProp.
const litresOfGas = 860.5213;
const row = (...cells: (number | undefined)[]): number[] =>
  dayOutput(
    ...(cells.map((cell) => (cell === undefined ? undefined : [[cell]])) as [any, any, any, any]),
  )[1] as number[];

test("one row of three columns under its header", () => {
  const table = dayOutput([[12]], [[6]], [[2]], [[5]]);
  expect(table.map((line) => line.length)).toEqual([3, 3]);
  expect(table[0]).toEqual(["liquid made", "gas supplied", "both as gas at the patient"]);
});

test("by hand: 9 of 12 h at 2 L/h, and 6 h of 5 L/min", () => {
  const [liquid, gas, both] = row(12, 6, 2, 5) as [number, number, number];
  expect(liquid).toBeCloseTo(18, 12);
  expect(gas).toBeCloseTo(1800, 12);
  expect(both / ((18 / 1.25) * litresOfGas + 1800)).toBeCloseTo(1, 4);
});

test("making only, gas only, and a make time shorter than the start delay", () => {
  expect(row(24, 0, 1, 10).slice(0, 2)).toEqual([21, 0]);
  expect(row(0, 24, 1, 10)).toEqual([0, 14400, 14400]);
  expect(row(2, 22, 1, 10)).toEqual([0, 13200, 13200]);
});

test("hours beyond a day are refused, a day that adds up with floating noise is not", () => {
  expect(errorOf(dayOutput, 16, 9, 1, 10)).toMatch(/#VALUE! make_hours and gas_hours come to 25 h/);
  expect(row(23.9, 0.1, 1, 10)[1]).toBeCloseTo(60, 9);
});
