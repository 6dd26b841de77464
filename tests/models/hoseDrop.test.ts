import { frictionFactor } from "../../src/models/hoseDrop";
import { gasViscosity } from "../../src/models/oxygenViscosity";
import { gasDensity } from "../../src/models/oxygen";
import rows from "../reference/vesselsAndHoses.json";

test.each(rows.filter((row) => row.id.startsWith("viscosity")).map((row) => [row.id, row] as const))(
  "%s",
  (_id, row) => {
    const { kelvin, bar } = row.inputs as any;
    expect(Math.abs(gasViscosity(kelvin, gasDensity(bar, kelvin)) * 1e6 - row.expected)).toBeLessThan(row.tolerance);
  },
);

test.each([
  // Read off the Moody chart as textbooks print it; from memory.
  [1e5, 0, 0.018],
  [1e5, 0.001, 0.0222],
  [1e6, 0.01, 0.038],
  [1e4, 0, 0.0309],
] as const)("Moody chart: Re %d, roughness %d of the bore", (reynolds, rough, expected) => {
  expect(Math.abs(frictionFactor(reynolds, rough) / expected - 1)).toBeLessThan(0.01);
});

test("solves its own equation from Re 2300 on, and is laminar below", () => {
  for (const reynolds of [2300, 5000, 1e5, 1e8])
    for (const rough of [0, 1e-4, 0.05]) {
      const root = 1 / Math.sqrt(frictionFactor(reynolds, rough));
      expect(root).toBeCloseTo(-2 * Math.log10(rough / 3.7 + (2.51 * root) / reynolds), 11);
    }
  expect(frictionFactor(2299, 0.05)).toBe(64 / 2299);
});
