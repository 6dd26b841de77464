import fc from "fast-check";
import { batteryHours } from "../../../src/functions/power/batteryHours";
import { solarPower } from "../../../src/functions/power/solarPower";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

describe("BATTERY_HOURS", () => {
  test("a published sizing: 5 kWh a day for two days from four fifths of a battery ask for 12.5 kWh (an off-grid guide, read)", () => {
    expect(oneNumber(batteryHours, 12.5, 5 / 24, 0.8, 1)).toBeCloseTo(48, 9);
  });
  test("a second one: 260 Ah at 48 V, with the same shares (a sizing sheet, read)", () => {
    expect(oneNumber(batteryHours, (260 * 48) / 1000, 5 / 24, 0.8, 1)).toBeCloseTo(48, 0);
  });
  test("runs as long as a battery drained minute by minute", () => {
    fc.assert(
      fc.property(evenly(1, 20), evenly(0.5, 5), evenly(0.3, 1), evenly(0.5, 1), (energy, load, usable, inverter) => {
        let left = energy * 1000 * usable;
        let minutes = 0;
        for (; left > 0; minutes++) left -= (load * 1000) / 60 / inverter;
        const hours = oneNumber(batteryHours, energy, load, usable, inverter);
        expect(hours * 60).toBeLessThanOrEqual(minutes + 1e-6);
        expect(hours * 60).toBeGreaterThan(minutes - 1 - 1e-6);
      }),
    );
  });
  test("a percent and an energy in other units; amp-hours say what to do", () => {
    expect(oneNumber(batteryHours, "36 MJ", "500 W", "50%", 1)).toBeCloseTo(10, 12);
    expect(errorOf(batteryHours, "200 Ah", 1)).toMatch(/#VALUE! energy_kwh "200 Ah".*Ah × its volts/);
    expect(errorOf(batteryHours, 10, 1, 80)).toMatch(/usable_share .*80 looks like a percent/);
    expect(errorOf(batteryHours, 10, 1, 0.8, 0)).toMatch(/inverter_share must be above 0/);
    expect(errorOf(batteryHours, 10, 0)).toMatch(/load must be more than 0/);
    expect(oneNumber(batteryHours, 0, 1)).toBe(0);
  });
});

describe("SOLAR_POWER", () => {
  test("a published sizing the other way: ten panels of 400 W, 4 h and 0.80 give 12.8 kWh a day (a sizing sheet, read)", () => {
    expect(oneNumber(solarPower, 12.8, 4, 0.8)).toBeCloseTo(4, 12);
  });
  test("gives back the energy of the day", () => {
    fc.assert(
      fc.property(evenly(0, 500), evenly(0.5, 8), evenly(0.3, 1), (energy, sun, kept) => {
        expect(oneNumber(solarPower, energy, sun, kept) * sun * kept).toBeCloseTo(energy, 9);
      }),
    );
  });
  test("a day has 24 hours, and some of them sun", () => {
    expect(errorOf(solarPower, 10, 0)).toMatch(/#VALUE! sun_hours must be above 0/);
    expect(errorOf(solarPower, 10, 24.5)).toMatch(/sun_hours must be above 0 and at most 24/);
    expect(errorOf(solarPower, 10, 4, 70)).toMatch(/kept_share .*70 looks like a percent: enter 70% or 0.7/);
    expect(errorOf(solarPower, "10 kW", 4)).toMatch(/daily_energy "10 kW" is a power/);
  });
});
