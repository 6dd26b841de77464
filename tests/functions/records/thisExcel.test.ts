import { functions } from "../../../src/catalogue/generated/functions";
import { CellError } from "../../../src/cells/cellValues";
import type { Program } from "../../../src/cells/program";
import { createEngine } from "../../../src/engine/engine";
import { cellJson } from "../../../src/engine/cellText";
import { thisExcel } from "../../../src/functions/records/thisExcel";

/** An error as Excel hands it over with data types (Microsoft, Excel.ErrorCellValue). */
const notAvailable = { type: "Error", basicType: "Error", basicValue: "#N/A", errorType: "NotAvailable" };

type Table = [item: string, state: any, advice: string][];
const states = (table: any[][]): Record<string, any> =>
  Object.fromEntries((table.slice(1) as Table).map(([item, state]) => [item, state]));
const advice = (table: any[][], wanted: string): string => (table as Table).find(([item]) => item === wanted)![2];

/** The function as a build for a program has it. */
function builtFor(program: Program): typeof thisExcel {
  const world = globalThis as { OXYGEN_PROGRAM?: Program };
  world.OXYGEN_PROGRAM = program;
  try {
    let built: typeof thisExcel | undefined;
    jest.isolateModules(() => {
      built = require("../../../src/functions/records/thisExcel").thisExcel;
    });
    return built!;
  } finally {
    delete world.OXYGEN_PROGRAM;
  }
}

test("has its four rows in order, whatever comes in", () => {
  for (const cell of [null, "", 0, notAvailable, "x"])
    expect(thisExcel([[cell]], [[cell]]).map((row) => row[0])).toEqual([
      "item",
      "blank cells",
      "error cells",
      "dates",
      "words",
    ]);
});

// The ways in which programs are known to hand a blank over: null and "" in current ones, 0 in older desktop ones.
test.each([
  [null, "come as blank", /^nothing/],
  ["", "come as blank", /^nothing/],
  [0, "come as 0", /no empty input can be caught here: fill every input/],
  [{ type: "Double", basicType: "Double", basicValue: 0, numberFormat: "0.0" }, "come as 0", /fill every input/],
  [7, "can't be told", /holds 7: point blank_cell at one empty cell/],
  ["full", "can't be told", /holds "full": point/],
  [notAvailable, "can't be told", /holds an error: point/],
])("a blank cell that arrives as %p", (cell, state, words) => {
  const table = thisExcel([[cell]], [[notAvailable]]);
  expect(states(table)["blank cells"]).toBe(state);
  expect(advice(table, "blank cells")).toMatch(words);
});

test.each([
  [notAvailable, "come through", /^nothing/],
  [new CellError("#N/A", "of the local engine"), "come through", /^nothing/],
  [{ code: "#N/A" }, "come through", /^nothing/],
  [null, "don't come through", /^a blank came: check that the cell given holds =NA\(\)/],
  [0, "don't come through", /^0 came: .*looks like a good one here/],
  ["#N/A", "don't come through", /^"#N\/A" came/],
])("an error cell that arrives as %p", (cell, state, words) => {
  const table = thisExcel([[null]], [[cell]]);
  expect(states(table)["error cells"]).toBe(state);
  expect(advice(table, "error cells")).toMatch(words);
});

test("only what comes as it should is calm", () => {
  const calm = (table: any[][]) => (table as Table).filter((row) => row[2].startsWith("nothing")).map(([item]) => item);
  expect(calm(thisExcel([[null]], [[notAvailable]]))).toEqual(["blank cells", "error cells", "dates"]);
  expect(calm(thisExcel([[0]], [[0]]))).toEqual(["dates"]);
});

test("the words stand in an error of their own", () => {
  const table = thisExcel([[null]], [[notAvailable]]);
  expect(states(table).words).toBeInstanceOf(CellError);
  expect(states(table).words).toMatchObject({ code: "#N/A", message: expect.stringContaining("errors speak here") });
});

test("a cell left out or a range is refused by name", () => {
  expect(thisExcel(undefined as any, [[notAvailable]])).toMatchObject([
    [
      {
        code: "#VALUE!",
        message: expect.stringMatching(/^blank_cell did not come: .*this program leaves such a cell out/),
      },
    ],
  ]);
  expect(thisExcel([[null]], null as any)[0]![0].message).toMatch(
    /^bad_cell did not come: give it one cell that holds =NA\(\)/,
  );
  expect(thisExcel([[null], [null]], [[notAvailable]])[0]![0].message).toBe(
    "blank_cell is a range; give it one empty cell alone",
  );
});

test("each build says what it does with dates, and only the local engine speaks of itself", () => {
  for (const [program, state] of [
    ["Microsoft 365", "formatted"],
    ["perpetual Excel", "as plain numbers"],
    ["local engine", "formatted"],
  ] as const) {
    const table = builtFor(program)([[null]], [[notAvailable]]);
    expect([program, states(table).dates]).toEqual([program, state]);
    const local = (table.slice(1) as Table).filter((row) => row[2].includes("This is the local engine, not Excel"));
    expect([program, local.length]).toEqual([program, program === "local engine" ? 4 : 0]);
  }
  expect(advice(builtFor("perpetual Excel")([[null]], [[notAvailable]]), "dates")).toMatch(/yyyy-mm-dd hh:mm/);
});

test("in the local engine, over an empty cell and =NA(): blanks and errors come, a date keeps its format, and words are read", async () => {
  const engine = createEngine(functions);
  try {
    const [sheet] = await engine.calculateWorkbook([
      {
        name: "Ask",
        cells: {
          B1: { formula: "=NA()" },
          A3: { formula: "=OXYGEN.THIS_EXCEL(A1,B1)" },
          A10: { formula: '=OXYGEN.NEXT_SERVICE_DATE("2026-03-01",1)' },
        },
      },
    ]);
    const table = sheet!.cells.A3!.spill as any[][];
    expect(table.slice(1, 4).map((row) => row[1])).toEqual(["come as blank", "come through", "formatted"]);
    expect(table[1]![2]).toContain("This is the local engine, not Excel");
    expect(table[4]![1]).toMatchObject({ error: "#N/A", message: expect.stringContaining("errors speak here") });
    // What the row on dates says is so: 2026-04-01 as a serial, with a format.
    expect(sheet!.cells.A10!.value).toMatchObject({ basicValue: 46113, numberFormat: "yyyy-mm-dd" });
    expect(cellJson(sheet!.cells.A10!.value)).toBe(46113);
  } finally {
    engine.dispose();
  }
});
