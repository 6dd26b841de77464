import fc from "fast-check";
import { evenly } from "../../evenly";
import { drainBy } from "../../../src/functions/moving/drainBy";
import { drainCheck } from "../../../src/functions/moving/drainCheck";
import { receiptCheck } from "../../../src/functions/moving/receiptCheck";
import { shippedMass } from "../../../src/functions/moving/shippedMass";
import { tripsNeeded } from "../../../src/functions/moving/tripsNeeded";

const value = (call: (...cells: any[]) => any[][], ...cells: unknown[]): any =>
  call(...cells.map((each) => (Array.isArray(each) ? each : [[each]])))[0]![0];
const receipt = (...flags: (boolean | undefined)[]): any[][] =>
  receiptCheck(...(flags.map((each) => (each === undefined ? undefined : [[each]])) as [any, any, any]));

describe("RECEIPT_CHECK", () => {
  it("sends every tripped indicator and every damaged crate to the bill of lading until it is noted", () => {
    for (const shock of [true, false]) {
      for (const tilt of [true, false]) {
        for (const damaged of [true, false]) {
          for (const noted of [true, false]) {
            const rows = receipt(shock, tilt, noted, damaged);
            expect(rows.map((line) => line[0])).toEqual([
              "item",
              "shock indicator",
              "tilt indicator",
              "crate",
              "bill of lading",
            ]);
            expect(rows.slice(1, 4).map((line) => line[1])).toEqual([
              shock ? "tripped" : "not tripped",
              tilt ? "tripped" : "not tripped",
              damaged ? "damaged" : "sound",
            ]);
            const bill = rows[4]!;
            if (!(shock || tilt || damaged)) expect(bill[1]).toBe("nothing to note");
            else if (noted) expect(bill).toEqual(["bill of lading", "noted", expect.not.stringContaining("write")]);
            else
              expect(bill).toEqual([
                "bill of lading",
                "not noted",
                expect.stringContaining("write on the bill of lading"),
              ]);
            rows
              .slice(1, 4)
              .forEach((line) =>
                expect(line[2].includes("inspect")).toBe(line[1] === "tripped" || line[1] === "damaged"),
              );
          }
        }
      }
    }
  });
  it("takes an omitted crate for a sound one and refuses other words", () => {
    expect(receipt(true, false, true)).toEqual(receipt(true, false, true, false));
    expect(value(receiptCheck, "perhaps", false, false).message).toContain("shock is");
  });
});

describe("DRAIN_CHECK", () => {
  it("wants the container larger than the vessel", () => {
    const size = evenly(0.1, 1000);
    fc.assert(
      fc.property(size, size, (vessel, container) => {
        expect(value(drainCheck, vessel, container) === "ok").toBe(container > vessel);
      }),
    );
    expect(value(drainCheck, "20 gal", 75.7)).toContain("75.7 L and must hold more than the vessel's 75.70824 L");
  });
});

describe("DRAIN_BY", () => {
  it("leaves time to drain and to warm, and a day later would not", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40000, max: 60000 }),
        evenly(0, 500),
        evenly(0.5, 50),
        evenly(0, 30),
        (ship, level, rate, warm) => {
          const day = value(drainBy, ship, level, rate, warm).basicValue;
          const spare = ship - day - (level / rate / 24 + warm);
          expect(spare).toBeGreaterThan(-1e-6);
          expect(spare).toBeLessThan(1);
        },
      ),
    );
  });
  it("crosses the leap day (calendar: 2028 has a 29 February)", () => {
    expect(value(drainBy, "2028-03-01", 24, 1, 0).basicValue).toBe(46812);
    expect(new Date((46812 - 25569) * 86400000).toISOString().slice(0, 10)).toBe("2028-02-29");
  });
  it("has no date before Excel's calendar", () => {
    expect(value(drainBy, "1990-01-01", 24, 1, 33000).message).toContain("before 1900-03-01");
    expect(value(drainBy, 100, 24, 1, 60).message).toContain("ship_date is 100");
  });
});

describe("SHIPPED_MASS", () => {
  it("adds counts times masses with the packing (by hand: (3 × 20 + 5 × 8) × 1.15 = 115)", () => {
    expect(value(shippedMass, [[3], [5]], [[20], [8]], 0.15)).toBeCloseTo(115, 10);
    expect(value(shippedMass, [[1]], [["1 t"]], "10%")).toBeCloseTo(1100, 9);
  });
  it("takes packing of 10 for a percent without its sign, not for ten times the goods", () => {
    expect(value(shippedMass, [[1]], [[100]], 10).message).toContain("10 looks like a percent: enter 10% or 0.1");
    expect(value(shippedMass, [[1]], [[100]], 2)).toBe(300);
  });
  it("passes over headings and spare blank rows, each list by itself", () => {
    expect(value(shippedMass, [["pieces"], [3], [5], [null]], [[20], [8]])).toBe(100);
  });
  it("refuses lists that don't go together", () => {
    expect(value(shippedMass, [[3], [5]], [[20]]).message).toContain("counts has 2 and masses has 1");
  });
});

describe("TRIPS_NEEDED", () => {
  it("carries everything, and one trip fewer would not", () => {
    const mass = evenly(1, 1e5);
    fc.assert(
      fc.property(mass, mass, evenly(0.1, 1), (total, capacity, share) => {
        const trips = value(tripsNeeded, total, capacity, share);
        expect(trips * capacity * share).toBeGreaterThanOrEqual(total * (1 - 1e-9));
        expect((trips - 1) * capacity * share).toBeLessThan(total);
      }),
    );
  });
  it("is never loaded above the whole", () => {
    expect(value(tripsNeeded, 100, 10, 1.01).message).toContain("load_share must be above 0 and at most 1");
  });
  it("is not lifted by floating noise and is 0 for nothing", () => {
    expect(value(tripsNeeded, 0.3, 0.1)).toBe(3);
    expect(value(tripsNeeded, 0, 1000)).toBe(0);
  });
});
