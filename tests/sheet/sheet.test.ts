/**
 * The local sheet in a real browser. Values of the small workbook are worked out by hand in smallWorkbook.ts; the sample
 * workbooks are compared with the values saved in them, which the engine in Node computed.
 */
import { existsSync, readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import type { Page } from "playwright-core";
import { catalogue } from "../../src/catalogue/catalogue";
import { isEngineError, type EngineValue } from "../../src/engine/engineValue";
import { readWorkbook } from "../../src/engine/file/readWorkbook";
import { isCellDate } from "../../src/cells/cellValues";
import policies from "../../src/server/contentSecurityPolicy.json";
import { projectFolder } from "../../src/tooling/build";
import { buildWorkbook } from "../../src/workbooks/writer";
import { describeInBrowser, type WatchedPage } from "../inBrowser";
import { small, smallValues } from "./smallWorkbook";

jest.setTimeout(120_000);

const xlsx = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const samples = path.join(projectFolder, "samples");
const sampleFiles = existsSync(samples) ? readdirSync(samples).filter((file) => /^[^~.].*\.xlsx$/.test(file)) : [];
const ids = catalogue.map(({ id }) => id);

const ready = (page: Page): Promise<unknown> => page.waitForSelector('#grid[aria-busy="false"]', { timeout: 60_000 });

const press = async (page: Page, key: string, times = 1): Promise<void> => {
  for (let count = 0; count < times; count++) await page.keyboard.press(key);
};

/** Waits until a part of the page says what is expected; the last text is shown when it never does. */
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
  await press(page, "Control+Home");
  await says(page, "#status-address", /^A1$/);
  await press(page, "ArrowDown", row - 1);
  await press(page, "ArrowRight", column - 1);
};

const type = async (page: Page, entry: string): Promise<void> => {
  await page.keyboard.type(entry, { delay: 30 });
  // A completion that is still to come would take the Enter.
  await page.waitForTimeout(500);
  await press(page, "Enter");
};

/** Values behind the cells of the shown sheet, from the table view. */
const tableValues = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll<HTMLElement>("#results td")].map((cell) => [
        cell.dataset.cell ?? "",
        cell.dataset.value ?? "",
      ]),
    ),
  );

const showTab = async (page: Page, name: string): Promise<void> => {
  await page.getByRole("tab", { name, exact: true }).click();
  await says(page, "#results", `Cells of the sheet ${name}`).catch(async (fault: Error) => {
    if (!(await page.textContent("#results"))?.includes("is empty")) throw fault;
  });
};

const agrees = (got: string | undefined, saved: EngineValue): boolean => {
  const value = isEngineError(saved) ? saved.error : isCellDate(saved) ? saved.basicValue : saved;
  if (typeof value === "number") {
    return got !== undefined && got !== "" && Math.abs(Number(got) - value) <= 1e-9 * Math.max(1, Math.abs(value));
  }
  return (got ?? "") === (typeof value === "boolean" ? String(Number(value)) : value);
};

