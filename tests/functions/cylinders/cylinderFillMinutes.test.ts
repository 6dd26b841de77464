import fc from "fast-check";
import { cylinderFillMinutes } from "../../../src/functions/cylinders/cylinderFillMinutes";
import rows from "../../reference/cylinders.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

test("50 L from empty to 150 bar, and on to 200 bar, at 15 °C: Schmidt & Wagner 1985, computed outside this project", () => {
  const from15C = 1.354364 / 1.32614;
  const content = (id: string): number => rows.find((row) => row.id === id)!.expected * from15C;
  // What stays in at 0 bar gauge and 15 °C is 50 L of gas at 15 °C.
  const toFull = (content("cont-50-150") - 50 * from15C) / 20;
  expect(Math.abs(oneNumber(cylinderFillMinutes, 50, 0, 150, 20, 15) - toFull)).toBeLessThan(1);
  const onwards = (content("cont-50-200") - content("cont-50-150")) / 20;
  expect(Math.abs(oneNumber(cylinderFillMinutes, 50, 150, 200, 20, 15) - onwards)).toBeLessThan(1);
});

test("a flow of 11 L/min puts 680 L in within 62 min (time = volume/flow)", () => {
  // 680 L over the 4.7 L that stay in, as found by the compressibility 0.9387 of the equation of state at 2015 psi.
  const litres = 4.7 * ((2029.696 / 14.695949 / 0.9387068) * 0.99936 - 1);
  expect(oneNumber(cylinderFillMinutes, 4.7, 0, "2015 psi", 11, "70 °F")).toBeCloseTo(litres / 11, 0);
});

test("two legs take as long as the whole, and twice the flow half as long", () => {
  fc.assert(
    fc.property(evenly(0, 100), evenly(0, 100), evenly(0, 100), (a, b, c) => {
      const [low, middle, high] = [a, a + b, a + b + c];
      const minutes = (from: number, to: number, flow = 10): number =>
        oneNumber(cylinderFillMinutes, 40, from, to, flow);
      expect(minutes(low, middle) + minutes(middle, high)).toBeCloseTo(minutes(low, high), 6);
      expect(minutes(low, high, 20) * 2).toBeCloseTo(minutes(low, high), 6);
    }),
  );
});

test("a fill that goes down is refused with both pressures", () => {
  expect(errorOf(cylinderFillMinutes, 50, 150, 100, 20)).toMatch(
    /#VALUE! to_pressure 100 bar is below from_pressure 150 bar/,
  );
  expect(errorOf(cylinderFillMinutes, 50, 0, 150, 0)).toMatch(/fill_flow must be more than 0/);
});

test("rounding makes no fill go down: from 0.1 + 0.2 to 0.3 bar", () => {
  expect(oneNumber(cylinderFillMinutes, 50, 0.1 + 0.2, 0.3, 10)).toBe(0);
});
