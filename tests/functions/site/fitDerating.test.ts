import fc from "fast-check";
import { deratedRate } from "../../../src/functions/site/deratedRate";
import { fitDerating } from "../../../src/functions/site/fitDerating";
import { CellError } from "../../../src/cells/cellValues";
import reference from "../../reference/deratingFit.json";
import { oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const fit = (
  altitudes: readonly unknown[],
  temperatures: readonly unknown[],
  rates: readonly unknown[],
): [number, number, number] =>
  fitDerating(column(altitudes), column(temperatures), column(rates))[1] as [number, number, number];

test(`scattered runs: ${reference.source}`, () => {
  const [rated, loss, residual] = fit(reference.altitudes, reference.temperatures, reference.rates);
  expect(rated / reference.ratedRate).toBeCloseTo(1, 5);
  expect(loss).toBeCloseTo(reference.lossPerDegree, 6);
  expect(residual).toBeCloseTo(reference.residual, 6);
});

test("exact runs give rate and loss back, worked by hand with the pressures printed in ISO 2533:1975, table 5", () => {
  // 5000 m: 540.199 mbar; 1013.25 mbar at sea level; 3 L/h rated, 1.5 % a degree.
  const share = 540.199 / 1013.25;
  const [rated, loss, residual] = fit([0, 5000, 5000], [21.1, 31.1, 11.1], [3, 3 * share * 0.85, 3 * share]);
  expect(rated).toBeCloseTo(3, 4);
  expect(loss).toBeCloseTo(0.015, 5);
  expect(residual).toBeLessThan(1e-5);
});

test("DERATED_RATE's runs give their figures back", () => {
  fc.assert(
    fc.property(evenly(0.5, 20), evenly(0, 0.03), (rated, loss) => {
      const altitudes = [0, 300, 1500, 2500];
      const temperatures = [15, 25, 35, 45];
      const rates = altitudes.map((altitude, i) => oneNumber(deratedRate, rated, altitude, temperatures[i], loss));
      const [foundRate, foundLoss, residual] = fit(altitudes, temperatures, rates);
      expect(foundRate / rated).toBeCloseTo(1, 7);
      expect(foundLoss).toBeCloseTo(loss, 7);
      expect(residual).toBeLessThan(1e-7);
    }),
  );
});

test("one run, and cool runs, keep 0.01; the residual of two cool runs is half their gap in ln(rate)", () => {
  expect(fit([0], [41.1], [1.6])).toEqual([expect.closeTo(2, 9), 0.01, expect.closeTo(0, 9)]);
  const [rated, loss, residual] = fit([0, 0], [10, 15], [1, 4]);
  expect(rated).toBeCloseTo(2, 9);
  expect(loss).toBe(0.01);
  expect(residual).toBeCloseTo(Math.log(2), 9);
});

test("takes its own header texts, and refuses lists of unequal length with both named", () => {
  const runs = fitDerating(
    column(["altitude", 0, 0]),
    column(["temperature", 20, 31.1]),
    column(["rate", 2, 1.8]),
  )[1] as number[];
  expect(runs[0]).toBeCloseTo(2, 9);
  expect(runs[1]).toBeCloseTo(0.01, 9);
  const uneven = fitDerating(column([0, 0]), column([20, 30]), column([2]))[0]![0] as CellError;
  expect(uneven.message).toMatch(/altitudes has 2 and rates has 1 cells/);
  const blank = fitDerating(column([0, 0, 0]), column([20, null, 25]), column([2, 1, 2]))[0]![0] as CellError;
  expect(blank.message).toMatch(/temperatures row 2 is blank/);
});
