import fc from "fast-check";

import { heatLeakFromLoss, lossFromHeatLeak, mostColdFill, warmClosedVessel } from "../../src/models/closedVessel";
import { coolDownPerKilogram, estimatedDraw, heatBetween, type Metal, specificHeat } from "../../src/models/metals";
import { absoluteFromGauge, flashFraction, saturationAtPressure, standardAtmosphere } from "../../src/models/oxygen";
import { evenly } from "../evenly";
import transferRows from "../reference/boilOffAndTransfer.json";
import { type Answers, checkRows } from "../reference/rows";

// Exact factor of NIST SP 811.
const psi = 0.06894757293168;
// Heat of vaporisation of nitrogen at 1 atm, kJ/kg: NIST WebBook, from memory.
const nitrogenLatentHeat = 199.2;
const nitrogenBoilingPoint = 77.355;

const atmospheric = saturationAtPressure(standardAtmosphere);
const hold = (i: any) => {
  const warming = warmClosedVessel(i.V_L, i.V_L * i.fill_frac, i.p1_psig * psi, i.p2_psig * psi, i.Q_W ?? 12);
  if (warming.kind !== "reaches") throw new Error(warming.kind);
  return warming;
};
const flash = (i: any): number =>
  100 * flashFraction(absoluteFromGauge(i.p1_psig * psi), absoluteFromGauge(i.p2_psig * psi));
const nitrogenCoolDown =
  (metal: Metal) =>
  (i: any): number =>
    heatBetween(metal, nitrogenBoilingPoint, i.T1_K) / nitrogenLatentHeat;
// The draw is linear in the fill, so two calls give the fill of a draw.
const fillFromDraw = (i: any): number => {
  const coolDown = i.metal_kg * (i.sigma_kg_per_kg ?? 0);
  const draw = (fill: number): number => estimatedDraw(fill, i.p1_psig * psi, i.p2_psig * psi, coolDown);
  return (i.drawn_L - draw(0)) / (draw(1) - draw(0));
};
const densityAtGauge = (psig: number): number => saturationAtPressure(absoluteFromGauge(psig * psi)).liquidDensity;

const answers: Answers = {
  "leak-10d-35": (i) => heatLeakFromLoss(i.V_L / i.empty_days, i.vent_psig * psi),
  "ner-from-W": (i) => (100 * lossFromHeatLeak(i.Q_W, 0)) / i.V_L,
  "leak-vent-correction": (i) =>
    ((i.vented_kg_per_day * atmospheric.latentHeat * 1000) / 86400) *
    (atmospheric.liquidDensity / (atmospheric.liquidDensity - atmospheric.vapourDensity)),
  "hold-95-0-22": (i) => hold(i).hours,
  "hold-95-0-22-level": (i) => (100 * hold(i).endLevel) / i.V_L,
  "maxfill-35": (i) => mostColdFill(100, i.relief_psig * psi, i.max_fill_at_relief),
  "flash-22-0": flash,
  "flash-10-0": flash,
  "flash-35-10": flash,
  "cool-N2-SS-latent": nitrogenCoolDown("stainless"),
  "cool-N2-Al-latent": nitrogenCoolDown("aluminium"),
  "cool-N2-Cu-latent": nitrogenCoolDown("copper"),
  "cool-O2-SS304-latent": (i) => coolDownPerKilogram("stainless", i.T1_C, 0),
  "cool-O2-Al6061-vapour": (i) => coolDownPerKilogram("aluminium", i.T1_C, 1),
  "eff-mass": (i) =>
    (100 * i.delivered_L * densityAtGauge(i.delivered_sat_psig)) / (i.drawn_L * densityAtGauge(i.drawn_sat_psig)),
  "transfer-warm": fillFromDraw,
  "transfer-cold": fillFromDraw,
};

checkRows("boil-off and transfer", transferRows, answers, 1e-5);

