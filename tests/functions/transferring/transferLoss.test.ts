import { transferLoss } from "../../../src/functions/transferring/transferLoss";
import { errorOf, oneNumber } from "../oneCell";

test("a 20 L fill loses about 5 L (common practice, no source), a perfect one nothing", () => {
  expect(oneNumber(transferLoss, 20)).toBe(5);
  expect(oneNumber(transferLoss, 20, 1)).toBe(0);
});

test("refuses a ratio below 1", () => {
  expect(errorOf(transferLoss, 20, 0.99)).toMatch(/#VALUE! draw_ratio must be 1 or more/);
});
