import fc from "fast-check";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { latentHeat } from "../../../src/functions/amounts/latentHeat";
import { correlatedLatentHeat } from "../../reference/oxygenCorrelations";
import { oneNumber } from "../oneCell";
import { expectRow, gaugeOfKpa } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows: Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("o2-hfg-3bar", oneNumber(latentHeat, gaugeOfKpa(300)));
  expectRow("o2-hfg-5bar", oneNumber(latentHeat, gaugeOfKpa(500)));
  expectRow("o2-hfg-10bar", oneNumber(latentHeat, gaugeOfKpa(1000)));
});

test("6.82 kJ/mol at the normal boiling point (handbook value, from memory), 31.9988 g/mol", () => {
  expect((oneNumber(latentHeat) * 31.9988) / 1000).toBeCloseTo(6.82, 2);
});

test("within 0.1 % of an independent fit from 0.9 to 19 bar, and falling with pressure", () => {
  fc.assert(
    fc.property(evenly(-0.1, 18), (pressure) => {
      const heat = oneNumber(latentHeat, pressure);
      expect(Math.abs(heat / correlatedLatentHeat(oneNumber(boilingPoint, pressure) + 273.15) - 1)).toBeLessThan(1e-3);
      expect(oneNumber(latentHeat, pressure + 0.5)).toBeLessThan(heat);
    }),
  );
});
