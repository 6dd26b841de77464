import fc from "fast-check";
import { plantRoomOxygen } from "../../../src/functions/safety/plantRoomOxygen";
import { errorOf, oneNumber } from "../oneCell";

/** Moles of oxygen and of all gas in the room, step by step: fresh air in, product out, room air out. */
function stepped(room: number, product: number, changes: number, minutes: number, purity: number): number {
  const litres = room * 1000;
  const out = (litres * changes) / 60;
  let oxygen = 0.21 * litres;
  const steps = 40000;
  const h = minutes / steps;
  const change = (held: number): number => (out + product) * 0.21 - product * purity - (out * held) / litres;
  for (let step = 0; step < steps; step++) oxygen += h * change(oxygen + (h / 2) * change(oxygen));
  return oxygen / litres;
}

test("agrees with an oxygen balance of the room taken in small steps", () => {
  for (const [room, product, changes, minutes, purity] of [
    [60, 25, 1, 60, 0.93],
    [45, 40, 3, 20, 0.96],
    [80, 15, 0, 240, 0.9],
  ] as const) {
    const expected = stepped(room, product, changes, minutes, purity);
    expect(oneNumber(plantRoomOxygen, room, product, changes, minutes, purity)).toBeCloseTo(expected, 8);
  }
});

test("by hand: a plant that gives 1 m³/h of pure oxygen needs 79 m³/h blown out to keep the room at 20 %", () => {
  // Out of the room go 1 m³ of oxygen, of which air of that volume brings 0.21 m³ back: 0.79/Q = 0.01.
  expect(oneNumber(plantRoomOxygen, 79, "1 m3/h", 1, "long run", 1)).toBeCloseTo(0.2, 9);
});

test("at 3000 m the product takes 1.4453 times as much room: 101.325 over 70.109 kPa, ISO 2533:1975", () => {
  const taken = 0.21 - oneNumber(plantRoomOxygen, 60, 20, 2);
  expect((0.21 - oneNumber(plantRoomOxygen, 60, 20, 2, undefined, undefined, 3000)) / taken).toBeCloseTo(
    101.325 / 70.109,
    4,
  );
});

test("falls with time to the long run, never below 0; more air and less product leave more", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 500 }),
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 1, max: 1000 }),
      (room, product, tenths, minutes) => {
        const changes = tenths / 10;
        const now = oneNumber(plantRoomOxygen, room, product, changes, minutes);
        expect(now).toBeGreaterThanOrEqual(0);
        expect(now).toBeLessThan(0.21);
        expect(oneNumber(plantRoomOxygen, room, product, changes, minutes + 10)).toBeLessThanOrEqual(now);
        expect(oneNumber(plantRoomOxygen, room, product, changes)).toBeLessThanOrEqual(now);
        expect(oneNumber(plantRoomOxygen, room, product, changes + 1, minutes)).toBeGreaterThanOrEqual(now);
        expect(oneNumber(plantRoomOxygen, room, product + 1, changes, minutes)).toBeLessThanOrEqual(now);
      },
    ),
  );
  expect(oneNumber(plantRoomOxygen, 60, 0)).toBe(0.21);
  expect(oneNumber(plantRoomOxygen, 60, 25)).toBe(0);
  expect(oneNumber(plantRoomOxygen, 60, 2000, 1)).toBe(0);
});

test("a purity not above air, a room of nothing and negative air are refused", () => {
  expect(errorOf(plantRoomOxygen, 60, 25, 1, 60, 0.21)).toMatch(/#VALUE! purity must be above 0.21/);
  expect(errorOf(plantRoomOxygen, 0, 25)).toMatch(/room must be more than 0/);
  expect(errorOf(plantRoomOxygen, 60, 25, -1)).toMatch(/air_changes must be 0 or more/);
  expect(errorOf(plantRoomOxygen, 60, 25, 1, "")).toMatch(/minutes is blank/);
});