const capacities = evenly(1, 5000);
const shares = evenly(0.05, 0.8);
const gauges = evenly(0, 5);

describe("closed vessel", () => {
  test("stages add up: warming to a pressure between and on takes as long as in one go", () => {
    fc.assert(
      fc.property(capacities, shares, gauges, (capacity, share, from) => {
        const level = share * capacity;
        const first = warmClosedVessel(capacity, level, from, from + 1, 10);
        const whole = warmClosedVessel(capacity, level, from, from + 2, 10);
        if (first.kind !== "reaches" || whole.kind !== "reaches") return;
        const second = warmClosedVessel(capacity, first.endLevel, from + 1, from + 2, 10);
        if (second.kind !== "reaches") return;
        expect(Math.abs((first.hours + second.hours) / whole.hours - 1)).toBeLessThan(1e-8);
        expect(Math.abs(second.endLevel / whole.endLevel - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test("mass stays: the level at the end with its vapour weighs what the start did", () => {
    fc.assert(
      fc.property(capacities, shares, gauges, (capacity, share, from) => {
        const end = warmClosedVessel(capacity, share * capacity, from, from + 3, 10);
        if (end.kind !== "reaches") return;
        const mass = (level: number, gauge: number): number => {
          const s = saturationAtPressure(absoluteFromGauge(gauge));
          return level * s.liquidDensity + (capacity - level) * s.vapourDensity;
        };
        expect(Math.abs(mass(end.endLevel, from + 3) / mass(share * capacity, from) - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  test("twice the heat takes half the time; a fuller vessel and a higher end take longer", () => {
    fc.assert(
      fc.property(capacities, shares, gauges, (capacity, share, from) => {
        const hours = (level: number, to: number, watts: number): number =>
          warmClosedVessel(capacity, level, from, to, watts).hours;
        const plain = hours(share * capacity, from + 1, 10);
        expect(hours(share * capacity, from + 1, 20) * 2).toBeCloseTo(plain, 9);
        expect(hours(share * capacity * 1.1, from + 1, 10)).toBeGreaterThan(plain);
        expect(hours(share * capacity, from + 1.5, 10)).toBeGreaterThan(plain);
      }),
    );
  });

  test("a vessel nearly full becomes liquid-full on the way, one less full does not", () => {
    // The reference row notes it: 95 % at 0 psig would exceed 100 % at 35 psig.
    const warming = warmClosedVessel(40, 38, 0, 35 * psi, 12);
    expect(warming.kind).toBe("liquid-full");
    if (warming.kind !== "liquid-full") return;
    expect(warming.pressure).toBeGreaterThan(22 * psi);
    expect(warming.pressure).toBeLessThan(35 * psi);
    expect(warming.mostLevel).toBeLessThan(38);
    const reaches = warmClosedVessel(40, warming.mostLevel - 1e-6, 0, 35 * psi, 12);
    expect(reaches.kind === "reaches" && reaches.endLevel).toBeCloseTo(40, 3);
    expect(warmClosedVessel(40, warming.mostLevel + 1e-6, 0, 35 * psi, 12).kind).toBe("liquid-full");
    // Just below the pressure found there is still vapour, and the time runs on to it without a jump.
    const before = warmClosedVessel(40, 38, 0, warming.pressure - 1e-9, 12);
    expect(before.kind).toBe("reaches");
    expect(before.hours).toBeCloseTo(warming.hours, 5);
    // Brim-full at the start: at once.
    const brim = warmClosedVessel(40, 40, 0, 2, 12);
    expect(brim.kind === "liquid-full" && brim.pressure).toBeCloseTo(0, 9);
    expect(brim.hours).toBeCloseTo(0, 6);
  });

  test("a last puddle evaporates before the end", () => {
    const warming = warmClosedVessel(100, 0.1, 0, 10, 5);
    expect(warming.kind).toBe("dry");
    if (warming.kind !== "dry") return;
    const before = warmClosedVessel(100, 0.1, 0, warming.pressure - 1e-9, 5);
    expect(before.kind === "reaches" && before.endLevel).toBeCloseTo(0, 6);
    expect(before.hours).toBeCloseTo(warming.hours, 6);
    expect(warmClosedVessel(100, 0, 0, 10, 5).kind).toBe("dry");
  });

  test("the most cold fill, warmed liquid alone, fills its share", () => {
    fc.assert(
      fc.property(capacities, evenly(0.5, 1), gauges, (capacity, full, relief) => {
        const mass = mostColdFill(capacity, relief, full) * atmospheric.liquidDensity;
        const warm = mass / saturationAtPressure(absoluteFromGauge(relief)).liquidDensity;
        expect(warm / capacity).toBeCloseTo(full, 9);
      }),
    );
    expect(mostColdFill(100, 0, 0.98)).toBeCloseTo(98, 9);
  });

  test("heat leak and loss are each other's inverse", () => {
    fc.assert(
      fc.property(evenly(0.01, 500), gauges, (litres, pressure) => {
        expect(lossFromHeatLeak(heatLeakFromLoss(litres, pressure), pressure) / litres).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe("metals", () => {
  const metals: Metal[] = ["stainless", "aluminium", "copper"];

  // The fits evaluated at these temperatures, seen in the tests of a public materials library.
  test.each([
    ["aluminium", 77, 348.127924911502],
    ["aluminium", 293, 942.911235990911],
  ] as const)("%s at %d K", (metal, t, expected) => {
    expect(Math.abs(specificHeat(metal, t) / expected - 1)).toBeLessThan(1e-9);
  });

  // Handbook values near 300 K, from memory; the fits claim 5 %.
  test.each([
    ["stainless", 477],
    ["aluminium", 896],
    ["copper", 385],
  ] as const)("%s near room temperature", (metal, expected) => {
    expect(Math.abs(specificHeat(metal, 298) / expected - 1)).toBeLessThan(0.07);
  });

  test.each(metals)("%s: the integral agrees with a fine trapezoid, also past the end of the fit", (metal) => {
    const from = atmospheric.temperature;
    for (const to of [95, 200, 294.25, 300, 333.15]) {
      const steps = 20000;
      const width = (to - from) / steps;
      let sum = (specificHeat(metal, from) + specificHeat(metal, to)) / 2;
      for (let i = 1; i < steps; i++) sum += specificHeat(metal, from + i * width);
      expect(Math.abs((sum * width) / 1000 / heatBetween(metal, from, to) - 1)).toBeLessThan(1e-7);
    }
  });

  test("cooling takes less oxygen the more of the vapour's cold is used, more from a warmer start", () => {
    fc.assert(
      fc.property(fc.constantFrom(...metals), evenly(-150, 60), evenly(0, 0.95), (metal, celsius, use) => {
        const loss = coolDownPerKilogram(metal, celsius, use);
        expect(loss).toBeGreaterThan(0);
        expect(coolDownPerKilogram(metal, celsius, use + 0.05)).toBeLessThan(loss);
        if (celsius < 59) expect(coolDownPerKilogram(metal, celsius + 1, use)).toBeGreaterThan(loss);
      }),
    );
    expect(coolDownPerKilogram("copper", -183, 0.5)).toBe(0);
  });

  test("with no vapour cold used the two ways of reckoning meet", () => {
    for (const metal of metals)
      expect(coolDownPerKilogram(metal, 21.1, 1e-12)).toBeCloseTo(coolDownPerKilogram(metal, 21.1, 0), 9);
  });

  test("a cold transfer between equal pressures draws what it fills", () => {
    expect(estimatedDraw(20, 1.5, 1.5, 0)).toBeCloseTo(20, 12);
    expect(estimatedDraw(20, 2, 0, 0)).toBeGreaterThan(20);
  });
});
