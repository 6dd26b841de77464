import fc from "fast-check";
import { beatenBy } from "../../../src/functions/options/beatenBy";
import { optionScore } from "../../../src/functions/options/optionScore";
import { optionTable } from "../../../src/functions/options/optionTable";

const column = (cells: any[][]): any[] => cells.slice(1).map((line) => line[0]);
const beaten = (measures: unknown[][], better: string[]): any[] => column(beatenBy(measures, [better]));
const score = (measures: unknown[][], better: string[], weights: number[]): any[] =>
  column(optionScore(measures, [better], [weights]));

const ways = fc.constantFrom("less", "more");
const setting = fc.integer({ min: 1, max: 4 }).chain((width) =>
  fc.record({
    rows: fc.array(fc.array(fc.integer({ min: 0, max: 5 }), { minLength: width, maxLength: width }), {
      minLength: 1,
      maxLength: 8,
    }),
    better: fc.array(ways, { minLength: width, maxLength: width }),
    weights: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: width, maxLength: width }),
  }),
);

describe("BEATEN_BY", () => {
  it("finds by eye that row 2 is worse than row 1 on all three", () => {
    expect(
      beaten(
        [
          [900, 40, 5],
          [1200, 42, 4],
          [1000, 30, 6],
        ],
        ["less", "less", "more"],
      ),
    ).toEqual(["", 1, ""]);
  });

  it("marks every row that is not on the Pareto front and no other", () => {
    fc.assert(
      fc.property(setting, ({ rows, better }) => {
        const gains = rows.map((row) => row.map((value, measure) => (better[measure] === "more" ? value : -value)));
        const wanted = gains.map((row) =>
          gains.findIndex(
            (other) =>
              Math.min(...other.map((value, m) => value - row[m]!)) >= 0 &&
              Math.max(...other.map((value, m) => value - row[m]!)) > 0,
          ),
        );
        expect(beaten(rows, better)).toEqual(wanted.map((at) => (at < 0 ? "" : at + 1)));
      }),
    );
  });

  it("passes over a header, refuses a blank row and leaves equals alone", () => {
    expect(beaten([["kg"], [900], [900], [1000]], ["less"])).toEqual(["", "", 1]);
    expect((beatenBy([["kg"], [900], [null], [1000]], [["less"]])[0]![0] as any).message).toContain("row 3");
  });

  it("refuses a blank among numbers, a third word and a wrong count", () => {
    expect((beatenBy([[1, null]], [["less", "more"]])[0]![0] as any).message).toContain(
      "measures row 1, column 2 is blank",
    );
    expect((beatenBy([[1]], [["best"]])[0]![0] as any).message).toContain("enter less or more");
    expect((beatenBy([[1, 2]], [["less"]])[0]![0] as any).message).toContain(
      "measures has 2 columns and better has 1 word;",
    );
  });
});

