import fc from "fast-check";
import { liquidFromMass } from "../../../src/functions/amounts/liquidFromMass";
import { liquidMass } from "../../../src/functions/amounts/liquidMass";
import { oneNumber } from "../oneCell";
import { expectRow } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows: International Fire Code 2018, table G101.2; Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("ifc-L-kg", oneNumber(liquidMass, 1));
  expectRow("ifc-gal-kg", oneNumber(liquidMass, "1 gal"));
  expectRow("mass-20L-lb", oneNumber(liquidMass, 20) / 0.45359237);
});

test("LIQUID_FROM_MASS is its inverse", () => {
  fc.assert(
    fc.property(evenly(0.001, 1e6), evenly(-0.5, 14.9), (liquid, pressure) => {
      expect(oneNumber(liquidFromMass, oneNumber(liquidMass, liquid, pressure), pressure) / liquid).toBeCloseTo(1, 12);
    }),
  );
});
