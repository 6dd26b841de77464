/**
 * Saving, drafts and protection in the local sheet, in a real browser. What a copy holds is read by two reader libraries
 * that are not of this project's making, and by LibreOffice where it is installed; results are worked out in the test.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { read as readSheetJs } from "@e965/xlsx";
import { unzipSync } from "fflate";
import { readXlsx } from "hucre/xlsx";
import type { Page } from "playwright-core";
import { projectFolder } from "../../src/tooling/build";
import { buildWorkbook } from "../../src/workbooks/writer";
import { describeInBrowser, type WatchedPage } from "../inBrowser";
import { small, smallValues } from "./smallWorkbook";

jest.setTimeout(120_000);

const xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const ready = (page: Page): Promise<unknown> => page.waitForSelector('#grid[aria-busy="false"]', { timeout: 60_000 });

const says = async (page: Page, selector: string, words: string | RegExp): Promise<void> => {
  const until = Date.now() + 15_000;
  let text = "";
  while (Date.now() < until) {
    text = ((await page.textContent(selector)) ?? "").replace(/\s+/g, " ").trim();
    if (typeof words === "string" ? text.includes(words) : words.test(text)) return;
    await page.waitForTimeout(50);
  }
  throw new Error(`${selector} says "${text}", not ${String(words)}`);
};

const goTo = async (page: Page, row: number, column: number): Promise<void> => {
  await page.keyboard.press("Control+Home");
  await says(page, "#status-address", /^A1$/);
  for (let count = 1; count < row; count++) await page.keyboard.press("ArrowDown");
  for (let count = 1; count < column; count++) await page.keyboard.press("ArrowRight");
};

const type = async (page: Page, entry: string): Promise<void> => {
  await page.keyboard.type(entry, { delay: 30 });
  await page.waitForTimeout(500);
  await page.keyboard.press("Enter");
};

/** The copy that a press hands to the browser. */
const download = async (page: Page, press: () => Promise<unknown>): Promise<{ name: string; bytes: Buffer }> => {
  const [stored] = await Promise.all([page.waitForEvent("download"), press()]);
  return { name: stored.suggestedFilename(), bytes: readFileSync(await stored.path()) };
};

const findOffice = (): string | undefined => {
  try {
    return execFileSync("which", ["soffice"], { encoding: "utf8" }).trim() || undefined;
  } catch {
    return undefined;
  }
};

