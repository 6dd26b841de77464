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

test("RELEASE_LIMIT of a room with that much fresh air is the release", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 500, noNaN: true }),
      fc.double({ min: 0.22, max: 0.9, noNaN: true }),
      (release, limit) => {
        const air = oneNumber(ventilationNeeded, release, limit, 1);
        expect(oneNumber(releaseLimit, air, 1, limit) / release).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("no release needs no air; a mixing factor under 1 would be better than perfect", () => {
  expect(oneNumber(ventilationNeeded, 0)).toBe(0);
  expect(errorOf(ventilationNeeded, 10, 0.235, 0.5)).toMatch(/#VALUE! mixing must be 1 or more/);
});
