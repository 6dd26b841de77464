import { startDelay } from "../../../src/functions/site/startDelay";
import { errorOf, oneNumber } from "../oneCell";

test("3 h after a warm start, the cautious end of 2 to 3 h; an hour more in the cold (common practice, no source)", () => {
  expect(oneNumber(startDelay, 21.1)).toBe(3);
  expect(oneNumber(startDelay, -5)).toBe(4);
});

test("the limit itself is not cold; °F are read", () => {
  expect(oneNumber(startDelay, 0, 2, 0.5, 0)).toBe(2);
  expect(oneNumber(startDelay, -0.1, 2, 0.5, 0)).toBe(2.5);
  expect(oneNumber(startDelay, "49 °F")).toBe(4);
  expect(oneNumber(startDelay, "51 °F")).toBe(3);
});

test("minutes as text, and a temperature that must be °F", () => {
  expect(oneNumber(startDelay, 20, "150 min")).toBeCloseTo(2.5, 12);
  expect(errorOf(startDelay, 70)).toMatch(/#VALUE! temperature must be between -90 and 60 °C/);
});
