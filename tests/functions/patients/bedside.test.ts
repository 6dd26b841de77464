import fc from "fast-check";
import { airParts } from "../../../src/functions/patients/airParts";
import { cannulaFio2 } from "../../../src/functions/patients/cannulaFio2";
import { seaLevelFio2 } from "../../../src/functions/patients/seaLevelFio2";
import { fio2ToSet } from "../../../src/functions/patients/fio2ToSet";
import { journeyGas } from "../../../src/functions/patients/journeyGas";
import { mixedFio2 } from "../../../src/functions/patients/mixedFio2";
import { oxygenUptake } from "../../../src/functions/patients/oxygenUptake";
import { plannedFlow } from "../../../src/functions/patients/plannedFlow";
import { sourceFlow } from "../../../src/functions/patients/sourceFlow";
import { totalFlow } from "../../../src/functions/patients/totalFlow";
import { ventilatorFlow } from "../../../src/functions/patients/ventilatorFlow";
import rows from "../../reference/bedside.json";
import { checkRows } from "../../reference/rows";
import { errorOf, oneCell, oneNumber } from "../oneCell";

const parts = ({ fio2, source }: { fio2: number; source: number }): number => oneNumber(airParts, fio2, source);

checkRows("bedside", rows, {
  "clin-01": ({ flow_Lmin }) => oneNumber(plannedFlow, "severe") * 1440 * (flow_Lmin / 10),
  "clin-02": ({ flow_Lmin }) => oneNumber(plannedFlow, "critical") * 1440 * (flow_Lmin / 30),
  "clin-13": ({ air, oxygen, source }) => oneNumber(mixedFio2, oxygen, air, source),
  "clin-14": ({ fio2, source }) => 1 / oneNumber(airParts, fio2, source),
  "clin-15a": parts,
  "clin-15b": parts,
  "clin-15c": parts,
  "clin-15d": parts,
  "clin-15e": parts,
  "clin-16": ({ total, fio2, source }) => oneNumber(sourceFlow, total, fio2, source),
  "clin-18": ({ total, fio2, source }) => oneNumber(sourceFlow, total, fio2, source),
  "clin-20": ({ mv, fio2, bias, source }) => oneNumber(ventilatorFlow, mv, fio2, bias, 0, source),
  "clin-31": ({ kg }) => oneNumber(oxygenUptake, kg),
  "clin-33": ({ flow }) => oneNumber(cannulaFio2, flow),
  "entrain-28": parts,
  "entrain-50": parts,
  "journey-16": ({ flow, minutes }) => oneNumber(journeyGas, flow, minutes),
  "cabin-8000": ({ fio2, altitude }) => oneNumber(seaLevelFio2, fio2, altitude),
});

test("the mixing functions undo each other and keep the oxygen", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 5, max: 2000 }),
      fc.integer({ min: 30, max: 100 }),
      fc.integer({ min: 1, max: 100 }),
      (tenths, percent, hundredths) => {
        const [total, purity, way] = [tenths / 10, percent / 100, hundredths / 100];
        const fio2 = 0.21 + (purity - 0.21) * way;
        const source = oneNumber(sourceFlow, total, fio2, purity);
        const air = total - source;
        // Oxygen in = oxygen out.
        expect(source * purity + air * 0.21).toBeCloseTo(total * fio2, 9);
        expect(oneNumber(mixedFio2, source, air, purity)).toBeCloseTo(fio2, 9);
        expect(oneNumber(totalFlow, source, fio2, purity)).toBeCloseTo(total, 7);
        expect(oneNumber(airParts, fio2, purity) * source).toBeCloseTo(air, 7);
      },
    ),
    { seed: 31 },
  );
});

