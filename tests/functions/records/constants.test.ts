import { constants } from "../../../src/functions/records/constants";
import { records } from "../plan/planCells";

const rows = records(constants());
const value = (name: string): unknown => rows.find((row) => row.name === name)?.value;

test("every row has a name of its own, a value and a source", () => {
  expect(constants()[0]).toEqual(["name", "value", "unit", "source"]);
  expect(new Set(rows.map((row) => row.name)).size).toBe(rows.length);
  for (const row of rows) {
    expect(["number", "boolean", "string"]).toContain(typeof row.value);
    expect(row.source.length).toBeGreaterThan(5);
    expect(typeof row.unit).toBe("string");
  }
});

// NIST SP 811 (2008), appendix B.8, exact factors, from the inch, the pound and standard gravity.
test("units are NIST's exact ones", () => {
  expect(value("foot")).toBe(0.3048);
  expect(value("pound")).toBe(0.45359237);
  expect(value("US gallon")).toBeCloseTo((231 * 2.54 ** 3) / 1000, 12);
  expect(value("cubic foot")).toBeCloseTo(3.048 ** 3, 12);
  expect(value("pound per square inch")).toBeCloseTo((0.45359237 * 9.80665) / 0.0254 ** 2 / 1e5, 15);
});

// Schmidt & Wagner 1985; ISO 2533:1975; World Meteorological Organization, archive of weather and climate extremes.
test("published constants", () => {
  expect(value("standard atmosphere")).toBe(1.01325);
  expect(value("critical temperature of oxygen")).toBe(154.581);
  expect(value("critical pressure of oxygen")).toBe(5043);
  expect(value("molar mass of oxygen")).toBe(31.9988);
  expect(value("warmest air (VALUE_CHECK)")).toBe(56.7);
  expect(value("coldest air (VALUE_CHECK)")).toBe(-89.2);
});

test("the planning defaults the trade's rules of thumb give: 25 L for a 20 L fill, empty in 8 days, 3 h to liquid, 93 % purity", () => {
  expect(value("draw_ratio")).toBe(25 / 20);
  expect([value("empty_days"), value("start_delay"), value("source_purity")]).toEqual([8, 3, 0.93]);
});
