import fc from "fast-check";
import { releaseLimit } from "../../../src/functions/safety/releaseLimit";
import { ventilationNeeded } from "../../../src/functions/safety/ventilationNeeded";
import { errorOf, oneNumber } from "../oneCell";

test("30.6 L/min of fresh air for 1 L/min at 23.5 %, well mixed (Qv = Ql·(Cl − Cmax)/(Cmax − C₀), worked outside this project)", () => {
  expect((oneNumber(ventilationNeeded, 1, 0.235, 1) * 1000) / 60).toBeCloseTo(30.6, 9);
});

test("poor mixing multiplies, by 3 unless told (industrial ventilation texts: 3 to 10; from memory)", () => {
  expect(oneNumber(ventilationNeeded, 1)).toBeCloseTo(3 * 1.836, 9);
  expect(oneNumber(ventilationNeeded, 1, 0.235, 10)).toBeCloseTo(18.36, 9);
});

test("at 3000 m 1.4453 times as much: 101.325 over 70.109 kPa, ISO 2533:1975", () => {
  expect(oneNumber(ventilationNeeded, 1, 0.235, 1, 3000)).toBeCloseTo((1.836 * 101.325) / 70.109, 4);
  expect(oneNumber(ventilationNeeded, 1, 0.235, 1, "9842.52 ft")).toBeCloseTo((1.836 * 101.325) / 70.109, 4);
});

test("RELEASE_LIMIT of a room with that much fresh air is the release, with the same limit, mixing and altitude", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5000 }),
      fc.integer({ min: 22, max: 90 }),
      fc.integer({ min: 10, max: 100 }),
      fc.integer({ min: -400, max: 5000 }),
      (release, limit, mixing, altitude) => {
        const air = oneNumber(ventilationNeeded, release / 10, limit / 100, mixing / 10, altitude);
        const back = oneNumber(releaseLimit, air, 1, limit / 100, mixing / 10, altitude);
        expect(back / (release / 10)).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("no release needs no air; a mixing factor under 1 would be better than perfect", () => {
  expect(oneNumber(ventilationNeeded, 0)).toBe(0);
  expect(errorOf(ventilationNeeded, 10, 0.235, 0.5)).toMatch(/#VALUE! mixing must be 1 or more/);
  expect(errorOf(ventilationNeeded, 10, 0.235, 3, 12000)).toMatch(/#VALUE! altitude must be between -500 and 11000 m/);
});
