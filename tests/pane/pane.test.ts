import { argumentCells, firstExample } from "../../src/catalogue/constantFormula";
import { readFileSync } from "node:fs";
import path from "node:path";
import { functions } from "../../src/catalogue/generated/functions";
import type { FunctionRecord } from "../../src/catalogue/record";
import { projectFolder } from "../../src/tooling/build";
import { describeInBrowser, type WatchedPage } from "../inBrowser";
import { pretendExcel, type Pretend } from "./pretendExcel";

const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

describeInBrowser("the pane", (suite) => {
  const records = (): FunctionRecord[] =>
    JSON.parse(readFileSync(path.join(projectFolder, "src", "catalogue", "generated", "records.json"), "utf8"));

  const openPane = async (options: Parameters<typeof suite.open>[1] = {}): Promise<WatchedPage> => {
    const watched = await suite.open("pane.html", { viewport: { width: 320, height: 640 }, ...options });
    await watched.page.waitForSelector("[role=option]");
    return watched;
  };

  const openInExcel = async (more: Parameters<typeof suite.open>[1] = {}): Promise<WatchedPage> => {
    const context = { ...more, viewport: { width: 320, height: 640 }, before: `(${pretendExcel.toString()})()` };
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
    type Told = { pretend: Pretend };
    const cell = ({ page }: WatchedPage, address: string, sheet = "Sheet1") =>
      page.evaluate(([on, at]) => (window as unknown as Told).pretend.sheets[on]![at], [sheet, address] as const);
    const put = ({ page }: WatchedPage, ...given: Parameters<Pretend["put"]>) =>
      page.evaluate((all) => (window as unknown as Told).pretend.put(...all), given);
    const select = ({ page }: WatchedPage, address: string, selection?: string) =>
      page.evaluate(([at, all]) => (window as unknown as Told).pretend.select(at!, all), [address, selection] as const);
    const openForm = async (watched: WatchedPage, id: string): Promise<void> => {
      await watched.page.fill("#search", id);
      await watched.page.press("#search", "Enter");
      await watched.page.waitForSelector("form.fields");
    };

    it("fills a form in, with live answers, words of errors and units, and inserts", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await openForm(watched, "HOURS_TO_FILL");
      expect(await page.textContent("#form-answer")).toContain("Still to fill in: capacity, rate");
      await page.fill("#field-capacity", "60");
      await page.fill("#field-rate", "1.5");
      // 3 + 60/1.5
      await page.locator("#form-answer", { hasText: /^43 h$/ }).waitFor();
      expect(await page.textContent("#form-formula")).toBe("=OXYGEN.HOURS_TO_FILL(60,1.5)");
      await page.fill("#field-rate", "10 L/min");
      await page.locator("#form-answer", { hasText: '#VALUE! rate "10 L/min" is a gas flow' }).waitFor();
      await page.fill("#field-rate", "1.5");
      await page.fill("#field-start_delay", "0");
      await page.locator("#form-answer", { hasText: /^40 h$/ }).waitFor();
      expect(await page.textContent("#form-formula")).toBe("=OXYGEN.HOURS_TO_FILL(60,1.5,0,0)");
      await page.press("#field-start_delay", "Enter");
      await status(watched, /^Inserted into C4$/);
      expect(await cell(watched, "C4")).toMatchObject({ formula: "=OXYGEN.HOURS_TO_FILL(60,1.5,0,0)" });
      await page.fill("#field-level", "5");
      await page.click("form.fields button.main");
      await status(watched, /^C4 is not empty/);
      await page.click("form.fields button.main");
      await status(watched, /^Inserted into C4$/);
      expect(await cell(watched, "C4")).toMatchObject({ formula: "=OXYGEN.HOURS_TO_FILL(60,1.5,5,0)" });
      await watched.context.close();
    });

    it("takes the selection for an argument and reads it live", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await put(watched, "Sheet1", "A1", 66);
      await put(watched, "Sheet1", "A2", "");
      await openForm(watched, "HOURS_TO_FILL");
      await page.fill("#field-rate", "1.5");
      await select(watched, "C4", "A1");
      await page.getByRole("button", { name: "Use selection for capacity" }).click();
      // 3 + 66/1.5
      await page.locator("#form-answer", { hasText: /^47 h$/ }).waitFor();
      expect(await page.textContent("#form-formula")).toBe("=OXYGEN.HOURS_TO_FILL(A1,1.5)");
      await page.fill("#field-capacity", "A2");
      await page.locator("#form-answer", { hasText: "#VALUE! capacity is blank" }).waitFor();
      await page.fill("#field-capacity", "Tank");
      await page.locator("#form-answer", { hasText: "There is no name Tank in this workbook." }).waitFor();
      await watched.context.close();
    });

    it("warns of filled cells where a table will spill", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await put(watched, "Sheet1", "D5", "kept");
      await openForm(watched, "SITE_CHECK");
      await page.fill("#field-clearance", "2");
      await page.fill("#field-tilt", "1");
      await page.fill("#field-surface", "concrete");
      await page.fill("#field-ventilated", "true");
      await page.locator("#form-answer table").waitFor();
      await page.click("form.fields button.main");
      await status(watched, /^D5 is in the way/);
      expect(await cell(watched, "C4")).toBeUndefined();
      await watched.context.close();
    });

    it("copies and inserts no bare argument name, in any function", async () => {
      const watched = await openInExcel();
      for (const record of records().filter((_, at) => at % 9 === 0)) {
        await openForm(watched, record.id);
        const formula = (await watched.page.textContent("#form-formula")) ?? "";
        for (const { name } of record.arguments) expect(formula).not.toMatch(new RegExp(`[(,]${name}[,)]`));
        await watched.page.keyboard.press("Escape");
      }
      await watched.context.close();
    });

    it("does not carry the leave to replace to another cell", async () => {
      const watched = await openInExcel();
      await put(watched, "Sheet1", "C4", "kept");
      await put(watched, "Sheet1", "C5", "also kept");
      await openForm(watched, "BOILING_POINT");
      await watched.page.click("form.fields button.main");
      await status(watched, /not empty/);
      await select(watched, "C5");
      await watched.page.click("form.fields button.main");
      await status(watched, /^C5 is not empty/);
      expect(await cell(watched, "C5")).toMatchObject({ formula: "also kept" });
      await watched.context.close();
    });

    it("says so when Excel takes no formula", async () => {
      const watched = await openInExcel();
      await openForm(watched, "BOILING_POINT");
      await watched.page.evaluate(() => {
        (window as unknown as { Excel: { run: unknown } }).Excel.run = () =>
          Promise.reject(new Error("InvalidOperationInCellEditMode"));
      });
      await watched.page.click("form.fields button.main");
      await status(watched, /did not take the formula/);
      await watched.context.close();
    });

    it("explains the active cell: arguments with values and units, defaults, the answer again, words, cautions", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await put(watched, "Inputs", "B2", 66);
      await put(watched, "Inputs", "B3", "");
      await put(watched, "Sheet1", "C4", "=ROUND(OXYGEN.HOURS_TO_FILL(Inputs!B2,1.5)/24,1)", 2);
      await select(watched, "C4");
      await page.getByRole("button", { name: "Explain this cell" }).click();
      await page.locator("#page-title", { hasText: "Sheet1!C4" }).waitFor();
      const told = (await page.textContent("#reader"))!.replace(/\s+/g, " ");
      for (const words of [
        "capacity = Inputs!B2",
        "66 L",
        "left out: 3 is taken",
        "47 h",
        "Excel shows: 2",
        "Inputs!B2",
      ])
        expect(told).toContain(words);
      await put(watched, "Sheet1", "C4", "=OXYGEN.GROSS_DRAW(OXYGEN.HOURS_TO_FILL(Inputs!B3,1.5))", "#VALUE!");
      await page.keyboard.press("Escape");
      await select(watched, "C4");
      await page.getByRole("button", { name: "Explain this cell" }).click();
      await page.locator("#reader", { hasText: "#VALUE! capacity is blank" }).waitFor();
      await put(watched, "Sheet1", "C4", "=OXYGEN.HOURS_TO_FILL(66,1.5)", 12);
      await page.keyboard.press("Escape");
      await select(watched, "C4");
      await page.getByRole("button", { name: "Explain this cell" }).click();
      await page.locator("#reader", { hasText: "computed again here differ" }).waitFor();
      await put(watched, "Sheet1", "C4", "=OXYGEN.HOURS_TO_FILL(66,1.5,0,3,7)", 47);
      await page.keyboard.press("Escape");
      await select(watched, "C4");
      await page.getByRole("button", { name: "Explain this cell" }).click();
      await page.locator("#reader", { hasText: "or there are too many" }).waitFor();
      await put(watched, "Sheet1", "C4", "=OXYGEN.GROSS_DRAW(Inputs!B2*2)", 165);
      await page.keyboard.press("Escape");
      await select(watched, "C4");
      await page.getByRole("button", { name: "Explain this cell" }).click();
      await page.locator("#reader", { hasText: "Excel works it out; not shown here" }).waitFor();
      expect(await page.textContent("#reader")).toContain("not computed");
      await page.keyboard.press("Escape");
      await put(watched, "Sheet1", "C4", "=SUM(A1)", 1);
      await select(watched, "C4");
      expect(await page.isVisible("#active-function")).toBe(false);
      await watched.context.close();
    });

    it("lays a ready block out: labels, inputs with units and validation, formula, caution; never over filled cells unasked", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await page.getByRole("button", { name: "Ready blocks" }).click();
      expect(await page.locator("#reader li").count()).toBe(15);
      await page.getByRole("button", { name: "How many hours until it is full?" }).click();
      await status(watched, /^Inserted into C4$/);
      expect(await cell(watched, "C4")).toMatchObject({ formula: "How many hours until it is full?" });
      expect(await cell(watched, "D5")).toMatchObject({
        formula: "",
        fill: "#FFF7D6",
        validation: { custom: { formula: "=OR(ISNUMBER(D5),ISTEXT(D5),ISLOGICAL(D5))" } },
      });
      expect(await cell(watched, "E5")).toMatchObject({ formula: "L" });
      expect(await cell(watched, "D9")).toMatchObject({
        formula: '=IF(COUNTBLANK(D5:D8)>0,"EMPTY: fill every yellow cell",OXYGEN.HOURS_TO_FILL(D5,D6,D7,D8))',
      });
      expect(await cell(watched, "D8")).toMatchObject({ formula: 3 });
      expect(((await cell(watched, "C10")) as { formula: string }).formula).toMatch(/^Caution: /);
      await page.getByRole("button", { name: "What must be drawn for a fill?" }).click();
      await status(watched, /^C4 is not empty/);
      await watched.context.close();
    });

    it("lays out blocks whose formulas answer", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      const questions = await page
        .evaluate(() => (document.getElementById("ways-blocks") as HTMLElement).click())
        .then(() => page.locator("#reader li button").allTextContents());
      for (const [index, question] of questions.entries()) {
        const top = 1 + index * 20;
        await select(watched, `A${top}`);
        await page.getByRole("button", { name: question, exact: true }).click();
        await status(watched, new RegExp(`^Inserted into A${top}$`));
      }
      const sheet = await page.evaluate(() => (window as unknown as Told).pretend.sheets.Sheet1!);
      const formulas = Object.values(sheet).filter(({ formula }) => String(formula).startsWith("=IF(COUNTBLANK("));
      expect(formulas).toHaveLength(15);
      const byId = new Map(functions);
      for (const { formula } of formulas) {
        const [, id, given] = /OXYGEN\.(\w+)\((.*)\)\)$/.exec(String(formula))!;
        const record = records().find((each) => each.id === id)!;
        const example = argumentCells(firstExample(record), () => undefined);
        const cells = given!.split(",").map((at, index) => {
          if (at === "") return undefined;
          const content = sheet[at]!.formula;
          expect([id, index, content === ""]).toEqual([id, index, !record.arguments[index]!.optional]);
          return content === "" ? example[index] : [[content]];
        });
        const [[answer]] = byId.get(id!)!(...cells) as [[unknown]];
        expect([id, typeof answer === "number" || (answer as { type?: string }).type === "Double"]).toEqual([id, true]);
      }
      await watched.context.close();
    });

    it("checks the workbook, goes to a finding, and keeps a reason in the workbook", async () => {
      const watched = await openInExcel();
      const { page } = watched;
      await put(watched, "Sheet1", "A1", "=OXYGEN.GAS_FROM_LIQUID(18)", 15000);
      await put(watched, "Inputs", "B2", "=OXYGEN.DRAIN_HOURS(Sheet1!A1,30)", 500);
      await page.getByRole("button", { name: "Check this workbook" }).click();
      await page.locator("#reader [role=status]", { hasText: /^1 finding in 2 formulas\.$/ }).waitFor();
      const told = await page.textContent(".finding");
      expect(told).toContain("Inputs!B2");
      expect(told).toContain("gas");
      await page.locator(".finding .link").click();
      expect(await page.evaluate(() => (window as unknown as Told).pretend.active())).toMatchObject({
        sheet: "Inputs",
        cell: "B2",
      });
      await page.getByRole("button", { name: "Let it stand" }).click();
      await status(watched, /reason/);
      await page.locator(".finding input").fill("checked by hand on 3 March");
      await page.getByRole("button", { name: "Let it stand" }).click();
      await status(watched, /Kept on the sheet Check notes/);
      expect(await cell(watched, "D2", "Check notes")).toMatchObject({ formula: "checked by hand on 3 March" });
      await page.keyboard.press("Escape");
      await page.getByRole("button", { name: "Check this workbook" }).click();
      await page.locator("#reader [role=status]", { hasText: "0 findings in 2 formulas; 1 let stand" }).waitFor();
      expect(await page.textContent("#reader")).toContain("That is no proof");
      await watched.context.close();
    });

    it.each(["form", "blocks", "samples", "check", "explain"])("passes axe and fits 320 pixels: %s", async (view) => {
      const watched = await openInExcel({ bypassCSP: true });
      const { page } = watched;
      await put(watched, "Sheet1", "A1", "=OXYGEN.GAS_FROM_LIQUID(18)", 15000);
      await put(watched, "Sheet1", "A2", "=OXYGEN.DRAIN_HOURS(A1,30)", 500);
      if (view === "form") await openForm(watched, "SITE_CHECK");
      else if (view === "explain") {
        await select(watched, "A2");
        await page.click("#explain");
      } else await page.click(`#ways-${view}`);
      await page.locator("#reader h2").waitFor();
      expect(await violations(watched)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
      await watched.context.close();
    });
  });

  it("keeps favourites and what was opened lately, on this computer", async () => {
    const watched = await openPane();
    const { page } = watched;
    for (const id of ["HOURS_TO_FILL", "GROSS_DRAW"]) {
      await page.fill("#search", id);
      await page.press("#search", "Enter");
      if (id === "GROSS_DRAW") await page.getByRole("button", { name: "Favourite" }).click();
      await page.keyboard.press("Escape");
    }
    await page.reload();
    await page.waitForSelector("[role=option]");
    expect(await page.getByRole("group", { name: "Favourites" }).textContent()).toBe("FavouritesGROSS_DRAW");
    expect(await page.getByRole("group", { name: "Recent" }).textContent()).toBe("RecentHOURS_TO_FILL");
    await watched.context.close();
    const without = await openPane({
      before: "Object.defineProperty(window, 'localStorage', { get() { throw new Error('no'); } })",
    });
    await without.page.fill("#search", "HOURS_TO_FILL");
    await without.page.press("#search", "Enter");
    expect(await without.page.textContent("#function-name")).toBe("HOURS_TO_FILL");
    await without.context.close();
  });

  it("answers a clerk's ten questions from a cold pane by the keyboard, each within a minute", async () => {
    const questions: readonly (readonly [asked: string, fields: Record<string, string>, answer: RegExp])[] = [
      // Each by plain arithmetic of the stated rule.
      ["how long to fill the tank", { capacity: "60", rate: "1.5" }, /^43 h$/],
      ["days until empty", { level: "40", capacity: "40" }, /^8 days$/],
      ["what must be drawn for a net fill", { net_fill: "20" }, /^25 L$/],
      ["how many fills are in it", { level: "100", fill_each: "20" }, /^4$/],
      ["boil off", { capacity: "40" }, /^5 L\/day$/],
      ["cylinder minutes", { content: "1000", flow: "5" }, /^180 min$/],
      ["cylinders needed", { gas: "63000", content: "7000" }, /^10$/],
      ["oxygen for a journey", { flow: "10", minutes: "90" }, /^1800 L$/],
      ["how many patients can we carry", { supply_flow: "25", flow_each: "6" }, /^4$/],
      ["days of fuel", { fuel: "600", fuel_per_day: "150" }, /^4 days$/],
    ];
    for (const [asked, fields, answer] of questions) {
      const watched = await openPane();
      const { page } = watched;
      const started = Date.now();
      await page.keyboard.type(asked);
      await status(watched, /found/);
      await page.keyboard.press("Enter");
      for (const [name, value] of Object.entries(fields)) {
        for (let press = 0; press < 30; press++) {
          await page.keyboard.press("Tab");
          if ((await page.evaluate(() => document.activeElement?.id)) === `field-${name}`) break;
        }
        await page.keyboard.type(value);
      }
      await page
        .locator("#form-answer", { hasText: answer })
        .waitFor({ timeout: 10_000 })
        .catch(async () => {
          throw new Error(
            `${asked}: ${await page.textContent("#function-name")} ${await page.textContent("#form-answer")}`,
          );
        });
      expect(Date.now() - started).toBeLessThan(60_000);
      await watched.context.close();
    }
  }, 120_000);

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
