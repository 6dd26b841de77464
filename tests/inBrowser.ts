import type { Browser, BrowserContext, Page } from "playwright-core";
import { startStaticServer, type RunningServer } from "../src/server/staticServer";
import { findBrowser, launchBrowser } from "../src/tooling/browser";
import { builtFiles, buildTimeout } from "./builtFiles";

/** Ends the title of every suite that needs a browser; tests/skippedTestReporter.js counts by it. */
const mark = "[browser]";

export interface BrowserSuite {
  /** Address of the served dist folder, without a slash at the end. */
  address: string;
  browser: Browser;
  /** A fresh page that notes what it asked for and what went wrong. */
  open(path: string, options?: Parameters<Browser["newContext"]>[0] & { before?: string }): Promise<WatchedPage>;
}

export interface WatchedPage {
  page: Page;
  context: BrowserContext;
  /** Addresses asked for outside the served host. */
  foreign: string[];
  /** Console errors, uncaught exceptions, refused and failed requests. */
  faults: string[];
}

/**
 * A suite that runs in a real browser against the built files, served from loopback. Without a browser its tests are
 * skipped and counted at the end of the run; OXYGEN_REQUIRE_BROWSER=1 makes that a failure.
 */
export const describeInBrowser = (name: string, define: (suite: BrowserSuite) => void): void => {
  jest.setTimeout(60_000);
  const hasBrowser = findBrowser() !== undefined;
  const required = process.env.OXYGEN_REQUIRE_BROWSER === "1";
  const run = hasBrowser || required ? describe : describe.skip;
  run(`${name} ${mark}`, () => {
    const suite = {} as BrowserSuite;
    let server: RunningServer | undefined;

    beforeAll(async () => {
      const root = builtFiles();
      server = await startStaticServer({ root, port: 0 });
      suite.address = `http://localhost:${server.port}`;
      suite.browser = await launchBrowser();
    }, buildTimeout);

    afterAll(async () => {
      await suite.browser?.close();
      await server?.close();
    });

    suite.open = async (path, { before, ...options } = {}) => {
      const context = await suite.browser.newContext(options);
      const page = await context.newPage();
      const foreign: string[] = [];
      const faults: string[] = [];
      page.on("request", (request) => {
        if (!request.url().startsWith(`${suite.address}/`) && !request.url().startsWith("data:"))
          foreign.push(request.url());
      });
      page.on("requestfailed", (request) => faults.push(`failed: ${request.url()}`));
      page.on("response", (response) => {
        if (response.status() >= 400) faults.push(`${response.status()}: ${response.url()}`);
      });
      page.on("pageerror", (error) => faults.push(`exception: ${error.message}`));
      page.on("console", (message) => {
        if (message.type() === "error") faults.push(`console: ${message.text()}`);
      });
      if (before !== undefined) await page.addInitScript(before);
      await page.goto(`${suite.address}/${path}`);
      return { page, context, foreign, faults };
    };

    define(suite);
  });
};
