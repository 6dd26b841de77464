import fc from "fast-check";
import { releaseLimit } from "../../../src/functions/safety/releaseLimit";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { errorOf, oneNumber } from "../oneCell";

const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("30.6 L/min of fresh air hold 1 L/min at 23.5 % from 21 %: Qv = Ql·(100 − 23.5)/(23.5 − 21), worked outside this project", () => {
  expect(oneNumber(releaseLimit, (30.6 * 60) / 1000, 1)).toBeCloseTo(1, 9);
});

test("ROOM_OXYGEN of that release is the limit in the long run", () => {
  fc.assert(
    fc.property(some(5, 500), some(0.1, 20), some(0.22, 0.9), (room, changes, limit) => {
      expect(oneNumber(roomOxygen, room, oneNumber(releaseLimit, room, changes, limit), changes)).toBeCloseTo(limit, 9);
    }),
  );
});

test("no fresh air, no allowance; a limit of air itself is refused", () => {
  expect(oneNumber(releaseLimit, 30, 0)).toBe(0);
  expect(errorOf(releaseLimit, 30, 1, 0.21)).toMatch(/#VALUE! limit must be above 0.21 and under 1/);
  expect(errorOf(releaseLimit, 30, 1, 23.5)).toMatch(/limit .*23.5% or 0.235/);
});
