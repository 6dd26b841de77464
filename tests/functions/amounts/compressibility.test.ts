import fc from "fast-check";
import { compressibility } from "../../../src/functions/amounts/compressibility";
import { correlatedCompressibility } from "../../reference/oxygenCorrelations";
import { oneNumber } from "../oneCell";
import { expectRow, gaugeOfKpa } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows: Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("o2-Z-0C-150bar", oneNumber(compressibility, gaugeOfKpa(15000), 0));
  expectRow("o2-Z-0C-300bar", oneNumber(compressibility, gaugeOfKpa(30000), 0));
  expectRow("o2-Z-15C-137bar", oneNumber(compressibility, gaugeOfKpa(13700), 15));
  expectRow("o2-Z-25C-150bar", oneNumber(compressibility, gaugeOfKpa(15000), 25));
  expectRow("o2-Z-25C-300bar", oneNumber(compressibility, gaugeOfKpa(30000), 25));
  expectRow("o2-Z-60C-300bar", oneNumber(compressibility, gaugeOfKpa(30000), 60));
  expectRow("o2-Z-70F-2015psig", oneNumber(compressibility, "2015 psi", "70 °F"));
  expectRow("o2-Z-70F-2200psig", oneNumber(compressibility, "2200 psi", "70 °F"));
});

test("within 0.1 % of an independent fit over the whole range", () => {
  fc.assert(
    fc.property(evenly(0, 298.98675), evenly(-40, 60), (pressure, celsius) => {
      const fit = correlatedCompressibility(pressure + 1.01325, celsius + 273.15);
      expect(Math.abs(oneNumber(compressibility, pressure, celsius) / fit - 1)).toBeLessThan(1e-3);
    }),
  );
});

test("close to 1 where the gas is thin", () => {
  expect(oneNumber(compressibility, 0)).toBeGreaterThan(0.999);
  expect(oneNumber(compressibility, 0)).toBeLessThan(1);
});
