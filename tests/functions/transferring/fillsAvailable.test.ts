import fc from "fast-check";
import { fillsAvailable } from "../../../src/functions/transferring/fillsAvailable";
import { grossDraw } from "../../../src/functions/transferring/grossDraw";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("60 L give two fills of 20 L at about 25 L drawn each (common practice, no source), 75 L three", () => {
  expect(oneNumber(fillsAvailable, 60, 20)).toBe(2);
  expect(oneNumber(fillsAvailable, 75, 20)).toBe(3);
  expect(oneNumber(fillsAvailable, 74.999, 20)).toBe(2);
  expect(oneNumber(fillsAvailable, "20 gal", "20 L")).toBe(3);
});

test("exactly whole fills survive rounding: 3 fills of 0.1 L from 0.3 L", () => {
  // 0.3 / 0.1 is 2.9999999999999996 in binary.
  expect(oneNumber(fillsAvailable, 0.3, 0.1, 0, 1)).toBe(3);
});

test("these fills can be drawn and one more can't", () => {
  fc.assert(
    fc.property(evenly(0, 500), evenly(0.5, 60), evenly(0, 100), evenly(1, 2), (level, fill, keep, ratio) => {
      const fills = oneNumber(fillsAvailable, level, fill, keep, ratio);
      expect(Number.isInteger(fills)).toBe(true);
      const draw = oneNumber(grossDraw, fill, ratio);
      const usable = Math.max(0, level - keep);
      expect(fills * draw).toBeLessThanOrEqual(usable * (1 + 1e-9));
      expect((fills + 1) * draw).toBeGreaterThan(usable * (1 - 1e-9));
    }),
  );
});

test("a fill of nothing is refused", () => {
  expect(errorOf(fillsAvailable, 60, 0)).toMatch(/#VALUE! fill_each must be more than 0 L/);
});
