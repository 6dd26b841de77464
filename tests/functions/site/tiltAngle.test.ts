import { tiltAngle } from "../../../src/functions/site/tiltAngle";
import { errorOf, oneNumber } from "../oneCell";

test("known triangles: 1 in √3 is 30°, 1 in 1 is 45°, 3-4-5 is 36.8699° (trigonometric tables)", () => {
  expect(oneNumber(tiltAngle, 1, Math.sqrt(3))).toBeCloseTo(30, 10);
  expect(oneNumber(tiltAngle, 2.5, 2.5)).toBeCloseTo(45, 10);
  expect(oneNumber(tiltAngle, 3, 4)).toBeCloseTo(36.8699, 4);
  expect(oneNumber(tiltAngle, 0, 4)).toBe(0);
});

test("5° is 8.75 % of slope (tan 5° = 0.0874887, trigonometric tables)", () => {
  expect(oneNumber(tiltAngle, 0.0874887, 1)).toBeCloseTo(5, 4);
});

test("mixed units; a level run of nothing is refused", () => {
  expect(oneNumber(tiltAngle, "30 cm", "1 ft")).toBeCloseTo((Math.atan(0.3 / 0.3048) * 180) / Math.PI, 10);
  expect(errorOf(tiltAngle, 1, 0)).toMatch(/#VALUE! run must be more than 0/);
});
