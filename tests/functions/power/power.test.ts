import fc from "fast-check";
import { evenly } from "../../evenly";
import { dailyEnergy } from "../../../src/functions/power/dailyEnergy";
import { energyPerLitre } from "../../../src/functions/power/energyPerLitre";
import { fuelDays } from "../../../src/functions/power/fuelDays";
import { fuelPerDay } from "../../../src/functions/power/fuelPerDay";
import { generatorsNeeded } from "../../../src/functions/power/generatorsNeeded";
import { lineCurrent } from "../../../src/functions/power/lineCurrent";
import { powerLoad } from "../../../src/functions/power/powerLoad";
import { startKva } from "../../../src/functions/power/startKva";
import { horsepower } from "../../../src/models/unitFactors";
import reference from "../../reference/electricity.json";

const value = (call: (...cells: any[]) => any[][], ...cells: unknown[]): any =>
  call(...cells.map((each) => (Array.isArray(each) ? each : [[each]])))[0]![0];
const row = (id: string): any => reference.find((each) => each.id === id)!;
const amount = evenly(0.01, 1000);

describe("POWER_LOAD", () => {
  it("adds counts times watts (by hand: 3 × 250 + 2 × 1.5 kW = 3.75 kW)", () => {
    expect(value(powerLoad, [[3], [2]], [[250], ["1.5 kW"]])).toBeCloseTo(3.75, 12);
  });
  it("passes over headings and spare blank rows, each list by itself", () => {
    expect(value(powerLoad, [["number"], [3], [2], [""]], [[250], ["1.5 kW"], [null], [null]], 0.5)).toBeCloseTo(
      1.875,
      12,
    );
  });
  it("refuses unequal and blank lists", () => {
    expect(value(powerLoad, [[1], [2]], [[100]]).message).toContain("counts has 2 and watts has 1");
    expect(value(powerLoad, [[1], [2]], [[100], [null]]).message).toContain("counts has 2 and watts has 1");
    expect(value(powerLoad, [[1], [2], [3]], [[100], [null], [50]]).message).toContain("watts row 2 is blank");
  });
});

describe("GENERATORS_NEEDED", () => {
  it("carries the load at no more than the largest share, and one fewer would not", () => {
    fc.assert(
      fc.property(amount, amount, evenly(0.1, 1), (load, unit, share) => {
        const needed = value(generatorsNeeded, load, unit, share, 0);
        expect(load / (needed * unit)).toBeLessThanOrEqual(share * (1 + 1e-9));
        if (needed > 1) expect(load / ((needed - 1) * unit)).toBeGreaterThan(share * (1 - 1e-9));
      }),
    );
  });
  it("is not lifted by floating noise (0.3 / 0.1 = 3 in arithmetic)", () => {
    expect(value(generatorsNeeded, 0.3, 0.1, 1, 0)).toBe(3);
    expect(value(generatorsNeeded, 2.4, 0.1, 0.8, 0)).toBe(30);
  });
});

describe("START_KVA", () => {
  it("agrees with NEC table 430.7(B) for 3 hp of letter K at 0.7 of the voltage", () => {
    const { inputs, expected, tolerance } = row("skva-3hp-sag30");
    expect(
      Math.abs(value(startKva, inputs.hp * horsepower, inputs.kVA_per_hp, inputs.sag) - expected),
    ).toBeLessThanOrEqual(tolerance);
  });
  it("agrees with the locked-rotor current of the same motor at 240 V", () => {
    const { inputs, expected, tolerance } = row("lra-3hp-K");
    expect(Math.abs((value(startKva, "3 hp", inputs.kVA_per_hp) * 1000) / inputs.V - expected)).toBeLessThanOrEqual(
      tolerance,
    );
  });
  it("agrees with a published worked example: 10 hp of letter G, middle of its band 5.945, is 59.45 kVA", () => {
    expect(value(startKva, "10 hp", 5.945)).toBeCloseTo(59.45, 9);
  });
});

describe("limits that are physical", () => {
  it("loads a generator up to its power, has no power factor above 1 and no day above 24 h", () => {
    expect(value(generatorsNeeded, 10, 10, 1.01).message).toContain("most_load must be above 0 and at most 1");
    expect(value(generatorsNeeded, 10, 10, 0).message).toContain("most_load must be above 0");
    expect(value(lineCurrent, 10, 230, 1.01).message).toContain("power_factor must be above 0 and at most 1");
    expect(value(dailyEnergy, 5, 24.1, 1, 0.1).message).toContain("make_hours must be between 0 and 24");
    expect(value(startKva, 3, 8.99, 1).message).toContain("voltage_dip must be from 0 to under 1");
  });
});

describe("FUEL_PER_DAY and FUEL_DAYS", () => {
  it("are each other's inverse", () => {
    fc.assert(
      fc.property(amount, evenly(0.1, 24), fc.integer({ min: 1, max: 9 }), amount, (rate, hours, generators, days) => {
        const daily = value(fuelPerDay, rate, hours, generators);
        expect(value(fuelDays, daily * days + 50, daily, 50)).toBeCloseTo(days, 6);
      }),
    );
  });
  it("refuse a day of 25 hours and a store without use", () => {
    expect(value(fuelPerDay, 4, 25).message).toContain("hours must be between 0 and 24");
    expect(value(fuelDays, 100, 0).message).toContain("fuel_per_day must be more than 0");
    expect(value(fuelDays, 100, 10, 200)).toBe(0);
  });
  it("read gallons (1 US gal = 3.785411784 L, NIST SP 811)", () => {
    expect(value(fuelDays, "100 gal", "5 gal/h")).toBeCloseTo(100 / 120, 12);
  });
});

describe("ENERGY_PER_LITRE", () => {
  it("refuses below the ideal work (CoolProp 4.2: 0.2013592 kWh/L) and not above", () => {
    const { expected, tolerance } = row("wmin-liq");
    expect(value(energyPerLitre, expected + tolerance, 1)).toBeCloseTo(expected + tolerance, 12);
    expect(value(energyPerLitre, expected - tolerance, 1).message).toContain("physics");
  });
});

describe("DAILY_ENERGY", () => {
  it("runs from standby alone to making alone", () => {
    expect(value(dailyEnergy, 5, 0, 4, 0.25)).toBe(24);
    expect(value(dailyEnergy, 5, 24, 4, 0.25)).toBe(120);
    expect(value(dailyEnergy, "5000 W", "720 min", "4 kW", "25%")).toBe(72);
  });
});
