import { censusAtLevel } from "../../../src/functions/demand/censusAtLevel";
import { censusOverChance } from "../../../src/functions/demand/censusOverChance";
import { flowAtLevel } from "../../../src/functions/demand/flowAtLevel";
import { sharedCensus } from "../../../src/functions/demand/sharedCensus";
import { turnedAwayShare } from "../../../src/functions/demand/turnedAwayShare";
import { sparesToKeep } from "../../../src/functions/stock/sparesToKeep";
import { CellError } from "../../../src/cells/cellValues";
import rows from "../../reference/census.json";
import { checkRows } from "../../reference/rows";
import { errorOf, oneCell, oneNumber } from "../oneCell";

const column = (values: readonly number[]): number[][] => values.map((value) => [value]);
const atMost = ({ mean, places }: { mean: number; places: number }): number =>
  1 - oneNumber(censusOverChance, mean, places);

checkRows("census", rows, {
  "cen-03": ({ mean, level }) => oneNumber(censusAtLevel, mean, level),
  "cen-04": ({ mean, places }) => oneNumber(censusOverChance, mean, places),
  "cen-05": ({ mean, level }) => oneNumber(censusAtLevel, mean, level),
  "cen-06": ({ n, p, level }) => oneNumber(sharedCensus, n, p, level),
  "cen-07": ({ n, p, level }) => oneNumber(sharedCensus, n, p, level),
  "cen-08": ({ means, flows, level }) => flowAtLevel(column(means), column(flows), [[level]])[0]![0] as number,
  "cen-10": ({ offered, places }) => oneNumber(turnedAwayShare, offered, places),
  "cen-12": ({ mean, level }) => oneNumber(censusAtLevel, mean, level),
  "inv-18": ({ mean_lead, level }) => oneNumber(sparesToKeep, mean_lead, level),
  "tab-2.5-4": atMost,
  "tab-4-7": atMost,
  "tab-5-9": atMost,
  "tab-8-5": atMost,
  "loss-25-30": ({ offered, places }) => oneNumber(turnedAwayShare, offered, places),
});

test("a level of 1, 0 or in percent is refused with the reason", () => {
  const calls: ((level: unknown) => string)[] = [
    (level) => errorOf(censusAtLevel, 4, level),
    (level) => errorOf(sharedCensus, 20, 0.25, level),
    (level) => errorOf(sparesToKeep, 4, level),
    (level) => errorOf(flowAtLevel, 4, 10, level),
  ];
  for (const call of calls) {
    expect(call(1)).toContain("#VALUE! level 1 asks for certainty");
    expect(call(0)).toContain("#VALUE! level 0 asks for nothing");
    expect(call(95)).toContain("looks like a percent");
  }
});

test("a mean of 0 asks for nobody; 0 places are a question", () => {
  expect(oneCell(censusAtLevel, 0, 0.95)).toBe(0);
  expect(oneCell(censusAtLevel, 0.01, 0.995)).toBe(1);
  expect(errorOf(censusAtLevel, null, 0.95)).toContain("mean is blank");
  // P(N > 0) = 1 − e^−2
  expect(oneCell(censusOverChance, 2, 0)).toBeCloseTo(1 - Math.exp(-2), 12);
  expect(oneCell(turnedAwayShare, 2, 0)).toBe(1);
});

test("an average of 100,000 is answered by itself, not by the normal short-cut", () => {
  // Cornish and Fisher, third order, with continuity: m + z√m + (z² − 1)/6 + (z − z³)/(72√m) − 1/2, rounded up.
  for (const [level, z] of [
    [0.95, 1.6448536],
    [0.99, 2.3263479],
    [0.5, 0],
  ] as const) {
    const expansion = 1e5 + z * Math.sqrt(1e5) + (z * z - 1) / 6 + (z - z ** 3) / (72 * Math.sqrt(1e5)) - 0.5;
    expect(oneCell(censusAtLevel, 1e5, level)).toBe(Math.ceil(expansion));
  }
});

test("the normal short-cut for the flow is too low where few draw much", () => {
  // mean 120, variance 6·10² + 2·30² = 2400: 120 + 1.64485 × 48.99
  expect(flowAtLevel([[6], [2]], [[10], [30]], [[0.95]])[0]![0]).toBeGreaterThan(200.58);
});

test("flows that can't be summed in a cell are refused with a way out", () => {
  const result = flowAtLevel(
    [[1000, 200, 300, 400]],
    [[Math.PI, Math.E, Math.SQRT2, 1.7]],
    [[0.95]],
  )[0]![0] as CellError;
  expect(result.code).toBe("#VALUE!");
  expect(result.message).toContain("round them");
  expect((flowAtLevel([[1], [2]], [[10]], [[0.95]])[0]![0] as CellError).message).toBe(
    "means has 2 and flows has 1 cells; they must go together one by one",
  );
});
