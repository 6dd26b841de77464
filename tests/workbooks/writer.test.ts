import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import {
  block,
  buildWorkbook,
  formulaKey,
  input,
  link,
  output,
  table,
  tableCell,
  text,
  type CachedCell,
  type Cells,
  type SheetDescription,
} from "../../src/workbooks/writer";
import { placeOf } from "../../src/cells/addresses";
import { noAnswer } from "../../src/cells/cellValues";
import { calculatedFrom } from "./calculatedFrom";
import { demo, demoValues } from "./openXmlDemo";
import { readCells } from "./openXmlSecondReader";
import { assertWorkbookSound, workbookFaults } from "./openXmlSound";
import { testValidator, validatorFindings, validatorMark } from "./openXmlValidator";

const partsOf = (bytes: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));

const altered = (bytes: Uint8Array, path: string, from: string | RegExp, to: string): Uint8Array => {
  const parts = unzipSync(bytes);
  const before = strFromU8(parts[path]!);
  const after = before.replace(from, to);
  if (after === before) throw new Error(`Nothing to alter in ${path}`);
  return zipSync({ ...parts, [path]: strToU8(after) });
};

const findingsOf = (bytes: Uint8Array) => {
  const folder = mkdtempSync(join(tmpdir(), "workbook-"));
  try {
    const file = join(folder, "trial.xlsx");
    writeFileSync(file, bytes);
    return validatorFindings(file);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

const oneSheet = (
  cells: Cells,
  values: Record<string, CachedCell | CachedCell[][]> = {},
  more: Partial<SheetDescription> = {},
): Promise<Uint8Array> =>
  buildWorkbook(
    {
      properties: { title: "Trial", subject: "Trial", description: "Trial" },
      sheets: [{ name: "One", columns: [12, 12, 12], cells, ...more }],
    },
    calculatedFrom(Object.fromEntries(Object.entries(values).map(([address, value]) => [`One!${address}`, value]))),
  );

const sheetXml = async (...parameters: Parameters<typeof oneSheet>): Promise<string> =>
  partsOf(await oneSheet(...parameters))["xl/worksheets/sheet1.xml"]!;

let bytes: Uint8Array;
beforeAll(async () => {
  bytes = await buildWorkbook(demo, demoValues);
});

describe("the file", () => {
  testValidator(
    `passes the validator of Microsoft's Open XML SDK ${validatorMark}`,
    () => {
      expect(findingsOf(bytes)).toEqual([]);
    },
    60_000,
  );

  testValidator(
    `the validator speaks up when the parts of a font are out of order ${validatorMark}`,
    () => {
      const findings = findingsOf(
        altered(bytes, "xl/styles.xml", /(<sz [^>]*\/>)(<color [^>]*\/>)(<name [^>]*\/>)/, "$3$2$1"),
      );
      expect(findings.map(({ errorType }) => errorType)).toContain("Schema");
    },
    60_000,
  );

  test("is sound beyond what the validator looks at", () => {
    expect(() => assertWorkbookSound(bytes)).not.toThrow();
  });

  test("has the same bytes when built again", async () => {
    jest.useFakeTimers({
      now: new Date("2031-05-06T07:08:09Z"),
      doNotFake: ["nextTick", "setImmediate", "queueMicrotask"],
    });
    try {
      expect(Buffer.compare(Buffer.from(await buildWorkbook(demo, demoValues)), Buffer.from(bytes))).toBe(0);
    } finally {
      jest.useRealTimers();
    }
  });

  test("dates every part 2026-01-01 00:00, whatever the time zone", () => {
    // MS-DOS date and time of a local file header: PKWARE APPNOTE 4.4.6.
    const header = Buffer.from(bytes);
    expect(header.readUInt32LE(0)).toBe(0x04034b50);
    expect(header.readUInt16LE(10)).toBe(0);
    expect(header.readUInt16LE(12)).toBe(((2026 - 1980) << 9) | (1 << 5) | 1);
  });

  test("begins with the content types", () => {
    expect(Object.keys(unzipSync(bytes))[0]).toBe("[Content_Types].xml");
  });
});

describe("a second reader", () => {
  test("finds every constant", () => {
    const read = readCells(bytes);
    for (const sheet of demo.sheets) {
      for (const [address, { value }] of Object.entries(sheet.cells)) {
        if (value === undefined || value === "") continue;
        expect([address, read.get(`${sheet.name}!${address}`)?.value]).toEqual([address, value]);
      }
    }
  });

  test("finds every cached value, also of spilled cells", async () => {
    const read = readCells(bytes);
    const values = await demoValues({ sheets: [], names: [] });
    expect(values.size).toBeGreaterThan(20);
    for (const [key, rows] of values) {
      const [sheet, address] = key.split("!") as [string, string];
      const start = placeOf(address);
      rows.forEach((row, down) =>
        row.forEach((value, right) => {
          const at = formulaKey(sheet, { row: start.row + down, column: start.column + right });
          const found = read.get(at)?.value;
          if (value === "") expect([at, found === null || found === ""]).toEqual([at, true]);
          else expect([at, found]).toEqual([at, value]);
        }),
      );
    }
  });

  test("finds formulas in their stored form", () => {
    const read = readCells(bytes);
    expect(read.get("Start!B12")).toEqual({
      formula: "_xldudf_OXYGEN_HOURS_TO_FILL(Capacity,MakeRate)",
      fills: "B12",
      dynamic: true,
      value: 43,
    });
    expect(read.get("Start!B14")).toMatchObject({
      formula: '_xlfn.IFNA(_xldudf_OXYGEN_FIRST_SHORT_DATE(Plan!A5:A18),"none")',
      dynamic: true,
    });
    expect(read.get("Start!B13")).toMatchObject({ formula: "B12/24", dynamic: false });
    expect(read.get("Plan!A4")).toMatchObject({ fills: "A4:C19", dynamic: true });
    expect(read.get("Plan!A5")).toEqual({ dynamic: false, value: 46082 });
  });
});

describe("a cell", () => {
  // The form in which Excel itself saves a custom function: [MS-XLSX] 2.2.2 and 2.6.50 (dynamic array properties).
  test("keeps a custom function in the dynamic-array form", async () => {
    const xml = await sheetXml({ A1: { role: "spillRoom", formula: "=OXYGEN.HOURS_TO_FILL(60,1.5)" } }, { A1: 43 });
    expect(xml.replace(/ s="\d+"/g, "")).toContain(
      '<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_OXYGEN_HOURS_TO_FILL(60,1.5)</f><v>43</v></c>',
    );
  });

  test("keeps errors, words, truth values, dates and blanks each in its own type", async () => {
    const cells = block("A1", [["=NA()", '="a<b"', "=TRUE", "=A9", '=""'].map((formula) => output(formula))]);
    const date = { type: "Double", basicType: "Double", basicValue: 46082, numberFormat: "yyyy-mm-dd" } as const;
    const xml = await sheetXml(cells, { A1: noAnswer("never empties"), B1: "a<b", C1: true, D1: date, E1: "" });
    const written = xml.replace(/ s="\d+"/g, "");
    expect(written).toMatch(/<c r="A1" t="e"><f>NA\(\)<\/f><v>#N\/A<\/v><\/c>/);
    expect(written).toMatch(/<c r="B1" t="str"><f>"a&lt;b"<\/f><v>a&lt;b<\/v><\/c>/);
    expect(written).toMatch(/<c r="C1" t="b"><f>TRUE<\/f><v>1<\/v><\/c>/);
    expect(written).toMatch(/<c r="D1"><f>A9<\/f><v>46082<\/v><\/c>/);
    expect(written).toMatch(/<c r="E1" t="str"><f>""<\/f><v\/><\/c>/);
  });

  test("keeps an error in the middle of a spill", async () => {
    const xml = await sheetXml({ A1: table("=OXYGEN.X()") }, { A1: [["h"], [{ error: "#VALUE!" }], ["t"]] });
    expect(xml.replace(/ s="\d+"/g, "")).toMatch(
      /<c r="A2" t="e"><v>#VALUE!<\/v><\/c>.*<c r="A3" t="str"><v>t<\/v><\/c>/,
    );
  });

  test("is locked unless it is an input", async () => {
    const parts = partsOf(await oneSheet({ A1: input(1), B1: text("words"), C1: text("open", { unlocked: true }) }));
    const sheet = parts["xl/worksheets/sheet1.xml"]!;
    const looks = parts["xl/styles.xml"]!.split("<cellXfs")[1]!.match(/<xf [^>]*?(?:\/>|>.*?<\/xf>)/g)!;
    const lookOf = (address: string): string =>
      looks[Number(new RegExp(`r="${address}"[^>]* s="(\\d+)"`).exec(sheet)![1])]!;
    expect(lookOf("A1")).toContain('locked="0"');
    expect(lookOf("B1")).toContain('locked="1"');
    expect(lookOf("C1")).toContain('locked="0"');
    expect(sheet).toMatch(/<sheetProtection sheet="1"[^>]*\/>/);
    expect(sheet).not.toMatch(/password|hashValue/);
    expect(await sheetXml({ A1: input(1) }, {}, { protect: false })).not.toContain("sheetProtection");
  });
});

describe("what must not be written", () => {
  const refuses = async (attempt: Promise<unknown>, words: RegExp): Promise<void> => {
    await expect(attempt).rejects.toThrow(words);
  };
  const formula = (typed: string): Cells => ({ A1: output(typed) });

  test("formulas without a value, #NAME?, volatile ones, numbers that are none", async () => {
    await refuses(oneSheet(formula("=1+1")), /One!A1 was not calculated/);
    await refuses(oneSheet(formula("=NOPE()"), { A1: { error: "#NAME?" } }), /#NAME\?/);
    await refuses(oneSheet(formula("=TODAY()"), { A1: 1 }), /volatile/);
    await refuses(oneSheet(formula("=1/3"), { A1: Number.NaN }), /no number/);
    await refuses(oneSheet(formula("=1/3"), { A1: { error: "Error: 3" } }), /no error of a cell/);
  });

  test("spills over cells in use, merged cells or each other", async () => {
    const values = { A1: [["h"], [1]], B1: [["h"], [1]] };
    await refuses(oneSheet({ A1: table("=OXYGEN.X()"), A2: text("in use") }, values), /spill over A2/);
    await refuses(
      oneSheet({ A1: table("=OXYGEN.X()", { spill: { room: 4 } }), A4: text("") }, values),
      /spill over A4/,
    );
    const wide = { A1: [["h", "h"]], B1: [["h"], [1]] };
    await refuses(oneSheet({ A1: table("=OXYGEN.X()"), B1: table("=OXYGEN.X()") }, wide), /spill over B1/);
    const room = { A1: [["h"]], B1: [["h"], [1]] };
    expect(await oneSheet({ A1: table("=OXYGEN.X()"), B1: table("=OXYGEN.X()") }, room)).toBeInstanceOf(Uint8Array);
    await refuses(oneSheet({ A1: text("wide", { across: 2 }), B1: text("under") }), /merged/);
  });

  test("custom functions where Excel runs none", async () => {
    const rule = { range: "A1:A2", when: "=OXYGEN.X(A1)>1", mark: "danger" } as const;
    await refuses(oneSheet({ A1: text("x") }, {}, { conditional: [rule] }), /custom function/);
    const validation = { range: "A1", rule: { kind: "formula", formula: "=OXYGEN.X(A1)" } } as const;
    await refuses(oneSheet({ A1: text("x") }, {}, { validations: [validation] }), /custom function/);
  });

  test("words and lists beyond Excel's limits", async () => {
    const list = (values: string[]) => ({ A1: input("a", { validation: { rule: { kind: "list", values } } }) });
    await refuses(oneSheet(list(["a".repeat(128), "b".repeat(127)])), /256 characters, 255 at most/);
    expect(await oneSheet(list(["a".repeat(127), "b".repeat(127)]))).toBeInstanceOf(Uint8Array);
    await refuses(oneSheet(list(["a,b"])), /comma/);
    const prompt = { title: "x".repeat(33), words: "x" };
    await refuses(
      oneSheet({ A1: input(1, { validation: { rule: { kind: "number", least: 0 }, prompt } }) }),
      /33 characters, 32 at most/,
    );
  });

  test("names that are none, links and charts to nowhere", async () => {
    await refuses(oneSheet({ A1: input(1, { name: "FIO2" }) }), /no legal defined name/);
    await refuses(oneSheet({ A1: input(1, { name: "Rate" }), A2: input(1, { name: "RATE" }) }), /defined twice/);
    await refuses(oneSheet({ A1: link("Two!A1", "there") }), /leads to no sheet/);
    await refuses(oneSheet({ A1: text("x") }, {}, { name: "x".repeat(32) }), /longer than/);
  });
});

describe("the check of soundness speaks up when", () => {
  const sheet = (number: number): string => `xl/worksheets/sheet${number}.xml`;
  const cases: [what: string, path: string, from: string | RegExp, to: string, fault: RegExp][] = [
    ["a shared string is out of range", sheet(1), /t="s"( s="\d+")><v>0</, 't="s"$1><v>999<', /shared string 999/],
    ["a style is out of range", sheet(1), /s="1"/, 's="999"', /style 999/],
    ["cell metadata is missing", "xl/metadata.xml", /<cellMetadata.*<\/cellMetadata>/, "", /cell metadata 1, of 0/],
    ["#NAME? is cached", sheet(1), "<v>#N/A</v>", "<v>#NAME?</v>", /#NAME\? as its cached value/],
    ["a formula has no value", sheet(1), /(<f>B12\/24<\/f>)<v>[^<]*<\/v>/, "$1", /no cached value/],
    ["a formula's sheet is missing", sheet(1), "Plan!A5:A18", "Plam!A5:A18", /"Plam"/],
    ["parentheses don't match", sheet(2), "<f>MAX(B5:B18)</f>", "<f>MAX(B5:B18</f>", /parentheses/],
    ["a prefix is missing", sheet(1), "_xlfn.IFNA", "IFNA", /_xlfn/],
    ["a custom function is stored as typed", sheet(1), "_xldudf_OXYGEN_HOURS", "OXYGEN.HOURS", /stored prefix/],
    ["the dynamic mark is missing", sheet(1), ' cm="1"', "", /without the dynamic mark/],
    ["a formula is volatile", sheet(1), "<f>B12/24</f>", "<f>NOW()</f>", /volatile/],
    ["a spill starts elsewhere", sheet(2), 'ref="A4:C19"', 'ref="A5:C19"', /starts elsewhere/],
    ["a spill covers formulas", sheet(2), 'ref="A4:C19"', 'ref="A4:H19"', /has its own formula/],
    ["two spills overlap", sheet(2), 'ref="A4:C19"', 'ref="A4:G19"', /fill the same cells/],
    ["a list is too long", sheet(1), '"TRUE,FALSE"', `"${"x".repeat(256)}"`, /256 characters/],
    ["a list's sheet is missing", sheet(1), "Lists!$A$2", "Lost!$A$2", /"Lost"/],
    ["a conditional format has no look", sheet(2), 'dxfId="1"', 'dxfId="9"', /look 9, of 2/],
    ["two conditional formats share a priority", sheet(2), 'priority="2"', 'priority="1"', /share a priority/],
    ["merged areas overlap", sheet(1), 'ref="A18:D18"', 'ref="B2:D18"', /merged areas overlap/],
    ["a link leads nowhere", sheet(1), 'location="Plan!A1"', 'location="Plam!A1"', /link leads/],
    [
      "a password protects",
      sheet(1),
      '<sheetProtection sheet="1"',
      '<sheetProtection sheet="1" password="CC1A"',
      /password/,
    ],
    ["a name leads nowhere", "xl/workbook.xml", "Plan!$B$5:$B$18", "Plam!$B$5:$B$18", /name Needs leads/],
    ["a name is not absolute", "xl/workbook.xml", "Plan!$B$5:$B$18", "Plan!B5:B18", /Needs is not absolute/],
    ["a name is there twice", "xl/workbook.xml", 'name="MakeRate"', 'name="Capacity"', /names are the same/],
    ["Excel recalculates on opening", "xl/workbook.xml", "<calcPr ", '<calcPr fullCalcOnLoad="1" ', /in full/],
    ["the calculation id is old", "xl/workbook.xml", "191029", "152511", /old one/],
    ["a font is missing", "xl/styles.xml", /(<cellXfs.*?)fontId="1"/, '$1fontId="99"', /fontId 99/],
    [
      "a number format is missing",
      "xl/styles.xml",
      'numFmtId="164" formatCode',
      'numFmtId="199" formatCode',
      /number format/,
    ],
    ["a relationship leads nowhere", "xl/_rels/workbook.xml.rels", "styles.xml", "lost.xml", /lost\.xml is not there/],
    [
      "a content type is missing",
      "[Content_Types].xml",
      /<Override PartName="\/xl\/charts\/chart1.xml"[^>]*\/>/,
      "",
      /chart1/,
    ],
    ["two shapes share an id", "xl/drawings/drawing2.xml", 'cNvPr id="3"', 'cNvPr id="2"', /share an id/],
    ["a chart's sheet is missing", "xl/charts/chart1.xml", "Plan!$H$5", "Plam!$H$5", /"Plam"/],
  ];
  test.each(cases)("%s", (_, path, from, to, fault) => {
    expect(workbookFaults(altered(bytes, path, from, to)).join("\n")).toMatch(fault);
  });

  test("a table's header is no text of its own", () => {
    const parts = unzipSync(bytes);
    const rels =
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" ' +
      'Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/table" Target="../tables/table1.xml"/></Relationships>';
    const tablePart = (name: string): string =>
      `<table id="1" name="Metals" displayName="Metals" ref="A1:B4"><tableColumns count="2"><tableColumn id="1" name="${name}"/><tableColumn id="2" name="one"/></tableColumns></table>`;
    const faultsWith = (name: string): string =>
      workbookFaults(
        zipSync({
          ...parts,
          "xl/tables/table1.xml": strToU8(tablePart(name)),
          "xl/worksheets/_rels/sheet3.xml.rels": strToU8(rels),
        }),
      ).join("\n");
    expect(faultsWith("Metals")).not.toMatch(/headed/);
    expect(faultsWith("Metal")).toMatch(/column "Metal" is headed "Metals"/);
  });
});

describe("sheets", () => {
  test("are set up for print: one page wide, titles repeated, pages numbered", () => {
    const parts = partsOf(bytes);
    expect(parts["xl/workbook.xml"]).toContain('<definedName name="_xlnm.Print_Titles" localSheetId="1">Plan!$4:$4<');
    expect(parts["xl/workbook.xml"]).toContain(
      '<definedName name="_xlnm.Print_Area" localSheetId="1">Plan!$A$1:$R$38<',
    );
    for (const number of [1, 2, 3]) {
      const sheet = parts[`xl/worksheets/sheet${number}.xml`]!;
      expect(sheet).toMatch(/<pageSetup [^>]*fitToWidth="1" fitToHeight="0"/);
      expect(sheet).toContain("&amp;LDemo &amp;&amp; trial&amp;C&amp;A&amp;RPage &amp;P of &amp;N");
    }
  });

  test("quote a sheet's name where a reference needs it", async () => {
    const parts = partsOf(
      await oneSheet({ A1: input(1, { name: "Rate" }), A2: link("Day's plan!A1", "here") }, {}, { name: "Day's plan" }),
    );
    expect(parts["xl/workbook.xml"]).toContain(">'Day''s plan'!$A$1</definedName>");
    expect(parts["xl/worksheets/sheet1.xml"]).toContain('location="&apos;Day&apos;&apos;s plan&apos;!A1"');
    expect(workbookFaults(await oneSheet({ A1: tableCell(1) }, {}, { name: "Day's plan" }))).toEqual([]);
  });

  test("charts keep copies of the values, differ by dash and draw the reserve dashed without markers", () => {
    const chart = partsOf(bytes)["xl/charts/chart1.xml"]!;
    expect(chart).toContain("<c:f>Plan!$C$5:$C$18</c:f>");
    expect(chart).toContain('<c:pt idx="0"><c:v>82</c:v></c:pt><c:pt idx="1"><c:v>74</c:v></c:pt>');
    expect(chart).toContain("<c:dateAx>");
    expect(chart).toMatch(
      /<c:v>reserve<\/c:v><\/c:tx><c:spPr><a:ln[^>]*>.*?prstDash val="sysDash".*?symbol val="none"/,
    );
    expect(chart).toMatch(/<c:barChart>.*<a:pattFill.*<\/c:barChart><c:lineChart>/);
    expect(partsOf(bytes)["xl/drawings/drawing2.xml"]).toContain('descr="Line of stock falling');
  });
});
