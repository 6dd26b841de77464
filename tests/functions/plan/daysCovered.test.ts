import fc from "fast-check";
import { daysCovered } from "../../../src/functions/plan/daysCovered";
import { columnOf } from "./planCells";
import { evenly } from "../../evenly";

const days = (stock: number, needs: unknown[], loss = 0): any =>
  daysCovered([[stock]], columnOf(needs), [[loss]])[0]![0];

test("by hand: the last day in part, nothing at hand, days without need", () => {
  expect(days(100, [30, 40, 60])).toBe(2.5);
  expect(days(0, [5])).toBe(0);
  expect(days(10, [0, 0, 40])).toBe(2.25);
  expect(days(25, [0, 0, 0], 10)).toBe(2.5);
});

test("a stock that ends with the list lasts as long as the list, also in tenths; more is longer than the list", () => {
  expect(days(70, [30, 40])).toBe(2);
  expect(days(0.3, [0.1, 0.1, 0.1])).toBe(3);
  expect(days(71, [30, 40])).toMatchObject({ code: "#N/A", message: "longer than the list of 2 days" });
});

test("a header and a day column are passed over, a blank is refused", () => {
  expect(daysCovered([[100]], [["demand"], [30], [40], [60]], [[0]])[0]![0]).toBe(2.5);
  expect(
    daysCovered(
      [[100]],
      [
        ["day", "demand"],
        [1, 30],
        [2, 40],
        [3, 60],
      ],
      [[0]],
    )[0]![0],
  ).toBe(2.5);
  expect(daysCovered([[100]], [[30], [null], [60]], [[0]])[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("needs row 2 is blank"),
  });
  expect(daysCovered([[100]], [["n/a"], [30], [60]], [[0]])[0]![0]).toMatchObject({ code: "#VALUE!" });
});

test("days beside the needs must follow one another", () => {
  const dated = (rows: unknown[][]): any => daysCovered([[45]], rows, [[5]])[0]![0];
  expect(
    dated([
      [46082, 30],
      [46083, 20],
    ]),
  ).toBe(1.4);
  for (const [rows, words] of [
    [[[46082, 30], [46085, 20]], "needs: 2026-03-04 follows 2026-03-01, with a gap of 2 days"], // prettier-ignore
    [[[46083, 30], [46082, 20]], "needs: 2026-03-01 follows 2026-03-02, which is out of order"], // prettier-ignore
    [[[1, 30], [3, 20]], "needs: day 3 follows day 1, with a gap of 1 day"], // prettier-ignore
    [[[46082, 30], [46082, 20]], "needs: 2026-03-01 stands there twice"], // prettier-ignore
  ] as const) {
    expect(dated(rows as any)).toMatchObject({ code: "#VALUE!", message: expect.stringContaining(words) });
  }
});

test("the loss must be said", () => {
  expect(daysCovered([[45]], [[30]], undefined as any)[0]![0]).toMatchObject({
    code: "#VALUE!",
    message: expect.stringContaining("daily_loss is blank"),
  });
});

test("inverse: running the stock down for the answer leaves nothing", () => {
  fc.assert(
    fc.property(
      fc.array(evenly(0.1, 50), { minLength: 1, maxLength: 20 }),
      evenly(0, 1),
      evenly(0, 5),
      (needs, share, loss) => {
        const stock = share * needs.reduce((sum, need) => sum + need + loss, 0) * 0.999;
        const covered = days(stock, needs, loss) as number;
        const used = needs.reduce((sum, need, day) => sum + (need + loss) * Math.max(0, Math.min(1, covered - day)), 0);
        expect(used).toBeCloseTo(stock, 6);
      },
    ),
  );
});
