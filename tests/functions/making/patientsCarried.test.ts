import { patientsCarried } from "../../../src/functions/making/patientsCarried";
import { errorOf, oneNumber } from "../oneCell";

test("90 m³/h carry 150 severe patients at 10 L/min, or 50 critical ones at 30 L/min (WHO planning flows of 2020, read second hand)", () => {
  expect(oneNumber(patientsCarried, "90 m3/h", 10)).toBe(150);
  expect(oneNumber(patientsCarried, 1500, 30)).toBe(50);
});

test("part patients are cut off, floating noise is not", () => {
  expect(oneNumber(patientsCarried, 29.99, 10)).toBe(2);
  expect(oneNumber(patientsCarried, 0.3, 0.1)).toBe(3);
  expect(oneNumber(patientsCarried, 0.7 + 0.1, 0.1)).toBe(8);
  expect(oneNumber(patientsCarried, 0, 10)).toBe(0);
});

test("a flow of nothing would carry everyone: refused", () => {
  expect(errorOf(patientsCarried, 50, 0)).toMatch(/#VALUE! flow_each must be more than 0/);
});
