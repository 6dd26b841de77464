import fc from "fast-check";
import { averageCensus } from "../../../src/functions/demand/averageCensus";
import { dailyDemand } from "../../../src/functions/demand/dailyDemand";
import { demandFlow } from "../../../src/functions/demand/demandFlow";
import { demandFromLog } from "../../../src/functions/demand/demandFromLog";
import { demandTable } from "../../../src/functions/demand/demandTable";
import { designFlow } from "../../../src/functions/demand/designFlow";
import { safetyStock } from "../../../src/functions/stock/safetyStock";
import { surgeDemand } from "../../../src/functions/demand/surgeDemand";
import { CellError } from "../../../src/cells/cellValues";
import rows from "../../reference/demand.json";
import { checkRows } from "../../reference/rows";
import { errorOf, oneNumber } from "../oneCell";

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const wards = { names: column(["severe", "critical"]), counts: column([75, 25]), flows: column([10, 30]) } as const;

checkRows("demand", rows, {
  "clin-01": ({ flow_Lmin }) => oneNumber(dailyDemand, 1, flow_Lmin),
  "clin-02": ({ flow_Lmin }) => oneNumber(dailyDemand, 1, flow_Lmin),
  "clin-05": () => demandTable(wards.names, wards.counts, wards.flows)[3]![4] as number,
  "clin-06": () => (dailyDemand(wards.counts, wards.flows)[0]![0] as number) / 1000,
  "clin-07": ({ cylinder_L }) => demandTable(wards.names, wards.counts, wards.flows, [[cylinder_L]])[3]![7] as number,
  "clin-11": ({ mean_flow, mean_total_L }) => mean_total_L / oneNumber(dailyDemand, 1, mean_flow),
  "clin-28": ({ n, first, next, share }) => oneNumber(designFlow, n, first, next, share),
  "clin-29": ({ n, first, next, share }) => oneNumber(designFlow, n, first, next, share),
});

test("DEMAND_TABLE: liquid by the International Fire Code's 115.05 ft³ of gas a gallon; columns agree with each other", () => {
  const table = demandTable(wards.names, wards.counts, wards.flows);
  const gasPerLiquid = (115.05 * 28.316846592) / 3.785411784;
  for (const row of table.slice(1)) {
    expect((row[5] as number) / (row[6] as number) / gasPerLiquid).toBeCloseTo(1, 3);
    expect(row[5]).toBeCloseTo((row[3] as number) * 1440, 6);
    expect(row[4]).toBeCloseTo((row[3] as number) * 0.06, 9);
  }
  expect(table[3]![3]).toBe(oneNumber(() => demandFlow(wards.counts, wards.flows)));
});

test("DEMAND_TABLE: each row's cylinders are rounded up, and the total's own sum is", () => {
  // 1.25 cylinders each: two in each row, 2.5 together.
  const table = demandTable(column(["a", "b"]), column([1, 1]), column([5, 5]), [[5760]]);
  expect(table.map((row) => row[7])).toEqual(["cylinders/day", 2, 2, 3]);
  // just 7000 L: 1 cylinder, though 7000/1440 × 1440 comes out a little over
  expect(demandTable([["a"]], [[1]], [[7000 / 1440]])[1]![7]).toBe(1);
});

test("DEMAND_TABLE: a heading over each list is passed over, the names' too", () => {
  const { names, counts, flows } = wards;
  const bare = demandTable(names, counts, flows);
  expect(demandTable([["kind"], ...names], [["count"], ...counts], [["L/min each"], ...flows])).toEqual(bare);
  expect((demandTable([["kind"], ...names], counts, flows)[0]![0] as CellError).message).toContain(
    "names has 3 and counts has 2 cells",
  );
});

test("DEMAND_FLOW: the share of use and units", () => {
  expect(demandFlow([[10, 4]], [[5, "0.9 m3/h"]], [["50%"]])[0]![0]).toBeCloseTo(55, 9);
  expect(demandFlow([[1], [2]], [[1]])[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: "counts has 2 and flows has 1 cells; they must go together one by one",
  });
  expect((demandFlow([[1], [null], [3]], [[1], [2], [4]])[0]![0] as CellError).message).toContain(
    "counts row 2 is blank",
  );
  // A blank at the end is cut off, and then the lists differ.
  expect((demandFlow([[1], [null]], [[1], [2]])[0]![0] as CellError).message).toContain(
    "counts has 1 and flows has 2 cells",
  );
});

test("DAILY_DEMAND: a day has 24 h", () => {
  expect(oneNumber(dailyDemand, 1, 10, 6)).toBe(3600);
  expect(errorOf(dailyDemand, 1, 10, 25)).toContain("hours must be between 0 and 24 h");
});

