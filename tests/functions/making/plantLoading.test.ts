import { plantLoading } from "../../../src/functions/making/plantLoading";
import { errorOf, oneNumber } from "../oneCell";

// 860.5213 L gas of a litre of liquid: Schmidt & Wagner 1985, computed outside this project with CoolProp.
const litresOfGas = 860.5213;

test("one plant of 1 L/h that serves all it makes is loaded to 1", () => {
  expect(oneNumber(plantLoading, 24 * litresOfGas, 1, 1, 1)).toBeCloseTo(1, 4);
  expect(oneNumber(plantLoading, 24 * litresOfGas, 1, 1)).toBeCloseTo(1.25, 4);
});

test("ten severe patients at 10 L/min (144 m³ a day) on three plants of 2 L/h, by hand", () => {
  const byHand = (144000 * 1.25) / (24 * 2 * 3 * litresOfGas);
  expect(oneNumber(plantLoading, "144 m3/d", 2, 3) / byHand).toBeCloseTo(1, 4);
});

test("no plants is a refusal, not infinity", () => {
  expect(errorOf(plantLoading, 1000, 1, 0)).toMatch(/#VALUE! plants must be 1 or more/);
});
