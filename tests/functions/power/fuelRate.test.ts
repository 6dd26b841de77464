import fc from "fast-check";
import { evenly } from "../../evenly";
import { fuelRate } from "../../../src/functions/power/fuelRate";
import reference from "../../reference/electricity.json";

const rate = (load: unknown, unit: unknown, points: unknown[], fuels: unknown[]): any =>
  fuelRate(
    [[load]],
    [[unit]],
    points.map((each) => [each]),
    fuels.map((each) => [each]),
  )[0]![0];
const row = (id: string): any => reference.find((each) => each.id === id)!;
const points = [0.25, 0.5, 0.75, 1];
const fuels = [2.3, 3.4, 4.9, 6.1];

describe("FUEL_RATE", () => {
  it("agrees with the 8 kW row of a published chart at 5 kW", () => {
    const { inputs, expected, tolerance } = row("mix-05");
    const got = rate(
      inputs.load,
      inputs.unit,
      inputs.points,
      inputs.gal_h.map((each: number) => `${each} gal/h`),
    );
    expect(Math.abs(got - expected)).toBeLessThanOrEqual(tolerance);
  });

  it("agrees with a 20 kW row at 0.6 of its power", () => {
    const { inputs, expected, tolerance } = row("fuel-interp");
    expect(
      Math.abs(rate(inputs.load_frac * inputs.rated_kW, inputs.rated_kW, inputs.points, inputs.L_h) - expected),
    ).toBeLessThanOrEqual(tolerance);
  });

  it("gives the maker's figure at each of the maker's points, whatever their order", () => {
    points.forEach((point, index) => {
      expect(rate(point * 20, 20, points, fuels)).toBeCloseTo(fuels[index]!, 12);
      expect(rate(point * 20, 20, [...points].reverse(), [...fuels].reverse())).toBeCloseTo(fuels[index]!, 12);
    });
  });

  it("lies between its neighbours and never falls with the load", () => {
    const load = evenly(5, 20);
    fc.assert(
      fc.property(load, load, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(rate(less, 20, points, fuels)).toBeLessThanOrEqual(rate(more, 20, points, fuels) + 1e-12);
        expect(rate(a, 20, points, fuels)).toBeGreaterThanOrEqual(2.3);
        expect(rate(a, 20, points, fuels)).toBeLessThanOrEqual(6.1);
      }),
    );
  });

  it("refuses loads outside the points, but not by floating noise", () => {
    expect(rate(4.9, 20, points, fuels).message).toContain("outside load_points");
    expect(rate(20.1, 20, points, fuels).message).toContain("load of 20.1 kW is 1.005 of unit_power");
    expect(rate(0.3 * 3, 0.9, points, fuels)).toBeCloseTo(6.1, 9);
    expect(rate(0.1 + 0.2, 0.3, points, fuels)).toBeCloseTo(6.1, 9);
  });

  it("reads points of 110 %, and takes 50 for a percent without its sign", () => {
    expect(rate(11, 10, [0.5, "110%"], [1, 2])).toBeCloseTo(2, 12);
    expect(rate(5, 8, [50, 75, 100], [1, 2, 3]).message).toContain("50 looks like a percent: enter 50% or 0.5");
  });

  it("refuses lists that don't go together", () => {
    expect(rate(10, 20, points, [1, 2]).message).toContain("load_points has 4 and fuel_points has 2");
    expect(rate(10, 20, [1], [6.1]).message).toContain("two or more");
    expect(rate(10, 20, [0.5, 0.5, 1], [1, 2, 3]).message).toContain("twice");
    expect(rate(10, 20, points, [...fuels].reverse()).message).toContain("falls from 6.1 to 4.9");
  });
});
