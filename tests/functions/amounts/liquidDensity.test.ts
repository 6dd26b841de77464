import fc from "fast-check";
import { liquidDensity } from "../../../src/functions/amounts/liquidDensity";
import { correlatedLiquidDensity } from "../../reference/oxygenCorrelations";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow, gaugeOfKpa } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows: Schmidt & Wagner 1985 evaluated independently; International Fire Code 2018, table G101.2", () => {
  expectRow("o2-rhol-2bar", 1000 * oneNumber(liquidDensity, gaugeOfKpa(200)));
  expectRow("o2-rhol-3bar", 1000 * oneNumber(liquidDensity, gaugeOfKpa(300)));
  expectRow("o2-rhol-10psig", 1000 * oneNumber(liquidDensity, "10 psi"));
  expectRow("o2-rhol-35psig", 1000 * oneNumber(liquidDensity, "35 psi"));
  expectRow("ifc-L-kg", oneNumber(liquidDensity));
});

test("within 0.1 % of the published auxiliary correlation from 0.5 to 25 bar, and falling with pressure", () => {
  fc.assert(
    fc.property(evenly(-0.51325, 23.9), (pressure) => {
      const density = oneNumber(liquidDensity, pressure);
      const kelvin = oneNumber(boilingPoint, pressure) + 273.15;
      expect(Math.abs((1000 * density) / correlatedLiquidDensity(kelvin) - 1)).toBeLessThan(1e-3);
      expect(oneNumber(liquidDensity, pressure + 0.08)).toBeLessThan(density);
    }),
  );
});

test("35 psi, 241.3165 kPa and 2.413165 bar are one pressure (NIST SP 811: 1 psi is 0.068 947 57 bar)", () => {
  const density = oneNumber(liquidDensity, "35 psi");
  expect(oneNumber(liquidDensity, 2.413165)).toBeCloseTo(density, 6);
  expect(oneNumber(liquidDensity, "241.3165 kPa")).toBeCloseTo(density, 6);
});

test("both ends of the range answer, and outside is refused with the range in absolute pressure", () => {
  expect(oneNumber(liquidDensity, -0.51325)).toBeGreaterThan(1.17);
  expect(oneNumber(liquidDensity, 23.98675)).toBeLessThan(0.84);
  expect(errorOf(liquidDensity, -0.52)).toMatch(
    /#VALUE! pressure must be between .*0\.5 to 25 bar absolute.*this is -0\.52/,
  );
  expect(errorOf(liquidDensity, 24)).toMatch(/#VALUE! pressure must be between/);
});
