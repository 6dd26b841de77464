import { CellError } from "../../../src/cells/cellValues";
import { lossFromReadings } from "../../../src/functions/holding/lossFromReadings";
import norris from "../../reference/norris.json";

const columnOf = (cells: readonly unknown[]): unknown[][] => cells.map((cell) => [cell]);
const words = (result: unknown[][]): string => {
  expect(result).toHaveLength(1);
  const error = result[0]![0] as CellError;
  return `${error.code} ${error.message}`;
};

test("NIST StRD, data set Norris: certified slope, its standard error and R², with x as late dates", () => {
  const [header, row] = lossFromReadings(columnOf(norris.x.map((x) => x + 46000)), columnOf(norris.y));
  expect(header).toEqual(["loss/day", "standard error", "r²"]);
  const [loss, error, rSquared] = row as [number, number, number];
  expect(Math.abs(-loss / norris.slope - 1)).toBeLessThan(1e-9);
  expect(Math.abs(error / norris.slopeError - 1)).toBeLessThan(1e-7);
  expect(Math.abs(rSquared / norris.rSquared - 1)).toBeLessThan(1e-9);
});

test("order doesn't matter, a row or a column does, nor a header", () => {
  const times = [46083, 46084.5, 46086, 46090.25];
  const levels = [40, 34.2, 27.8, 11];
  const plain = lossFromReadings(columnOf(times), columnOf(levels));
  expect(lossFromReadings([times], [levels])).toEqual(plain);
  expect(lossFromReadings(columnOf(["time", ...times]), columnOf(["level", ...levels]))).toEqual(plain);
  const turned = lossFromReadings(columnOf([...times].reverse()), columnOf([...levels].reverse()))[1] as number[];
  (plain[1] as number[]).forEach((value, index) => expect(turned[index]).toBeCloseTo(value, 9));
});

test("a vessel that gained has a negative loss; equal levels lose nothing and have no r²", () => {
  expect(lossFromReadings([[46083, 46084]], [[10, 12]])[1]).toEqual([-2, "", 1]);
  expect(lossFromReadings([[46083, 46084, 46085]], [[10, 10, 10]])[1]).toEqual([0, 0, ""]);
});

test("too little to tell, unequal lists and blanks are refused with words", () => {
  expect(words(lossFromReadings([[46083]], [[10]]))).toMatch(/#VALUE! times has fewer than two different times/);
  expect(words(lossFromReadings([[46083.5, 46083.5]], [[10, 9]]))).toMatch(
    /#VALUE! times has fewer than two different times/,
  );
  expect(words(lossFromReadings([[46083, 46084, 46085]], [[10, 9]]))).toMatch(
    /#VALUE! times has 3 and levels has 2 cells/,
  );
  expect(words(lossFromReadings(columnOf([46083, 46084, 46085]), columnOf([10, null, 8])))).toMatch(
    /#VALUE! levels row 2 is blank/,
  );
  expect(words(lossFromReadings(columnOf([46083, 46084]), columnOf([10, -1])))).toMatch(
    /#VALUE! levels row 2 must be 0 or more/,
  );
});
