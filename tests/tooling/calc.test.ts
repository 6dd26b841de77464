import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { calc } from "../../src/tooling/calc";
import { smallWorkbook } from "../engine/smallWorkbook";
import { standIns } from "../engine/standInFunctions";
import { readCells } from "../workbooks/openXmlSecondReader";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "calc-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, content: string | Uint8Array): string => {
  const place = path.join(folder, name);
  writeFileSync(place, content);
  return place;
};

const run = async (...argv: string[]): Promise<{ code: number; out: string[]; err: string }> => {
  const out: string[] = [];
  const err: string[] = [];
  const output = {
    out: (text: string) => void out.push(...text.split("\n")),
    err: (text: string) => void err.push(text),
  };
  const code = await calc(argv, output, () => Promise.resolve(standIns));
  return { code, out, err: err.join("\n") };
};

describe("formulas", () => {
  test("each gives its line, a table its rows", async () => {
    expect(await run("=OXYGEN.PLUS(1,2)", "=OXYGEN.SQUARES(2)", '={"70 °F";"95 °F"}', "=1=1")).toEqual({
      code: 0,
      out: ["3", "n\tsquare", "1\t1", "2\t4", "70 °F", "95 °F", "TRUE"],
      err: "",
    });
  });

  test("an error gives its code and words, and exit code 1", async () => {
    expect(await run("=OXYGEN.NO_ANSWER(1)", "=1+1")).toEqual({
      code: 1,
      out: ["#N/A the vessel never empties", "2"],
      err: "",
    });
    expect((await run("=OXYGEN.SQARES(2)")).out).toEqual([
      "#NAME? no function OXYGEN.SQARES; did you mean OXYGEN.SQUARES?",
    ]);
  });

  test("numbers keep 15 digits, dates are ISO", async () => {
    // Serial 45000 is 2023-03-15 (44927 is 2023-01-01 in the 1900 system, 73 days earlier).
    expect(
      (await run("=OXYGEN.PLUS(0.1,0.2)", "=1/3", "=OXYGEN.DAY_OF(45000.5)", "=DATE(2024,2,29)+0", "=DATE(2024,2,29)"))
        .out,
    ).toEqual(["0.3", "0.333333333333333", "2023-03-15", "45351", "2024-02-29"]);
  });

  test("--json gives a table a line, dates as serials, errors with words", async () => {
    const { code, out } = await run(
      "--json",
      "=OXYGEN.PLUS(40,3)",
      "=OXYGEN.DAY_OF(45000)",
      "=OXYGEN.NO_ANSWER(1)",
      "=OXYGEN.SQUARES(1)",
    );
    expect(code).toBe(1);
    expect(out).toEqual([
      "[[43]]",
      "[[45000]]",
      '[[{"error":"#N/A","message":"the vessel never empties"}]]',
      '[["n","square"],[1,1]]',
    ]);
  });

  test("--file reads one a line, whatever the editor", async () => {
    const text = '=OXYGEN.PLUS(1,2)\r\n\r\n  ="é"  \r\n';
    const expected = { code: 0, out: ["3", "é"], err: "" };
    expect(await run("--file", file("plain.txt", text))).toEqual(expected);
    expect(await run("--file", file("marked.txt", `\uFEFF${text}`))).toEqual(expected);
    expect(await run("--file", file("wide.txt", Buffer.from(`\uFEFF${text}`, "utf16le")))).toEqual(expected);
  });

  test("single quotes that cmd.exe leaves around a formula are taken off", async () => {
    expect((await run("'=OXYGEN.PLUS(1,2)'")).out).toEqual(["3"]);
  });
});

describe("a workbook", () => {
  test("that is as saved lists its formulas and gives exit code 0", async () => {
    const { code, out } = await run(file("right.xlsx", smallWorkbook()));
    expect(code).toBe(0);
    expect(out).toContain("Plan & log!A2:B5\tn\tn");
    expect(out).toContain("Plan & log!D4\t2023-03-15\t2023-03-15");
    expect(out).toContain("Plan & log!D5\t#N/A the vessel never empties\t#N/A no value is available");
    expect(out.at(-1)).toBe("9 formulas fill 16 cells; none differs from the saved values");
  });

  test("that differs is flagged cell by cell and gives exit code 1", async () => {
    const { code, out } = await run(file("wrong.xlsx", smallWorkbook({ sum: "13", squares: "8" })));
    expect(code).toBe(1);
    expect(out).toContain("Plan & log!D3\t14\t13\tDIFFERS");
    expect(out).toContain("Plan & log!B5\t9\t8\tDIFFERS");
    expect(out.at(-1)).toMatch(/; 2 differ from/);
  });

  test("with an error that its saved copy doesn't show gives exit code 1", async () => {
    const noAnswer = '<c r="D5" cm="1"><f t="array" ref="D5">_xldudf_OXYGEN_NO_ANSWER(1)</f><v>7</v></c>';
    const { code, out } = await run(file("hidden.xlsx", smallWorkbook({ noAnswer })));
    expect(code).toBe(1);
    expect(out).toContain("Plan & log!D5\t#N/A the vessel never empties\t7\tDIFFERS");
  });

  test("--json gives a JSON object a line", async () => {
    const { out, err } = await run("--json", file("json.xlsx", smallWorkbook({ sum: "13" })));
    expect(out.map((line) => JSON.parse(line) as { cell: string })).toContainEqual({
      cell: "Plan & log!D3",
      value: 14,
      cached: 13,
      differs: true,
    });
    expect(err).toMatch(/; 1 differs from/);
  });

  test("--values writes a copy with values", async () => {
    const copy = path.join(folder, "copy.xlsx");
    expect((await run(file("source.xlsx", smallWorkbook()), "--values", copy)).code).toBe(0);
    const cells = readCells(readFileSync(copy));
    expect(cells.get("Plan & log!D3")).toEqual({ dynamic: false, value: 14 });
  });
});

describe("misuse gives exit code 2 and the usage", () => {
  test.each([
    ["nothing", []],
    ["an unknown option", ["--nope"]],
    ["a file that isn't there", ["--file", path.join("no", "such.txt")]],
    ["a workbook that isn't there", ["no-such.xlsx"]],
    ["--values without a workbook", ["=1", "--values", "x.xlsx"]],
    ["a workbook beside a formula", ["plan.xlsx", "=1"]],
  ])("%s", async (_, argv) => {
    const { code, out, err } = await run(...argv);
    expect(code).toBe(2);
    expect(out).toEqual([]);
    expect(err).toContain("npm run --silent calc");
  });

  test("a file that is no workbook", async () => {
    expect((await run(file("text.xlsx", "no workbook"))).code).toBe(2);
  });

  test("--help is no misuse", async () => {
    expect((await run("--help")).code).toBe(0);
  });
});

test("as a command it computes with the add-in's own functions and ends by itself", () => {
  const script = path.join(__dirname, "..", "..", "src", "tooling", "runCalc.mjs");
  // 3 h start delay + 60 L / 1.5 L/h = 43 h.
  const { status, stdout } = spawnSync(process.execPath, [script, "=OXYGEN.HOURS_TO_FILL(60,1.50)"], {
    encoding: "utf8",
    timeout: 60_000,
  });
  expect([stdout, status]).toEqual(["43\n", 0]);
}, 90_000);
