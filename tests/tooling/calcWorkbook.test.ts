/**
 * `npm run calc` with a workbook: other inputs, chosen cells, copies, and what it can't do. Expected values are plain
 * arithmetic on the small workbook of tests/engine/smallWorkbook.ts: squares of 1 to Count, and flows times Rate (= Count).
 */
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { spawnSync } from "node:child_process";
import { tmpdir } from "node:os";
import path from "node:path";
import { readEntry } from "../../src/tooling/cellTargets";
import { calc } from "../../src/tooling/calc";
import { writeBeside } from "../../src/tooling/writeBeside";
import { partOf, withParts } from "../engine/file/workbookParts";
import { smallWorkbook } from "../engine/smallWorkbook";
import { standIns } from "../engine/standInFunctions";
import { readCells } from "../workbooks/openXmlSecondReader";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "calc-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

const inFolder = (name: string): string => path.join(folder, name);
const file = (bytes: Uint8Array = smallWorkbook(), name = "plan.xlsx"): string => {
  writeFileSync(inFolder(name), bytes);
  return inFolder(name);
};

const run = async (...argv: string[]): Promise<{ code: number; out: string[]; err: string }> => {
  const out: string[] = [];
  const err: string[] = [];
  const code = await calc(argv, { out: (text) => out.push(text), err: (text) => err.push(text) }, () =>
    Promise.resolve(standIns),
  );
  return { code, out, err: err.join("\n") };
};

const sheet = "xl/worksheets/sheet1.xml";
/** The small workbook with more cells in a seventh row. */
const withRow = (cells: string): Uint8Array =>
  withParts(smallWorkbook(), {
    [sheet]: (text) => text.replace("</sheetData>", `<row r="7">${cells}</row></sheetData>`),
  });

describe("other inputs", () => {
  test("are set by address or name before calculating, and chosen cells printed", async () => {
    const { code, out, err } = await run(
      file(),
      ...["--set", "'Plan & log'!B1=4", "--set", "plan & log!g3=1.50"],
      ...[
        "--print",
        "Plan & log!D3",
        "--print",
        "plan & log!E4:E6",
        "--print",
        "Rate",
        "--print",
        "'Plan & log'!A5:B6",
      ],
    );
    expect([out, err, code]).toEqual([["30", "40\n6\n0", "4", "3\t9\n4\t16"], "", 0]);
  });

  test("a name is set", async () => {
    expect((await run(file(), "--set", "rate=2", "--print", "Plan & log!E4")).out).toEqual(["20"]);
  });

  test("cells that a smaller spill leaves print as empty", async () => {
    expect((await run(file(), "--set", "Rate=2", "--print", "Plan & log!A4:B5")).out).toEqual([
      "2\t4\n(empty)\t(empty)",
    ]);
  });

  test("as JSON", async () => {
    const { out } = await run(
      file(),
      "--json",
      "--set",
      "Rate=2",
      "--print",
      "Plan & log!D3",
      "--print",
      "Plan & log!A4:B5",
    );
    expect(out.map((line) => JSON.parse(line) as unknown)).toEqual([
      { cell: "Plan & log!D3", value: 5 },
      {
        area: "Plan & log!A4:B5",
        values: [
          [2, 4],
          [null, null],
        ],
      },
    ]);
  });

  test("an error that is printed gives exit code 1", async () => {
    expect(await run(file(), "--print", "Plan & log!D5")).toEqual({
      code: 1,
      out: ["#N/A the vessel never empties"],
      err: "",
    });
    expect((await run(file(), "--print", "Plan & log!D3")).code).toBe(0);
  });

  test("without --print what changed is marked", async () => {
    const { out } = await run(file(), "--set", "Rate=4");
    expect(out).toContain("Plan & log!D3\t30\t14\tCHANGED");
    expect(out.at(-1)).toMatch(/differ from the saved values$/);
  });

  test.each([
    ["Plan & log!D3=1", /D3 is filled by a formula and is no input/],
    ["Plan & log!B4=1", /B4 is filled by a formula and is no input/],
    ["Plan & log!B1:B2=1", /is more than one cell/],
    ["Plan & lag!B1=1", /there is no sheet Plan & lag; did you mean Plan & log\?/],
    ["Rat=1", /there is no name Rat; .*did you mean Rate\?/],
    ["Doubled=1", /Doubled stands for =LAMBDA\(x,x\*2\), not for cells/],
    ["Plan & log!B0=1", /"B0" is no cell address/],
    ["Rate", /--set wants Sheet!A1=value/],
    ["Rate=1,500", /1,500 can be read in more than one way: write 1500/],
    ["Rate=3/4/2026", /more than one way/],
    ["Rate=2026-02-30", /there is no date 2026-02-30/],
  ])("--set %s is refused", async (setting, words) => {
    const { code, out, err } = await run(file(), "--set", setting);
    expect([code, out]).toEqual([2, []]);
    expect(err).toMatch(words);
  });

  // Serials counted from 1899-12-30: 2026-03-24 is day 46105 (Julian day numbers of the Astronomical Almanac's formula).
  test.each([
    ["300", 300],
    ["-1.50", -1.5],
    [".5", 0.5],
    ["1E3", 1000],
    ["93%", 0.93],
    ["true", true],
    ["2026-03-24", 46105],
    ["2026-03-24 06:00", 46105.25],
    ["35 psi", "35 psi"],
    ['"1,500"', "1,500"],
    ["", undefined],
  ])("the value %s is read as Excel would", (text, value) => {
    expect(readEntry(text)).toBe(value);
  });
});

