import { standbyShare } from "../../../src/functions/making/standbyShare";
import { errorOf, oneNumber } from "../oneCell";

test("15 to 20 minutes every 2.5 h is a duty of 10 to 13 % (common practice, no source; arithmetic 11.666 67 % in the middle)", () => {
  expect(oneNumber(standbyShare, 15, 2.5)).toBeCloseTo(0.1, 12);
  expect(oneNumber(standbyShare, 17.5, 2.5)).toBeCloseTo(0.1166667, 7);
  expect(oneNumber(standbyShare, 20, 2.5)).toBeCloseTo(0.1333333, 7);
});

test("reads hours and minutes with units, and reaches 1 exactly", () => {
  expect(oneNumber(standbyShare, "0.25 h", "150 min")).toBeCloseTo(0.1, 12);
  expect(oneNumber(standbyShare, 6, 0.1)).toBe(1);
  expect(oneNumber(standbyShare, 0, 1)).toBe(0);
});

test("a run longer than its cycle, and a cycle of nothing, are refused", () => {
  expect(errorOf(standbyShare, 151, 2.5)).toMatch(/#VALUE! run_minutes 151 min is longer than the cycle of 2.5 h/);
  expect(errorOf(standbyShare, 0, 0)).toMatch(/#VALUE! cycle_hours must be more than 0/);
});
