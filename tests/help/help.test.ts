import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { catalogue } from "../../src/catalogue/catalogue";
import { describeInBrowser } from "../inBrowser";

const axeScript = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

const violations = async (page: Page): Promise<string[]> => {
  await page.evaluate(axeScript);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`);
  });
};

describeInBrowser("help page", (suite) => {
  test("tells of every function, in contents, entries and index, and passes axe", async () => {
    const { page, context, faults, foreign } = await suite.open("help.html");
    for (const { id } of catalogue) {
      expect(await page.locator(`article[id="${id}"]`).count()).toBe(1);
      expect(await page.locator(`nav a[href="#${id}"]`).count()).toBe(1);
      expect(await page.locator(`.index a[href="#${id}"]`).count()).toBeGreaterThan(0);
    }
    expect(await violations(page)).toEqual([]);
    expect([...faults, ...foreign]).toEqual([]);
    await context.close();
  });

  test("searches by the keyboard alone, and Enter goes to the best entry", async () => {
    const { page, context, faults } = await suite.open("help.html");
    await page.keyboard.press("Tab");
    await page.keyboard.type("hours to fill");
    await page
      .getByRole("status")
      .filter({ hasText: /found|best/ })
      .waitFor();
    expect(await page.locator("#results a").first().textContent()).toBe("HOURS_TO_FILL");
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("Enter");
    expect(new URL(page.url()).hash).toBe("#HOURS_TO_FILL");
    expect(await page.locator("#results a").count()).toBe(0);
    await page.locator("#question").fill("zzqx");
    await page.getByRole("status").filter({ hasText: "Nothing found" }).waitFor();
    expect(faults).toEqual([]);
    await context.close();
  });

  test("opens at the entry that Excel's help link names, below the search", async () => {
    const { page, context } = await suite.open("help.html#ORDER_UP_TO");
    const top = await page.locator('article[id="ORDER_UP_TO"]').evaluate((entry) => entry.getBoundingClientRect().top);
    const search = await page.locator("#search").evaluate((form) => form.getBoundingClientRect().bottom);
    expect(top).toBeGreaterThanOrEqual(search - 1);
    expect(top).toBeLessThan(300);
    await context.close();
  });

  test("typesets fractions and roots", async () => {
    const { page, context } = await suite.open("help.html");
    const taller = await page
      .locator('article[id="HOURS_TO_FILL"] .rule mfrac')
      .evaluate(
        (fraction) => fraction.getBoundingClientRect().height / parseFloat(getComputedStyle(fraction).fontSize),
      );
    expect(taller).toBeGreaterThan(1.6);
    expect(await page.locator('article[id="ECONOMIC_ORDER"] .rule msqrt').count()).toBe(1);
    await context.close();
  });

  test("reads without its script and at 320 px", async () => {
    const { page, context } = await suite.open("help.html", {
      javaScriptEnabled: false,
      viewport: { width: 320, height: 600 },
    });
    expect(await page.locator("#search").isVisible()).toBe(false);
    expect(await page.getByRole("heading", { name: "Contents" }).isVisible()).toBe(true);
    await context.close();
    const narrow = await suite.open("help.html", { viewport: { width: 320, height: 600 } });
    expect(await narrow.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await narrow.context.close();
  });

  test("prints as a handbook with numbered pages", async () => {
    const { page, context } = await suite.open("help.html");
    const print = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const pages = print.match(/\/Type\s*\/Page\b(?!s)/g)!.length;
    expect(pages).toBeGreaterThan(60);
    const rules = await page.evaluate(() =>
      [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules].map((rule) => rule.cssText)).join("\n"),
    );
    expect(rules).toMatch(/@bottom-right \{[^}]*counter\(page\)/);
    await context.close();
  });
});
