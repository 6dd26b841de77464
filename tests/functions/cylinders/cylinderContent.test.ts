import fc from "fast-check";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { correlatedCompressibility } from "../../reference/oxygenCorrelations";
import rows from "../../reference/cylinders.json";
import { errorOf, oneNumber } from "../oneCell";

const row = (id: string) => rows.find((each) => each.id === id)!;
/** Gas density at 70 °F over that at 15 °C, both 1 atm: Schmidt & Wagner 1985, computed outside this project. */
const from15C = 1.354364 / 1.32614;

test.each(["cont-J", "cont-50-150", "cont-50-200"])(
  "%s: Schmidt & Wagner 1985, computed outside this project with CoolProp",
  (id) => {
    const { inputs, expected, tolerance } = row(id) as { inputs: any; expected: number; tolerance: number };
    expect(
      Math.abs(oneNumber(cylinderContent, inputs.V_L, inputs.p_bar_g, inputs.T_C) - expected * from15C),
    ).toBeLessThanOrEqual(tolerance);
  },
);

test("within 0.2 % of a correlation of Z fitted apart from the code, everywhere in range", () => {
  const reference = 1.01325 / (294.25 * correlatedCompressibility(1.01325, 294.25));
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 300, noNaN: true }),
      fc.double({ min: -40, max: 60, noNaN: true }),
      (pressure, t) => {
        const bar = pressure + 1.01325;
        const kelvin = t + 273.15;
        const byCorrelation = bar / (kelvin * correlatedCompressibility(bar, kelvin)) / reference;
        expect(Math.abs(oneNumber(cylinderContent, 1, pressure, t) / byCorrelation - 1)).toBeLessThan(0.002);
      },
    ),
  );
});

test("holds more than an ideal gas would at filling pressures, by 7 % at 150 bar and 15 °C (ideal: 7452 L)", () => {
  expect((oneNumber(cylinderContent, 50, 150, 15) / from15C / 7452 - 1) * 100).toBeCloseTo(7.6, 0);
});

test("rises with pressure, falls with temperature, in proportion to volume", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 299, noNaN: true }),
      fc.double({ min: -40, max: 59, noNaN: true }),
      (pressure, t) => {
        const content = oneNumber(cylinderContent, 10, pressure, t);
        expect(oneNumber(cylinderContent, 10, pressure + 1, t)).toBeGreaterThan(content);
        expect(oneNumber(cylinderContent, 10, pressure, t + 1)).toBeLessThan(content);
        expect(oneNumber(cylinderContent, 30, pressure, t)).toBeCloseTo(3 * content, 6);
      },
    ),
  );
});

test("psi, kPa and MPa are read as gauge (NIST SP 811); psi entered as bar is refused", () => {
  expect(oneNumber(cylinderContent, 10, "2000 psi")).toBeCloseTo(oneNumber(cylinderContent, 10, 137.8951459), 5);
  expect(oneNumber(cylinderContent, 10, "15 MPa")).toBeCloseTo(oneNumber(cylinderContent, 10, 150), 9);
  expect(errorOf(cylinderContent, 10, 2015)).toMatch(/#VALUE! pressure must be between 0 and 300 bar/);
});

test("a pressure out of range that would be in it as psi says how to enter psi, and only then", () => {
  expect(errorOf(cylinderContent, 10, 2015)).toMatch(/this is 2015 \(if that is in psi, enter "2015 psi"\)$/);
  expect(errorOf(cylinderContent, 10, 5000)).toMatch(/this is 5000$/);
  expect(errorOf(cylinderContent, 10, "2015 bar")).toMatch(/this is 2015$/);
});
