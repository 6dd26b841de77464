import { readFileSync } from "node:fs";
import path from "node:path";
import type { FunctionRecord } from "../../src/catalogue/record";
import { projectFolder } from "../../src/tooling/build";
import { describeInBrowser, type WatchedPage } from "../inBrowser";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** Stands in for Excel: one active cell and the few members the pane uses. It takes the place of office.js. */
const pretendExcel = `(() => {
  const cell = { formulas: [[""]], address: "Sheet1!C4", load() {} };
  const handlers = [];
  const workbook = { getActiveCell: () => cell, onSelectionChanged: { add: (handler) => handlers.push(handler) } };
  window.pretend = { cell, select: (formula) => { cell.formulas = [[formula]]; return Promise.all(handlers.map((handler) => handler())); } };
  window.Office = { HostType: { Excel: "Excel" }, onReady: () => Promise.resolve({ host: "Excel" }) };
  window.Excel = { run: (batch) => batch({ workbook, sync: () => Promise.resolve() }) };
})();`;

interface Pretend {
  cell: { formulas: string[][] };
  select(formula: string): Promise<unknown>;
}

describeInBrowser("the pane", (suite) => {
  const records = (): FunctionRecord[] =>
    JSON.parse(readFileSync(path.join(projectFolder, "src", "catalogue", "generated", "records.json"), "utf8"));

  const openPane = async (options: Parameters<typeof suite.open>[1] = {}): Promise<WatchedPage> => {
    const watched = await suite.open("pane.html", { viewport: { width: 320, height: 640 }, ...options });
    await watched.page.waitForSelector("[role=option]");
    return watched;
  };

  const openInExcel = async (): Promise<WatchedPage> => {
    const context = { viewport: { width: 320, height: 640 }, before: pretendExcel };
    const watched = await suite.open("about.html", context);
    await watched.page.route("**/office/office.js", (route) =>
      route.fulfill({ contentType: "text/javascript", body: "" }),
    );
    await watched.page.goto(`${suite.address}/pane.html`);
    await watched.page.waitForSelector("[role=option]");
    return watched;
  };

  const status = (watched: WatchedPage, text: RegExp) =>
    watched.page.waitForFunction(
      ([source, flags]) => new RegExp(source, flags).test(document.getElementById("live")?.textContent ?? ""),
      [text.source, text.flags] as const,
    );
  const focused = (watched: WatchedPage): Promise<string> =>
    watched.page.evaluate(() => {
      const { activeElement } = document;
      return activeElement?.getAttribute("data-id") ?? activeElement?.id ?? "";
    });

  const violations = async ({ page }: WatchedPage): Promise<string[]> => {
    await page.evaluate(axe);
    const found = await page.evaluate(() =>
      (
        window as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } }
      ).axe.run(),
    );
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
  };

  it("lists every function under its heading, asks nobody else and reports no fault", async () => {
    const watched = await openPane();
    await watched.page.waitForLoadState("networkidle");
    const listed = await watched.page.$$eval("[role=option]", (options) =>
      options.map((option) => option.getAttribute("data-id")),
    );
    expect(new Set(listed)).toEqual(new Set(records().map(({ id }) => id)));
    expect(listed).toHaveLength(records().length);
    expect(watched.foreign).toEqual([]);
    expect(watched.faults).toEqual([]);
    await watched.context.close();
  });

  it("has a strict policy and nothing inline", async () => {
    const html = await (await fetch(`${suite.address}/pane.html`)).text();
    expect(html).toMatch(/Content-Security-Policy"? content="default-src 'none'; script-src 'self'; style-src 'self'/);
    expect(html).not.toMatch(/unsafe|<script(?![^>]*src=)|\sstyle=|<style|\son[a-z]+=/);
  });

  it("works by keyboard alone", async () => {
    const watched = await openPane();
    const { page } = watched;
    expect(await focused(watched)).toBe("search");
    await page.keyboard.type("HOURS_TO_FILL");
    await status(watched, /found/);
    await page.keyboard.press("ArrowDown");
    expect(await focused(watched)).toBe("HOURS_TO_FILL");
    await page.keyboard.press("Enter");
    expect(await focused(watched)).toBe("function-name");
    expect(await page.textContent("#function-name")).toBe("HOURS_TO_FILL");
    await page.keyboard.press("Escape");
    expect(await focused(watched)).toBe("HOURS_TO_FILL");
    await page.keyboard.press("ArrowUp");
    expect(await focused(watched)).toBe("search");
    await page.keyboard.press("Escape");
    expect(await page.inputValue("#search")).toBe("");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("End");
    const last = await focused(watched);
    expect(await page.$$eval("[role=option]", (options) => options[options.length - 1]?.getAttribute("data-id"))).toBe(
      last,
    );
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowDown");
    expect(await page.$$eval("[role=option]", (options) => options[1]?.getAttribute("data-id"))).toBe(
      await focused(watched),
    );
    expect(await page.$$eval('[role=option][tabindex="0"]', (options) => options.length)).toBe(1);
    await page.keyboard.press("/");
    expect(await focused(watched)).toBe("search");
    await watched.context.close();
  });

  it("says how many it found, and what to do when none", async () => {
    const watched = await openPane();
    await watched.page.fill("#search", "tank fill");
    await status(watched, /^\d+ functions? found$/);
    expect((await watched.page.$$("[role=option]")).length).toBeLessThan(records().length);
    await watched.page.fill("#search", "zebra");
    await status(watched, /^No function found$/);
    expect(await watched.page.isVisible("#none")).toBe(true);
    await watched.context.close();
  });

  it("opens the best hit with Enter in the search", async () => {
    const watched = await openPane();
    await watched.page.fill("#search", "hours_to_fill");
    await watched.page.press("#search", "Enter");
    expect(await watched.page.textContent("#function-name")).toBe("HOURS_TO_FILL");
    await watched.context.close();
  });

  it("shows everything a record says", async () => {
    const watched = await openPane();
    for (const record of records().filter((_, at) => at % 7 === 0)) {
      await watched.page.fill("#search", record.id);
      await watched.page.press("#search", "Enter");
      const shown = (await watched.page.textContent("#reader"))?.replace(/\s+/g, " ") ?? "";
      const said = [
        record.description,
        record.rule,
        record.range,
        record.source,
        record.caution ?? "",
        ...record.seeAlso,
      ];
      for (const argument of record.arguments) said.push(argument.name, argument.description, argument.unit);
      for (const example of record.examples) said.push(example.formula, example.note ?? "", example.source ?? "");
      expect(said.map((text) => text.replace(/\s+/g, " ")).filter((text) => !shown.includes(text))).toEqual([]);
      await watched.page.keyboard.press("Escape");
    }
    await watched.context.close();
  });

  it("copies a formula in a plain browser", async () => {
    const watched = await openPane({ permissions: ["clipboard-read", "clipboard-write"] });
    await watched.page.fill("#search", "HOURS_TO_FILL");
    await watched.page.press("#search", "Enter");
    await watched.page.click(".example button");
    await status(watched, /^Copied =OXYGEN\.HOURS_TO_FILL\(66,1\.5\)$/);
    expect(await watched.page.evaluate(() => navigator.clipboard.readText())).toBe("=OXYGEN.HOURS_TO_FILL(66,1.5)");
    await watched.context.close();
  });

  it("says the formula where copying is not allowed", async () => {
    const watched = await openPane({ before: "navigator.clipboard.writeText = () => Promise.reject(new Error('no'))" });
    await watched.page.fill("#search", "HOURS_TO_FILL");
    await watched.page.press("#search", "Enter");
    await watched.page.click(".example button");
    await status(watched, /did not allow.*=OXYGEN\.HOURS_TO_FILL\(66,1\.5\)/);
    await watched.context.close();
  });

  describe("in Excel", () => {
    const formula = ({ page }: WatchedPage) =>
      page.evaluate(() => (window as unknown as { pretend: Pretend }).pretend.cell.formulas[0]?.[0]);

    it("inserts into the active cell, and asks before it replaces", async () => {
      const watched = await openInExcel();
      await watched.page.fill("#search", "HOURS_TO_FILL");
      await watched.page.press("#search", "Enter");
      await watched.page.waitForSelector("text=Insert into the active cell");
      await watched.page.click(".example button");
      await status(watched, /^Inserted into C4$/);
      expect(await formula(watched)).toBe("=OXYGEN.HOURS_TO_FILL(66,1.5)");
      await watched.page.click("button.main");
      await status(watched, /^C4 is not empty/);
      expect(await formula(watched)).toBe("=OXYGEN.HOURS_TO_FILL(66,1.5)");
      await watched.page.click("button.main");
      await status(watched, /^Inserted into C4$/);
      expect(await formula(watched)).toBe("=OXYGEN.HOURS_TO_FILL(capacity,rate)");
      await watched.context.close();
    });

    it("does not carry the leave to replace to another cell", async () => {
      const watched = await openInExcel();
      await watched.page.fill("#search", "HOURS_TO_FILL");
      await watched.page.press("#search", "Enter");
      await watched.page.evaluate(() => (window as unknown as { pretend: Pretend }).pretend.select("kept"));
      await watched.page.click("button.main");
      await status(watched, /not empty/);
      await watched.page.evaluate(() => (window as unknown as { pretend: Pretend }).pretend.select("also kept"));
      await watched.page.click("button.main");
      await watched.page.waitForTimeout(100);
      expect(await formula(watched)).toBe("also kept");
      await watched.context.close();
    });

    it("says so when Excel takes no formula", async () => {
      const watched = await openInExcel();
      await watched.page.fill("#search", "HOURS_TO_FILL");
      await watched.page.press("#search", "Enter");
      await watched.page.evaluate(() => {
        (window as unknown as { Excel: { run: unknown } }).Excel.run = () =>
          Promise.reject(new Error("InvalidOperationInCellEditMode"));
      });
      await watched.page.click("button.main");
      await status(watched, /did not take the formula/);
      await watched.context.close();
    });

    it("offers the function of the active cell", async () => {
      const watched = await openInExcel();
      expect(await watched.page.isVisible("#active-function")).toBe(false);
      await watched.page.evaluate(() =>
        (window as unknown as { pretend: Pretend }).pretend.select("=ROUND(oxygen.hours_to_fill(A1,2),0)"),
      );
      await watched.page.click("#active-function-open");
      expect(await watched.page.textContent("#function-name")).toBe("HOURS_TO_FILL");
      await watched.page.evaluate(() => (window as unknown as { pretend: Pretend }).pretend.select("=SUM(A1)"));
      expect(await watched.page.isVisible("#active-function")).toBe(false);
      await watched.context.close();
    });
  });

  it.each(["light", "dark"] as const)("passes axe in %s, as a list and as a function", async (colorScheme) => {
    const watched = await openPane({ colorScheme, bypassCSP: true });
    expect(await violations(watched)).toEqual([]);
    await watched.page.fill("#search", "HOURS_TO_FILL");
    await watched.page.press("#search", "Enter");
    expect(await violations(watched)).toEqual([]);
    await watched.context.close();
  });

  it("fits 320 pixels without scrolling sideways", async () => {
    const watched = await openPane();
    const wide = () => watched.page.evaluate(() => document.documentElement.scrollWidth);
    expect(await wide()).toBe(320);
    for (const record of records()) {
      await watched.page.fill("#search", record.id);
      await watched.page.press("#search", "Enter");
      expect([record.id, await wide()]).toEqual([record.id, 320]);
      await watched.page.keyboard.press("Escape");
    }
    await watched.context.close();
  }, 120_000);

  it("shows where the focus is, also in forced colours", async () => {
    const watched = await openPane({ forcedColors: "active" });
    await watched.page.focus("#search");
    await watched.page.keyboard.press("ArrowDown");
    const outline = await watched.page.evaluate(() => {
      const { outlineStyle, outlineWidth } = getComputedStyle(document.activeElement as Element);
      return [outlineStyle, parseFloat(outlineWidth)];
    });
    expect(outline[0]).toBe("solid");
    expect(outline[1]).toBeGreaterThanOrEqual(2);
    await watched.context.close();
  });
});
