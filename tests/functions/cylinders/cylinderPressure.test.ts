import fc from "fast-check";
import { cylinderContent } from "../../../src/functions/cylinders/cylinderContent";
import { cylinderPressure } from "../../../src/functions/cylinders/cylinderPressure";
import rows from "../../reference/cylinders.json";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

const from15C = 1.354364 / 1.32614;

test.each(["cont-J", "cont-50-150", "cont-50-200"])(
  "%s backwards: Schmidt & Wagner 1985, computed outside this project with CoolProp",
  (id) => {
    const { inputs, expected, tolerance } = rows.find((each) => each.id === id) as {
      inputs: any;
      expected: number;
      tolerance: number;
    };
    const within = (tolerance / expected) * inputs.p_bar_g * 1.2;
    expect(
      Math.abs(oneNumber(cylinderPressure, inputs.V_L, expected * from15C, inputs.T_C) - inputs.p_bar_g),
    ).toBeLessThanOrEqual(within);
  },
);

test("inverse of CYLINDER_CONTENT, to the ends of the range", () => {
  fc.assert(
    fc.property(evenly(0, 300), evenly(-40, 60), evenly(0.5, 80), (pressure, t, volume) => {
      expect(oneNumber(cylinderPressure, volume, oneNumber(cylinderContent, volume, pressure, t), t)).toBeCloseTo(
        pressure,
        6,
      );
    }),
  );
  for (const end of [0, 300])
    expect(oneNumber(cylinderPressure, 50, oneNumber(cylinderContent, 50, end))).toBeCloseTo(end, 6);
});

test("less than stays in an open cylinder, and more than goes in, are refused with the limit", () => {
  expect(errorOf(cylinderPressure, 50, 20)).toMatch(/#VALUE! content 20 L is less than the 50 L that stay in/);
  expect(oneNumber(cylinderPressure, 50, 40)).toBeCloseTo(0.8 * 1.01325 - 1.01325, 3);
  expect(errorOf(cylinderPressure, 10, 7000)).toMatch(
    /content 7000 L would need more than 300\.31\d* bar; at most \d+/,
  );
});
