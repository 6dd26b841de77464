import fc from "fast-check";
import { airParts } from "../../../src/functions/patients/airParts";
import { cannulaFio2 } from "../../../src/functions/patients/cannulaFio2";
import { fio2AtAltitude } from "../../../src/functions/patients/fio2AtAltitude";
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
  "cabin-8000": ({ fio2, altitude }) => oneNumber(fio2AtAltitude, fio2, altitude),
});

test("the mixing functions undo each other and keep the oxygen", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 200, noNaN: true }),
      fc.double({ min: 0.3, max: 1, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (total, purity, way) => {
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

  test("an unknown kind is refused with the known ones, also one that JavaScript knows", () => {
    for (const kind of ["mild", "constructor", "toString"]) {
      expect(planned(kind, own)).toMatchObject({
        code: "#VALUE!",
        message: expect.stringContaining("enter severe, Child, none, critical, or add it to own_table"),
      });
    }
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

test("FIO2_AT_ALTITUDE: sea level changes nothing, higher is less, by the alveolar gas equation's inspired term", () => {
  expect(oneNumber(fio2AtAltitude, 0.5, 0)).toBeCloseTo(0.5, 12);
  // ISO 2533 table: 2000 m is 79.4952 kPa
  expect(oneNumber(fio2AtAltitude, 0.21, 2000)).toBeCloseTo((0.21 * (79.4952 - 6.28)) / (101.325 - 6.28), 5);
  expect(oneNumber(fio2AtAltitude, 0.21, "3000 ft")).toBeGreaterThan(oneNumber(fio2AtAltitude, 0.21, "3001 ft"));
});

test("JOURNEY_GAS: never less than the planned gas, and times are read", () => {
  expect(oneNumber(journeyGas, 10, "1 h", 1)).toBeCloseTo(600, 9);
  expect(errorOf(journeyGas, 10, 60, 0.5)).toContain("safety must be 1 or more");
});

test("OXYGEN_UPTAKE: twice the mass takes up less than twice the oxygen", () => {
  // 2^0.75
  expect(oneNumber(oxygenUptake, 80) / oneNumber(oxygenUptake, 40)).toBeCloseTo(1.681792831, 8);
  expect(oneNumber(oxygenUptake, "154.3236 lb")).toBeCloseTo(oneNumber(oxygenUptake, 70), 6);
});
