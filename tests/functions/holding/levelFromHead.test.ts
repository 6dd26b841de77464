import fc from "fast-check";
import { levelFromHead } from "../../../src/functions/holding/levelFromHead";
import { evenly } from "../../evenly";
import rows from "../../reference/vesselsAndHoses.json";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test.each(rows.filter((row) => row.id.startsWith("head")).map((row) => [row.id, row.inputs as any] as const))(
  "reference row %s",
  (id, { mbar, height, volume, lying, gauge }) => {
    expectRow(id, oneNumber(levelFromHead, mbar, height, volume, lying, gauge), 2e-5);
  },
);

test("by hand: a metre of liquid at 1 atm, 1141.2 − 4.5 kg/m³, weighs 111.5 mbar, or 44.75 inches of water", () => {
  const byHand = ((1141.2 - 4.5) * 9.80665) / 100;
  expect(oneNumber(levelFromHead, byHand, 2, 400)).toBeCloseTo(200, 1);
  expect(oneNumber(levelFromHead, `${byHand / 2.490889} in H2O`, 2, 400)).toBeCloseTo(200, 1);
});

test("the units of gauges (NIST SP 811): inch of water 249.0889 Pa, psi 6894.757 Pa, kPa, millimetre of water 9.80665 Pa", () => {
  for (const text of [
    "80 mbar",
    "80 hPa",
    "8 kPa",
    "0.08 bar",
    "8000 Pa",
    "1.16030 psi",
    "32.1170 inH2O",
    "815.77 mmH2O",
  ])
    expect(oneNumber(levelFromHead, text, 1.4, 350)).toBeCloseTo(oneNumber(levelFromHead, 80, 1.4, 350), 2);
});

test("lying: half the height is half full, what is empty mirrors what is full, and little liquid spreads wide", () => {
  const full = oneNumber(levelFromHead, 50, 1, 1) * 2;
  fc.assert(
    fc.property(evenly(0, 1), (share) => {
      const reading = (each: number): number => (each / full) * 100;
      const lying = (each: number): number => oneNumber(levelFromHead, reading(each), 1, 800, true);
      expect(lying(share) + lying(1 - share)).toBeCloseTo(800, 6);
      if (share < 0.499)
        expect(lying(share)).toBeLessThanOrEqual(oneNumber(levelFromHead, reading(share), 1, 800) + 1e-9);
    }),
  );
  expect(oneNumber(levelFromHead, 50 / full, 1, 800, true)).toBeCloseTo(400, 6);
});

test("above the top is refused and names the reading; brim-full by rounding is full", () => {
  const full = 100 / oneNumber(levelFromHead, 100, 1, 1);
  expect(errorOf(levelFromHead, full * 1.001, 1, 300)).toMatch(
    /^#VALUE! pressure_difference of .* above the inner_height of 1 m/,
  );
  expect(oneNumber(levelFromHead, full, 1, 300)).toBeCloseTo(300, 9);
  expect(oneNumber(levelFromHead, full, 1, 300, true)).toBeCloseTo(300, 6);
  expect(oneNumber(levelFromHead, 0, 1, 300)).toBe(0);
});

test("the same reading is more liquid at a higher pressure; bare psi and a reading below 0 are refused", () => {
  expect(oneNumber(levelFromHead, 50, 1, 300, false, 4)).toBeGreaterThan(oneNumber(levelFromHead, 50, 1, 300));
  expect(errorOf(levelFromHead, 50, 1, 300, false, 22)).toMatch(/#VALUE! pressure 22 looks like psi/);
  expect(errorOf(levelFromHead, -1, 1, 300)).toMatch(/#VALUE! pressure_difference must be 0 mbar or more/);
  expect(errorOf(levelFromHead, 50, 0, 300)).toMatch(/#VALUE! inner_height must be more than 0 m/);
});
