import fc from "fast-check";
import { evenly } from "../../evenly";
import { cableDrop } from "../../../src/functions/power/cableDrop";
import reference from "../../reference/electricity.json";

const row = (id: string) => reference.find((each) => each.id === id)!;
const drop = (...numbers: number[]): number =>
  cableDrop(...(numbers.map((each) => [[each]]) as [any, any, any, any]))[0]![0];
/** Area of a circular mil [mm²]: π/4 × (0.0254 mm)². */
const circularMil = (Math.PI / 4) * 0.0254 ** 2;
/** Resistance of a single conductor [Ω/km], from the drop of 1 A through 1 m there and back at a supply of 1000 V. */
const ohmPerKm = (area: number, temperature: number): number => (drop(1, 1, area, 1000, temperature, 1) * 1e6) / 2;

describe("CABLE_DROP", () => {
  it("gives the resistance of solid 10 AWG copper at 75 °C (NEC chapter 9 table 8: 1.21 Ω/kft)", () => {
    const { inputs, expected, tolerance } = row("nec-t8-10solid");
    const ohmPerKft = ohmPerKm((inputs as any).circular_mils * circularMil, 75) * 0.3048;
    expect(Math.abs(ohmPerKft - expected)).toBeLessThanOrEqual(tolerance);
  });

  it.each(["nec-t8-10", "nec-t8-8", "nec-t8-6"])(
    "lies below the printed table of stranded cable by 6 %% at most (%s)",
    (id) => {
      const { inputs, expected } = row(id);
      const ratio = expected / (ohmPerKm((inputs as any).circular_mils * circularMil, 75) * 0.3048);
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(1.06);
    },
  );

  it.each(["iec-c5-4", "iec-c5-6", "iec-c5-10", "iec-c5-16"])(
    "lies below the largest resistance of IEC 60228 class 5 by up to 15 %% (%s)",
    (id) => {
      const { inputs, expected } = row(id);
      const ratio = expected / ohmPerKm((inputs as any).mm2, 20);
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(1.15);
    },
  );

  it("follows the temperature factor of IEC 60228 (0.820 from 75 to 20 °C)", () => {
    const { expected, tolerance } = row("rt-75-kt");
    expect(Math.abs(drop(10, 10, 6, 240, 20) / drop(10, 10, 6, 240, 75) - expected)).toBeLessThanOrEqual(tolerance);
  });

  it("comes within 6 % of a drop worked out with NEC table 8", () => {
    const { inputs, expected } = row("vd-10awg-pct") as any;
    const share = drop(inputs.I_A, inputs.len_m, inputs.circular_mils * circularMil, inputs.V);
    expect(expected / share).toBeGreaterThan(1);
    expect(expected / share).toBeLessThan(1.06);
  });

  it("loses √3/2 as much with three phases", () => {
    expect(drop(20, 30, 10, 400, 75, 3) / drop(20, 30, 10, 400, 75, 1)).toBeCloseTo(0.8660254, 6);
  });

  it("rises with current, length and temperature and falls with area and voltage", () => {
    const some = evenly(1, 20);
    fc.assert(
      fc.property(some, some, some, (current, length, more) => {
        const base = drop(current, length, 10, 400, 50);
        expect(drop(current + more, length, 10, 400, 50)).toBeGreaterThan(base);
        expect(drop(current, length + more, 10, 400, 50)).toBeGreaterThan(base);
        expect(drop(current, length, 10, 400, 50 + more)).toBeGreaterThan(base);
        expect(drop(current, length, 10 + more, 400, 50)).toBeLessThan(base);
        expect(drop(current, length, 10, 400 + more, 50)).toBeLessThan(base);
      }),
    );
  });

  it("refuses two phases and a cable that would lose the whole voltage", () => {
    expect((drop(10, 10, 6, 240, 75, 2) as any).message).toContain("phases must be 1 or 3");
    expect((drop(100, 5000, 1, 240) as any).message).toContain("can't flow");
  });
});
