import fc from "fast-check";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { gaugeCorrected } from "../../../src/functions/site/gaugeCorrected";
import { flashLoss } from "../../../src/functions/transferring/flashLoss";
import table from "../../reference/iso2533.json";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

const rows = table.rows as [number, number, number, number][];

test.each(rows)(
  "shown pressure + air pressure is one absolute pressure: ISO 2533:1975, table 5, at %s m",
  (altitude, _t, millibar) => {
    for (const shown of [0, 1.5, 137])
      expect(Math.abs(oneNumber(gaugeCorrected, shown, altitude) + 1.01325 - (shown + millibar / 1000))).toBeLessThan(
        1e-5,
      );
  },
);

test("oxygen in an open vessel at 3000 m, 0.7011 bar absolute, boils at 86.81 K, not at 90.19 K (computed with CoolProp outside this project)", () => {
  expect(oneNumber(boilingPoint, oneNumber(gaugeCorrected, 0, 3000)) + 273.15).toBeCloseTo(86.808, 2);
});

test("22 psi on a gauge at 3000 m: 9.2 % flash into the open air there, where 22 psi and 0 as they stand say 7.9 %", () => {
  // From 2.2179 to 0.7011 bar absolute, enthalpies of Schmidt & Wagner 1985 by CoolProp, outside this project.
  const flash = oneNumber(flashLoss, oneNumber(gaugeCorrected, "22 psi", 3000), oneNumber(gaugeCorrected, 0, 3000));
  expect(flash).toBeCloseTo(0.0919966, 4);
  expect(oneNumber(flashLoss, "22 psi", 0)).toBeCloseTo(0.0790227, 4);
});

test("higher ground takes more off, and a reading more adds as much", () => {
  fc.assert(
    fc.property(evenly(0, 200), evenly(-500, 10000), (shown, altitude) => {
      const corrected = oneNumber(gaugeCorrected, shown, altitude);
      expect(oneNumber(gaugeCorrected, shown, altitude + 500)).toBeLessThan(corrected);
      expect(oneNumber(gaugeCorrected, shown + 10, altitude) - corrected).toBeCloseTo(10, 9);
    }),
    { seed: 13 },
  );
});

test("feet are read; absolute pressures, readings below 0 and heights outside are refused", () => {
  expect(oneNumber(gaugeCorrected, "35 psi", "10000 ft")).toBe(oneNumber(gaugeCorrected, "35 psi", 3048));
  expect(errorOf(gaugeCorrected, "2 bara", 1500)).toMatch(/#VALUE! pressure/);
  expect(errorOf(gaugeCorrected, -0.1, 1500)).toMatch(/#VALUE! pressure must be between 0 and 300/);
  expect(errorOf(gaugeCorrected, 1, 11001)).toMatch(/#VALUE! altitude must be between -500 and 11000 m/);
});
