import fc from "fast-check";
import { hoseDrop } from "../../../src/functions/transferring/hoseDrop";
import { evenly } from "../../evenly";
import rows from "../../reference/vesselsAndHoses.json";
import { errorOf, oneCell, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test.each(rows.filter((row) => row.id.startsWith("hose")).map((row) => [row.id, row.inputs as any] as const))(
  "reference row %s",
  (id, { flow, length, bore, gauge, roughness }) => {
    expectRow(id, oneNumber(hoseDrop, flow, length, bore, gauge, roughness), 5e-3);
  },
);

test("Hagen and Poiseuille by hand, 2 L/min at 1 atm through 3 m of 5 mm: 128·µ·L·Q/(π·D⁴)", () => {
  // Viscosity of oxygen near 21 °C and 1 atm: 20.3 µPa·s (handbook, from memory).
  const pascal = (128 * 20.3e-6 * 3 * (2 / 60000)) / (Math.PI * 0.005 ** 4);
  expect((oneNumber(hoseDrop, 2, 3, 5, 0, 0) * 1e5) / pascal).toBeCloseTo(1, 2);
});

/** Swamee and Jain's explicit friction factor (1976), within 1 to 3 % of Colebrook and White's. */
const swameeJain = (reynolds: number, rough: number): number =>
  0.25 / Math.log10(rough / 3.7 + 5.74 / reynolds ** 0.9) ** 2;

test("gas that expands on its way, in 2000 slices with the ideal gas and Swamee and Jain's factor", () => {
  for (const [flow, length, bore, gauge, roughness] of [
    [100, 10, 6, 4, 0.0015],
    [300, 40, 12, 3, 0.02],
    [30, 20, 6, 1, 0.0015],
  ] as const) {
    const mass = (flow / 60000) * ((101325 * 0.0319988) / (8.314463 * 294.25));
    const diameter = bore / 1000;
    const area = (Math.PI * diameter ** 2) / 4;
    const factor = swameeJain((mass * diameter) / area / 20.4e-6, roughness / bore);
    const inlet = gauge * 1e5 + 101325;
    let pressure = inlet;
    for (let slice = 0; slice < 2000; slice++) {
      const density = (pressure * 0.0319988) / (8.314463 * 294.25);
      pressure -= ((factor * (length / 2000)) / diameter / 2 / density) * (mass / area) ** 2;
    }
    expect(
      Math.abs(oneNumber(hoseDrop, flow, length, bore, gauge, roughness) / ((inlet - pressure) / 1e5) - 1),
    ).toBeLessThan(0.03);
  }
});

test("more with flow, length and roughness, less with bore and pressure", () => {
  fc.assert(
    fc.property(evenly(1, 60), evenly(1, 20), evenly(6, 15), evenly(2, 8), (flow, length, bore, pressure) => {
      const drop = oneNumber(hoseDrop, flow, length, bore, pressure);
      expect(oneNumber(hoseDrop, flow * 1.05, length, bore, pressure)).toBeGreaterThan(drop);
      expect(oneNumber(hoseDrop, flow, length * 1.05, bore, pressure)).toBeGreaterThan(drop);
      expect(oneNumber(hoseDrop, flow, length, bore, pressure, 0.1)).toBeGreaterThanOrEqual(drop);
      expect(oneNumber(hoseDrop, flow, length, bore, pressure + 0.5)).toBeLessThan(drop);
      expect(oneNumber(hoseDrop, flow, length, bore * 2, pressure)).toBeLessThan(drop);
    }),
  );
  expect(oneNumber(hoseDrop, 0, 10, 6)).toBe(0);
  expect(oneNumber(hoseDrop, 60, 0, 6)).toBe(0);
});

test("the defaults are 4 bar and a drawn tube; units are read", () => {
  expect(oneNumber(hoseDrop, 60, 15, 6)).toBe(oneNumber(hoseDrop, 60, 15, 6, 4, 0.0015));
  expect(oneNumber(hoseDrop, 60, "49.2126 ft", "0.23622 in", "58.0151 psi", "1.5 µm")).toBeCloseTo(
    oneNumber(hoseDrop, 60, 15, 6),
    4,
  );
});

test("up to a tenth of the absolute pressure is answered, more is refused and names the bore", () => {
  let answered = 0;
  for (let flow = 100; flow < 200; flow += 0.5) {
    const drop = oneCell(hoseDrop, flow, 20, 6);
    if (typeof drop === "number") answered = drop;
    else {
      expect(errorOf(hoseDrop, flow, 20, 6)).toMatch(/^#VALUE! bore_mm of 6 mm is too narrow/);
      break;
    }
  }
  // 1 − √0.8 of 5.01325 bar
  expect(answered).toBeLessThanOrEqual(0.10557281 * 5.01325);
  expect(answered).toBeGreaterThan(0.1 * 5.01325);
});

test("a wall rougher than a twentieth of the bore, no bore and too high a pressure are refused", () => {
  expect(errorOf(hoseDrop, 60, 15, 6, 4, 0.31)).toMatch(/^#VALUE! roughness_mm of 0.31 mm is more than a twentieth/);
  expect(oneNumber(hoseDrop, 20, 5, 6, 4, 0.3)).toBeGreaterThan(0);
  expect(errorOf(hoseDrop, 60, 15, 0)).toMatch(/#VALUE! bore_mm must be more than 0 mm/);
  expect(errorOf(hoseDrop, 60, 15, 6, 301)).toMatch(/#VALUE! pressure must be between -0.51325 and 300.31175/);
  expect(errorOf(hoseDrop, "90 L/h", 15, 6)).toMatch(/#VALUE! flow "90 L\/h" is a make rate/);
  // Gas: 15 bar and more need no unit, as in a vessel of liquid.
  expect(oneNumber(hoseDrop, 60, 15, 6, 22)).toBeGreaterThan(0);
});
