import { expansionRatio } from "../../../src/functions/amounts/expansionRatio";
import { gasDensity } from "../../../src/functions/amounts/gasDensity";
import { liquidDensity } from "../../../src/functions/amounts/liquidDensity";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference rows: Schmidt & Wagner 1985 evaluated independently; International Fire Code 2018, table G101.2", () => {
  expectRow("o2-exp-20C", oneNumber(expansionRatio, 0, 20));
  expectRow("o2-exp-70F", oneNumber(expansionRatio, 0, "70 °F"));
  expectRow("ifc-L-m3", oneNumber(expansionRatio) / 1000);
  // Starts from the rounded 861.
  expectRow("amt-09", oneNumber(expansionRatio, 0, 15), 1e-3);
});

test("the ratio of the two densities, each on its own side", () => {
  const ratio = (1000 * oneNumber(liquidDensity, 1.5)) / oneNumber(gasDensity, 4, 10);
  expect(oneNumber(expansionRatio, 1.5, 10, 4)).toBeCloseTo(ratio, 9);
  expect(errorOf(expansionRatio, 0, 21.1, 301)).toMatch(/#VALUE! gas_pressure/);
});
