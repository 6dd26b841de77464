import fc from "fast-check";
import { gasFromLiquid } from "../../../src/functions/amounts/gasFromLiquid";
import { vesselHours } from "../../../src/functions/transferring/vesselHours";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference rows: gas from a litre of level, from the use of a vessel that loses nothing to speak of", () => {
  for (const pressure of [0, 1.4, 3]) {
    const hours = oneNumber(vesselHours, 40, 11, 40, 1e12, 0, false, pressure);
    expectRow(`drawn-${pressure}bar`, (hours * 660) / 40, 5e-6);
  }
  expect(oneNumber(vesselHours, 40, 11, 40, 1e12, 0, false, "20.305 psi")).toBeCloseTo(
    oneNumber(vesselHours, 40, 11, 40, 1e12, 0, false, 1.4),
    2,
  );
});

test("that is less than the 860.5 L of GAS_FROM_LIQUID: the vapour that fills the space of a litre stays behind", () => {
  // 4.467 kg/m³ of vapour over 1.3265 kg/m³ of reference gas: Schmidt & Wagner 1985 and the ideal gas, computed by hand.
  const drawn = (oneNumber(vesselHours, 1, 1, 1, 1e12) * 60) / 1;
  expect(oneNumber(gasFromLiquid, 1) - drawn).toBeCloseTo(4.467 / 1.3265, 1);
});

test("International Fire Code 2018, table G101.2: 861 L of gas a litre; 2 L/min and a vessel empty in 8 days", () => {
  expect(oneNumber(vesselHours, 40, 2, 40, 8)).toBeCloseTo(40 / (120 / 861 + 40 / 192), 0);
  expect(oneNumber(vesselHours, 40, 2, 40, 8, 0, true)).toBeCloseTo(192, 9);
});

test("without a patient it lasts as long as it stands (plain arithmetic)", () => {
  expect(oneNumber(vesselHours, 10, 0, 40, 8)).toBeCloseTo(48, 9);
  expect(oneNumber(vesselHours, 10, 0, 40, "192 h", 5)).toBeCloseTo(24, 9);
});

test("an economiser lasts longer, at most as long as the patient's flow alone; what is kept takes its share", () => {
  fc.assert(
    fc.property(
      evenly(1, 60),
      evenly(0.01, 1),
      evenly(0.1, 15),
      evenly(0.5, 30),
      (capacity, share, flow, emptyDays) => {
        const level = share * capacity;
        const plain = oneNumber(vesselHours, level, flow, capacity, emptyDays);
        const saving = oneNumber(vesselHours, level, flow, capacity, emptyDays, 0, "yes");
        expect(saving).toBeGreaterThan(plain);
        expect(saving).toBeLessThanOrEqual(2 * plain * (1 + 1e-12));
        expect(oneNumber(vesselHours, level, flow + 1, capacity, emptyDays)).toBeLessThan(plain);
        expect(oneNumber(vesselHours, level, flow, capacity, emptyDays, level / 4)).toBeCloseTo(0.75 * plain, 6);
        expect(oneNumber(vesselHours, level, flow, capacity, emptyDays, level)).toBe(0);
      },
    ),
  );
});

test("120 ft³/h is a flow, 120 L/h a make rate; a level above the capacity is refused", () => {
  expect(oneNumber(vesselHours, 20, "120 ft3/h", 40, 8)).toBeCloseTo(
    oneNumber(vesselHours, 20, 2 * 28.316846592, 40, 8),
    9,
  );
  expect(errorOf(vesselHours, 20, "120 L/h", 40, 8)).toMatch(/#VALUE! flow "120 L\/h" is a make rate/);
  expect(errorOf(vesselHours, 41, 2, 40, 8)).toMatch(/#VALUE! level is 41 L/);
  expect(errorOf(vesselHours, 20, 2, 40, 8, 0, false, 22)).toMatch(/#VALUE! pressure 22 looks like psi/);
  expect(errorOf(vesselHours, 20, 2, 40, 0.12)).toMatch(/#VALUE! empty_days 0.12 looks like a share a day/);
});
