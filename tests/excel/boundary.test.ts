import { CellError, dateCell, invalid, noAnswer } from "../../src/cells/cellValues";
import type { Program } from "../../src/cells/program";
import { wrapForExcel } from "../../src/excel/boundary";

/** The shape of Microsoft's class in custom-functions-runtime.js; the real one is met in tests/runtime. */
class HostError extends Error {
  readonly type = "Error";
  readonly basicType = "Error";
  readonly basicValue: string;
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? "");
    this.basicValue = code;
  }
}

const host = globalThis as { CustomFunctions?: unknown; OXYGEN_PROGRAM?: Program };
const invocation = { address: "Sheet1!A1", functionName: "X" };

beforeEach(() => {
  host.CustomFunctions = { Error: HostError };
});
afterEach(() => {
  delete host.CustomFunctions;
  delete host.OXYGEN_PROGRAM;
});

const giving = (result: unknown) => wrapForExcel(() => result as any[][]);

it("needs no CustomFunctions until called", () => {
  delete host.CustomFunctions;
  expect(wrapForExcel(() => [[1]])()).toEqual([[1]]);
});

it("passes numbers, texts and booleans", () => {
  expect(
    giving([
      [1, "a"],
      [true, ""],
    ])(),
  ).toEqual([
    [1, "a"],
    [true, ""],
  ]);
});

it("turns errors into the host's, with code and words", () => {
  const [[first, second]] = giving([[invalid("too much"), noAnswer("never empties")]])() as [[HostError, HostError]];
  expect(first).toBeInstanceOf(HostError);
  expect([first.code, first.message]).toEqual(["#VALUE!", "too much"]);
  expect([second.code, second.message]).toEqual(["#N/A", "never empties"]);
});

// 5 MB: what Microsoft says of the limit in OfficeDev/office-js 4654.
describe("a result that Excel could not take", () => {
  const sentBytes = (result: unknown): number => Buffer.byteLength(JSON.stringify(result));

  it("is one error with words: long texts, dates with their formats", () => {
    for (const cell of ["x".repeat(100), dateCell(46000.04166666667)]) {
      const table = Array.from({ length: 100_000 }, () => [cell]);
      expect(sentBytes(table)).toBeGreaterThan(5e6);
      const answer = giving(table)() as HostError[][];
      expect(answer).toHaveLength(1);
      expect([answer[0]![0]!.code, answer[0]![0]!.message]).toEqual(["#VALUE!", expect.stringContaining("5 MB")]);
    }
  });

  it("is not a full column of the longest numbers, which stays below", () => {
    const table = Array.from({ length: 200_000 }, (_, row) => [1 / 3 + row]);
    expect(sentBytes(table)).toBeLessThan(5e6);
    expect(giving(table)()).toEqual(table);
  });
});

describe("dates", () => {
  /** The boundary as a build for a program has it. */
  const builtFor = (program: Program): typeof wrapForExcel => {
    host.OXYGEN_PROGRAM = program;
    let built: typeof wrapForExcel | undefined;
    jest.isolateModules(() => {
      built = require("../../src/excel/boundary").wrapForExcel;
    });
    return built!;
  };

  it("keep their format in the build for Microsoft 365", () => {
    expect(builtFor("Microsoft 365")(() => [[dateCell(46000)]])()).toEqual([
      [{ type: "Double", basicType: "Double", basicValue: 46000, numberFormat: "yyyy-mm-dd" }],
    ]);
  });

  it("are bare serials in the build for perpetual Excel, whatever the host says of itself", () => {
    expect(builtFor("perpetual Excel")(() => [[dateCell(46000)]])()).toEqual([[46000]]);
  });

  it("without a number are errors", () => {
    const [[cell]] = giving([[dateCell(NaN)]])() as [[HostError]];
    expect(cell.code).toBe("#VALUE!");
  });
});

describe("nothing unfit goes out", () => {
  it.each([
    ["NaN", NaN],
    ["Infinity", Infinity],
    ["undefined", undefined],
    ["null", null],
    ["a BigInt", 10n],
    ["a Date", new Date(0)],
    ["a function", () => 1],
    ["text longer than a cell", "x".repeat(32768)],
  ])("%s", (_name, value) => {
    const [[cell, next]] = giving([[value, 7]])() as [[HostError, number]];
    expect(cell).toBeInstanceOf(HostError);
    expect(cell.code).toBe("#VALUE!");
    expect(cell.message).not.toBe("");
    expect(next).toBe(7);
  });

  it.each([
    ["no table", undefined],
    ["an empty table", []],
    ["an empty row", [[]]],
  ])("%s", (_name, result) => {
    const [[cell]] = giving(result)() as [[HostError]];
    expect(cell.code).toBe("#VALUE!");
  });

  it("rows of unequal length are filled up with errors", () => {
    const result = giving([[1, 2], [3]])() as unknown[][];
    expect(result.map((row) => row.length)).toEqual([2, 2]);
    expect(result[1]?.[1]).toBeInstanceOf(HostError);
  });

  it("a throw becomes words", () => {
    const wrapped = wrapForExcel(() => {
      throw new RangeError("out of steps");
    });
    const [[cell]] = wrapped() as [[HostError]];
    expect(cell.message).toContain("out of steps");
  });
});

describe("errors that come in go out as they came", () => {
  const echo = wrapForExcel((cell: any[][]) => cell);

  it("as the host's class", () => {
    const given = new HostError("#DIV/0!");
    expect(echo([[given]], invocation)[0]?.[0]).toBe(given);
  });

  it("as a data type, whose code the host's class can carry", () => {
    const [[cell]] = echo(
      [[{ type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" }]],
      invocation,
    ) as [[HostError]];
    expect([cell.constructor, cell.code]).toEqual([HostError, "#DIV/0!"]);
  });

  it("as a data type of another code", () => {
    const given = { type: "Error", basicType: "Error", basicValue: "#SPILL!" };
    expect(echo([[given]], invocation)[0]?.[0]).toBe(given);
  });
});

describe("arguments", () => {
  const seen: unknown[][] = [];
  const record = wrapForExcel((first: any[][], second?: any[][], third?: any[][]) => {
    seen.push([first, second, third]);
    return [[0]];
  });
  beforeEach(() => (seen.length = 0));

  it("do not include the object about the call", () => {
    record([[1]], null, null, invocation);
    record([[1]], invocation);
    expect(seen).toEqual([
      [[[1]], null, null],
      [[[1]], undefined, undefined],
    ]);
  });

  it("are arrays even where a bare value comes", () => {
    record(5, "a", invocation);
    expect(seen).toEqual([[[[5]], [["a"]], undefined]]);
  });
});

it("keeps our own error class out of the host", () => {
  const cells = giving([[new CellError("#N/A", "none")]])().flat();
  expect(cells.some((cell) => cell instanceof CellError)).toBe(false);
});
