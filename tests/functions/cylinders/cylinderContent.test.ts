import fc from "fast-check";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { correlatedCompressibility } from "../../reference/oxygenCorrelations";
import { defaults } from "../../../src/models/defaults";
import { hotGas } from "../../../src/models/cylinder";
import rows from "../../reference/cylinders.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

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
    fc.property(evenly(-0.5, 300), evenly(-40, 60), (pressure, t) => {
      const bar = pressure + 1.01325;
      const kelvin = t + 273.15;
      const byCorrelation = bar / (kelvin * correlatedCompressibility(bar, kelvin)) / reference;
      expect(Math.abs(oneNumber(cylinderContent, 1, pressure, t) / byCorrelation - 1)).toBeLessThan(0.002);
    }),
  );
});

test("holds more than an ideal gas would at filling pressures, by 7 % at 150 bar and 15 °C (ideal: 7452 L)", () => {
  expect((oneNumber(cylinderContent, 50, 150, 15) / from15C / 7452 - 1) * 100).toBeCloseTo(7.6, 0);
});

test("rises with pressure, falls with temperature, in proportion to volume", () => {
  fc.assert(
    fc.property(evenly(1, 299), evenly(-40, 59), (pressure, t) => {
      const content = oneNumber(cylinderContent, 10, pressure, t);
      expect(oneNumber(cylinderContent, 10, pressure + 1, t)).toBeGreaterThan(content);
      expect(oneNumber(cylinderContent, 10, pressure, t + 1)).toBeLessThan(content);
      expect(oneNumber(cylinderContent, 30, pressure, t)).toBeCloseTo(3 * content, 6);
    }),
  );
});

test("psi, kPa and MPa are read as gauge (NIST SP 811); psi entered as bar is refused", () => {
  expect(oneNumber(cylinderContent, 10, "2000 psi")).toBeCloseTo(oneNumber(cylinderContent, 10, 137.8951459), 5);
  expect(oneNumber(cylinderContent, 10, "15 MPa")).toBeCloseTo(oneNumber(cylinderContent, 10, 150), 9);
  expect(errorOf(cylinderContent, 10, 2015)).toMatch(/#VALUE! pressure must be between -0\.51325 and 300\.31175 bar/);
});

test("a pressure out of range that would be in it as psi says how to enter psi, and only then", () => {
  expect(errorOf(cylinderContent, 10, 2015)).toMatch(/this is 2015 \(if that is in psi, enter "2015 psi"\)$/);
  expect(errorOf(cylinderContent, 10, 5000)).toMatch(/this is 5000$/);
  expect(errorOf(cylinderContent, 10, "2015 bar")).toMatch(/this is 2015$/);
});

test("a gas content in place of the water volume is refused with the question; 250 L pass; 0 is refused without it", () => {
  expect(errorOf(cylinderContent, "244 ft3", "2200 psi")).toMatch(
    /#VALUE! water_volume must be more than 0 and at most 250 L; this is 6909\.\d+: is this the gas content\?.*stamped/,
  );
  expect(errorOf(cylinderContent, "6.8 m3", 150)).toMatch(/this is 6800: is this the gas content\?/);
  expect(errorOf(cylinderContent, 251, 150)).toMatch(/is this the gas content\?/);
  expect(errorOf(cylinderContent, 0, 150)).toMatch(/more than 0 and at most 250 L; this is 0$/);
  expect(oneNumber(cylinderContent, 250, 0)).toBeCloseTo(250, 9);
});

test("0.69 water volumes are left in a cylinder that stands open at 3000 m (ideal gas law: 0.7011/1.01325 bar)", () => {
  expect(oneNumber(cylinderContent, 50, 0.7011 - 1.01325) / 50).toBeCloseTo(0.7011 / 1.01325, 3);
});

describe("the words on hot gas, against a correlation of Z fitted apart from the code", () => {
  /** Density over a constant. */
  const density = (gauge: number, celsius: number): number => {
    const bar = gauge + 1.01325;
    return bar / ((celsius + 273.15) * correlatedCompressibility(bar, celsius + 273.15));
  };
  test.each(
    [...hotGas.matchAll(/(\d+) % (?:where it is|at) (\d+) °C/g)].map(([, percent, t]) => [Number(t), Number(percent)]),
  )("at %s °C by up to %s %%", (celsius, percent) => {
    let most = 0;
    for (let pressure = 5; pressure <= 298; pressure++)
      most = Math.max(most, density(pressure, defaults.temperature.value) / density(pressure, celsius) - 1);
    expect(Math.round(most * 100)).toBe(percent);
  });
  test("name three temperatures and the default", () => {
    expect(hotGas.match(/ % /g)).toHaveLength(3);
    expect(hotGas).toContain(`reckoned at ${defaults.temperature.value} °C`);
  });
  test("50 L at 150 bar and 40 °C, reckoned without the temperature, are 9.0 % too many", () => {
    expect(oneNumber(cylinderContent, 50, 150) / oneNumber(cylinderContent, 50, 150, 40) - 1).toBeCloseTo(0.0899, 3);
    expect(density(150, 21.1) / density(150, 40) - 1).toBeCloseTo(0.0899, 2);
  });
});
