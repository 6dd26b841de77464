import { netFill } from "../../../src/functions/transferring/netFill";
import { errorOf, oneNumber } from "../oneCell";

test("of 25 L drawn about 20 L arrive (common practice, no source); 80 % by volume", () => {
  expect(oneNumber(netFill, 25)).toBe(20);
  expect(oneNumber(netFill, 100) / 100).toBeCloseTo(0.8, 12);
  expect(oneNumber(netFill, "10 gal", 1)).toBeCloseTo(37.85411784, 9);
});

test("refuses a ratio below 1", () => {
  expect(errorOf(netFill, 20, 0.8)).toMatch(/#VALUE! draw_ratio must be 1 or more/);
});
