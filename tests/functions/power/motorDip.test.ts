import fc from "fast-check";
import { motorDip } from "../../../src/functions/power/motorDip";
import { startKva } from "../../../src/functions/power/startKva";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

/**
 * The circuit itself, per unit of the generator's rating: a voltage behind jX, and the motor as an impedance of magnitude
 * kVA/start kVA at a power factor. Answers the share by which the voltage at the motor falls.
 */
function dipOfCircuit(start: number, rating: number, reactance: number, powerFactor: number): number {
  const motor = rating / start;
  const [real, imaginary] = [motor * powerFactor, motor * Math.sqrt(1 - powerFactor ** 2) + reactance];
  return 1 - motor / Math.hypot(real, imaginary);
}

test("a published worked case: 600 A of starting current against 5000 A of fault current dip by 10.7 % (a help page on motor starting after IEEE 399, read)", () => {
  // The fault current of a set is its rating over its reactance: 1250 over 0.25.
  expect(oneNumber(motorDip, 600, 1250, 0.25)).toBeCloseTo(0.107, 3);
  expect(oneNumber(motorDip, 600, 1250)).toBeCloseTo(0.107, 3);
});

test("is that of the circuit for a pure reactance, and never less for a motor that starts at a power factor of 0.1 to 0.6", () => {
  fc.assert(
    fc.property(evenly(1, 500), evenly(5, 500), evenly(0.05, 1), evenly(0.1, 0.6), (start, rating, x, factor) => {
      const dip = oneNumber(motorDip, start, rating, x);
      expect(dip).toBeCloseTo(dipOfCircuit(start, rating, x, 0), 9);
      expect(dip).toBeGreaterThan(dipOfCircuit(start, rating, x, factor));
      // Locked rotors draw at 0.2 to 0.4: the safe side costs little there.
      expect(dip - dipOfCircuit(start, rating, x, 0.3)).toBeLessThan(0.05);
    }),
  );
});

test("by START_KVA's law: the kVA that the motor draws at the dipped voltage make that dip (rating × dip × (1 − dip) / X)", () => {
  fc.assert(
    fc.property(evenly(0.5, 30), evenly(10, 200), evenly(0.1, 0.3), (kw, rating, x) => {
      const dip = oneNumber(motorDip, oneNumber(startKva, kw, 7), rating, x);
      // Voltage 1 − dip and current dip/X on the generator's side of the same terminals.
      expect(oneNumber(startKva, kw, 7, dip)).toBeCloseTo(((rating * dip) / x) * (1 - dip), 6);
    }),
  );
});

test("kW is not kVA, and a reactance is above 0 and at most 1", () => {
  expect(errorOf(motorDip, 27, "20 kW")).toMatch(
    /#VALUE! generator_kva "20 kW" is a power; .*divided by the power factor/,
  );
  expect(errorOf(motorDip, 27, 20, 15)).toMatch(/reactance .*15 looks like a percent: enter 15% or 0.15/);
  expect(errorOf(motorDip, 27, 20, 0)).toMatch(/reactance must be above 0/);
  expect(errorOf(motorDip, 27, 0)).toMatch(/generator_kva must be more than 0/);
  expect(oneNumber(motorDip, "27000 VA", "0.045 MVA", "25%")).toBeCloseTo(27 / 207, 12);
});