describeInBrowser("work in the local sheet", (suite) => {
  let watched: WatchedPage;
  let page: Page;
  let bytes: Buffer;

  beforeAll(async () => {
    bytes = Buffer.from(await buildWorkbook(small, smallValues));
  });

  beforeEach(async () => {
    watched = await suite.open("sheet.html?blank", { viewport: { width: 1280, height: 720 }, acceptDownloads: true });
    page = watched.page;
    await ready(page);
  });

  afterEach(async () => {
    expect([...watched.faults, ...watched.foreign]).toEqual([]);
    await watched.context.close();
  });

  const openSmall = async (buffer = bytes, name = "small.xlsx"): Promise<void> => {
    await page.evaluate(() => document.getElementById("grid")!.removeAttribute("aria-busy"));
    await page.setInputFiles("#file", { name, mimeType: xlsx, buffer });
    await ready(page);
    await says(page, "#workbook-title", "Filling in Velmar");
  };

  test("Ctrl+S gives a copy in which only what changed is another", async () => {
    await openSmall();
    await goTo(page, 5, 2);
    await type(page, "120");
    await says(page, "#work", "Changes are not saved.");
    // From 120 L: 3 h of starting, then 120 L at 1.5 L/h.
    await goTo(page, 11, 2);
    await says(page, "#status-value", "83 h");
    const copy = await download(page, () => page.keyboard.press("Control+s"));
    expect(copy.name).toBe("small copy.xlsx");
    await says(page, "#work", "A copy went to the browser's downloads");

    const [before, after] = [unzipSync(bytes), unzipSync(copy.bytes)];
    expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
    const differing = Object.keys(before).filter(
      (part) => !Buffer.from(before[part]!).equals(Buffer.from(after[part]!)),
    );
    // The input's sheet alone, and no order of calculation is kept.
    expect(differing).toEqual(["xl/worksheets/sheet1.xml"]);
    const sheetOf = (parts: Record<string, Uint8Array>): string => Buffer.from(parts[differing[0]!]!).toString();
    const outside = (xml: string): string => xml.replace(/<sheetData>[^]*<\/sheetData>/, "");
    expect(outside(sheetOf(after))).toBe(outside(sheetOf(before)));
    const formulas = (xml: string): string[] => xml.match(/<f\b[^>]*>[^<]*<\/f>/g) ?? [];
    expect(formulas(sheetOf(after))).toEqual(formulas(sheetOf(before)));

    const hucre = await readXlsx(new Uint8Array(copy.bytes), { readStyles: true });
    expect(hucre.sheets[0]!.rows[4]![1]).toBe(120);
    expect(hucre.sheets[0]!.rows[10]![1]).toBe(83);
    const original = await readXlsx(new Uint8Array(bytes), { readStyles: true });
    expect(
      hucre.sheets.map(({ dataValidations, protection, merges }) => ({ dataValidations, protection, merges })),
    ).toEqual(
      original.sheets.map(({ dataValidations, protection, merges }) => ({ dataValidations, protection, merges })),
    );
    const sheetJs = readSheetJs(copy.bytes);
    expect(sheetJs.Sheets.Fill!.B5!.v).toBe(120);
    expect(sheetJs.Sheets.Fill!.B11!.v).toBe(83);
    expect(sheetJs.Sheets.Fill!.B11!.f).toContain("HOURS_TO_FILL");

    await openSmall(copy.bytes, copy.name);
    await goTo(page, 11, 2);
    await says(page, "#status-value", "83 h");
  });

  test("a blank sheet is saved with formulas, texts and dates; LibreOffice reads it", async () => {
    for (const [row, entry] of ["2.5", "text & <more>", "=A1*4", "=SEQUENCE(3,1,7)"].entries()) {
      await goTo(page, row + 1, 1);
      await type(page, entry);
    }
    await goTo(page, 6, 1);
    await says(page, "#status-value", "9");
    const copy = await download(page, () => page.keyboard.press("Control+s"));
    const sheet = readSheetJs(copy.bytes).Sheets.Sheet1!;
    expect(["A1", "A2", "A3", "A4", "A5", "A6"].map((cell) => (sheet[cell] as { v: unknown }).v)).toEqual([
      2.5,
      "text & <more>",
      10,
      7,
      8,
      9,
    ]);
    expect(sheet.A3!.f).toBe("A1*4");
    const hucre = await readXlsx(new Uint8Array(copy.bytes));
    expect(hucre.sheets[0]!.rows.map(([first]) => first)).toEqual([2.5, "text & <more>", 10, 7, 8, 9]);
    const office = findOffice();
    if (!office) return;
    const folder = mkdtempSync(path.join(tmpdir(), "sheet-copy-"));
    try {
      const file = path.join(folder, "copy.xlsx");
      writeFileSync(file, copy.bytes);
      execFileSync(
        office,
        [
          `-env:UserInstallation=file://${folder}/profile`,
          "--headless",
          "--convert-to",
          "csv",
          "--outdir",
          folder,
          file,
        ],
        { timeout: 60_000, stdio: "ignore" },
      );
      const lines = readFileSync(path.join(folder, "copy.csv"), "utf8").trim().split(/\r?\n/);
      expect(lines.slice(0, 3)).toEqual(["2.5", "text & <more>", "10"]);
      // LibreOffice knows SEQUENCE from 24.8 on; an older one says so in the cells that the formula fills.
      const spill = lines.slice(3);
      expect(spill.every((cell) => cell === "#NAME?") ? ["7", "8", "9"] : spill).toEqual(["7", "8", "9"]);
      expect(spill).toHaveLength(3);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test("a copy with values only holds what is shown and no formula", async () => {
    await openSmall();
    await goTo(page, 5, 2);
    await type(page, "120");
    await goTo(page, 11, 2);
    await says(page, "#status-value", "83 h");
    const copy = await download(page, () => page.click("#save-values"));
    const sheet = readSheetJs(copy.bytes).Sheets.Fill!;
    expect(sheet.B11!.v).toBe(83);
    expect(Object.values(sheet).filter((cell) => (cell as { f?: string } | undefined)?.f)).toEqual([]);
    await says(page, "#work", "Changes are not saved.");
  });

  test("a workbook in which nothing was changed is saved as it was, supply plan included", async () => {
    await page.goto(`${suite.address}/sheet.html?open=supply-plan.xlsx`);
    await ready(page);
    await page.waitForTimeout(1_500);
    expect(await page.textContent("#work")).toBe("");
    const copy = await download(page, () => page.keyboard.press("Control+s"));
    const [before, after] = [
      unzipSync(readFileSync(path.join(projectFolder, "samples/supply-plan.xlsx"))),
      unzipSync(copy.bytes),
    ];
    const differing = Object.keys(before).filter(
      (part) => !Buffer.from(before[part]!).equals(Buffer.from(after[part] ?? [])),
    );
    expect(differing).toEqual([]);
  });

  test("unsaved work asks before another workbook comes, and stays when told so", async () => {
    await goTo(page, 1, 1);
    await type(page, "7");
    await says(page, "#work", "Changes are not saved.");
    await page.setInputFiles("#file", { name: "small.xlsx", mimeType: xlsx, buffer: bytes });
    await page.getByRole("dialog").waitFor();
    await page.getByRole("button", { name: "Stay here" }).click();
    await says(page, "#workbook-title", "Blank sheet");
    await page.setInputFiles("#file", { name: "small.xlsx", mimeType: xlsx, buffer: bytes });
    await page.getByRole("button", { name: "Go on without saving" }).click();
    await says(page, "#workbook-title", "Filling in Velmar");
  });

  test("closing the page with unsaved work asks; its draft is there in the next one and can be deleted", async () => {
    await goTo(page, 1, 1);
    await type(page, "41");
    await says(page, "#work", "A draft is kept in this browser, on this computer only.");
    let asked = "";
    page.once("dialog", (dialog) => {
      asked = dialog.type();
      void dialog.accept();
    });
    await page.close({ runBeforeUnload: true });
    await watched.context.waitForEvent("page", { timeout: 500 }).catch(() => undefined);
    expect(asked).toBe("beforeunload");
    page = await watched.context.newPage();
    await page.goto(`${suite.address}/sheet.html?blank`);
    await ready(page);
    await says(page, "#drafts", "Unsaved work on sheet.xlsx");
    await page.getByRole("button", { name: /^Open the draft/ }).click();
    await says(page, "#status", "A1 41");
    await says(page, "#work", "A draft is kept");
    await page.close();
    page = await watched.context.newPage();
    await page.goto(`${suite.address}/sheet.html?blank`);
    await ready(page);
    await page.getByRole("button", { name: /^Delete the draft/ }).click();
    await page.locator("#drafts").waitFor({ state: "hidden" });
  });

  test("a locked cell refuses with a reason, until the sheet is unprotected", async () => {
    await page.goto(`${suite.address}/sheet.html?open=supply-plan.xlsx`);
    await ready(page);
    await goTo(page, 1, 1);
    const before = await page.textContent("#status-value");
    await page.keyboard.type("9");
    await says(page, "#problem", /^A1 is locked: the sheet .* is protected/);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Delete");
    await page.waitForTimeout(400);
    expect(await page.textContent("#status-value")).toBe(before);
    await page.click("#unprotect");
    await says(page, "#problem", "is unprotected here");
    await type(page, "9");
    await goTo(page, 1, 1);
    await says(page, "#status-value", /^9$/);
  });
});
