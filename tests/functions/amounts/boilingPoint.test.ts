import fc from "fast-check";
import { boilingPoint } from "../../../src/functions/amounts/boilingPoint";
import { saturationPressure } from "../../../src/functions/amounts/saturationPressure";
import { oneNumber } from "../oneCell";
import { expectRow, gaugeOfKpa } from "../publishedRow";
import { evenly } from "../../evenly";

test("reference rows: Schmidt & Wagner 1985 evaluated independently", () => {
  expectRow("o2-tsat-1atm", oneNumber(boilingPoint));
  expectRow("o2-tsat-3bar", oneNumber(boilingPoint, gaugeOfKpa(300)));
  expectRow("o2-tsat-10bar", oneNumber(boilingPoint, gaugeOfKpa(1000)));
  expectRow("o2-tsat-20bar", oneNumber(boilingPoint, gaugeOfKpa(2000)));
  expectRow("o2-tsat-10psig", oneNumber(boilingPoint, "10 psi"));
  expectRow("o2-tsat-22psig", oneNumber(boilingPoint, "22 psi"));
  expectRow("o2-tsat-35psig", oneNumber(boilingPoint, "35 psi"));
});

test("normal boiling point of the International Temperature Scale of 1990: oxygen, 90.188 K", () => {
  expect(oneNumber(boilingPoint, 0) + 273.15).toBeCloseTo(90.188, 2);
});

test("SATURATION_PRESSURE is its inverse over the whole range, ends included", () => {
  fc.assert(
    fc.property(fc.oneof(evenly(-0.51325, 23.98675), fc.constantFrom(-0.51325, 23.98675)), (pressure) => {
      expect(oneNumber(saturationPressure, oneNumber(boilingPoint, pressure))).toBeCloseTo(pressure, 7);
    }),
  );
});
