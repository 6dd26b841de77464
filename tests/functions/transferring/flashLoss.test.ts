import fc from "fast-check";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { latentHeat } from "../../../src/functions/amounts/latentHeat";
import { flashLoss } from "../../../src/functions/transferring/flashLoss";
import { correlatedLiquidEnthalpy } from "../../reference/oxygenCorrelations";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference rows: Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("flash-22-0", 100 * oneNumber(flashLoss, "22 psi"));
  expectRow("flash-10-0", 100 * oneNumber(flashLoss, "10 psi"));
  expectRow("flash-35-10", 100 * oneNumber(flashLoss, "35 psi", "10 psi"));
});

test("an independent fit of the liquid's enthalpy gives the same to 0.001 up to 15 bar", () => {
  for (const pressure of [0.5, 1, 3, 6, 10, "15 bar"]) {
    const heat = correlatedLiquidEnthalpy(oneNumber(boilingPoint, pressure) + 273.15);
    expect(Math.abs(oneNumber(flashLoss, pressure) - heat / oneNumber(latentHeat))).toBeLessThan(1e-3);
  }
});

test("0 at one pressure, more from a higher start, never all of it; an end above the start is refused", () => {
  const gauge = evenly(-0.5, 14.8);
  fc.assert(
    fc.property(gauge, gauge, (from, to) => {
      if (to > from) {
        expect(errorOf(flashLoss, from, to)).toMatch(/^#VALUE! to_pressure of .* is above from_pressure/);
        return;
      }
      expect(oneNumber(flashLoss, from, from)).toBe(0);
      const flash = oneNumber(flashLoss, from, to);
      expect(flash).toBeGreaterThanOrEqual(0);
      expect(flash).toBeLessThan(1);
      if (from - to > 0.01) expect(oneNumber(flashLoss, from + 0.1, to)).toBeGreaterThan(flash);
    }),
  );
});

test("equal by rounding is equal", () => {
  expect(oneNumber(flashLoss, 0.3, 0.1 + 0.2)).toBe(0);
});
