import fc from "fast-check";
import { evenly } from "../../evenly";
import { generatorDerated } from "../../../src/functions/power/generatorDerated";
import reference from "../../reference/electricity.json";

const left = (...numbers: (number | string)[]): any =>
  generatorDerated(...(numbers.map((each) => [[each]]) as [any, any, any, any, any]))[0]![0];
const row = (id: string) => reference.find((each) => each.id === id)!;

describe("GENERATOR_DERATED", () => {
  it.each([
    ["alt-derate-altern", [1, 2000, 20, 0.018, 0, 1000]],
    ["temp-derate-altern", [1, 0, 50, 0, 0.03, 300, 40]],
    ["engine-derate-3p5", [1, 2000, 20, 0.035, 0, 150]],
  ] as const)("agrees with %s", (id, numbers) => {
    const { expected, tolerance } = row(id);
    expect(Math.abs(left(...numbers) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it("never rises with altitude or temperature, and stays between 0 and the rated power", () => {
    const altitude = evenly(-500, 10000);
    const temperature = evenly(-60, 79);
    const loss = evenly(0, 1);
    fc.assert(
      fc.property(altitude, temperature, loss, loss, (height, degrees, a, b) => {
        const here = left(20, height, degrees, a, b);
        expect(here).toBeGreaterThanOrEqual(0);
        expect(here).toBeLessThanOrEqual(20);
        expect(left(20, height + 500, degrees, a, b)).toBeLessThanOrEqual(here);
        expect(left(20, height, degrees + 1, a, b)).toBeLessThanOrEqual(here);
      }),
    );
  });

  it("is 0, not positive again, where both losses pass the whole", () => {
    expect(left(20, 11000, 80, 1, 1)).toBe(0);
  });

  it("reads feet and °F", () => {
    expect(left(20, "5000 ft", "95 °F", 0.035, 0.02)).toBeCloseTo(left(20, 1524, 35, 0.035, 0.02), 9);
  });
});
