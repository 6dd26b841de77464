import fc from "fast-check";
import { cylindersNeeded } from "../../../src/functions/cylinders/cylindersNeeded";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

test("2160 m³ a day (WHO 100-bed scenario, from memory) in 7000 L cylinders: 309 without reserve", () => {
  expect(oneNumber(cylindersNeeded, 2160000, 7000, 0)).toBe(309);
  expect(oneNumber(cylindersNeeded, "2160 m3", "7 m3", "0%")).toBe(309);
});

test("an exact fit takes no cylinder more, also with floating noise", () => {
  expect(oneNumber(cylindersNeeded, 6300, 700)).toBe(10);
  expect(oneNumber(cylindersNeeded, 0.3, 0.1, 0)).toBe(3);
  expect(oneNumber(cylindersNeeded, 0, 700)).toBe(0);
});

test("enough, and one fewer is not", () => {
  fc.assert(
    fc.property(evenly(1, 1e6), evenly(100, 1e4), evenly(0, 0.9), (gas, content, keep) => {
      const cylinders = oneNumber(cylindersNeeded, gas, content, keep);
      expect(cylinders * content * (1 - keep)).toBeGreaterThanOrEqual(gas * (1 - 1e-9));
      expect((cylinders - 1) * content * (1 - keep)).toBeLessThan(gas);
    }),
  );
});

test("an empty cylinder is refused", () => {
  expect(errorOf(cylindersNeeded, 1000, 0)).toMatch(/#VALUE! content must be more than 0/);
});
