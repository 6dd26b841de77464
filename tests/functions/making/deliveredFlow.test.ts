import fc from "fast-check";
import { deliveredFlow } from "../../../src/functions/making/deliveredFlow";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

// 860.5213 L gas (70 °F, 1 atm) of a litre of liquid at 1 atm: Schmidt & Wagner 1985, computed outside this project with
// CoolProp. International Fire Code 2018, table G101.2: 1 gal liquid = 115.05 ft³ gas, which is 860.63.
const litresOfGas = 860.5213;
const printedLitresOfGas = (115.05 * 28.316846592) / 3.785411784;

test("1.5 L/h at the equation of state's expansion ratio", () => {
  expect(oneNumber(deliveredFlow, 1.5)).toBeCloseTo((1.5 * litresOfGas) / 1.25 / 60, 2);
});

test("within 0.1 % of the fire code's printed ratio", () => {
  expect(oneNumber(deliveredFlow, 10, 1, 1) / ((10 * printedLitresOfGas) / 60)).toBeCloseTo(1, 3);
});

test("in proportion to plants and rate, inversely to the draw ratio", () => {
  fc.assert(
    fc.property(evenly(0.1, 20), fc.integer({ min: 0, max: 50 }), evenly(1, 3), (rate, plants, ratio) => {
      expect(oneNumber(deliveredFlow, rate, plants, ratio) * ratio).toBeCloseTo(
        oneNumber(deliveredFlow, rate, 1, 1) * plants,
        6,
      );
    }),
  );
});

test("a draw ratio under 1 would make oxygen from nothing", () => {
  expect(errorOf(deliveredFlow, 1.5, 1, 0.8)).toMatch(/#VALUE! draw_ratio must be 1 or more/);
});
