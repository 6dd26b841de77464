import fc from "fast-check";
import { siteArea } from "../../../src/functions/site/siteArea";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

test("drawn on squared paper: two plants of 3 × 2 m with 1 m round and between them cover 5 × 7 m", () => {
  expect(oneNumber(siteArea, 3, 2, 1, 2)).toBeCloseTo(35, 12);
});

test("without clearance it is the plants' own floor; feet are exact (NIST SP 811: 1 ft = 0.3048 m)", () => {
  expect(oneNumber(siteArea, 3, 2, 0, 4)).toBeCloseTo(24, 12);
  expect(oneNumber(siteArea, "10 ft", "10 ft", 0)).toBeCloseTo(9.290304, 9);
});

test("one more unit adds its width and one gap", () => {
  fc.assert(
    fc.property(
      evenly(0.1, 20),
      evenly(0.1, 20),
      evenly(0, 5),
      fc.integer({ min: 1, max: 30 }),
      (length, width, clearance, units) => {
        const more =
          oneNumber(siteArea, length, width, clearance, units + 1) -
          oneNumber(siteArea, length, width, clearance, units);
        expect(more).toBeCloseTo((length + 2 * clearance) * (width + clearance), 6);
      },
    ),
  );
});

test("part units and none are refused", () => {
  expect(errorOf(siteArea, 1, 1, 1, 0)).toMatch(/#VALUE! units must be 1 or more/);
  expect(errorOf(siteArea, 1, 1, 1, 1.5)).toMatch(/units must be a whole number/);
});
