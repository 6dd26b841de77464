import { about, contentByFactor } from "../../../src/functions/cylinders/contentByFactor";
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

describe("beside the real gas above the reserve, in a cylinder of 244 ft³ at 2200 psi and 70 °F (welding texts), factor 3.14", () => {
  const psi = 0.06894757293168;
  const seventy = (70 - 32) / 1.8;
  /** Gas over water volume, by a correlation of Z fitted apart from the code. */
  const filled = (gaugePsi: number, celsius: number): number => {
    const bar = gaugePsi * psi + 1.01325;
    const kelvin = celsius + 273.15;
    const reference = seventy + 273.15;
    return (
      ((bar / 1.01325) * (reference / kelvin) * correlatedCompressibility(1.01325, reference)) /
      correlatedCompressibility(bar, kelvin)
    );
  };
  const waterVolume = (244 * 28.316846592) / filled(2200, seventy);
  /** Share by which the factor says more than flows out down to 200 psi. */
  const tooMuch = (gaugePsi: number, celsius: number): number =>
    oneNumber(contentByFactor, gaugePsi, "H") / (waterVolume * (filled(gaugePsi, celsius) - filled(200, celsius))) - 1;

  test("the water volume is that of a large cylinder, about 43 L", () => {
    expect(waterVolume).toBeCloseTo(43, 0);
  });

  test.each([
    [2200, 0.0008],
    [1000, 0.0214],
    [550, 0.0377],
    [300, 0.0483],
  ])(
    "at %s psi and 21.1 °C too much by the share %s (computed with CoolProp outside this project)",
    (pressure, share) => {
      expect(tooMuch(pressure, 21.1)).toBeCloseTo(share, 2);
      const real =
        oneNumber(cylinderContent, waterVolume, `${pressure} psi`) - oneNumber(cylinderContent, waterVolume, "200 psi");
      expect(oneNumber(contentByFactor, pressure, "H") / real - 1).toBeCloseTo(share, 3);
    },
  );

  test("the words say as much: nothing when full, 2 % at 1000 psi, 5 % near the reserve, 9 to 13 % at 40 °C", () => {
    expect(about.range).toMatch(
      /nothing too much when full, 2 % at 1000 psi, 5 % near the reserve; with gas at 40 °C 9 to 13 %/,
    );
    const percent = (pressure: number, celsius: number): number => Math.round(tooMuch(pressure, celsius) * 100);
    expect([percent(2200, 21.1), percent(1000, 21.1), percent(210, 21.1)]).toEqual([0, 2, 5]);
    const hot = Array.from({ length: 200 }, (_, i) => percent(210 + i * 10, 40));
    expect([Math.min(...hot), Math.max(...hot)]).toEqual([9, 13]);
  });
});