test("a fraction richer than its source, in percent, or below air is refused with words", () => {
  expect(errorOf(sourceFlow, 50, 1)).toContain("#VALUE! fio2 1 can't be reached: the source holds 0.93");
  expect(errorOf(ventilatorFlow, 8, 0.95, 5)).toContain("can't be reached");
  expect(errorOf(airParts, 0.95)).toContain("can't be reached");
  expect(errorOf(totalFlow, 5, 0.95)).toContain("can't be reached");
  expect(errorOf(sourceFlow, 50, 60)).toContain("60 looks like a percent: enter 60% or 0.6");
  expect(errorOf(sourceFlow, 50, 0.2)).toContain("fio2 must be between 0.21 and 1");
  expect(errorOf(sourceFlow, 50, 0.6, 0.21)).toContain("source_purity must be above 0.21");
  expect(oneCell(sourceFlow, 50, 0.21)).toBe(0);
  expect(errorOf(airParts, 0.21)).toContain("air alone");
  expect(errorOf(totalFlow, 5, 0.21)).toContain("air alone");
  expect(errorOf(mixedFio2, 0, 0)).toContain("nothing to breathe");
});

test("VENTILATOR_FLOW: drive gas comes on top whatever fraction is set; bias flow has no default", () => {
  expect(oneNumber(ventilatorFlow, 8, 0.21, 5, 3)).toBe(3);
  expect(errorOf(ventilatorFlow, 8, 0.5, null)).toContain("bias_flow is blank");
  expect(errorOf(ventilatorFlow, 0, 0.5, 5)).toContain("minute_volume must be more than 0");
});

test("CANNULA_FIO2: the teaching table from 1 to 6 L/min and nothing outside", () => {
  // 24, 28, 32, 36, 40, 44 %: table of teaching pages
  [0.24, 0.28, 0.32, 0.36, 0.4, 0.44].forEach((fraction, index) =>
    expect(oneNumber(cannulaFio2, index + 1)).toBeCloseTo(fraction, 12),
  );
  expect(errorOf(cannulaFio2, 0.5)).toContain("flow must be between 1 and 6 L/min");
  expect(errorOf(cannulaFio2, 7)).toContain("flow must be between 1 and 6 L/min");
});

describe("PLANNED_FLOW", () => {
  const own = [
    ["kind", "flow"],
    ["severe", 6],
    ["Child", "0.12 m3/h"],
    ["none", 0],
  ];
  const planned = (kind: string, table?: unknown[][]): unknown => plannedFlow([[kind]], table as any[][])[0]![0];

  test("the own table wins, the published flows answer for the rest, case does not matter", () => {
    expect(planned("Severe", own)).toBe(6);
    expect(planned("CRITICAL", own)).toBe(30);
    expect(planned("child", own)).toBeCloseTo(2, 12);
    expect(planned("none", own)).toBe(0);
    expect(planned("severe", own.slice(1))).toBe(6);
  });

  test("newborns, infants, children and bubble CPAP: the most to start with, WHO 2016, second hand", () => {
    // Oxygen therapy for children: start with 0.5 to 1, 1 to 2, 1 to 4 and 5 to 10 L/min.
    expect(["newborn", "INFANT", "child", " bubble cpap "].map((kind) => planned(kind))).toEqual([1, 2, 4, 10]);
    expect(planned("child", own)).not.toBe(4);
    expect(planned("infant", own)).toBe(2);
  });

  test("an unknown kind is refused with the known ones, also one that JavaScript knows", () => {
    for (const kind of ["mild", "constructor", "toString"]) {
      expect(planned(kind, own)).toMatchObject({
        code: "#VALUE!",
        message: expect.stringContaining(
          "enter severe, Child, none, critical, newborn, infant, bubble CPAP, or add it to own_table",
        ),
      });
      expect(planned(kind)).toMatchObject({ code: "#VALUE!", message: expect.stringContaining("or give own_table") });
    }
  });

  test("a blank flow in the own table is refused, not replaced by the published one", () => {
    expect(planned("severe", [["severe", null]])).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("own_table row 1, flow is blank"),
    });
  });

  test("two rows of one kind are refused rather than chosen from", () => {
    expect(
      planned("severe", [
        ["severe", 6],
        ["Severe", 8],
      ]),
    ).toMatchObject({ message: expect.stringContaining("2 times") });
  });

  test("a column of kinds is answered in one call", () => {
    expect(plannedFlow([["severe"], ["critical"]])).toEqual([[10], [30]]);
  });
});

/** Standard pressures [kPa] of ISO 2533:1975, table 5 (geopotential altitude in m). */
const pressures = { 1000: 89.8746, 2000: 79.4952, 3000: 70.1085, 5000: 54.0199 } as const;
/** Inspired oxygen pressure of air [mmHg], 150 at sea level: Samuels, Arch Dis Child 89 (2004) 448, table 1. */
const inspired = { 1000: 132, 2000: 115, 3000: 100, 5000: 75 } as const;
const heights = [1000, 2000, 3000, 5000] as const;

