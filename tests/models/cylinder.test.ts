import fc from "fast-check";

import { cascadeFill, cylinderContent, cylinderPressure, gasToFill, settledPressure } from "../../src/models/cylinder";
import {
  absoluteFromGauge,
  gasDensity,
  gaugeFromAbsolute,
  referenceGasDensity,
  standardAtmosphere,
  zeroCelsius,
} from "../../src/models/oxygen";
import cylinderRows from "../reference/cylinders.json";
import { type Answers, checkRows } from "../reference/rows";
import { evenly } from "../evenly";

// Exact factor of NIST SP 811.
const psi = 0.06894757293168;
const celsius = (f: number): number => ((f - 32) * 5) / 9;

// The rows refer their litres to 15 °C, this project to 21.1 °C.
const at15 = referenceGasDensity / gasDensity(standardAtmosphere, 15 + zeroCelsius);
const content = (i: any): number => cylinderContent(i.V_L, i.p_bar_g, i.T_C) * at15;
const settledPsi = (i: any): number =>
  settledPressure(i.settled_psig * psi, celsius(i.settled_T_F), celsius(i.gas_T_F)) / psi;

const answers: Answers = {
  "cont-J": content,
  "cont-50-150": content,
  "cont-50-200": content,
  "settle-2015-60F": settledPsi,
  "settle-2015-100F": settledPsi,
  "settle-137-40C": (i) => settledPressure(i.settled_bar_g, i.settled_T_C, i.gas_T_C),
  "eq-real": (i) =>
    absoluteFromGauge(
      cascadeFill(i.V2_L, gaugeFromAbsolute(i.p2_bar_abs), [i.V1_L], [gaugeFromAbsolute(i.p1_bar_abs)], i.T_C)[0]!
        .cylinderAfter,
    ),
  "cascade-3": (i) =>
    absoluteFromGauge(
      cascadeFill(
        i.receiver_L,
        gaugeFromAbsolute(i.receiver_bar_abs),
        i.banks_bar_abs.map(() => i.banks_L),
        i.banks_bar_abs.map(gaugeFromAbsolute),
        i.T_C,
      )[2]!.cylinderAfter,
    ),
  "mass-cyl-J": (i) => (cylinderContent(i.V_L, i.p_bar_g, i.T_C) * referenceGasDensity) / 1000,
};
checkRows("cylinders", cylinderRows, answers, 1e-5);

const volumes = evenly(0.5, 100);
const pressures = evenly(0, 300);
const temperatures = evenly(-40, 60);

describe("cylinder", () => {
  test("content and pressure are each other's inverse; content rises with pressure", () => {
    fc.assert(
      fc.property(volumes, pressures, temperatures, (volume, p, t) => {
        const gas = cylinderContent(volume, p, t);
        expect(Math.abs(cylinderPressure(volume, gas, t) - p)).toBeLessThan(1e-9 * (1 + p));
        expect(cylinderContent(volume, p + 0.01, t)).toBeGreaterThan(gas);
      }),
    );
    // By definition of the gas litre.
    expect(cylinderContent(10, 0, 21.1)).toBeCloseTo(10, 12);
  });

  test("settling there and back returns; a warm cylinder settles lower", () => {
    fc.assert(
      fc.property(evenly(1, 200), temperatures, temperatures, (p, from, to) => {
        const settled = settledPressure(p, from, to);
        if (settled > 301) return;
        expect(Math.abs(settledPressure(settled, to, from) - p)).toBeLessThan(1e-8 * (1 + p));
        if (from > to + 0.001) expect(settled).toBeLessThan(p);
      }),
    );
    expect(settledPressure(137, 15, 15)).toBe(137);
  });

  test("filling in two steps takes the gas of one", () => {
    expect(gasToFill(47, 10, 80, 20) + gasToFill(47, 80, 150, 20)).toBeCloseTo(gasToFill(47, 10, 150, 20), 9);
  });

  test("a cascade loses no gas, never lets the cylinder fall, and ends at or below the highest bank", () => {
    fc.assert(
      fc.property(
        volumes,
        pressures,
        fc.array(fc.tuple(volumes, pressures), { minLength: 1, maxLength: 6 }),
        temperatures,
        (volume, p, banks, t) => {
          const bankVolumes = banks.map(([v]) => v);
          const bankPressures = banks.map(([, b]) => b);
          const steps = cascadeFill(volume, p, bankVolumes, bankPressures, t);
          expect(steps.map((step) => step.bank).sort((a, b) => a - b)).toEqual(banks.map((_, i) => i));
          let before = p;
          let gas = cylinderContent(volume, p, t);
          let after = 0;
          steps.forEach(({ bank, bankAfter, cylinderAfter }, i) => {
            if (i > 0) expect(bankPressures[bank]!).toBeGreaterThanOrEqual(bankPressures[steps[i - 1]!.bank]!);
            if (bankPressures[bank]! <= before) {
              expect([bankAfter, cylinderAfter]).toEqual([bankPressures[bank], before]);
            } else {
              expect(cylinderAfter).toBeGreaterThanOrEqual(before);
              expect(bankAfter).toBe(cylinderAfter);
              expect(cylinderAfter).toBeLessThanOrEqual(bankPressures[bank]!);
            }
            gas += cylinderContent(bankVolumes[bank]!, bankPressures[bank]!, t);
            after += cylinderContent(bankVolumes[bank]!, bankAfter, t);
            before = cylinderAfter;
          });
          expect(Math.abs((after + cylinderContent(volume, before, t)) / gas - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test("banks of one pressure go in the order of the list", () => {
    expect(cascadeFill(10, 0, [50, 50, 50], [120, 90, 120], 20).map((step) => step.bank)).toEqual([1, 0, 2]);
  });
});