test("a large workbook tells how far it is", async () => {
  const rows = Array.from({ length: 4000 }, (_, index) => {
    const row = index + 1;
    const before = row === 1 ? "0" : `C${index}`;
    return `<row r="${row}"><c r="A${row}"><v>${row}</v></c><c r="B${row}"><f>A${row}*2.0</f></c><c r="C${row}"><f>${before}+B${row}</f></c><c r="D${row}"><f>IF(C${row}&gt;1E3,"a","b")</f></c></row>`;
  });
  const bytes = withParts(smallWorkbook(), {
    [sheet]: (text) => text.replace(/<sheetData>[^]*<\/sheetData>/, `<sheetData>${rows.join("")}</sheetData>`),
  });
  const told: [number, number][] = [];
  const out: string[] = [];
  const output = {
    out: (text: string) => out.push(text),
    err: () => undefined,
    progress: (...far: [number, number]) => told.push(far),
  };
  await calc([file(bytes), "--print", "Plan & log!C4000"], output, () => Promise.resolve(standIns));
  // Twice the sum of 1 to 4000.
  expect(out).toEqual([String(4000 * 4001)]);
  expect(told[0]).toEqual([0, 12_000]);
  const counted = told.filter(([done, total]) => total === 12_000 && done > 0).map(([done]) => done);
  expect(counted.length).toBeGreaterThan(10);
  expect(counted).toEqual([...counted].sort((one, other) => one - other));
}, 60_000);

