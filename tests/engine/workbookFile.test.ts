import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { createEngine, type Engine } from "../../src/engine/engine";
import { readWorkbook, type SavedWorkbook } from "../../src/engine/file/readWorkbook";
import { valuesOnly } from "../../src/engine/file/writeWorkbook";
import type { ComputedSheet } from "../../src/engine/workbookInput";
import { readCells } from "../workbooks/openXmlSecondReader";
import { testValidator, validatorFindings, validatorMark } from "../workbooks/openXmlValidator";
import { smallWorkbook } from "./smallWorkbook";
import { standIns } from "./standInFunctions";

const ids = standIns.map(([id]) => id);
let engine: Engine;
beforeAll(() => {
  engine = createEngine(standIns);
});
afterAll(() => engine.dispose());

const compute = (saved: SavedWorkbook): Promise<ComputedSheet[]> => engine.calculateWorkbook(saved.sheets, saved.names);

const sheetName = "Plan & log";

test("a saved workbook reads in typed form", () => {
  const saved = readWorkbook(smallWorkbook(), ids);
  const [sheet] = saved.sheets;
  expect(sheet!.name).toBe(sheetName);
  expect(sheet!.cells).toMatchObject({
    A1: { value: "Count" },
    B1: { value: 3 },
    A2: { formula: "=OXYGEN.SQUARES(B1)", ref: "A2:B5" },
    D3: { formula: "=SUM(DROP(A2#,1,1))" },
    D5: { formula: "=OXYGEN.NO_ANSWER(1)" },
    E5: { formula: "=G3*Rate" },
  });
  expect(sheet!.cells.A3).toBeUndefined();
  expect(saved.names).toEqual({
    names: { Doubled: "=LAMBDA(x,x*2)", Rate: "'Plan & log'!$B$1" },
    tables: [{ name: "Kinds", sheet: sheetName, ref: "F1:G3", columns: ["kind", "flow <L>"] }],
    ambiguous: [],
  });
  expect(saved.cached(sheetName, "B5")).toBe(9);
  expect(saved.cached(sheetName, "D4")).toMatchObject({ basicValue: 45000 });
  expect(saved.cached(sheetName, "D5")).toMatchObject({ error: "#N/A" });
});

test("its formulas give its saved values", async () => {
  const [sheet] = await compute(readWorkbook(smallWorkbook(), ids));
  expect(sheet!.cells).toMatchObject({
    A2: { area: "A2:B5" },
    D3: { value: 14 },
    D4: { value: { basicValue: 45000 } },
    D5: { value: { error: "#N/A", message: "the vessel never empties" } },
    D6: { value: true },
    E4: { value: 30 },
    E5: { value: 60 },
    E6: { value: 0 },
    F6: { value: 32 },
  });
});

test("an error that stands in a cell without a formula is an error for the formulas that read it", async () => {
  const saved = readWorkbook(smallWorkbook({ noAnswer: '<c r="D5" t="e"><v>#DIV/0!</v></c>' }), ids);
  expect(saved.sheets[0]!.cells.D5).toEqual({ value: "#DIV/0!" });
  const sheets = [{ ...saved.sheets[0]!, cells: { ...saved.sheets[0]!.cells, H1: { formula: "=D5+1" } } }];
  const [sheet] = await engine.calculateWorkbook(sheets, saved.names);
  expect(sheet!.cells.H1!.value).toMatchObject({ error: "#DIV/0!" });
  expect(sheet!.cells.D5).toBeUndefined();
});

test("bytes that are no workbook are refused", () => {
  expect(() => readWorkbook(new Uint8Array([1, 2, 3]), ids)).toThrow();
});

describe("a copy with values only", () => {
  const copyOf = async (bytes: Uint8Array): Promise<Uint8Array> => {
    const saved = readWorkbook(bytes, ids);
    return valuesOnly(saved.file, await compute(saved));
  };

  test("holds the computed values and no formula, read by another reader", async () => {
    // The saved values are wrong here: the copy must hold the right ones.
    const cells = readCells(await copyOf(smallWorkbook({ sum: "1", squares: "1" })));
    expect([...cells.values()].filter((cell) => cell.formula !== undefined || cell.dynamic)).toEqual([]);
    const value = (address: string): unknown => cells.get(`${sheetName}!${address}`)?.value;
    expect(["A1", "A2", "B2", "A5", "B5", "D3", "D4", "D6", "E5", "F6", "G2"].map(value)).toEqual([
      "Count",
      "n",
      "square",
      3,
      9,
      14,
      45000,
      true,
      60,
      32,
      10,
    ]);
    expect(value("D5")).toEqual({ error: "#N/A" });
  });

  test("keeps styles and columns and drops what belongs to formulas", async () => {
    const parts = unzipSync(await copyOf(smallWorkbook()));
    const original = unzipSync(smallWorkbook());
    expect(parts["xl/styles.xml"]).toEqual(original["xl/styles.xml"]);
    const sheet = strFromU8(parts["xl/worksheets/sheet1.xml"]!);
    expect(sheet).toContain('<c r="D4" s="1"><v>45000</v></c>');
    expect(sheet).toContain('<c r="B5" s="2"><v>9</v></c>');
    expect(sheet).toContain('<col min="1" max="1" width="20" customWidth="1"/>');
    expect(sheet).not.toMatch(/<f\b| cm="/);
    expect(parts["xl/metadata.xml"]).toBeUndefined();
    const rest = Object.entries(parts)
      .map(([path, bytes]) => `${path} ${strFromU8(bytes)}`)
      .join("\n");
    expect(rest).not.toMatch(/metadata\.xml|_xldudf|_xlfn/);
    expect(strFromU8(parts["xl/workbook.xml"]!)).toContain('name="Rate"');
  });

  test("empties the cells that a shrunken spill has left and makes those a larger one needs", async () => {
    const shorter = readWorkbook(smallWorkbook(), ids);
    const [plan] = shorter.sheets;
    const resized = async (count: number): Promise<Map<string, { value: unknown }>> => {
      const sheets = [{ ...plan!, cells: { ...plan!.cells, B1: { value: count } } }];
      const computed = await engine.calculateWorkbook(sheets, shorter.names);
      return readCells(valuesOnly(shorter.file, computed));
    };
    const small = await resized(1);
    expect(small.get(`${sheetName}!B3`)?.value).toBe(1);
    expect(small.get(`${sheetName}!B5`)?.value ?? null).toBeNull();
    const large = await resized(6);
    expect(large.get(`${sheetName}!B8`)?.value).toBe(36);
    expect(large.get(`${sheetName}!A8`)?.value).toBe(6);
  });

  testValidator(
    `is the same bytes each time, and Microsoft's validator finds nothing ${validatorMark}`,
    async () => {
      const copy = await copyOf(smallWorkbook());
      expect(await copyOf(smallWorkbook())).toEqual(copy);
      const folder = mkdtempSync(join(tmpdir(), "values-"));
      try {
        const file = join(folder, "copy.xlsx");
        writeFileSync(file, copy);
        expect(validatorFindings(file)).toEqual([]);
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
    60_000,
  );
});
