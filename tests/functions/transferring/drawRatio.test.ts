import { drawRatio } from "../../../src/functions/transferring/drawRatio";
import { errorOf, oneNumber } from "../oneCell";

test("25 for 20 (common practice, no source), by litres or by weight alike", () => {
  expect(oneNumber(drawRatio, 25, 20)).toBe(1.25);
  expect(oneNumber(drawRatio, 28.5, 22.8)).toBeCloseTo(1.25, 12);
  expect(oneNumber(drawRatio, 20, 20)).toBe(1);
});

test("lists pair one by one", () => {
  expect(drawRatio([[25], [30]], [[20], [20]])).toEqual([[1.25], [1.5]]);
});

test("nothing filled and more filled than drawn are refused", () => {
  expect(errorOf(drawRatio, 25, 0)).toMatch(/#VALUE! net_fill must be more than 0/);
  expect(errorOf(drawRatio, 19, 20)).toMatch(/#VALUE! gross_draw of 19 is below net_fill of 20/);
});

test("rounding makes no fill larger than its draw: 0.1 + 0.2 of 0.3", () => {
  expect(oneNumber(drawRatio, 0.3, 0.1 + 0.2)).toBe(1);
});
