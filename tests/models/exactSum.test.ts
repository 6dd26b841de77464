import fc from "fast-check";
import { RunningSum, exactSum } from "../../src/models/exactSum";
import { evenly } from "../evenly";

/** The exact sum of doubles as a fraction of integers, rounded once by the engine's own conversion. */
function bigSum(values: number[]): number {
  const scale = 1074n;
  const total = values.reduce((sum, value) => {
    const view = new DataView(new ArrayBuffer(8));
    view.setFloat64(0, value);
    const bits = view.getBigUint64(0);
    const exponent = (bits >> 52n) & 2047n;
    const mantissa = (bits & ((1n << 52n) - 1n)) | (exponent === 0n ? 0n : 1n << 52n);
    const whole = mantissa << ((exponent === 0n ? 1n : exponent) - 1n);
    return bits >> 63n ? sum - whole : sum + whole;
  }, 0n);
  const negative = total < 0n;
  const size = negative ? -total : total;
  const extra = BigInt(Math.max(0, size.toString(2).length - 60));
  // 60 leading bits with a sticky last bit round the same way as the whole number.
  const sticky = extra > 0n && size & ((1n << extra) - 1n) ? 1n : 0n;
  const rounded = Number((size >> extra) | sticky);
  const shift = Number(extra) - Number(scale);
  const result = rounded * 2 ** Math.max(shift, -1000) * 2 ** (shift - Math.max(shift, -1000));
  return negative ? -result : result;
}

const values = fc.array(
  evenly(-1e9, 1e9).map((value) => (Math.abs(value) < 1e-9 ? 0 : value)),
  { maxLength: 60 },
);

test("the sum is the exact sum rounded once, as integer arithmetic gives it", () => {
  expect(exactSum([1e16, 1, -1e16])).toBe(1);
  expect(exactSum([0.1, 0.2, 0.3, -0.6])).toBe(bigSum([0.1, 0.2, 0.3, -0.6]));
  expect(exactSum([])).toBe(0);
  fc.assert(
    fc.property(values, (list) => {
      expect(Math.abs(exactSum(list) - bigSum(list))).toBeLessThanOrEqual(Math.abs(bigSum(list)) * Number.EPSILON);
    }),
  );
});

test("a running sum stays within a rounding of the exact one", () => {
  fc.assert(
    fc.property(values, (list) => {
      const sum = new RunningSum();
      list.forEach((value) => sum.add(value));
      const size = list.reduce((total, value) => total + Math.abs(value), 0);
      expect(Math.abs(sum.total - bigSum(list))).toBeLessThanOrEqual(
        2 * Number.EPSILON * Math.abs(bigSum(list)) + 1e-30 * size,
      );
    }),
  );
  const tenths = new RunningSum();
  for (let index = 0; index < 10; index++) tenths.add(0.1);
  expect(tenths.total).toBe(1);
});
