import fc from "fast-check";
import { contentByFactor } from "../../../src/functions/cylinders/contentByFactor";
import { cylinderMinutes } from "../../../src/functions/cylinders/cylinderMinutes";
import { errorOf, oneNumber } from "../oneCell";
import { evenly } from "../../evenly";

test("8456 L at 10 L/min last about 14.1 h (gas duration page of a transport-ventilator manual)", () => {
  expect(oneNumber(cylinderMinutes, 8456, 10, 0) / 60).toBeCloseTo(14.1, 1);
});

test("a D of 2000 psi at 0.5 L/min: 576 min; an H of 2200 psi at 10 L/min: 628 min (factor rule of teaching texts)", () => {
  expect(oneNumber(cylinderMinutes, oneNumber(contentByFactor, 2000, "D"), 0.5, 0)).toBeCloseTo(576, 9);
  expect(oneNumber(cylinderMinutes, oneNumber(contentByFactor, 2200, "H"), 10, 0)).toBeCloseTo(628, 9);
});

test("the reserve is kept, and minutes × flow + reserve is the content", () => {
  fc.assert(
    fc.property(evenly(1, 1e4), evenly(0.1, 100), evenly(0, 0.99), (content, flow, keep) => {
      expect((oneNumber(cylinderMinutes, content, flow, keep) * flow + keep * content) / content).toBeCloseTo(1, 9);
    }),
  );
  expect(oneNumber(cylinderMinutes, 1000, 10)).toBeCloseTo(90, 9);
});

test("a flow of nothing, and a reserve of everything, are refused", () => {
  expect(errorOf(cylinderMinutes, 1000, 0)).toMatch(/#VALUE! flow must be more than 0/);
  expect(errorOf(cylinderMinutes, 1000, 10, 1)).toMatch(/keep_share must be from 0 to under 1/);
});
