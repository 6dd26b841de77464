import fc from "fast-check";
import { blendedPurity } from "../../../src/functions/amounts/blendedPurity";
import { mixedFio2 } from "../../../src/functions/patients/mixedFio2";
import { errorOf, oneNumber } from "../oneCell";

test("air-entrainment ratios of respiratory-care texts, from memory (parts of air to pure oxygen, rounded): 3 to 1 is 0.40, 1 to 1 is 0.60, 8 to 1 is 0.30", () => {
  expect(Math.abs(oneNumber(blendedPurity, 10, 1, 30, 0.21) - 0.4)).toBeLessThan(0.01);
  expect(Math.abs(oneNumber(blendedPurity, 12, 1, 12, 0.21) - 0.6)).toBeLessThan(0.01);
  expect(Math.abs(oneNumber(blendedPurity, 4, 1, 32, 0.21) - 0.3)).toBeLessThan(0.01);
});

test("one minute of both flows, collected litre by litre", () => {
  const litres = [...Array.from({ length: 70 }, () => 0.93), ...Array.from({ length: 30 }, () => 0.995)];
  const oxygen = litres.reduce((sum, each) => sum + each, 0);
  expect(oneNumber(blendedPurity, 70, 0.93, 30, 0.995)).toBeCloseTo(oxygen / 100, 12);
});

test("with air for the second it is MIXED_FIO2; the order of the two does not matter; it lies between them", () => {
  const tenths = (most: number) => fc.integer({ min: 1, max: most * 10 }).map((n) => n / 10);
  const purity = fc.integer({ min: 21, max: 100 }).map((n) => n / 100);
  fc.assert(
    fc.property(tenths(200), purity, tenths(200), purity, (flow1, purity1, flow2, purity2) => {
      const blend = oneNumber(blendedPurity, flow1, purity1, flow2, purity2);
      expect(blend).toBeCloseTo(oneNumber(blendedPurity, flow2, purity2, flow1, purity1), 12);
      expect(blend).toBeGreaterThanOrEqual(Math.min(purity1, purity2) - 1e-12);
      expect(blend).toBeLessThanOrEqual(Math.max(purity1, purity2) + 1e-12);
    }),
    { seed: 12 },
  );
  expect(oneNumber(blendedPurity, 6, 0.93, 14, 0.21)).toBeCloseTo(oneNumber(mixedFio2, 6, 14, 0.93), 12);
});

test("a supply that is off leaves the other; both off is refused; a percent without its sign too", () => {
  expect(oneNumber(blendedPurity, 0, 0.93, 8, 0.995)).toBe(0.995);
  expect(oneNumber(blendedPurity, 8, 0.93, 0, 0.995)).toBe(0.93);
  expect(errorOf(blendedPurity, 0, 0.93, 0, 0.995)).toMatch(/#VALUE! flow_1 and flow_2 are both 0/);
  expect(errorOf(blendedPurity, 8, 93, 2, 0.995)).toMatch(/#VALUE! purity_1 must be between 0 and 1; 93 looks like/);
  expect(errorOf(blendedPurity, 8, 0.93, -2, 0.995)).toMatch(/#VALUE! flow_2 must be 0 L\/min or more/);
});
