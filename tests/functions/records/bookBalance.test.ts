import fc from "fast-check";
import { bookBalance } from "../../../src/functions/records/bookBalance";
import { errorOf, oneNumber } from "../oneCell";

const amount = fc.integer({ min: 0, max: 100000 });

test("by hand: 53 should be there and 50 are; 445 in and 445 out of the ten-day plan worked by hand", () => {
  expect(oneNumber(bookBalance, 50, 30, 0, 25, 2, 50)).toBe(-3);
  expect(oneNumber(bookBalance, 37.5, 357.5, 50, 332.5, 22.5, 90)).toBe(0);
});

test("whole numbers come out exactly; what is found in the closing stock is what is found in the balance", () => {
  fc.assert(
    fc.property(amount, amount, amount, amount, amount, amount, (opening, made, received, drawn, lost, closing) => {
      expect(oneNumber(bookBalance, opening, made, received, drawn, lost, closing)).toBe(
        closing - (opening + made + received - drawn - lost),
      );
    }),
  );
});

test("cents of decimal noise are nothing, a real millionth is something", () => {
  fc.assert(
    fc.property(amount, amount, amount, (opening, made, drawn) => {
      const tenths = [opening, made, drawn].map((value) => value / 10) as [number, number, number];
      const closing = Math.max(0, opening + made - drawn) / 10;
      const lost = Math.max(0, -(opening + made - drawn)) / 10;
      // A negative stock is brought to 0 by raising what was received instead.
      expect(oneNumber(bookBalance, tenths[0], tenths[1], lost, tenths[2], 0, closing)).toBe(0);
      expect(oneNumber(bookBalance, tenths[0], tenths[1], lost, tenths[2], 0, closing + 1e-6)).toBeCloseTo(1e-6, 9);
    }),
  );
});

test("a blank is refused: it would hide what is missing", () => {
  expect(errorOf(bookBalance, 50, 30, null, 25, 2, 50)).toMatch(/#VALUE! received is blank/);
  expect(errorOf(bookBalance, 50, 30, 0, -25, 2, 50)).toMatch(/drawn must be 0 or more/);
});
