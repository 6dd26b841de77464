/** What is written into a workbook, read by another reader (@e965/xlsx) and by Microsoft's Open XML validator. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { createEngine, type Engine } from "../../../src/engine/engine";
import type { EngineValue } from "../../../src/engine/engineValue";
import { editSheet, type CellChange } from "../../../src/engine/file/editSheet";
import { readWorkbook } from "../../../src/engine/file/readWorkbook";
import { withChanges, type Entry } from "../../../src/engine/file/writeWorkbook";
import { packParts, readParts } from "../../../src/engine/file/zipParts";
import { readCells } from "../../workbooks/openXmlSecondReader";
import { testValidator, validatorFindings, validatorMark } from "../../workbooks/openXmlValidator";
import { smallWorkbook } from "../smallWorkbook";
import { standIns } from "../standInFunctions";
import { partOf, withParts } from "./workbookParts";

const ids = standIns.map(([id]) => id);
const plan = "Plan & log";
const sheet = "xl/worksheets/sheet1.xml";

let engine: Engine;
beforeAll(() => {
  engine = createEngine(standIns);
});
afterAll(() => engine.dispose());

const edited = (changes: Record<string, CellChange>, bytes = smallWorkbook()): Uint8Array => {
  const parts = readParts(bytes);
  editSheet(parts, sheet, new Map(Object.entries(changes)));
  return packParts(parts);
};

const valueIn = (bytes: Uint8Array, address: string): unknown =>
  readCells(bytes).get(`${plan}!${address}`)?.value ?? null;
const formulaIn = (bytes: Uint8Array, address: string): string | undefined =>
  readCells(bytes).get(`${plan}!${address}`)?.formula;

describe("cells written into a sheet", () => {
  test("every kind of value comes back, in cells that were there, in new ones and in new rows", () => {
    const values: [string, EngineValue][] = [
      ["B1", 12.5],
      ["A1", 'a <b> & "c"'],
      ["C1", true],
      ["F3", "  spaces  "],
      ["H20", -1e-7],
      ["A20", "_x0041_ stays"],
      ["B8", "two\nlines"],
      ["XFD9", 1],
    ];
    const bytes = edited(Object.fromEntries(values.map(([at, value]) => [at, { kind: "value", value }])));
    for (const [at, value] of values) expect([at, valueIn(bytes, at)]).toEqual([at, value]);
    expect(readWorkbook(bytes, ids).cached(plan, "A20")).toBe("_x0041_ stays");
    expect(valueIn(bytes, "G2")).toBe(10);
  });

  test("an emptied cell keeps its style", () => {
    const bytes = edited({ D4: { kind: "value", value: undefined } });
    expect(partOf(bytes, sheet)).toContain('<c r="D4" s="1"/>');
  });

  test("a result leaves the formula, its style and its mark", () => {
    const bytes = edited({
      D3: { kind: "result", value: 99 },
      D5: { kind: "result", value: { error: "#SPILL!", message: "" } },
    });
    expect(partOf(bytes, sheet)).toContain(
      '<c r="D3" s="2" cm="1"><f t="array" ref="D3">SUM(_xlfn.DROP(_xlfn.ANCHORARRAY(A2),1,1))</f><v>99</v></c>',
    );
    // A file keeps #SPILL! as #VALUE! with data beside it: [MS-XLSX] 2.6.205; the data is left out here.
    expect(valueIn(bytes, "D5")).toEqual({ error: "#VALUE!" });
  });

  test("a result that fills other cells moves its area, and the cells it leaves are emptied", () => {
    const bytes = edited({ A2: { kind: "result", value: "n", area: "A2:B3" } });
    expect(partOf(bytes, sheet)).toContain('<f t="array" ref="A2:B3">');
    expect(["A3", "B3", "A4", "B4", "A5", "B5"].map((at) => valueIn(bytes, at))).toEqual([
      1,
      1,
      null,
      null,
      null,
      null,
    ]);
    expect(partOf(bytes, sheet)).toContain('<c r="B5" s="2"/>');
  });

  test("a value over the first of an array empties its other cells", () => {
    const bytes = edited({ A2: { kind: "value", value: 5 } });
    expect(["A2", "B2", "A5"].map((at) => valueIn(bytes, at))).toEqual([5, null, null]);
  });

  test("cells that share a formula with a changed one get their own", () => {
    // E4 holds G2*Rate for E4 to E6.
    const bytes = edited({ E4: { kind: "value", value: 7 }, E6: { kind: "result", value: 3 } });
    expect(formulaIn(bytes, "E4")).toBeUndefined();
    expect([formulaIn(bytes, "E5"), formulaIn(bytes, "E6")]).toEqual(["G3*Rate", "G4*Rate"]);
    expect([valueIn(bytes, "E4"), valueIn(bytes, "E5"), valueIn(bytes, "E6")]).toEqual([7, 60, 3]);
    expect(partOf(bytes, sheet)).not.toContain('t="shared"');
  });

  test("a sheet without any cell takes some", () => {
    const empty = withParts(smallWorkbook(), {
      [sheet]: (text) => text.replace(/<sheetData>[^]*<\/sheetData>/, "<sheetData/>"),
    });
    const bytes = edited({ B3: { kind: "value", value: 1 }, A1: { kind: "value", value: 2 } }, empty);
    expect([valueIn(bytes, "B3"), valueIn(bytes, "A1")]).toEqual([1, 2]);
    expect(readWorkbook(bytes, ids).sheets[0]!.cells).toEqual({ A1: { value: 2 }, B3: { value: 1 } });
  });
});

describe("a copy with formulas", () => {
  const copyOf = async (typed: Record<string, Entry>, bytes = smallWorkbook()): Promise<Uint8Array> => {
    const saved = readWorkbook(bytes, ids);
    const entries = new Map([[plan, new Map(Object.entries(typed))]]);
    const sheets = saved.sheets.map((input) => ({
      ...input,
      cells: Object.fromEntries(
        Object.entries({ ...input.cells, ...typed }).filter(
          ([, cell]) => cell.formula !== undefined || cell.value !== undefined,
        ),
      ),
    })) as typeof saved.sheets;
    return withChanges(saved.file, entries, await engine.calculateWorkbook(sheets, saved.names));
  };

  test("holds the new inputs and results, and calculates to the same again", async () => {
    const bytes = await copyOf({ B1: { value: 5 }, G3: { value: 40 } });
    // Squares of 1 to 5 add up to 55; 40 times the rate of 5 is 200.
    expect(["B7", "D3", "E5"].map((at) => valueIn(bytes, at))).toEqual([25, 55, 200]);
    expect(formulaIn(bytes, "D3")).toBe("SUM(_xlfn.DROP(_xlfn.ANCHORARRAY(A2),1,1))");
    const again = readWorkbook(bytes, ids);
    expect(again.sheets[0]!.cells.A2).toEqual({ formula: "=OXYGEN.SQUARES(B1)", ref: "A2:B7" });
    const [computed] = await engine.calculateWorkbook(again.sheets, again.names);
    expect(computed!.cells.D3!.value).toBe(55);
  });

  test("leaves every part alone but the sheet that changed", async () => {
    const before = unzipSync(smallWorkbook());
    const after = unzipSync(await copyOf({ B1: { value: 5 } }));
    expect(Object.keys(after)).toEqual(Object.keys(before));
    for (const [path, content] of Object.entries(before)) {
      if (path !== sheet) expect([path, after[path]]).toEqual([path, content]);
    }
    const outside = (xml: string): string =>
      xml.replace(/<sheetData>[^]*<\/sheetData>/, "").replace(/<dimension [^>]*>/, "");
    expect(outside(partOf(await copyOf({ B1: { value: 5 } }), sheet))).toBe(outside(partOf(smallWorkbook(), sheet)));
  });

  test("what is as it was saved is not written again", async () => {
    const saved = readWorkbook(smallWorkbook(), ids);
    const computed = await engine.calculateWorkbook(saved.sheets, saved.names);
    const bytes = withChanges(saved.file, new Map(), computed, () => true);
    expect(partOf(bytes, sheet)).toBe(partOf(smallWorkbook(), sheet));
  });

  const dynamic = { value: 4, formula: "=SUM(SEQUENCE(B1)^2)-10", area: "H1" };

  test("takes new formulas in the form files keep", async () => {
    const bytes = await copyOf({ H1: dynamic, H2: { formula: '=IF(B1>1.50,"more","less")', value: "more" } });
    expect(formulaIn(bytes, "H1")).toBe("SUM(_xlfn.SEQUENCE(B1)^2)-10");
    expect(partOf(bytes, sheet)).toContain(
      '<c r="H2" t="str"><f>IF(B1&gt;1.50,&quot;more&quot;,&quot;less&quot;)</f><v>more</v></c>',
    );
    expect(partOf(bytes, sheet)).toContain('<c r="H1" cm="1"><f t="array" ref="H1">');
  });

  test("makes the marks of dynamic arrays where the workbook has none", async () => {
    const without = withParts(smallWorkbook(), {
      "xl/metadata.xml": undefined,
      "xl/_rels/workbook.xml.rels": (text) => text.replace(/<Relationship [^>]*metadata\.xml"\/>/, ""),
      "[Content_Types].xml": (text) => text.replace(/<Override [^>]*metadata\.xml"[^>]*\/>/, ""),
      [sheet]: (text) => text.replace(/ cm="1"/g, ""),
    });
    const bytes = await copyOf({ H1: dynamic }, without);
    expect(partOf(bytes, "xl/metadata.xml")).toContain('name="XLDAPR"');
    expect(readCells(bytes).get(`${plan}!H1`)?.dynamic).toBe(true);
  });

  test("adds the mark to a list of other marks", async () => {
    const other = withParts(smallWorkbook(), {
      "xl/metadata.xml": (text) => text.replaceAll("XLDAPR", "XLOTHER"),
    });
    const bytes = await copyOf({ H1: dynamic }, other);
    const xml = partOf(bytes, "xl/metadata.xml");
    expect(xml).toMatch(/<metadataTypes count="2">.*name="XLOTHER".*name="XLDAPR"/);
    expect(xml).toContain(
      '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata>',
    );
    expect(partOf(bytes, sheet)).toContain('<c r="H1" cm="2">');
  });

  test("drops an order of calculation that no longer fits, and only then", async () => {
    const chained = withParts(smallWorkbook(), {
      "xl/_rels/workbook.xml.rels": (text) =>
        text.replace(
          "</Relationships>",
          '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain" Target="sharedStrings.xml"/></Relationships>',
        ),
    });
    const chain = /relationships\/calcChain/;
    const relations = "xl/_rels/workbook.xml.rels";
    expect(partOf(await copyOf({ G3: { value: 1 } }, chained), relations)).toMatch(chain);
  });

  testValidator(
    `is found sound by Microsoft's validator ${validatorMark}`,
    async () => {
      const folder = mkdtempSync(join(tmpdir(), "copy-"));
      try {
        const file = join(folder, "copy.xlsx");
        writeFileSync(
          file,
          await copyOf({ B1: { value: 6 }, H1: dynamic, A30: { value: "new & <last>" }, E4: { value: 7 } }),
        );
        expect(validatorFindings(file)).toEqual([]);
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
    60_000,
  );
});
