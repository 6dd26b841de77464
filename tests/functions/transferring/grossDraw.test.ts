import fc from "fast-check";
import { drawRatio } from "../../../src/functions/transferring/drawRatio";
import { grossDraw } from "../../../src/functions/transferring/grossDraw";
import { netFill } from "../../../src/functions/transferring/netFill";
import { transferLoss } from "../../../src/functions/transferring/transferLoss";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("about 25 L are drawn for a 20 L fill (common practice, no source)", () => {
  expect(oneNumber(grossDraw, 20)).toBe(25);
  expect(oneNumber(grossDraw, "5.28344 gal")).toBeCloseTo(25, 4);
});

test("NET_FILL is its inverse, DRAW_RATIO gives the ratio back, and draw = fill + loss", () => {
  fc.assert(
    fc.property(evenly(0.01, 1e6), evenly(1, 5), (fill, ratio) => {
      const draw = oneNumber(grossDraw, fill, ratio);
      expect(oneNumber(netFill, draw, ratio) / fill).toBeCloseTo(1, 12);
      expect(oneNumber(drawRatio, draw, fill)).toBeCloseTo(ratio, 12);
      expect((fill + oneNumber(transferLoss, fill, ratio)) / draw).toBeCloseTo(1, 12);
      expect(draw).toBeGreaterThanOrEqual(fill);
    }),
  );
});

test("a ratio below 1 would fill without drawing", () => {
  expect(errorOf(grossDraw, 20, 0.8)).toMatch(/#VALUE! draw_ratio must be 1 or more; this is 0.8/);
});
