import { dailyLoss } from "../../../src/functions/holding/dailyLoss";
import { errorOf, oneNumber } from "../oneCell";

test("empty in 8 to 10 days (common practice, no source): 10 to 12.5 % of a full vessel a day", () => {
  expect(oneNumber(dailyLoss, 100)).toBe(12.5);
  expect(oneNumber(dailyLoss, 100, 10)).toBe(10);
  expect(oneNumber(dailyLoss, "100 L", "240 h")).toBeCloseTo(10, 12);
});

test("a vessel without size or days is refused", () => {
  expect(errorOf(dailyLoss, 0)).toMatch(/#VALUE! capacity must be more than 0 L/);
  expect(errorOf(dailyLoss, 40, 0)).toMatch(/#VALUE! empty_days must be more than 0 days/);
});
