import fc from "fast-check";
import { gasFromLiquid } from "../../../src/functions/amounts/gasFromLiquid";
import { liquidFromGas } from "../../../src/functions/amounts/liquidFromGas";
import { errorOf, oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";
import { evenly } from "../../evenly";

const cubicFoot = 28.316846592;

test("reference rows: International Fire Code 2018, table G101.2; Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("ifc-L-m3", oneNumber(gasFromLiquid, 1) / 1000);
  expectRow("ifc-L-scf", oneNumber(gasFromLiquid, 1, 0, "70 °F") / cubicFoot);
  expectRow("ifc-gal-scf", oneNumber(gasFromLiquid, "1 gal", 0, "70 °F") / cubicFoot);
  expectRow("o2-Lh-to-Lmin", oneNumber(gasFromLiquid, 1, 0, 21.1111) / 60);
  expectRow("vent-gas", oneNumber(gasFromLiquid, 4, 0, 21.1111) / 1440);
});

test("LIQUID_FROM_GAS is its inverse at any pressure and temperature", () => {
  fc.assert(
    fc.property(
      evenly(0.01, 1e6),
      evenly(-0.5, 14.9),
      evenly(-40, 60),
      evenly(-0.5, 300),
      (liquid, pressure, celsius, gasPressure) => {
        const gas = oneNumber(gasFromLiquid, liquid, pressure, celsius, gasPressure);
        expect(oneNumber(liquidFromGas, gas, pressure, celsius, gasPressure) / liquid).toBeCloseTo(1, 12);
      },
    ),
  );
});

test("warm vessels hold lighter liquid, so a litre gives less gas", () => {
  expect(oneNumber(gasFromLiquid, 1, "35 psi")).toBeLessThan(oneNumber(gasFromLiquid, 1));
  expect(errorOf(gasFromLiquid, 1, "35 L")).toMatch(/#VALUE! pressure "35 L" is an amount of liquid/);
});
