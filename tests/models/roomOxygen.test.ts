import fc from "fast-check";

import {
  minutesToLimit,
  oxygenInAir,
  releaseLimit,
  roomOxygenAfter,
  roomOxygenLongRun,
  spillOxygen,
  ventilationNeeded,
} from "../../src/models/roomOxygen";
import { expansionRatio, standardAtmosphere, zeroCelsius } from "../../src/models/oxygen";
import { evenly } from "../evenly";
import roomRows from "../reference/roomOxygen.json";
import { type Answers, checkRows } from "../reference/rows";

const litresPerMinute = (cubicMetresPerHour: number): number => cubicMetresPerHour / 0.06;
const freshLitres = (i: any): number =>
  litresPerMinute(ventilationNeeded(i.leak_L_min, i.C_max_pct / 100, 1, i.leak_O2_pct / 100, i.C_amb_pct / 100));
const airChanges = (i: any, room: number): number => (i.fresh_L_min * 60) / 1000 / room;

const answers: Answers = {
  "vent-1Lmin-100": freshLitres,
  "vent-1Lmin-93": freshLitres,
  // The long run does not depend on the room once the fresh air is given as a flow.
  "ss-conc": (i) =>
    100 * roomOxygenLongRun(30, i.leak_L_min, airChanges(i, 30), i.leak_O2_pct / 100, i.C_amb_pct / 100),
  "transient-60": (i) =>
    100 * roomOxygenAfter(i.V_m3, i.leak_L_min, airChanges(i, i.V_m3), i.minutes, i.leak_O2_pct / 100, i.C0_pct / 100),
  "spill-1L": (i) => 100 * spillOxygen(i.room_m3, i.lox_L, i.C0_pct / 100),
  "spill-40L-gas": (i) =>
    (i.lox_L * expansionRatio(standardAtmosphere, i.gas_T_C + zeroCelsius, standardAtmosphere)) / 1000,
  "site-03": (i) => roomOxygenLongRun(i.room, i.release, i.air_changes, 1),
};
checkRows("oxygen in a room", roomRows, answers);

const rooms = evenly(5, 2000);
const releases = evenly(0.1, 200);
const changes = evenly(0, 20);
const minutes = evenly(0, 5000);

describe("oxygen in a room", () => {
  test("the transient solves its own balance: a small Euler step meets it", () => {
    fc.assert(
      fc.property(rooms, releases, changes, minutes, (room, release, ach, t) => {
        const step = 1e-3;
        const now = roomOxygenAfter(room, release, ach, t, 0.93);
        const next = roomOxygenAfter(room, release, ach, t + step, 0.93);
        const air = (room * 1000 * ach) / 60;
        const slope = (air * oxygenInAir + release * 0.93 - (air + release) * now) / (room * 1000);
        expect(Math.abs((next - now) / step - slope)).toBeLessThan(1e-6 + 1e-3 * Math.abs(slope));
      }),
    );
  });

  test("starts as air, rises, and ends in the long run", () => {
    fc.assert(
      fc.property(rooms, releases, changes, minutes, (room, release, ach, t) => {
        expect(roomOxygenAfter(room, release, ach, 0, 1)).toBe(oxygenInAir);
        const now = roomOxygenAfter(room, release, ach, t, 1);
        expect(roomOxygenAfter(room, release, ach, t + 1, 1)).toBeGreaterThanOrEqual(now);
        const longRun = roomOxygenLongRun(room, release, ach, 1);
        expect(now).toBeLessThanOrEqual(longRun + 1e-15);
        expect(roomOxygenAfter(room, release, ach, 1e9, 1)).toBeCloseTo(longRun, 9);
      }),
    );
    expect(roomOxygenLongRun(30, 0, 0, 1)).toBe(oxygenInAir);
    expect(roomOxygenLongRun(30, 5, 0, 0.93)).toBe(0.93);
    expect(roomOxygenAfter(30, 0, 0, 60, 1)).toBe(oxygenInAir);
  });

  test("the release limit ends at the limit, and its ventilation is the air it was given", () => {
    fc.assert(
      fc.property(rooms, evenly(0.1, 20), evenly(0.215, 0.9), (room, ach, limit) => {
        const release = releaseLimit(room, ach, limit);
        expect(roomOxygenLongRun(room, release, ach, 1)).toBeCloseTo(limit, 12);
        expect(ventilationNeeded(release, limit, 1) / (room * ach)).toBeCloseTo(1, 9);
        expect(ventilationNeeded(release, limit, 3)).toBeCloseTo(3 * ventilationNeeded(release, limit, 1), 9);
      }),
    );
  });

  test("minutes to the limit: the room is at the limit then, or never gets there", () => {
    fc.assert(
      fc.property(rooms, releases, changes, (room, release, ach) => {
        const time = minutesToLimit(room, release, ach, 0.235);
        if (time === undefined) expect(roomOxygenLongRun(room, release, ach, 1)).toBeLessThanOrEqual(0.235);
        else expect(roomOxygenAfter(room, release, ach, time, 1)).toBeCloseTo(0.235, 12);
      }),
    );
    expect(minutesToLimit(30, 0, 0, 0.235)).toBeUndefined();
    expect(minutesToLimit(30, releaseLimit(30, 2, 0.235) * 0.999, 2, 0.235)).toBeUndefined();
  });

  test("a spill is never more than pure oxygen", () => {
    expect(spillOxygen(30, 0)).toBe(oxygenInAir);
    expect(spillOxygen(10, 1000)).toBe(1);
    expect(spillOxygen(30, 2)).toBeGreaterThan(spillOxygen(30, 1));
  });
});
