import fc from "fast-check";
import { estimatedDraw } from "../../../src/functions/transferring/estimatedDraw";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference row: 25 L drawn at 35 psi put 20.88 L into a cold vessel", () => {
  // The draw is linear in the fill.
  const perLitre = oneNumber(estimatedDraw, 1, "35 psi", 0, "stainless");
  expectRow("transfer-cold", 25 / perLitre);
  expect(oneNumber(estimatedDraw, 20.88129, "35 psi", 0, "copper")).toBeCloseTo(25, 3);
});

test("reference row: 25 L drawn at 22 psi with 8 kg of stainless metal and all of the vapour's cold put 20.16 L into it", () => {
  // The row's 0.264 kg/kg is the whole-cold value of stainless; the draw is linear in the fill.
  const draw = (fill: number) => oneNumber(estimatedDraw, fill, "22 psi", 8, "stainless", 21.1, 0, 1);
  expectRow("transfer-warm", (25 - draw(0)) / (draw(1) - draw(0)));
});

test("the rule of thumb, about 25 L for 20 L (common practice, no source), lies between a cold vessel and 10 kg of warm metal", () => {
  for (const pressure of [1, "22 psi", "35 psi"]) {
    expect(oneNumber(estimatedDraw, 20, pressure, 0, "stainless")).toBeLessThan(25);
    expect(oneNumber(estimatedDraw, 20, pressure, 10, "stainless")).toBeGreaterThan(25);
  }
});

test("more from a higher pressure, with more metal or a warmer one", () => {
  fc.assert(
    fc.property(evenly(1, 200), evenly(0.1, 5), evenly(0.1, 50), evenly(-100, 50), (fill, pressure, mass, celsius) => {
      const draw = oneNumber(estimatedDraw, fill, pressure, mass, "copper", celsius);
      expect(draw).toBeGreaterThan(fill);
      expect(oneNumber(estimatedDraw, fill, pressure + 0.5, mass, "copper", celsius)).toBeGreaterThan(draw);
      expect(oneNumber(estimatedDraw, fill, pressure, mass + 1, "copper", celsius)).toBeGreaterThan(draw);
      expect(oneNumber(estimatedDraw, fill, pressure, mass, "copper", celsius + 5)).toBeGreaterThan(draw);
      expect(oneNumber(estimatedDraw, fill, pressure, mass, "copper", celsius, 0, 1)).toBeLessThan(draw);
    }),
  );
});

test("between equal pressures a cold fill draws what it fills; out of range is refused", () => {
  expect(oneNumber(estimatedDraw, 20, 1.5, 0, "copper", 21.1, 1.5)).toBeCloseTo(20, 9);
  expect(errorOf(estimatedDraw, 20, 30, 0, "copper")).toMatch(/#VALUE! from_pressure must be between/);
  expect(errorOf(estimatedDraw, 20, 1, 0, "copper", 21.1, -1)).toMatch(/#VALUE! to_pressure must be between/);
});

test("a fill from a lower pressure into a higher one is refused: less would be drawn than filled", () => {
  expect(errorOf(estimatedDraw, 20, 0, 0, "copper", 21.1, 2)).toBe(
    "#VALUE! to_pressure of 2 bar is above from_pressure of 0 bar; liquid doesn't flow to a higher pressure: check which is which",
  );
});
