import fc from "fast-check";
import { coolDownLoss } from "../../../src/functions/transferring/coolDownLoss";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

// The rows carry the 3 % of the polynomials in their tolerance.
const polynomials = 0.04;

test("reference rows: polynomials of NIST Cryogenic Material Properties with oxygen's heat, integrated independently", () => {
  expectRow("cool-O2-SS304-latent", oneNumber(coolDownLoss, 1, "stainless", "70 °F"), polynomials);
  expectRow("cool-O2-Al6061-vapour", oneNumber(coolDownLoss, 1, "aluminium", "70 °F", 1), polynomials);
});

test("published nitrogen tables (PMC9017651, table 2, 300 to 77 K), scaled: copper takes less than stainless, which takes less than half of aluminium's and half as much again", () => {
  const [copper, stainless, aluminium] = ["copper", "stainless", "aluminium"].map((metal) =>
    oneNumber(coolDownLoss, 1, metal, "300 K"),
  ) as [number, number, number];
  expect(copper / stainless).toBeCloseTo(0.37 / 0.43, 1);
  expect(aluminium / stainless).toBeCloseTo(0.83 / 0.43, 1);
});

test("in proportion to the mass, less with the vapour's cold, more from a warmer start", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("stainless", "aluminium", "copper"),
      evenly(0.1, 500),
      evenly(-150, 59),
      evenly(0, 0.9),
      (metal, mass, celsius, use) => {
        const loss = oneNumber(coolDownLoss, mass, metal, celsius, use);
        expect(oneNumber(coolDownLoss, 2 * mass, metal, celsius, use) / loss).toBeCloseTo(2, 9);
        expect(oneNumber(coolDownLoss, mass, metal, celsius, use + 0.1)).toBeLessThan(loss);
        expect(oneNumber(coolDownLoss, mass, metal, celsius + 1, use)).toBeGreaterThan(loss);
      },
    ),
  );
});

test("spellings, pounds and what is not listed", () => {
  expect(oneNumber(coolDownLoss, 10, "Aluminum")).toBe(oneNumber(coolDownLoss, 10, "aluminium"));
  expect(oneNumber(coolDownLoss, "10 lb", "stainless steel")).toBeCloseTo(
    0.45359237 * oneNumber(coolDownLoss, 10, "stainless"),
    9,
  );
  expect(oneNumber(coolDownLoss, 10, "copper", "70 °F")).toBeCloseTo(
    oneNumber(coolDownLoss, 10, "copper", 21.111111),
    6,
  );
  expect(errorOf(coolDownLoss, 10, "iron")).toBe('#VALUE! metal is "iron"; enter stainless, aluminium or copper');
  expect(errorOf(coolDownLoss, 10, "copper", 61)).toMatch(
    /#VALUE! start_temperature must be between -273.15 and 60 °C/,
  );
});
