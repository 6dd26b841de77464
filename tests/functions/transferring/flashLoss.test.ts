import fc from "fast-check";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { latentHeat } from "../../../src/functions/amounts/latentHeat";
import { flashLoss } from "../../../src/functions/transferring/flashLoss";
import { correlatedLiquidEnthalpy } from "../../reference/oxygenCorrelations";
import { oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference rows: Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("flash-22-0", 100 * oneNumber(flashLoss, "22 psi"));
  expectRow("flash-10-0", 100 * oneNumber(flashLoss, "10 psi"));
  expectRow("flash-35-10", 100 * oneNumber(flashLoss, "35 psi", "10 psi"));
});

test("an independent fit of the liquid's enthalpy gives the same to 0.001 up to 15 bar", () => {
  for (const pressure of [0.5, 1, 3, 6, 10, 15]) {
    const heat = correlatedLiquidEnthalpy(oneNumber(boilingPoint, pressure) + 273.15);
    expect(Math.abs(oneNumber(flashLoss, pressure) - heat / oneNumber(latentHeat))).toBeLessThan(1e-3);
  }
});

test("0 when the end pressure is not lower; more from a higher start, never all of it", () => {
  const gauge = fc.double({ min: -0.5, max: 23.8, noNaN: true });
  fc.assert(
    fc.property(gauge, gauge, (from, to) => {
      const flash = oneNumber(flashLoss, from, to);
      expect(flash).toBeGreaterThanOrEqual(0);
      expect(flash).toBeLessThan(1);
      if (to >= from) expect(flash).toBe(0);
      if (from - to > 0.01) expect(oneNumber(flashLoss, from + 0.1, to)).toBeGreaterThan(flash);
    }),
  );
});
