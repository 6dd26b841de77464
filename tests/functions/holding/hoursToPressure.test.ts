import fc from "fast-check";
import { hoursToPressure } from "../../../src/functions/holding/hoursToPressure";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: energy balance of a 40 L vessel, 95 % full, to 22 psi with 12 W", () => {
  expectRow("hold-95-0-22", oneNumber(hoursToPressure, 40, 38, 0, "22 psi", 12, 1));
  expectRow("hold-95-0-22", oneNumber(hoursToPressure, 40, 38, 0, 1.5168466, "0.012 kW", "100%"));
});

test("the default takes a fifth of the mixed time (own planning default)", () => {
  expect(5 * oneNumber(hoursToPressure, 40, 30, 0, 1, 12)).toBeCloseTo(
    oneNumber(hoursToPressure, 40, 30, 0, 1, 12, 1),
    9,
  );
});

test("longer to a higher end, shorter with more heat, in proportion to mixing", () => {
  fc.assert(
    fc.property(
      evenly(1, 500),
      evenly(0.1, 0.8),
      evenly(0, 2),
      evenly(0.1, 2),
      evenly(1, 100),
      (capacity, share, from, rise, heat) => {
        const hours = oneNumber(hoursToPressure, capacity, share * capacity, from, from + rise, heat);
        expect(hours).toBeGreaterThan(0);
        expect(oneNumber(hoursToPressure, capacity, share * capacity, from, from + rise + 0.1, heat)).toBeGreaterThan(
          hours,
        );
        expect(oneNumber(hoursToPressure, capacity, share * capacity, from, from + rise, 2 * heat)).toBeCloseTo(
          hours / 2,
          9,
        );
        expect(oneNumber(hoursToPressure, capacity, share * capacity, from, from + rise, heat, 0.4)).toBeCloseTo(
          2 * hours,
          9,
        );
      },
    ),
  );
});

test("95 % full becomes liquid-full before 35 psi: the words give pressure and level, and that level reaches the end", () => {
  const words = errorOf(hoursToPressure, 40, 38, 0, "35 psi", 12);
  const [, pressure, level] = /^#N\/A liquid-full at ([\d.]+) bar, before 2\.413165 bar: at most ([\d.]+) L/
    .exec(words)!
    .map(Number);
  expect(oneNumber(hoursToPressure, 40, 38, 0, pressure, 12)).toBeGreaterThan(0);
  expect(errorOf(hoursToPressure, 40, 38, 0, pressure! + 0.002, 12)).toMatch(/liquid-full/);
  expect(oneNumber(hoursToPressure, 40, level, 0, "35 psi", 12)).toBeGreaterThan(0);
  expect(errorOf(hoursToPressure, 40, level! + 0.002, 0, "35 psi", 12)).toMatch(/liquid-full/);
});

test("the reference row that 95 % at 1 atm is 99.37 % full at 22 psi bounds the level that is full there", () => {
  expect(errorOf(hoursToPressure, 40, 38 / 0.9937, 0, "22 psi", 12)).toMatch(/liquid-full/);
  expect(oneNumber(hoursToPressure, 40, 38, 0, "22 psi", 12)).toBeGreaterThan(0);
});

test("no liquid left before the end is no answer; an end not above the start and a level above the brim are refused", () => {
  expect(errorOf(hoursToPressure, 100, 0.1, 0, 10, 5)).toMatch(
    /^#N\/A the last liquid is gone at [\d.]+ bar, before 10 bar/,
  );
  expect(errorOf(hoursToPressure, 100, 50, 2, 2, 5)).toBe(
    "#VALUE! to_pressure of 2 bar is not above from_pressure of 2 bar; a closed vessel only gains pressure",
  );
  expect(errorOf(hoursToPressure, 100, 50, 2, 1, 5)).toMatch(/^#VALUE! to_pressure/);
  expect(errorOf(hoursToPressure, 100, 101, 0, 1, 5)).toBe(
    "#VALUE! level is 101 L, above the brim_volume of 100 L; check which is which",
  );
  expect(errorOf(hoursToPressure, 100, 50, 0, 24, 5)).toMatch(/^#VALUE! to_pressure must be between/);
  expect(errorOf(hoursToPressure, 100, 50, 0, 1, 0)).toMatch(/^#VALUE! heat_leak must be more than 0 W/);
});

test("a bare 22 is psi, in which the valve opens after 1.86 and not 9.5 h: refused, and read with its unit", () => {
  expect(errorOf(hoursToPressure, 40, 20, 0, 22, 12)).toMatch(/^#VALUE! to_pressure 22 looks like psi: write "22 psi"/);
  expect(oneNumber(hoursToPressure, 40, 20, 0, "22 psi", 12)).toBeCloseTo(1.86, 1);
  expect(oneNumber(hoursToPressure, 40, 20, 0, "22 bar", 12)).toBeGreaterThan(9);
});

test("an empty vessel is no answer, and says so", () => {
  expect(errorOf(hoursToPressure, 40, 0, 0, 1, 12)).toBe(
    "#N/A there is no liquid in it; the rule holds only while liquid is left",
  );
});
