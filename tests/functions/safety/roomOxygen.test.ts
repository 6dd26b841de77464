import fc from "fast-check";
import { roomOxygen } from "../../../src/functions/safety/roomOxygen";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("long run by hand: (0.21·0.25 + 0.015)/0.265 m³/min; 10 L/min into 500 L/min of air at 0.21", () => {
  expect(Math.abs(oneNumber(roomOxygen, 30, 15, 0.5) - 0.2547)).toBeLessThan(0.0001);
  expect(oneNumber(roomOxygen, 30, 10, 1)).toBeCloseTo((0.21 * 500 + 10) / 510, 10);
});

test("follows the balance V·dC/dt = Q·0.21 + R·P − (Q + R)·C, integrated by Runge and Kutta's method", () => {
  const [room, release, changes, purity, minutes] = [40, 25, 1.5, 0.93, 90];
  const air = (room * 1000 * changes) / 60;
  const slope = (c: number): number => (air * 0.21 + release * purity - (air + release) * c) / (room * 1000);
  let c = 0.21;
  const h = 0.1;
  for (let step = 0; step < minutes / h; step++) {
    const k1 = slope(c);
    const k2 = slope(c + (h / 2) * k1);
    const k3 = slope(c + (h / 2) * k2);
    const k4 = slope(c + h * k3);
    c += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
  }
  expect(oneNumber(roomOxygen, room, release, changes, minutes, purity)).toBeCloseTo(c, 9);
});

test("between air and the purity; rises with time, falls with fresh air; ends at the long run", () => {
  fc.assert(
    fc.property(
      evenly(5, 500),
      evenly(0.1, 200),
      evenly(0, 20),
      fc.integer({ min: 1, max: 600 }),
      fc.integer({ min: 30, max: 100 }).map((each) => each / 100),
      (room, release, changes, minutes, purity) => {
        const now = oneNumber(roomOxygen, room, release, changes, minutes, purity);
        expect(now).toBeGreaterThanOrEqual(0.21 - 1e-12);
        expect(now).toBeLessThanOrEqual(purity + 1e-12);
        expect(oneNumber(roomOxygen, room, release, changes, minutes + 5, purity)).toBeGreaterThanOrEqual(now - 1e-12);
        expect(oneNumber(roomOxygen, room, release, changes + 1, minutes, purity)).toBeLessThanOrEqual(now + 1e-12);
        expect(oneNumber(roomOxygen, room, release, changes, 1e9, purity)).toBeCloseTo(
          oneNumber(roomOxygen, room, release, changes, undefined, purity),
          9,
        );
      },
    ),
  );
});

test("at an altitude the release is larger by 101.325 kPa over the air pressure (ISO 2533:1975: 70.109 kPa at 3000 m)", () => {
  const higher = (15 * 101.325) / 70.109;
  expect(oneNumber(roomOxygen, 30, 15, 2, 45, 0.93, 3000)).toBeCloseTo(
    oneNumber(roomOxygen, 30, higher, 2, 45, 0.93),
    6,
  );
  expect(oneNumber(roomOxygen, 30, 15, 2, undefined, undefined, 3000)).toBeCloseTo(
    (0.21 * 1000 + higher) / (1000 + higher),
    6,
  );
});

test("minutes: the words long run are the long run, and a time of day or a blank is neither", () => {
  for (const words of ["long run", "Long Run", " long-run ", "longrun"])
    expect(oneNumber(roomOxygen, 30, 15, 0.5, words)).toBe(oneNumber(roomOxygen, 30, 15, 0.5));
  expect(oneNumber(roomOxygen, 30, 15, 0.5, "2 h")).toBe(oneNumber(roomOxygen, 30, 15, 0.5, 120));
  expect(errorOf(roomOxygen, 30, 15, 0.5, 2 / 24)).toMatch(/#VALUE! minutes .*looks like a time of day/);
  expect(errorOf(roomOxygen, 30, 15, 0.5, null)).toMatch(/#VALUE! minutes is blank: enter minutes or "long run"/);
  expect(errorOf(roomOxygen, 30, 15, 0.5, "soon")).toMatch(/#VALUE! minutes "soon" is not a number.* or "long run"$/);
});

test("nothing released leaves air; a closed room ends at what is released; ft³ are read (NIST SP 811)", () => {
  expect(oneNumber(roomOxygen, 30, 0)).toBe(0.21);
  expect(oneNumber(roomOxygen, 30, 1, 0, undefined, 0.93)).toBeCloseTo(0.93, 12);
  expect(oneNumber(roomOxygen, "1000 ft3", 15, 1)).toBeCloseTo(oneNumber(roomOxygen, 28.316846592, 15, 1), 12);
});

test("a percent without its sign is refused in words", () => {
  expect(errorOf(roomOxygen, 30, 10, 1, 60, 93)).toMatch(/#VALUE! source_purity .*93% or 0.93/);
  expect(errorOf(roomOxygen, 0, 10)).toMatch(/room must be more than 0/);
});
