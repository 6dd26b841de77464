import { contentByFactor } from "../../../src/functions/cylinders/contentByFactor";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { correlatedCompressibility } from "../../reference/oxygenCorrelations";
import { errorOf, oneNumber } from "../oneCell";

test("worked examples of teaching texts: 288 L of a D at 2000 psi; 280 L of an E at 1000 psi without reserve", () => {
  expect(oneNumber(contentByFactor, 2000, 0.16)).toBeCloseTo(288, 9);
  expect(oneNumber(contentByFactor, 1000, 0.28, 0)).toBeCloseTo(280, 9);
});

test("an M needs 392 psi for 300 L above 200 psi (one-page cylinder guidance of the Virginia emergency-medical agency, 12VAC5-31-860)", () => {
  expect(oneNumber(contentByFactor, 392, "M")).toBeLessThanOrEqual(300);
  expect(oneNumber(contentByFactor, 393, "M")).toBeGreaterThanOrEqual(300);
});

test("letters stand for the handbook factors D 0.16, E 0.28, M 1.56, H and K 3.14 of teaching texts", () => {
  const factors: [string, number][] = [
    ["D", 0.16],
    ["e", 0.28],
    [" M ", 1.56],
    ["H", 3.14],
    ["K", 3.14],
  ];
  for (const [letter, factor] of factors)
    expect(oneNumber(contentByFactor, 1200, letter)).toBeCloseTo(1000 * factor, 9);
  expect(errorOf(contentByFactor, 1200, "Q")).toMatch(/#VALUE! factor "Q" is not a number; .*size D, E, M, H, K/);
  expect(oneNumber(contentByFactor, 1200, "2.32060384 L/bar")).toBeCloseTo(160, 5);
});

test("a pressure in bar is converted (NIST SP 811); at the reserve nothing is left", () => {
  expect(oneNumber(contentByFactor, "137.8951459 bar", "E")).toBeCloseTo(504, 5);
  expect(oneNumber(contentByFactor, 200, "E")).toBe(0);
  expect(oneNumber(contentByFactor, 0, "E")).toBe(0);
});

describe("beside the real gas of a cylinder of 244 ft³ at 2200 psi and 70 °F (welding texts), factor 3.14", () => {
  const psi = 0.06894757293168;
  const kelvin = (70 - 32) / 1.8 + 273.15;
  /** Gas over water volume, by a correlation of Z fitted apart from the code. */
  const filled = (gaugePsi: number): number => {
    const bar = gaugePsi * psi + 1.01325;
    return (bar / 1.01325) * (correlatedCompressibility(1.01325, kelvin) / correlatedCompressibility(bar, kelvin));
  };
  const waterVolume = (244 * 28.316846592) / filled(2200);
  const lessThanReal = (gaugePsi: number, keepPsi: number): number =>
    1 -
    oneNumber(contentByFactor, gaugePsi, "H", keepPsi) /
      oneNumber(cylinderContent, waterVolume, `${gaugePsi} psi`, "70 °F");

  test("the water volume is that of a large cylinder, about 43 L", () => {
    expect(waterVolume).toBeCloseTo(43, 0);
  });

  test.each([
    [2200, 0.0911],
    [2000, 0.0996],
    [1500, 0.1282],
    [1000, 0.1881],
    [500, 0.3884],
  ])(
    "at %s psi the factor with its 200 psi reserve says less by the share %s (by the correlation)",
    (pressure, share) => {
      expect(lessThanReal(pressure, 200)).toBeCloseTo(share, 2);
      expect(lessThanReal(pressure, 200)).toBeGreaterThan(0.09);
    },
  );

  test("the caution is the reserve: without it the straight line says up to 2 % too much", () => {
    expect(lessThanReal(2200, 0)).toBeCloseTo(0, 2);
    expect(lessThanReal(500, 0)).toBeCloseTo(-0.0193, 2);
    for (let pressure = 200; pressure <= 2200; pressure += 100)
      expect(lessThanReal(pressure, 0)).toBeGreaterThan(-0.021);
  });
});
