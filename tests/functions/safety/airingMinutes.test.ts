import fc from "fast-check";
import { airingMinutes } from "../../../src/functions/safety/airingMinutes";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { errorOf, oneNumber } from "../oneCell";

test("the purge equation as printed: from 7 % to 19.5 % with air of 21 %, 900 ft³ at 300 cfm, takes 6.72 min", () => {
  // Published dilution-ventilation answer, 6 min 43 s; V/Q·ln(distance from air) is the same for a room that is too rich.
  const changes = (300 * 60) / 900;
  expect(Math.abs(oneNumber(airingMinutes, 0.21 + 0.14, changes, 0.21 + 0.015, 1) - 6.72)).toBeLessThan(0.05);
});

test("undone by the balance dC/dt = −n/K·(C − 0.21), integrated in small steps", () => {
  for (const [start, changes, limit, mixing] of [
    [0.4, 6, 0.235, 3],
    [0.9, 12, 0.23, 5],
    [0.26, 2, 0.25, 1],
  ] as const) {
    const minutes = oneNumber(airingMinutes, start, changes, limit, mixing);
    const steps = 20000;
    let oxygen: number = start;
    for (let step = 0; step < steps; step++) {
      const h = minutes / steps;
      const middle = oxygen - ((h / 2) * (oxygen - 0.21) * changes) / mixing / 60;
      oxygen -= (h * (middle - 0.21) * changes) / mixing / 60;
    }
    expect(oxygen).toBeCloseTo(limit, 7);
  }
});

test("twice the air halves it, poorer mixing and a richer room lengthen it, a higher limit shortens it", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 30, max: 99 }),
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 10, max: 100 }),
      (rich, changes, mixing) => {
        const now = oneNumber(airingMinutes, rich / 100, changes / 10, 0.25, mixing / 10);
        expect(oneNumber(airingMinutes, rich / 100, changes / 5, 0.25, mixing / 10) / now).toBeCloseTo(0.5, 9);
        expect(oneNumber(airingMinutes, rich / 100, changes / 10, 0.25, mixing / 5) / now).toBeCloseTo(2, 9);
        expect(oneNumber(airingMinutes, rich / 100 + 0.01, changes / 10, 0.25, mixing / 10)).toBeGreaterThan(now);
        expect(oneNumber(airingMinutes, rich / 100, changes / 10, 0.26, mixing / 10)).toBeLessThan(now);
      },
    ),
  );
});

test("the room that ROOM_OXYGEN leaves is down again after that time without release", () => {
  const rich = oneNumber(roomOxygen, 40, 30, 0, 120);
  const minutes = oneNumber(airingMinutes, rich, 4, 0.235, 1);
  expect(0.21 + (rich - 0.21) * Math.exp((-4 * minutes) / 60)).toBeCloseTo(0.235, 12);
});

test("0 at or under the limit, also by rounding; #N/A without air; short of oxygen is another danger", () => {
  expect(oneNumber(airingMinutes, 0.235, 0)).toBe(0);
  expect(oneNumber(airingMinutes, 0.1 + 0.135, 0)).toBe(0);
  expect(oneNumber(airingMinutes, 0.3 - 0.09, 1)).toBe(0);
  expect(errorOf(airingMinutes, 0.24, 0)).toMatch(/^#N\/A .*no fresh air/);
  expect(errorOf(airingMinutes, 0.19, 5)).toMatch(/^#VALUE! room_oxygen of 0.19 is below .* short of oxygen/);
  expect(errorOf(airingMinutes, 24, 5)).toMatch(/room_oxygen .*24% or 0.24/);
  expect(errorOf(airingMinutes, 0.24, 5, 0.21)).toMatch(/limit must be above 0.21/);
  expect(errorOf(airingMinutes, 0.24, 5, 0.235, 0.9)).toMatch(/mixing must be 1 or more/);
});
