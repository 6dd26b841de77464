import fc from "fast-check";
import { minutesToLimit } from "../../../src/functions/safety/minutesToLimit";
import { releaseLimit } from "../../../src/functions/safety/releaseLimit";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("closed room by the purge formula C = 1 − (1 − C₀)·exp(−V gas/V room): 1.12 L of liquid, 965 L of gas, take 30 m³ to 23.5 %", () => {
  // V gas = 30 m³ × ln(0.79/0.765) = 0.9647 m³, which is 1.12 L of liquid at 861 L/L (worked outside this project).
  const minutes = oneNumber(minutesToLimit, 30, 10);
  expect((minutes * 10) / 861).toBeCloseTo(1.12, 2);
});

test("at 3000 m a closed room gets there in 69.2 % of the time: 70.109 of 101.325 kPa, ISO 2533:1975", () => {
  const [low, high] = [0, 3000].map((altitude) => oneNumber(minutesToLimit, 30, 15, 0, 0.235, undefined, altitude)) as [
    number,
    number,
  ];
  expect(Math.abs(low - 64.314)).toBeLessThan(0.001);
  expect(high / low).toBeCloseTo(70.109 / 101.325, 4);
});

test("ROOM_OXYGEN at that minute is the limit, with the air changes divided by the mixing and at any altitude", () => {
  fc.assert(
    fc.property(
      evenly(5, 500),
      evenly(1, 200),
      evenly(0, 5),
      evenly(0.22, 0.5),
      evenly(1, 10),
      fc.integer({ min: 0, max: 4000 }),
      (room, release, changes, limit, mixing, altitude) => {
        const most = oneNumber(releaseLimit, room, changes, limit, mixing, altitude);
        if (release < most * 1.001) return;
        const minutes = oneNumber(minutesToLimit, room, release, changes, limit, mixing, altitude);
        // Below a minute a bare number would be taken for a time of day.
        const then = oneNumber(roomOxygen, room, release, changes / mixing, `${minutes} min`, 1, altitude);
        expect(then).toBeCloseTo(limit, 9);
      },
    ),
  );
});

test("poor mixing brings it nearer when there is fresh air, and does nothing in a closed room", () => {
  expect(oneNumber(minutesToLimit, 36, 60, 2)).toBeLessThan(oneNumber(minutesToLimit, 36, 60, 2, 0.235, 1));
  expect(oneNumber(minutesToLimit, 36, 60, 2)).toBe(oneNumber(minutesToLimit, 36, 60, 2, 0.235, 3));
  expect(oneNumber(minutesToLimit, 36, 60, 0, 0.235, 10)).toBe(oneNumber(minutesToLimit, 36, 60, 0, 0.235, 1));
});

test("#N/A where it never gets there, in words that give no all-clear", () => {
  const most = oneNumber(releaseLimit, 30, 2);
  expect(errorOf(minutesToLimit, 30, most * 0.999, 2)).toMatch(
    /^#N\/A .*stays under the limit.*near the leak.*no all-clear/,
  );
  expect(oneNumber(minutesToLimit, 30, most * 1.001, 2)).toBeGreaterThan(60);
  expect(errorOf(minutesToLimit, 30, 0)).toMatch(/^#N\/A .*stays under the limit/);
});

test("a release of exactly RELEASE_LIMIT only nears the limit: #N/A, whichever way its last digit is rounded", () => {
  for (const limit of [0.22, 0.235, 0.24, 0.25, 0.3, 0.4]) {
    for (const changes of [0.5, 1, 2, 3, 6]) {
      for (const altitude of [0, 2300]) {
        const release = oneNumber(releaseLimit, 30, changes, limit, 3, altitude);
        expect(errorOf(minutesToLimit, 30, release, changes, limit, 3, altitude)).toMatch(/stays under the limit/);
      }
    }
  }
});
