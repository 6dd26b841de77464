/** The check of a workbook in the local sheet: what is typed is found, a press goes there, a reason is kept. */
import type { Page } from "playwright-core";
import { describeInBrowser } from "../inBrowser";

jest.setTimeout(120_000);

const says = (page: Page, selector: string, words: string): Promise<unknown> =>
  page.locator(selector, { hasText: words }).first().waitFor({ timeout: 30_000 });

describeInBrowser("the check in the local sheet", (suite) => {
  test("finds gas given as liquid, goes to it, lets it stand with a reason", async () => {
    const { page, context, faults, foreign } = await suite.open("sheet.html?blank", {
      viewport: { width: 1280, height: 720 },
    });
    await page.waitForSelector('#grid[aria-busy="false"]', { timeout: 60_000 });
    await page.keyboard.type("=OXYGEN.GAS_FROM_LIQUID(18)", { delay: 30 });
    await page.waitForTimeout(400);
    await page.keyboard.press("Enter");
    await page.keyboard.type("=OXYGEN.DRAIN_HOURS(A1,30)", { delay: 30 });
    await page.waitForTimeout(400);
    await page.keyboard.press("Enter");
    await says(page, "#status-address", "A3");
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await says(page, "#findings", "1 finding in 2 formulas.");
    await says(page, ".finding.danger", "level of DRAIN_HOURS takes an amount of liquid and is given an amount of gas");
    await page.getByRole("button", { name: "Let it stand" }).click();
    await says(page, "#live", "Write why it may stand");
    await page.getByLabel("Why Sheet1!A2 may stand").fill("checked by hand on 3 March");
    await page.keyboard.press("Enter");
    await says(page, "#live", "Kept on the sheet Check notes.");
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await says(page, "#findings", "0 findings in 2 formulas; 1 let stand by the sheet Check notes.");
    await says(page, "#findings", "That is no proof");
    await page.getByRole("button", { name: "Check this workbook" }).click();
    expect([...faults, ...foreign]).toEqual([]);
    await context.close();
  });

  test("goes to the cell of a finding", async () => {
    const { page, context } = await suite.open("sheet.html?blank", { viewport: { width: 1280, height: 720 } });
    await page.waitForSelector('#grid[aria-busy="false"]', { timeout: 60_000 });
    await page.keyboard.press("ArrowDown");
    await page.keyboard.type("=IFERROR(OXYGEN.DAILY_LOSS(40),0)", { delay: 30 });
    await page.waitForTimeout(400);
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Check this workbook" }).click();
    await page.getByRole("button", { name: "Sheet1!A2" }).click();
    await says(page, "#status-address", "A2");
    expect(await page.locator("#findings").isVisible()).toBe(false);
    await context.close();
  });
});
