import { isFailure } from "../../src/arguments/argument";
import { date } from "../../src/arguments/date";
import { sameLength } from "../../src/arguments/eachCell";
import { count, litres, litresPerHour } from "../../src/arguments/quantity";
import { list, rawRange, table } from "../../src/arguments/range";
import { text } from "../../src/arguments/text";
import { CellError, invalid } from "../../src/cells/cellValues";

const message = (result: unknown): string => {
  expect(isFailure(result)).toBe(true);
  return (result as CellError).message;
};

describe("list", () => {
  it("reads columns, rows and blocks, row by row, with unit text", () => {
    expect(list(litres).readRange([[1], [2]], "x")).toEqual([1, 2]);
    expect(
      list(litres).readRange(
        [
          [1, "1 m3"],
          [3, 4],
        ],
        "x",
      ),
    ).toEqual([1, 1000, 3, 4]);
  });

  it("names the place of a bad cell", () => {
    expect(message(list(litres).readRange([[1], [null], [2]], "need"))).toMatch(/^need row 2 is blank/);
    expect(message(list(litres).readRange([[1, "fast"]], "need"))).toMatch(/^need cell 2 "fast"/);
    expect(
      message(
        list(litres).readRange(
          [
            [1, 1],
            [1, -1],
          ],
          "need",
        ),
      ),
    ).toMatch(/^need row 2, column 2 must/);
    expect(message(list(litres).readRange(undefined, "need"))).toMatch(/^need is blank/);
  });

  it("passes an error cell on", () => {
    const error = invalid("from elsewhere");
    expect(list(litres).readRange([[1], [error]], "x")).toBe(error);
  });

  it("may be omitted", () => {
    expect(list(litres).mayBeOmitted().readRange(undefined, "x")).toBeUndefined();
    expect(
      message(
        list(litres)
          .mayBeOmitted()
          .readRange([[""]], "x"),
      ),
    ).toMatch(/leave the argument out/);
  });
});

describe("table", () => {
  const plants = table({ name: text, count, from: date, rate: litresPerHour });

  it("passes over headings and blank rows at the end, and refuses one in between", () => {
    const rows = [
      ["A", 2, 45000, 1.5],
      ["B", 1, 45010, "36 L/day"],
    ];
    const wanted = [
      { name: "A", count: 2, from: 45000, rate: 1.5 },
      { name: "B", count: 1, from: 45010, rate: 1.5 },
    ];
    expect(plants.readRange(rows, "plants")).toEqual(wanted);
    const [heading, blank] = [
      ["kind", "how many", "from", "L/h"],
      [null, "", null, null],
    ];
    expect(plants.readRange([heading, ...rows, blank, blank], "plants")).toEqual(wanted);
    expect(message(plants.readRange([heading, rows[0]!, blank, rows[1]!], "plants"))).toMatch(/^plants row 3 is blank/);
    expect(message(plants.readRange([...rows, ["spare", null, null, null]], "plants"))).toMatch(
      /^plants row 3, count is blank/,
    );
  });

  it("never takes a row with one bad cell for a header", () => {
    expect(message(plants.readRange([["A", "two", 45000, 1.5]], "plants"))).toMatch(/^plants row 1, count "two"/);
    expect(message(plants.readRange([["A", "two", "2023-03-01", "36 L/day"]], "plants"))).toMatch(
      /^plants row 1, count "two"/,
    );
  });

  it("names row and column of a bad cell, counted as the sheet shows them", () => {
    expect(
      message(
        plants.readRange(
          [
            ["kind", "count", "from", "rate"],
            ["A", 1, 45000, -1],
          ],
          "plants",
        ),
      ),
    ).toMatch(/^plants row 2, rate must be 0 L\/h or more/);
  });

  it("says which columns it wants", () => {
    expect(message(plants.readRange([["A", 2]], "plants"))).toMatch(
      /has 2 columns; enter a range with the columns name, count, from, rate/,
    );
    expect(message(plants.readRange([["kind", "count", "from", "rate"]], "plants"))).toMatch(
      /^plants row 1, count "count" is not a number/,
    );
  });
});

it("rawRange takes data types apart and keeps errors", () => {
  const error = invalid("from elsewhere");
  expect(rawRange.readRange([[{ type: "Double", basicValue: 5 }, error]], "x")).toEqual([[5, error]]);
});

it("sameLength names both lists", () => {
  expect(sameLength({ dates: [1, 2], need: [1, 2] })).toBeUndefined();
  expect(sameLength({ dates: [1, 2], need: [1] })!.message).toMatch(/dates has 2 and need has 1 cells/);
});
