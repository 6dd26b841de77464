import { createEngine, type Engine } from "../../src/engine/engine";
import { buildWorkbook, calculateWith } from "../../src/workbooks/writer";
import { demo, demoValues } from "./openXmlDemo";
import { readCells } from "./openXmlSecondReader";
import { assertWorkbookSound } from "./openXmlSound";

describe("a workbook calculated by the local engine", () => {
  let engine: Engine;
  beforeAll(async () => {
    const stockTable = (await demoValues({ sheets: [], names: [] })).get("Plan!A4")!;
    engine = createEngine([
      ["HOURS_TO_FILL", (capacity: number[][], rate: number[][]) => [[3 + capacity[0]![0]! / rate[0]![0]!]]],
      ["FIRST_SHORT_DATE", (dates: number[][]) => [[dates[10]![0]!]]],
      ["DEMO_PLAN", () => stockTable.map((row) => [...row])],
    ]);
  });
  afterAll(() => engine.dispose());

  test("holds the values worked out by hand", async () => {
    const calculated = await buildWorkbook(demo, calculateWith(engine));
    assertWorkbookSound(calculated);
    const [found, wanted] = [calculated, await buildWorkbook(demo, demoValues)].map(readCells);
    expect([...found!.keys()]).toEqual([...wanted!.keys()]);
    for (const [at, cell] of wanted!) expect([at, found!.get(at)]).toEqual([at, cell]);
  });
});
