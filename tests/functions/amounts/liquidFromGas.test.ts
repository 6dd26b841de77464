import { liquidFromGas } from "../../../src/functions/amounts/liquidFromGas";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";

test("reference rows: International Fire Code 2018, table G101.2; Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("ifc-m3-L", oneNumber(liquidFromGas, "1 m3", 0, "70 °F"));
  expectRow("ifc-100scf-gal", oneNumber(liquidFromGas, "100 ft3", 0, "70 °F") / 3.785411784);
  expectRow("o2-Lmin-to-Lh", oneNumber(liquidFromGas, 11 * 60, 0, 21.1111));
});

test("1 m³, 1000 L and 35.3147 ft³ are one amount (NIST SP 811)", () => {
  const litres = oneNumber(liquidFromGas, 1000);
  expect(oneNumber(liquidFromGas, "1 m3")).toBeCloseTo(litres, 12);
  expect(oneNumber(liquidFromGas, "35.3146667 ft3")).toBeCloseTo(litres, 6);
});

test("a negative amount is refused", () => {
  expect(errorOf(liquidFromGas, -1)).toMatch(/#VALUE! gas must be 0 L or more/);
});