test.each(heights)("SEA_LEVEL_FIO2 and FIO2_TO_SET at %p m, by ISO 2533 and by a published table", (height) => {
  const lessVapour = (pressures[height] - 6.28) / (101.325 - 6.28);
  expect(oneNumber(seaLevelFio2, 0.6, height)).toBeCloseTo(0.6 * lessVapour, 5);
  expect(oneNumber(fio2ToSet, 0.3, height, 1)).toBeCloseTo(0.3 / lessVapour, 5);
  // The table is rounded to 1 mmHg and its air pressures to 1 kPa: 2 %.
  const published = inspired[height] / 150;
  expect(Math.abs(oneNumber(seaLevelFio2, 0.6, height) / (0.6 * published) - 1)).toBeLessThan(0.02);
  expect(Math.abs((oneNumber(fio2ToSet, 0.3, height, 1) * published) / 0.3 - 1)).toBeLessThan(0.02);
});

test("a patient on 0.40 in a cabin at 8000 ft needs 0.551, and is worth 0.290 there if left as it is", () => {
  // 75.262 kPa at 2438.4 m, ISO 2533:1975: 95.045 / 68.982 = 1.37782
  expect(oneNumber(fio2ToSet, 0.4, "8000 ft")).toBeCloseTo(0.4 * 1.37782, 4);
  expect(oneNumber(seaLevelFio2, 0.4, "8000 ft")).toBeCloseTo(0.4 / 1.37782, 4);
});

test("FIO2_TO_SET gives back what SEA_LEVEL_FIO2 takes, and both change nothing at sea level", () => {
  fc.assert(
    fc.property(fc.integer({ min: 21, max: 100 }), fc.integer({ min: 0, max: 11000 }), (percent, height) => {
      const worth = oneNumber(seaLevelFio2, percent / 100, height);
      fc.pre(worth >= 0.21);
      expect(oneNumber(fio2ToSet, worth, height, 1)).toBeCloseTo(percent / 100, 9);
      expect(oneNumber(seaLevelFio2, percent / 100, 0)).toBeCloseTo(percent / 100, 12);
    }),
    { seed: 8 },
  );
});

test("FIO2_TO_SET: more than the source holds is #N/A with what it is worth; never less than air", () => {
  // Pure oxygen at 5000 m: (54.0199 − 6.28) / 95.045 = 0.5023
  expect(errorOf(fio2ToSet, 0.6, 5000, 1)).toMatch(
    /^#N\/A can't be reached: fio2 0.6 takes .* 1\.194.*the source holds 1; unmixed it is worth 0\.502/,
  );
  expect(errorOf(fio2ToSet, 0.95, 0)).toMatch(/#N\/A .*the source holds 0.93/);
  expect(oneNumber(fio2ToSet, 0.93, 0)).toBeCloseTo(0.93, 12);
  expect(errorOf(fio2ToSet, 0.93, 0, 0.9)).toContain("#N/A");
  expect(oneNumber(fio2ToSet, 0.21, -500)).toBe(0.21);
  expect(oneNumber(fio2ToSet, 0.4, -500)).toBeLessThan(0.4);
});

test("JOURNEY_GAS: never less than the planned gas, and times are read", () => {
  expect(oneNumber(journeyGas, 10, "1 h", 1)).toBeCloseTo(600, 9);
  expect(errorOf(journeyGas, 10, 2 / 24)).toContain('looks like a time of day; enter 120 or "2 h"');
  expect(errorOf(journeyGas, 10, 60, 0.5)).toContain("safety must be 1 or more");
});

test("OXYGEN_UPTAKE: twice the mass takes up less than twice the oxygen", () => {
  // 2^0.75
  expect(oneNumber(oxygenUptake, 80) / oneNumber(oxygenUptake, 40)).toBeCloseTo(1.681792831, 8);
  expect(oneNumber(oxygenUptake, "154.3236 lb")).toBeCloseTo(oneNumber(oxygenUptake, 70), 6);
});
