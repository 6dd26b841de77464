import fc from "fast-check";
import { liquidMade } from "../../../src/functions/making/liquidMade";
import { switchOnBy } from "../../../src/functions/making/switchOnBy";
import { evenly } from "../../evenly";
import { errorOf, oneNumber } from "../oneCell";

test("backwards over New Year by the calendar of JavaScript's Date: 2027-01-01 06:00 − 27 h", () => {
  const wanted = Date.UTC(2026, 11, 31, 3) / 86400000 + 25569;
  expect(oneNumber(switchOnBy, "2027-01-01 06:00", 24, 1)).toBeCloseTo(wanted, 8);
});

test("what LIQUID_MADE gives between the two times is what is needed", () => {
  fc.assert(
    fc.property(
      evenly(1, 500),
      evenly(0.2, 10),
      evenly(0, 12),
      fc.integer({ min: 1, max: 20 }),
      (need, rate, delay, plants) => {
        const hours = (46083 - oneNumber(switchOnBy, 46083, need, rate, delay, plants)) * 24;
        expect(oneNumber(liquidMade, hours, rate, delay, plants)).toBeCloseTo(need, 4);
      },
    ),
  );
});

test("a time before the calendar of Excel is refused in words", () => {
  expect(errorOf(switchOnBy, "2026-03-04", 1500000, 1)).toMatch(
    /#VALUE! the time to switch on would be before 1900-03-01/,
  );
});
