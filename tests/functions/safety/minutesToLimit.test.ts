import fc from "fast-check";
import { minutesToLimit } from "../../../src/functions/safety/minutesToLimit";
import { releaseLimit } from "../../../src/functions/safety/releaseLimit";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { errorOf, oneNumber } from "../oneCell";

const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("closed room by the purge formula C = 1 − (1 − C₀)·exp(−V gas/V room): 1.12 L of liquid, 965 L of gas, take 30 m³ to 23.5 %", () => {
  // V gas = 30 m³ × ln(0.79/0.765) = 0.9647 m³, which is 1.12 L of liquid at 861 L/L (worked outside this project).
  const minutes = oneNumber(minutesToLimit, 30, 10);
  expect((minutes * 10) / 861).toBeCloseTo(1.12, 2);
});

test("ROOM_OXYGEN at that minute is the limit", () => {
  fc.assert(
    fc.property(some(5, 500), some(1, 200), some(0, 5), some(0.22, 0.5), (room, release, changes, limit) => {
      const most = oneNumber(releaseLimit, room, changes, limit);
      if (release < most * 1.001) return;
      const minutes = oneNumber(minutesToLimit, room, release, changes, limit);
      expect(oneNumber(roomOxygen, room, release, changes, minutes)).toBeCloseTo(limit, 9);
    }),
  );
});

test("#N/A where it never gets there: under RELEASE_LIMIT, and without a release", () => {
  const most = oneNumber(releaseLimit, 30, 2);
  expect(errorOf(minutesToLimit, 30, most * 0.999, 2)).toMatch(/^#N\/A stays under the limit/);
  expect(oneNumber(minutesToLimit, 30, most * 1.001, 2)).toBeGreaterThan(60);
  expect(errorOf(minutesToLimit, 30, 0)).toMatch(/^#N\/A stays under the limit/);
});

test("a release of exactly RELEASE_LIMIT only nears the limit: #N/A, whichever way its last digit is rounded", () => {
  for (const limit of [0.22, 0.235, 0.24, 0.25, 0.3, 0.4]) {
    for (const changes of [0.5, 1, 2, 3, 6]) {
      const release = oneNumber(releaseLimit, 30, changes, limit);
      expect(errorOf(minutesToLimit, 30, release, changes, limit)).toMatch(/^#N\/A stays under the limit/);
    }
  }
});
