import fc from "fast-check";
import { spillOxygen } from "../../../src/functions/safety/spillOxygen";
import { errorOf, oneNumber } from "../oneCell";

// A litre of liquid gives 0.8605 m³ of gas at 70 °F and 1 atm: Schmidt & Wagner 1985, computed outside this project.
const gas = 0.8605213;

test("V o = (C₀·(V r − V g) + V g)/V r with air at 0.21, as in published displacement models", () => {
  for (const [room, liquid] of [
    [30, 1],
    [30, 0.3],
    [100, 10],
  ] as const) {
    const byHand = (0.21 * (room - liquid * gas) + liquid * gas) / room;
    expect(Math.abs(oneNumber(spillOxygen, room, liquid) - byHand)).toBeLessThan(2e-5);
  }
});

test("at 1500 and 3000 m a litre in 30 m³ makes 0.2372 and 0.2427: the gas by 101.325 over 84.556 and 70.109 kPa, ISO 2533:1975", () => {
  for (const [altitude, kpa] of [
    [1500, 84.556],
    [3000, 70.109],
  ] as const)
    expect(oneNumber(spillOxygen, 30, 1, altitude)).toBeCloseTo(0.21 + (0.79 * gas * 101.325) / kpa / 30, 5);
  expect(oneNumber(spillOxygen, 30, 1, 0)).toBe(oneNumber(spillOxygen, 30, 1));
});

test("richer than the same gas purged through a mixed room, C = 1 − 0.79·exp(−V g/V r): the cautious one of the two", () => {
  expect(oneNumber(spillOxygen, 30, 5)).toBeGreaterThan(1 - 0.79 * Math.exp((-5 * gas) / 30));
});

test("between air and pure oxygen, never falling with the spill", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1000 }),
      fc.integer({ min: 0, max: 20000 }).map((each) => each / 10),
      (room, liquid) => {
        const fraction = oneNumber(spillOxygen, room, liquid);
        expect(fraction).toBeGreaterThanOrEqual(0.21);
        expect(fraction).toBeLessThanOrEqual(1);
        expect(oneNumber(spillOxygen, room, liquid + 1)).toBeGreaterThanOrEqual(fraction);
      },
    ),
  );
  expect(oneNumber(spillOxygen, 30, 0)).toBe(0.21);
  expect(oneNumber(spillOxygen, 30, 40)).toBe(1);
});

test("gallons and cubic feet are read (NIST SP 811); a room of nothing is refused", () => {
  expect(oneNumber(spillOxygen, "1000 ft3", "1 gal")).toBeCloseTo(
    oneNumber(spillOxygen, 28.316846592, 3.785411784),
    12,
  );
  expect(errorOf(spillOxygen, 0, 1)).toMatch(/#VALUE! room must be more than 0/);
});