const axe = async (page: Page): Promise<string[]> => {
  await page.evaluate(readFileSync(require.resolve("axe-core/axe.min.js"), "utf8"));
  return page.evaluate(async () => {
    const { violations } = await (
      window as unknown as {
        axe: { run(of: Document): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      }
    ).axe.run(document);
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
};

describeInBrowser("local sheet", (suite) => {
  let watched: WatchedPage;
  let page: Page;
  let bytes: Buffer;

  beforeAll(async () => {
    bytes = Buffer.from(await buildWorkbook(small, smallValues));
    watched = await suite.open("sheet.html?blank", { viewport: { width: 1280, height: 720 } });
    page = watched.page;
    await ready(page);
  });

  /** Opens the small workbook in the same page, from disk. */
  /** What an earlier test typed is not saved, and the page asks before it goes on. */
  const leaveWork = (): Promise<void> =>
    page
      .getByRole("button", { name: "Go on without saving" })
      .click({ timeout: 2_000 })
      .catch(() => undefined);

  const openSmall = async (): Promise<void> => {
    await page.evaluate(() => document.getElementById("grid")!.removeAttribute("aria-busy"));
    await page.setInputFiles("#file", { name: "small.xlsx", mimeType: xlsx, buffer: bytes });
    await leaveWork();
    await ready(page);
    await says(page, "#workbook-title", "Filling in Velmar");
    await says(page, "#status-value", "Filling one vessel");
  };

  const open = async (address: string): Promise<void> => {
    await page.goto(`${suite.address}/${address}`);
    await ready(page);
  };

  afterEach(async () => {
    if (await page.locator("#results").isVisible()) await page.locator("#table-view").click();
    await page.setViewportSize({ width: 1280, height: 720 });
    const { faults, foreign } = watched;
    expect([...faults.splice(0), ...foreign.splice(0)]).toEqual([]);
  });

  test("a workbook from disk shows its values", async () => {
    await openSmall();
    await press(page, "F8");
    await says(page, "#results", "Cells of the sheet Fill");
    const fill = await tableValues(page);
    expect(fill).toMatchObject({
      A1: "Filling one vessel",
      B11: "43",
      B13: "#VALUE!",
      B14: "#VALUE!",
      B15: "#N/A",
      B16: "1",
    });
    expect(Number(fill.B12)).toBeCloseTo(43 / 24, 12);
    expect(await page.textContent('#results [data-cell="B12"]')).toBe("1.8 days");
    expect(await page.textContent('#results [data-cell="B5"]')).toBe("60.0 L (input)");
    expect(await page.textContent('#results [data-cell="B14"]')).toMatch(
      /^#VALUE! level .* above the capacity of 60 L/,
    );
    await showTab(page, "List");
    expect(await tableValues(page)).toMatchObject({ C4: "33", C5: "63", C6: "123", D4: "219" });
  });

  test("an edit changes what depends on it, and the line below tells", async () => {
    await openSmall();
    await goTo(page, 5, 2);
    await says(page, "#status", "B5 60.0 L Input. Liquid the vessel holds when full, in litres.");
    await type(page, "120");
    await goTo(page, 11, 2);
    await says(page, "#status", "B11 =OXYGEN.HOURS_TO_FILL(Capacity,MakeRate,B7) 83 h");
    await says(page, "#live", "B11, 83 h, formula");
  });

  test("a formula keeps its numbers and texts as they were typed", async () => {
    await open("sheet.html?blank");
    for (const [row, [typed, shown, value]] of (
      [
        ['=if(1.50>1,"go to B","stop")', '=IF(1.50>1,"go to B","stop")', "go to B"],
        ['=oxygen.journey_gas(10.0,"90 min")', '=OXYGEN.JOURNEY_GAS(10.0,"90 min")', "1800 L"],
        ['=true&2.0&" say ""1.50"" or .5"', '=TRUE&2.0&" say ""1.50"" or .5"', 'TRUE2 say "1.50" or .5'],
        ["=1E3+sum(a1:a2,.50)", "=1E3+SUM(A1:A2,.50)", "2800.5"],
      ] as const
    ).entries()) {
      await goTo(page, row + 1, 1);
      await type(page, typed);
      await goTo(page, row + 1, 1);
      await says(page, "#status-formula", shown);
      await says(page, "#status-value", value);
    }
  });

  test("an entry against the workbook's rule is refused with its words", async () => {
    await openSmall();
    await goTo(page, 5, 2);
    await type(page, "50000");
    const refusal = page.getByText("Enter litres from 1 to 20,000.");
    await refusal.waitFor();
    await press(page, "Escape");
    await refusal.waitFor({ state: "detached" });
    await page.waitForFunction(() => document.getElementById("grid")!.contains(document.activeElement));
    await goTo(page, 11, 2);
    await says(page, "#status-value", "43 h");
  });

  test("an error tells its words on hover, in the line below and aloud", async () => {
    const words = /level .* above the capacity of 60 L; check which is which/;
    await openSmall();
    await goTo(page, 13, 2);
    await says(page, "#status-error", words);
    await says(page, "#live", words);
    await says(page, "#live", "B13, error #VALUE! level");
    await goTo(page, 1, 1);
    await says(page, "#live", "Filling one vessel");
    // With the cell left, only the pop-up says it.
    const popup = page.getByText(words);
    expect(await popup.count()).toBe(0);
    const canvas = (await page.locator("#grid canvas[id^=univer-sheet-main-canvas]").boundingBox())!;
    // Widths and heights as in the workbook: B is the second column, row 13 the thirteenth.
    await page.mouse.move(canvas.x + 300, canvas.y + 200);
    for (let y = 250; y < 400; y += 6) {
      await page.mouse.move(canvas.x + 300, canvas.y + y);
      await page.waitForTimeout(250);
      if (await popup.count()) break;
    }
    expect(await popup.count()).toBe(1);
  });

  test("completion finds a function by any part of its name and hints at its arguments", async () => {
    await openSmall();
    // An empty cell of a protected sheet is locked.
    await page.click("#unprotect");
    await goTo(page, 21, 1);
    await page.keyboard.type("=TO_FILL", { delay: 40 });
    await says(page, '[data-u-comp="sheets-formula-editor"]', "OXYGEN.HOURS_TO_FILL");
    await says(page, "#live", "OXYGEN.HOURS_TO_FILL: Hours until a vessel is full");
    await press(page, "Enter");
    await says(page, "#hint", "HOURS_TO_FILL, capacity: Liquid the vessel holds when full [L]");
    await page.keyboard.type("60,2,0,", { delay: 40 });
    await says(page, "#hint", "start_delay: Hours from switching on until liquid accumulates [h], 3 if omitted");
    await says(page, "#live", "start_delay");
    await page.getByText("[start_delay]").first().waitFor();
    await type(page, "0)");
    await press(page, "ArrowUp");
    await says(page, "#status", "A21 =OXYGEN.HOURS_TO_FILL(60,2,0,0) 30 h");
  });

  test("built-in functions are completed too", async () => {
    await openSmall();
    // An empty cell of a protected sheet is locked.
    await page.click("#unprotect");
    await goTo(page, 21, 1);
    await page.keyboard.type("=XLOOK", { delay: 40 });
    await says(page, '[data-u-comp="sheets-formula-editor"]', "XLOOKUP");
    await press(page, "Escape", 2);
  });

  test("what reads a spill follows it when it shrinks and grows", async () => {
    await open("sheet.html?blank");
    await type(page, "3");
    await goTo(page, 1, 3);
    await type(page, "=B5+100");
    await goTo(page, 1, 2);
    await type(page, "=SEQUENCE(A1)");
    await goTo(page, 1, 3);
    await says(page, "#status", "C1 =B5+100 100");
    await goTo(page, 1, 1);
    await type(page, "5");
    await goTo(page, 1, 3);
    await says(page, "#status", "C1 =B5+100 105");
    await goTo(page, 1, 1);
    await type(page, "4");
    await goTo(page, 1, 3);
    await says(page, "#status", "C1 =B5+100 100");
  });

  test("after a click on a tab the keys go to the sheet", async () => {
    await openSmall();
    await page.getByRole("tab", { name: "List", exact: true }).click();
    await says(page, "#status-value", "Several vessels");
    await press(page, "ArrowDown", 2);
    await says(page, "#status-address", /^A3$/);
    expect(await page.getByRole("tab", { name: "List", exact: true }).getAttribute("aria-selected")).toBe("true");
  });

  test("everything is reached with the keyboard", async () => {
    await openSmall();
    const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");
    await press(page, "F6");
    expect(await focused()).toBe("Fill");
    await press(page, "ArrowRight");
    await says(page, "#status-value", "Several vessels");
    expect(await focused()).toBe("List");
    await press(page, "F6");
    expect(await focused()).toBe("Workbooks");
    await press(page, "Enter");
    await press(page, "Tab");
    expect(await page.evaluate(() => document.activeElement?.matches("#workbooks a"))).toBe(true);
    await press(page, "Escape");
    expect(await focused()).toBe("Workbooks");
    expect(await page.getByRole("link", { name: "Blank sheet" }).isVisible()).toBe(false);
    await press(page, "F6");
    await press(page, "ArrowDown", 3);
    await says(page, "#status-address", /^A4$/);
    await press(page, "F2");
    await page.keyboard.type("9");
    await press(page, "Escape");
    await press(page, "ArrowDown");
    await press(page, "ArrowUp");
    await says(page, "#live", "A4, 60, input cell");
    await press(page, "F8");
    expect(await page.getByRole("table").count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("results");
    await press(page, "F8");
    await press(page, "ArrowDown");
    await says(page, "#live", "A5, 120, input cell");
    await press(page, "Shift+F6");
    expect(await focused()).toBe("Workbooks");
  });

  test("a click on the formula bar edits the cell, and the arrow keys work after it", async () => {
    await openSmall();
    await goTo(page, 6, 2);
    const bar = (await page.locator('[data-u-comp="formula-bar"] canvas').first().boundingBox())!;
    await page.mouse.click(bar.x + 100, bar.y + bar.height / 2);
    await page.keyboard.type("5", { delay: 30 });
    await press(page, "Enter");
    await says(page, "#status-address", /^B7$/);
    await press(page, "ArrowUp");
    await says(page, "#status", "B6 1.55 Input.");
  });

  test("a file that is no workbook is refused with words and leaves the sheet", async () => {
    await openSmall();
    await page.setInputFiles("#file", { name: "note.xlsx", mimeType: xlsx, buffer: Buffer.from("no workbook") });
    await leaveWork();
    await says(page, "#problem", /^note\.xlsx can't be opened: /);
    await goTo(page, 11, 2);
    await says(page, "#status-value", "43 h");
  });

  test.each([
    [1280, 720],
    [1920, 1080],
  ])("%d × %d: nothing overflows, axe finds nothing", async (width, height) => {
    await openSmall();
    await page.setViewportSize({ width, height });
    await page.waitForTimeout(300);
    const overflow = (): Promise<boolean> =>
      page.evaluate(
        () => document.documentElement.scrollWidth > innerWidth || document.documentElement.scrollHeight > innerHeight,
      );
    expect(await overflow()).toBe(false);
    expect(await axe(page)).toEqual([]);
    await press(page, "F8");
    await page.locator("#workbooks summary").click();
    await page.getByRole("link", { name: "Blank sheet" }).waitFor();
    expect(await overflow()).toBe(false);
    expect(await axe(page)).toEqual([]);
  });

  test("the policy is strict", async () => {
    await openSmall();
    const answer = await page.request.get(`${suite.address}/sheet.html`);
    const policy = answer.headers()["content-security-policy"] ?? "";
    expect(policy).toContain(policies.sheet);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src 'self';/);
    expect(policy).not.toMatch(/unsafe-eval|\*|https?:/);
    // In a callback, since what the driver runs itself is exempt from the policy.
    const refused = await page.evaluate(
      () =>
        new Promise<boolean>((resolve) =>
          setTimeout(() => {
            try {
              // eslint-disable-next-line no-new-func -- that it is refused is what is tested
              new Function("return 1")();
              resolve(false);
            } catch {
              resolve(true);
            }
          }),
        ),
    );
    expect(refused).toBe(true);
    // The refusal above is the only fault of this page.
    watched.faults.splice(
      0,
      watched.faults.length,
      ...watched.faults.filter((fault) => !fault.includes("unsafe-eval")),
    );
  });

  test("the page offers every sample workbook and opens the first", async () => {
    await open("sheet.html");
    const offered = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>("#workbooks a")].map((link) =>
        new URL(link.href).searchParams.get("open"),
      ),
    );
    expect(offered.filter(Boolean).sort()).toEqual([...sampleFiles].sort());
    expect(await page.textContent("#workbook-title")).not.toBe("");
    expect(await page.getByText("Planning aid; sample data is invented.").count()).toBe(1);
    expect(await page.getByRole("link", { name: "Help" }).getAttribute("href")).toBe("help.html");
  });

  test.each(sampleFiles)("%s shows its saved values", async (file) => {
    const saved = readWorkbook(readFileSync(path.join(samples, file)), ids);
    await open(`sheet.html?open=${file}`);
    await press(page, "F8");
    const read = async (): Promise<{ compared: number; wrong: string[] }> => {
      let compared = 0;
      const wrong: string[] = [];
      for (const { name, cells } of saved.sheets) {
        if ((await page.getByRole("tab", { name, exact: true }).count()) === 0) continue;
        await showTab(page, name);
        const values = await tableValues(page);
        for (const address of Object.keys(cells)) {
          const value = saved.cached(name, address);
          if (value === undefined) continue;
          compared++;
          if (!agrees(values[address], value))
            wrong.push(`${name}!${address}: ${JSON.stringify(value)}, shown ${values[address]}`);
        }
      }
      return { compared, wrong };
    };
    let result = await read();
    // Calculation may take a few passes after the page is ready.
    for (let tries = 0; tries < 10 && result.wrong.length > 0; tries++) {
      await page.waitForTimeout(1_000);
      result = await read();
    }
    expect(result.wrong).toEqual([]);
    expect(result.compared).toBeGreaterThan(20);
  });
});
