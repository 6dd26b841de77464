import fc from "fast-check";
import { shareOut } from "../../../src/functions/stock/shareOut";
import type { CellError } from "../../../src/cells/cellValues";
import { evenly } from "../../evenly";

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const rowsOf = (table: unknown[][]): { site: unknown; share: number; days: unknown }[] =>
  table.slice(1).map(([site, share, days]) => ({ site, share: share as number, days }));
const run = (supply: number, stocks: number[], uses: number[], lot?: number) =>
  rowsOf(shareOut([[supply]], column(stocks), column(uses), undefined, lot === undefined ? undefined : [[lot]]));

const sites = fc.array(fc.record({ stock: evenly(0, 200), use: evenly(0.1, 40) }), { minLength: 1, maxLength: 8 });

// The days by bisection, by its own code: the shares Σ max(0, T·use − stock) rise with T until they make up the supply.
test("shares are those of the days found by bisection, and make up the supply", () => {
  fc.assert(
    fc.property(evenly(0, 500), sites, (supply, list) => {
      const shared = (days: number): number =>
        list.reduce((sum, { stock, use }) => sum + Math.max(0, days * use - stock), 0);
      let [low, high] = [0, 1e5];
      for (let step = 0; step < 200; step++) {
        const middle = (low + high) / 2;
        if (shared(middle) < supply) low = middle;
        else high = middle;
      }
      const rows = run(
        supply,
        list.map(({ stock }) => stock),
        list.map(({ use }) => use),
      );
      expect(rows.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(supply, 7);
      rows.forEach(({ share }, index) =>
        expect(share).toBeCloseTo(Math.max(0, high * list[index]!.use - list[index]!.stock), 6),
      );
    }),
  );
});

// Max-min fairness (Bertsekas & Gallager): nobody can be given more without taking from somebody who lasts no longer.
test("a site that gets something lasts no longer than any other site", () => {
  fc.assert(
    fc.property(evenly(1, 500), sites, (supply, list) => {
      const rows = run(
        supply,
        list.map(({ stock }) => stock),
        list.map(({ use }) => use),
      );
      const least = Math.min(...rows.map(({ days }) => days as number));
      for (const { share, days } of rows) if (share > 1e-9) expect(days as number).toBeCloseTo(least, 7);
    }),
  );
});

test("whole lots go one by one to the fewest days, and what is under a lot stays", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40 }), sites, (supply, list) => {
      const lot = 3;
      const held = list.map(({ stock }) => stock);
      for (let left = supply; left >= lot; left -= lot) {
        const days = held.map((stock, index) => stock / list[index]!.use);
        held[days.indexOf(Math.min(...days))]! += lot;
      }
      const rows = run(
        supply,
        list.map(({ stock }) => stock),
        list.map(({ use }) => use),
        lot,
      );
      rows.forEach(({ share }, index) => expect(share).toBeCloseTo(held[index]! - list[index]!.stock, 7));
      expect(rows.reduce((sum, { share }) => sum + share, 0)).toBe(supply - (supply % lot));
    }),
  );
});

test("a site without use gets nothing and has no days; none using anything is #N/A", () => {
  expect(run(10, [5, 1], [0, 2])).toEqual([
    { site: 1, share: 0, days: "" },
    { site: 2, share: 10, days: 5.5 },
  ]);
  const none = shareOut([[10]], column([5, 1]), column([0, 0]))[0]![0] as CellError;
  expect([none.code, none.message]).toEqual(["#N/A", expect.stringContaining("no site uses anything")]);
});

test("headings, spare rows, unequal lists and lots without number", () => {
  const named = shareOut(
    [[6]],
    column(["held", 2, 4, null]),
    column(["a day", 1, 1, ""]),
    column(["clinic", "North", "South", ""]),
  );
  expect(rowsOf(named).map(({ site, share }) => [site, share])).toEqual([
    ["North", 4],
    ["South", 2],
  ]);
  const words = (table: unknown[][]): string => (table[0]![0] as CellError).message;
  expect(words(shareOut([[6]], column([2, 4]), column([1])))).toMatch(/stocks has 2 and daily_uses has 1/);
  expect(words(shareOut([[1e9]], column([2]), column([1]), undefined, [[1]]))).toMatch(/lot is so small/);
  expect(words(shareOut([[6]], column([2, null, 4]), column([1, 1, 1])))).toMatch(/stocks row 2 is blank/);
});
