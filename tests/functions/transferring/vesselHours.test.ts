import fc from "fast-check";
import { vesselHours } from "../../../src/functions/transferring/vesselHours";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: 11 L/min take 0.7670 L of liquid an hour, from an hour's use of a vessel that loses nothing to speak of", () => {
  expectRow("o2-Lmin-to-Lh", 40 / oneNumber(vesselHours, 40, 11, 40, 1e12));
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
  const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(some(1, 60), some(0.01, 1), some(0.1, 15), some(0.5, 30), (capacity, share, flow, emptyDays) => {
      const level = share * capacity;
      const plain = oneNumber(vesselHours, level, flow, capacity, emptyDays);
      const saving = oneNumber(vesselHours, level, flow, capacity, emptyDays, 0, "yes");
      expect(saving).toBeGreaterThan(plain);
      expect(saving).toBeLessThanOrEqual(2 * plain * (1 + 1e-12));
      expect(oneNumber(vesselHours, level, flow + 1, capacity, emptyDays)).toBeLessThan(plain);
      expect(oneNumber(vesselHours, level, flow, capacity, emptyDays, level / 4)).toBeCloseTo(0.75 * plain, 6);
      expect(oneNumber(vesselHours, level, flow, capacity, emptyDays, level)).toBe(0);
    }),
  );
});

test("120 L/h and 2 L/min are one flow; a level above the capacity is refused", () => {
  expect(oneNumber(vesselHours, 20, "120 L/h", 40, 8)).toBeCloseTo(oneNumber(vesselHours, 20, 2, 40, 8), 9);
  expect(errorOf(vesselHours, 41, 2, 40, 8)).toMatch(/#VALUE! level is 41 L/);
});