describe("DEMAND_FROM_LOG", () => {
  // NIST/SEMATECH e-Handbook 1.3.5: sd with n − 1. Worked: 2, 4, 4, 4, 5, 5, 7, 9 has mean 5 and Σ(x − 5)² = 32.
  const amounts = [2, 4, 4, 4, 5, 5, 7, 9];

  test("mean, sd and most, in any order of dates", () => {
    const dates = [46090, 46082, 46083, 46084, 46085, 46086, 46087, 46088];
    expect(demandFromLog(column(dates), column(amounts))[1]).toEqual([9, 8, 5, Math.sqrt(32 / 7), 9]);
  });

  test("records of a day are added, a time of day is cut off, a day without a record is no 0", () => {
    const log = demandFromLog(column([46082.25, 46082.75, "2026-03-04"]), column([10, 20, 50]));
    expect(log[1]).toEqual([4, 2, 40, Math.sqrt(200), 50]);
  });

  test("a header in each column is passed over, in one alone it leaves them unequal", () => {
    const bare = demandFromLog(column([46082, 46083]), column([10, 20]));
    expect(demandFromLog(column(["date", 46082, 46083]), column(["L", 10, 20]))).toEqual(bare);
    expect((demandFromLog(column([46082, 46083]), column(["L", 20]))[0]![0] as CellError).message).toContain(
      "dates has 2 and amounts has 1 cells",
    );
  });

  test("one day has no spread: its sd is empty, which SAFETY_STOCK refuses as blank", () => {
    const [, row] = demandFromLog([[46082], [46082]], [[3], [4]]);
    expect(row).toEqual([1, 1, 7, "", 7]);
    expect(safetyStock([[row![2]]], [[row![3]]], [[3]], [[0.95]])[0]![0]).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("sd is blank"),
    });
    // Two steady days have a spread, of 0.
    expect(demandFromLog([[46082], [46083]], [[3], [3]])[1]).toEqual([2, 2, 3, 0, 3]);
  });

  test("a blank amount is refused, for it would flatter", () => {
    expect((demandFromLog([[46082], [46083], [46084]], [[3], [""], [4]])[0]![0] as CellError).message).toContain(
      "amounts row 2 is blank",
    );
    expect((demandFromLog([[46082], [46083]], [[3], [""]])[0]![0] as CellError).message).toContain(
      "dates has 2 and amounts has 1 cells",
    );
  });
});

describe("SURGE_DEMAND", () => {
  const demand = (...cells: number[]): number[] =>
    (surgeDemand(...(cells.map((cell) => [[cell]]) as [any, any, any, any, any, any, any])) as any[][])
      .slice(1)
      .map((row) => row[1]);

  test("straight ramps: start_day is 1/rise of the way up, the last fall day is back at base", () => {
    expect(demand(10, 9, 2, 5, 4, 1, 2)).toEqual([10, 20, 30, 40, 50, 50, 30, 10, 10]);
    expect(demand(10, 4, 2, 3, 0, 1, 0)).toEqual([10, 30, 10, 10]);
    expect(demand(10, 3, -1, 5, 4, 5, 2)).toEqual([40, 50, 50]);
    expect(demand(10, 3, 1, 5, 0, 0, 0)).toEqual([10, 10, 10]);
  });

  test("the surge adds what its trapezium holds, whatever its shape", () => {
    const day = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(day, day, day, fc.integer({ min: 0, max: 90 }), (rise, hold, fall, tenths) => {
        const factor = tenths / 10;
        const listed = demand(1, 80, 5, factor, rise, hold, fall);
        const extra = listed.reduce((sum, each) => sum + each - 1, 0);
        // Σ k/rise, k = 1…rise, is (rise + 1)/2; Σ (1 − k/fall), k = 1…fall, is (fall − 1)/2.
        const wanted = (factor - 1) * ((rise > 0 ? (rise + 1) / 2 : 0) + hold + (fall > 0 ? (fall - 1) / 2 : 0));
        expect(extra).toBeCloseTo(wanted, 8);
      }),
      { seed: 12 },
    );
  });

  test("a list without end is refused", () => {
    expect(surgeDemand([[1]], [[10001]], [[1]], [[2]], [[1]], [[1]], [[1]])[0]![0]).toMatchObject({ code: "#VALUE!" });
  });
});

test("DESIGN_FLOW: one bed takes its own flow, no bed none", () => {
  expect(oneNumber(designFlow, 1, 10, 6, 0.25)).toBe(10);
  expect(oneNumber(designFlow, 0, 10, 6, 0.25)).toBe(0);
});

test("AVERAGE_CENSUS is Little's law and reads times", () => {
  expect(oneNumber(averageCensus, 6, "36 h")).toBeCloseTo(9, 12);
});
