import fc from "fast-check";
import { deratedRate } from "../../../src/functions/site/deratedRate";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("own planning rule with the pressures printed in ISO 2533:1975, table 5", () => {
  // 5000 m: 540.199 mbar; 7000 m: 410.607 mbar.
  expect(oneNumber(deratedRate, 1, 5000, 35)).toBeCloseTo((540.199 / 1013.25) * (1 - 0.01 * 13.9), 5);
  expect(oneNumber(deratedRate, 2.5, 7000, 30, 0.02, 25)).toBeCloseTo(2.5 * (410.607 / 1013.25) * 0.9, 5);
});

test("0.7186 at 35 °C and 1500 m (computed outside this project from the same rule with 70 °F as rated temperature)", () => {
  expect(oneNumber(deratedRate, 1, 1500, 35, 0.01, "70 °F")).toBeCloseTo(0.7185996, 4);
});

test("a loss in %/°C or 1/°F is converted: 1 % for each °F is 1.8 % for each °C", () => {
  expect(oneNumber(deratedRate, 1, 0, 31.1, "1 %/°C")).toBeCloseTo(0.9, 12);
  expect(oneNumber(deratedRate, 1, 0, 31.1, "0.01 1/°F")).toBeCloseTo(0.82, 12);
});

test("between 0 and the rated rate, never rising with heat or height", () => {
  fc.assert(
    fc.property(
      evenly(0.1, 50),
      evenly(-90, 59),
      evenly(-500, 10900),
      evenly(0, 0.1),
      evenly(-20, 50),
      (rated, t, altitude, loss, ratedT) => {
        const rate = oneNumber(deratedRate, rated, altitude, t, loss, ratedT);
        expect(rate).toBeGreaterThanOrEqual(0);
        expect(rate).toBeLessThanOrEqual(rated);
        expect(oneNumber(deratedRate, rated, altitude, t + 1, loss, ratedT)).toBeLessThanOrEqual(rate);
        expect(oneNumber(deratedRate, rated, altitude + 100, t, loss, ratedT)).toBeLessThanOrEqual(rate);
      },
    ),
  );
});

test("a loss that eats all gives 0, and 1 % entered as 1 is not refused but a loss over 1 is", () => {
  expect(oneNumber(deratedRate, 2, 0, 45, 0.05)).toBe(0);
  expect(errorOf(deratedRate, 2, 0, 45, 1.5)).toMatch(/#VALUE! loss_per_degree must be between 0 and 1/);
});

test("cold air earns nothing back in thin air: 540.199 of 1013.25 mbar at 5000 m (ISO 2533:1975, table 5)", () => {
  for (const t of [-40, 0, 21.1]) expect(oneNumber(deratedRate, 1, 5000, t)).toBeCloseTo(540.199 / 1013.25, 5);
});

test("altitude stands before temperature: 1500 m by themselves cost 17 % (845.56 of 1013.25 mbar, ISO 2533:1975), and swapped they are refused", () => {
  expect(oneNumber(deratedRate, 1, 1500, 21.1)).toBeCloseTo(845.56 / 1013.25, 4);
  expect(errorOf(deratedRate, 1, 21.1, 1500)).toMatch(/#VALUE! temperature must be between -90 and 60 °C/);
});
