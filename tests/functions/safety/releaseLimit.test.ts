import fc from "fast-check";
import { releaseLimit } from "../../../src/functions/safety/releaseLimit";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { ventilationNeeded } from "../../../src/functions/safety/ventilationNeeded";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("30.6 L/min of fresh air hold 1 L/min at 23.5 % from 21 %: Qv = Ql·(100 − 23.5)/(23.5 − 21), worked outside this project", () => {
  expect(oneNumber(releaseLimit, (30.6 * 60) / 1000, 1, 0.235, 1)).toBeCloseTo(1, 9);
});

test("a third of it by default: the dilution factor of 3 to 10 for poor mixing (industrial ventilation texts; from memory)", () => {
  expect(oneNumber(releaseLimit, 30, 2)).toBeCloseTo(32.6797 / 3, 4);
  expect(oneNumber(releaseLimit, 30, 2, 0.235, 10)).toBeCloseTo(3.26797, 5);
});

test("32.7 L/min at sea level are 22.6 at 3000 m: 70.109 of 101.325 kPa, ISO 2533:1975", () => {
  expect(oneNumber(releaseLimit, 30, 2, 0.235, 1, 3000)).toBeCloseTo((32.6797 * 70.109) / 101.325, 3);
});

test("ROOM_OXYGEN of that release is the limit in the long run, well mixed", () => {
  fc.assert(
    fc.property(
      evenly(5, 500),
      evenly(0.1, 20),
      evenly(0.22, 0.9),
      fc.integer({ min: -400, max: 5000 }),
      (room, changes, limit, altitude) => {
        const release = oneNumber(releaseLimit, room, changes, limit, 1, altitude);
        expect(oneNumber(roomOxygen, room, release, changes, "long run", 1, altitude)).toBeCloseTo(limit, 9);
      },
    ),
  );
});

test("VENTILATION_NEEDED of it is the room's own fresh air, defaults included", () => {
  fc.assert(
    fc.property(evenly(5, 500), evenly(0.1, 20), (room, changes) => {
      const release = oneNumber(releaseLimit, room, changes);
      expect(oneNumber(ventilationNeeded, release) / (room * changes)).toBeCloseTo(1, 9);
    }),
  );
  expect(oneNumber(ventilationNeeded, oneNumber(releaseLimit, 48, 1.5, 0.25, 5, 2600), 0.25, 5, 2600)).toBeCloseTo(
    72,
    9,
  );
});

test("no fresh air, no allowance; a limit of air itself is refused", () => {
  expect(oneNumber(releaseLimit, 30, 0)).toBe(0);
  expect(errorOf(releaseLimit, 30, 1, 0.21)).toMatch(/#VALUE! limit must be above 0.21 and under 1/);
  expect(errorOf(releaseLimit, 30, 1, 23.5)).toMatch(/limit .*23.5% or 0.235/);
  expect(errorOf(releaseLimit, 30, 1, 0.235, 0.9)).toMatch(/mixing must be 1 or more/);
  expect(errorOf(releaseLimit, 30, -1)).toMatch(/air_changes must be 0 or more/);
});