describe("copies", () => {
  test("--save keeps formulas, --values keeps none, both hold the new values", async () => {
    const [save, values] = [inFolder("copy.xlsx"), inFolder("plain.xlsx")];
    expect((await run(file(), "--set", "Rate=4", "--save", save, "--values", values, "--print", "Rate")).err).toBe("");
    const copy = readCells(readFileSync(save));
    expect(copy.get("Plan & log!B1")?.value).toBe(4);
    expect(copy.get("Plan & log!D3")).toMatchObject({ value: 30, dynamic: true });
    expect(copy.get("Plan & log!B6")?.value).toBe(16);
    const plain = [...readCells(readFileSync(values))];
    expect(plain.filter(([, { formula }]) => formula !== undefined)).toEqual([]);
    expect(new Map(plain).get("Plan & log!D3")?.value).toBe(30);
    // The copy is as saved: calculating it again changes nothing.
    expect((await run(save)).out.at(-1)).toMatch(/; none differs/);
  });

  test("the workbook that is read is never overwritten, by whatever name", async () => {
    const input = file();
    const before = readFileSync(input);
    symlinkSync(input, inFolder("link.xlsx"));
    linkSync(input, inFolder("other.xlsx"));
    mkdirSync(inFolder("sub"));
    for (const output of [
      input,
      inFolder("link.xlsx"),
      inFolder("other.xlsx"),
      path.join(folder, "sub", "..", "plan.xlsx"),
    ]) {
      for (const option of ["--values", "--save"]) {
        const { code, err } = await run(input, option, output, "--force");
        expect([code, err]).toEqual([2, expect.stringContaining("is the workbook that is read")]);
      }
    }
    expect(readFileSync(input)).toEqual(before);
  });

  test("another file is overwritten only with --force", async () => {
    const other = file(Buffer.from("kept"), "kept.xlsx");
    const refused = await run(file(), "--save", other);
    expect([refused.code, refused.err]).toEqual([2, `${other} exists; --force overwrites it.`]);
    expect(readFileSync(other, "utf8")).toBe("kept");
    expect((await run(file(), "--save", other, "--force")).code).toBe(0);
    expect(readCells(readFileSync(other)).get("Plan & log!D3")?.value).toBe(14);
    expect(readdirSync(folder).sort()).toEqual(["kept.xlsx", "plan.xlsx"]);
  });

  test("places and names that won't do are refused before calculating", async () => {
    const refusals = async (...argv: string[]): Promise<string> => (await run(file(), ...argv)).err;
    expect(await refusals("--save", path.join(folder, "none", "x.xlsx"))).toMatch(/there is no folder/);
    expect(await refusals("--save", inFolder("x.csv"))).toMatch(/ends with \.xlsx/);
    expect(await refusals("--save", inFolder("x.xlsx"), "--values", inFolder("x.xlsx"))).toMatch(/name the same file/);
  });

  test("a write that fails leaves the older file whole and nothing beside it", async () => {
    const old = file(Buffer.from("older"), "old.xlsx");
    // A chunk that can't be written stands for a full disk.
    const failing = new Proxy(new Uint8Array(10), {
      get: (bytes, name) => (name === "length" ? 20 : (Reflect.get(bytes, name, bytes) as unknown)),
    });
    expect(() => writeBeside(old, failing, true)).toThrow();
    expect(readFileSync(old, "utf8")).toBe("older");
    expect(readdirSync(folder)).toEqual(["old.xlsx"]);
    if (process.getuid?.() === 0) return;
    chmodSync(folder, 0o500);
    const { code, err } = await run(old, "--save", inFolder("x.xlsx"));
    chmodSync(folder, 0o700);
    expect([code, err]).toEqual([2, expect.stringMatching(/can't write/)]);
  });

  test("of two writers that do not overwrite the second gives way", () => {
    const target = inFolder("new.xlsx");
    writeBeside(target, Buffer.from("first"), false);
    expect(() => writeBeside(target, Buffer.from("second"), false)).toThrow(/EEXIST/);
    expect(readFileSync(target, "utf8")).toBe("first");
    expect(existsSync(`${target}.part`)).toBe(false);
  });
});

describe("what can't be calculated here", () => {
  const cells = (more = ""): string =>
    `<c r="A7"><f>GETPIVOTDATA("Litres",$A$1,"n",B1)</f><v>40</v></c><c r="B7"><f>A7*1.50</f><v>60</v></c>` +
    `<c r="C7"><f>[1]Stores!$A$1</f><v>5</v></c><c r="D7"><f>SUM('Plan &amp; log'!A3:A5 B1:B2)</f><v>9</v></c>${more}`;

  test("keeps its saved value, is counted and named, and others go on from it", async () => {
    const values = inFolder("plain.xlsx");
    const { code, out, err } = await run(file(withRow(cells())), "--values", values);
    expect(code).toBe(1);
    expect(err).toContain(
      "3 formulas can't be calculated here and keep their saved values: Plan & log!A7 (GETPIVOTDATA is not known here); Plan & log!C7 (it reads another workbook); Plan & log!D7 (it asks for the cells that two ranges share)",
    );
    expect(out).toContain("Plan & log!B7\t60\t60");
    const copy = readCells(readFileSync(values));
    expect(["A7", "B7", "C7"].map((at) => copy.get(`Plan & log!${at}`)?.value)).toEqual([40, 60, 5]);
    expect(copy.get("Plan & log!A7")?.formula).toBeUndefined();
  });

  test("is no answer when what it depends on was changed", async () => {
    const [values, save] = [inFolder("plain.xlsx"), inFolder("copy.xlsx")];
    const asked = ["--print", "Plan & log!A7", "--print", "Plan & log!B7", "--print", "Plan & log!C7"];
    const { code, out, err } = await run(
      file(withRow(cells())),
      "--set",
      "Rate=4",
      ...asked,
      "--values",
      values,
      "--save",
      save,
    );
    expect(out[0]).toMatch(/^#N\/A this formula can't be calculated here \(GETPIVOTDATA is not known here\)/);
    expect(out[1]).toMatch(/^#N\/A .*GETPIVOTDATA.*what it depends on was changed/);
    expect(out[2]).toBe("5");
    expect([code, err]).toEqual([
      1,
      expect.stringMatching(/2 formulas can't be calculated here and have no saved values that would do/),
    ]);
    for (const copy of [values, save])
      expect(readCells(readFileSync(copy)).get("Plan & log!A7")?.value).toEqual({ error: "#N/A" });
    expect(partOf(readFileSync(save), sheet)).toContain("GETPIVOTDATA");
  });

  test("is no answer when no value was saved", async () => {
    const { out } = await run(
      file(withRow(`<c r="A7"><f>REGEXTEST(A1,"x")</f></c><c r="B7"><f>IF(A7,"ok","no")</f></c>`)),
      "--print",
      "Plan & log!B7",
    );
    expect(out[0]).toMatch(/^#N\/A .*REGEXTEST is not known here.*no value was saved/);
  });

  test("names that mean two things, and 3-D references, are held too", async () => {
    const bytes = withParts(withRow(`<c r="A7"><f>Rate*2</f><v>1</v></c>`), {
      "xl/workbook.xml": (text) =>
        text.replace(
          "</definedNames>",
          `<definedName name="Rate" localSheetId="0">'Plan &amp; log'!$G$2</definedName></definedNames>`,
        ),
    });
    expect((await run(file(bytes))).err).toMatch(/its name Rate means different things on different sheets/);
  });

  test("circular references are named with their cells", async () => {
    const { code, out, err } = await run(
      file(
        withRow(`<c r="A7"><f>B7+1</f><v>1</v></c><c r="B7"><f>A7+1</f><v>2</v></c><c r="C7"><f>2*3</f><v>6</v></c>`),
      ),
    );
    expect(code).toBe(1);
    expect(err).toMatch(
      /^2 formulas depend on themselves: Plan & log!(A7 → Plan & log!B7 → Plan & log!A7|B7 → Plan & log!A7 → Plan & log!B7)$/,
    );
    expect(out).toContain("Plan & log!C7\t6\t6");
    expect(out.find((line) => line.startsWith("Plan & log!A7"))).toMatch(/#CYCLE!.*DIFFERS$/);
  });
});

describe("files that can't be used", () => {
  test.each([
    ["old.xls", /^old\.xls is no \.xlsx workbook\.$/],
    ["macros.xlsm", /^macros\.xlsm is no \.xlsx workbook\.$/],
  ])("%s is refused as a file, not taken for a formula", async (name, words) => {
    const { code, err } = await run(file(Buffer.from("no workbook"), name));
    expect([code, err]).toEqual([2, expect.stringMatching(words)]);
  });

  test("a damaged workbook is refused by the name of its part, and nothing is written", async () => {
    const { code, out, err } = await run(
      file(withParts(smallWorkbook(), { "xl/sharedStrings.xml": undefined })),
      "--values",
      inFolder("x.xlsx"),
    );
    expect([code, out]).toEqual([2, []]);
    expect(err).toBe(
      "plan.xlsx is damaged: its part xl/sharedStrings.xml is missing. Copy or download the file again, or take an older copy.",
    );
    expect(readdirSync(folder)).toEqual(["plan.xlsx"]);
  });

  test("a calculation that takes too long is given up in words, and nothing is written", () => {
    const script = path.join(__dirname, "..", "..", "src", "tooling", "runCalc.mjs");
    const argv = [script, file(), "--seconds", "0.000001", "--values", inFolder("x.xlsx")];
    const { status, stderr } = spawnSync(process.execPath, argv, { encoding: "utf8", timeout: 60_000 });
    expect(stderr).toMatch(/calculating takes longer than 0\.000001 s; nothing was written/);
    expect([status, readdirSync(folder)]).toEqual([2, ["plan.xlsx"]]);
  }, 90_000);
});
