import { reserveForOutage } from "../../../src/functions/stock/reserveForOutage";
import { errorOf, oneNumber } from "../oneCell";

const { jStat } = require("jstat") as { jStat: { exponential: { inv(p: number, rate: number): number } } };

// jStat's quantile of the exponential distribution, rate 1/mean.
test.each([
  [4, 0.5],
  [7.5, 0.9],
  [12, 0.99],
])("an outage of mean %d h at level %d by jStat's quantile", (mean, level) => {
  const outage = jStat.exponential.inv(level, 1 / mean);
  const drawn = (36 * 1.3 * (outage + 5)) / 24;
  expect(oneNumber(reserveForOutage, 36, mean, level, 5, 140, 1.3, 7)).toBeCloseTo(drawn + (20 * outage) / 24, 9);
});

// A half-life is ln 2 of the mean (any textbook of radioactive decay): mean 1/ln 2 h makes the median outage one hour.
test("half of the outages of mean 1/ln 2 h last up to one hour", () => {
  expect(oneNumber(reserveForOutage, 24, 1 / Math.LN2, 0.5, 0, 192, 1, 8)).toBeCloseTo(1 + 1, 12);
});

// Drawn at random: as many outages are carried as the level says, within four standard errors.
test("the level is the share of outages that the reserve carries", () => {
  let seed = 12345;
  const uniform = (): number => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return (seed + 0.5) / 0x80000000;
  };
  const [mean, level, runs] = [6, 0.85, 20000];
  const reserve = oneNumber(reserveForOutage, 30, mean, level, 4, 80, 1.25, 8);
  let carried = 0;
  for (let run = 0; run < runs; run++) {
    const outage = -mean * Math.log(uniform());
    if ((30 * 1.25 * (outage + 4)) / 24 + (10 * outage) / 24 <= reserve) carried++;
  }
  expect(Math.abs(carried / runs - level)).toBeLessThan(4 * Math.sqrt((level * (1 - level)) / runs));
});

test("limits", () => {
  expect(oneNumber(reserveForOutage, 24, 5, 0, 6, 110, 1)).toBeCloseTo(6, 12);
  expect(errorOf(reserveForOutage, 24, 5, 1, 6, 110)).toMatch(/^#VALUE! level must be/);
  expect(errorOf(reserveForOutage, 24, 0, 0.9, 6, 110)).toMatch(/^#VALUE! mean_outage_hours/);
  expect(errorOf(reserveForOutage, 24, 5, 0.9, 6, 110, 0.9)).toMatch(/^#VALUE! draw_ratio/);
  expect(errorOf(reserveForOutage, 24, 5, 90, 6, 110)).toMatch(/looks like a percent/);
});