describe("OPTION_SCORE", () => {
  it("puts the best of everything at 1 and the worst of everything at 0", () => {
    expect(
      score(
        [
          [1, 9],
          [5, 2],
          [3, 9],
        ],
        ["less", "more"],
        [2, 7],
      ),
    ).toEqual([1, 0, expect.closeTo((2 * 0.5 + 7) / 9, 12)]);
  });

  it("never scores an option below one it beats, stays in 0 to 1 and ignores the scale of weights and measures", () => {
    fc.assert(
      fc.property(setting, ({ rows, better, weights }) => {
        const values = score(rows, better, weights) as number[];
        const winners = beaten(rows, better);
        values.forEach((value, row) => {
          expect(value).toBeGreaterThanOrEqual(-1e-12);
          expect(value).toBeLessThanOrEqual(1 + 1e-12);
          if (winners[row] !== "") expect(values[winners[row] - 1]!).toBeGreaterThan(value);
        });
        const scaled = score(
          rows.map((row) => row.map((value) => value * 7 + 3)),
          better,
          weights.map((weight) => weight * 13),
        ) as number[];
        scaled.forEach((value, row) => expect(value).toBeCloseTo(values[row]!, 10));
      }),
    );
  });

  it("counts a measure without spread as 1 and shifts when an option is added", () => {
    expect(score([[5], [5]], ["less"], [3])).toEqual([1, 1]);
    expect(score([[1], [3]], ["less"], [1])[0]).toBe(1);
    expect(score([[1], [3], [0]], ["less"], [1])[0]).toBeCloseTo(2 / 3, 12);
  });

  it("stays finite for measures near the largest numbers", () => {
    expect(score([[-1e308], [1e308], [0]], ["more"], [1e300])).toEqual([0, 1, 0.5]);
  });

  it("refuses a weight too few or too many", () => {
    for (const weights of [[2], [2, 3, 4]])
      expect((optionScore([[1, 2]], [["less", "more"]], [weights])[0]![0] as any).message).toContain(
        `measures has 2 columns and weights has ${weights.length} numbers`,
      );
  });

  it("refuses weights that are all 0", () => {
    expect((optionScore([[1, 2]], [["less", "more"]], [[0, 0]])[0]![0] as any).message).toContain("weights are all 0");
  });
});

describe("OPTION_TABLE", () => {
  const options = [
    ["name", "mass", "pallets", "kW", "fuel/day", "make", "stock", "cost/day", "largest"],
    ["twin", 2000, 4, 14, 110, 90, 200, 410, 45],
    ["mixed", 1900, 4, 12, 100, 90, 200, 400, 30],
    ["cylinders", 6000, 12, 0, 0, 0, 400, 900, 0],
  ];

  it("works out the shares by hand: 90/60, 200/(60 + 200/8), (90 − 30)/60", () => {
    const rows = optionTable(options, [[60]]);
    expect(rows[2]).toEqual(["mixed", 1900, 4, 12, 100, 1.5, expect.closeTo(200 / (60 + 25), 9), 1, 400, ""]);
    expect(rows[1]![9]).toBe("mixed");
    expect(rows[3]!.slice(5)).toEqual([0, expect.closeTo(400 / (60 + 50), 9), 0, 900, ""]);
  });

  it("agrees with BEATEN_BY on its own measures", () => {
    const rows = optionTable(options, [[60]]).slice(1);
    const winners = beaten(
      rows.map((line) => line.slice(1, 9)),
      ["less", "less", "less", "less", "more", "more", "more", "less"],
    );
    expect(rows.map((line) => line[9])).toEqual(winners.map((row) => (row === "" ? "" : rows[row - 1]![0])));
  });

  it("takes the loss of the tenth column, and refuses a blank in it", () => {
    const withLoss = (losses: unknown[]): any[][] =>
      optionTable(
        options.map((row, at) => [...row, at === 0 ? "loss" : losses[at - 1]]),
        [[60]],
      );
    expect(withLoss([20, 40, 0]).map((row) => row[6])).toEqual(["days of stock", 2.5, 2, expect.closeTo(400 / 60, 9)]);
    expect(withLoss([20, null, 0])[0]![0].message).toContain('the loss per day of "mixed" is blank');
    expect(withLoss([null, null, null])[0]![0].message).toContain('the loss per day of "twin" is blank');
  });

  it("refuses a largest unit above the whole, a blank and no need", () => {
    const wrong = [...options, ["odd", 1, 1, 1, 1, 20, 1, 1, 21]];
    expect((optionTable(wrong, [[60]])[0]![0] as any).message).toContain('the largest unit of "odd" makes 21');
    expect((optionTable([["odd", 1, 1, null, 1, 20, 1, 1, 20]], [[60]])[0]![0] as any).message).toContain(
      "kw is blank",
    );
    expect((optionTable(options, [[0]])[0]![0] as any).message).toContain("daily_need must be more than 0");
  });
});
