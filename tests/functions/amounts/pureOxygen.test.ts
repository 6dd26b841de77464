import { pureOxygen } from "../../../src/functions/amounts/pureOxygen";
import { errorOf, oneNumber } from "../oneCell";

test("7000 L at 93 % hold 6510 L of oxygen (plain arithmetic), however the purity is written", () => {
  for (const purity of [0.93, "93%", "93 percent"]) expect(oneNumber(pureOxygen, 7000, purity)).toBeCloseTo(6510, 9);
});

test("air at 0.2095 (ISO 2533:1975): 1 m³ holds 209.5 L", () => {
  expect(oneNumber(pureOxygen, "1 m3", 0.2095)).toBeCloseTo(209.5, 9);
});

test("a bare percent is refused with the way to write it", () => {
  expect(errorOf(pureOxygen, 7000, 93)).toMatch(
    /#VALUE! source_purity must be between 0 and 1; 93 looks like a percent: enter 93% or 0.93/,
  );
});
