import fc from "fast-check";
import { palletsNeeded } from "../../../src/functions/moving/palletsNeeded";

const pallets = (counts: unknown[], masses: unknown[], floors: unknown[], mass?: unknown, floor?: unknown): any =>
  palletsNeeded(
    counts.map((each) => [each]),
    masses.map((each) => [each]),
    floors.map((each) => [each]),
    mass === undefined ? undefined : [[mass]],
    floor === undefined ? undefined : [[floor]],
  )[0]![0];
/** Units of one measure: the masses alone, on a floor that never fills. */
const byMass = (masses: number[], limit: number): number =>
  pallets(
    masses.map(() => 1),
    masses,
    masses.map(() => 0),
    limit,
  );

/** Fewest pallets by trying every assignment. */
function fewest(units: readonly { mass: number; floor: number }[], mass: number, floor: number): number {
  let best = units.length;
  const loads: { mass: number; floor: number }[] = [];
  const place = (at: number): void => {
    if (loads.length >= best && at < units.length) return;
    if (at === units.length) {
      best = Math.min(best, loads.length);
      return;
    }
    const unit = units[at]!;
    for (const load of loads) {
      if (load.mass + unit.mass > mass || load.floor + unit.floor > floor) continue;
      load.mass += unit.mass;
      load.floor += unit.floor;
      place(at + 1);
      load.mass -= unit.mass;
      load.floor -= unit.floor;
    }
    loads.push({ ...unit });
    place(at + 1);
    loads.pop();
  };
  place(0);
  return best;
}

describe("PALLETS_NEEDED", () => {
  it("packs by the mass where that is tighter (17 units, four by floor, three by mass: 6) and by the floor (5)", () => {
    expect(pallets([17], [260], [0.3], 907, 1.2)).toBe(6);
    expect(pallets([17], [100], [0.3])).toBe(5);
  });

  it("shows first-fit decreasing's well-known anomaly: the same ten pieces need 3 bins of 60 and 4 of 61 (textbook instance, from memory)", () => {
    const pieces = [44, 24, 24, 22, 21, 17, 8, 8, 6, 6];
    expect(byMass(pieces, 60)).toBe(3);
    expect(byMass(pieces, 61)).toBe(4);
  });

  it("never packs fewer than the least number, and at most one more for eight units (every assignment tried)", () => {
    const unit = fc.record({ mass: fc.integer({ min: 1, max: 100 }), floor: fc.integer({ min: 1, max: 100 }) });
    fc.assert(
      fc.property(fc.array(unit, { minLength: 1, maxLength: 8 }), (units) => {
        const least = fewest(units, 100, 100);
        const got = pallets(
          units.map(() => 1),
          units.map((each) => each.mass),
          units.map((each) => each.floor),
          100,
          100,
        );
        expect(got).toBeGreaterThanOrEqual(least);
        expect(got).toBeLessThanOrEqual(least + 1);
      }),
      { numRuns: 300 },
    );
  });

  it("takes the large units first, in whatever order they are listed (by hand: four of 70 with one of 30 each)", () => {
    expect(pallets([4, 4], [30, 70], [0, 0], 100)).toBe(4);
    expect(pallets([4, 4], [70, 30], [0, 0], 100)).toBe(4);
  });

  it("is the plain quotient for alike units, however they are listed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 20 }), (units, each) => {
        const needed = Math.ceil(units / Math.floor(20 / each));
        expect(pallets([units], [each], [0.01], 20, 1.2)).toBe(needed);
        expect(pallets([units, 0], [each, 5000], [0.01, 9], 20, 1.2)).toBe(needed);
      }),
    );
  });

  it("fills a pallet to the brim in spite of floating sums (0.1 + 0.2 of 0.3 m²)", () => {
    expect(pallets([1, 1], [1, 1], [0.1, 0.2], 1000, 0.3)).toBe(1);
    expect(pallets([10], [0.1], [0], 1)).toBe(1);
  });

  it("refuses a unit that exceeds a pallet, unequal lists and too many units", () => {
    expect(pallets([1, 1], [10, 1200], [0.1, 0.2]).message).toContain(
      "unit 2 of the list (1200 kg, 0.2 m²) exceeds a pallet",
    );
    expect(pallets([1], [10], [1.3]).message).toContain("exceeds a pallet");
    expect(pallets([1, 2], [10, 10], [0.1]).message).toContain("counts has 2 and floors has 1");
    expect(pallets([200000], [1], [0.1]).message).toContain("100000 at most");
  });
});
