/** Finds a Chromium-like browser on this computer and starts it quietly. */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { chromium, type Browser } from "playwright-core";

/** Each browser by its command (Linux) or program file below the system's program folders. */
const onLinux = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "microsoft-edge-stable",
];
const onMac = [
  "Google Chrome.app/Contents/MacOS/Google Chrome",
  "Chromium.app/Contents/MacOS/Chromium",
  "Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
];
const onWindows = [
  "Google/Chrome/Application/chrome.exe",
  "Chromium/Application/chrome.exe",
  "Microsoft/Edge/Application/msedge.exe",
];

type Environment = Record<string, string | undefined>;

/** Every place where a browser may be on a system, the likeliest first. */
export const likelyPlaces = (platform: NodeJS.Platform, environment: Environment): string[] => {
  if (platform === "win32") {
    const folders = [environment.PROGRAMFILES, environment["PROGRAMFILES(X86)"], environment.LOCALAPPDATA];
    return onWindows.flatMap((file) => folders.flatMap((folder) => (folder ? [path.win32.join(folder, file)] : [])));
  }
  if (platform === "darwin") {
    const folders = ["/Applications", ...(environment.HOME ? [path.posix.join(environment.HOME, "Applications")] : [])];
    return onMac.flatMap((file) => folders.map((folder) => path.posix.join(folder, file)));
  }
  const folders = (environment.PATH ?? "").split(":").filter(Boolean);
  return onLinux.flatMap((command) => folders.map((folder) => path.posix.join(folder, command)));
};

/**
 * The browser that comes as an npm package, for Linux on x64 only. Its module is of a kind that can't be loaded from
 * here, and it unpacks itself when asked, so a process of its own does that.
 */
const packagedBrowser = (): string | undefined => {
  if (process.platform !== "linux" || process.arch !== "x64") return undefined;
  const script = 'import chromium from "@sparticuz/chromium"; console.log(await chromium.executablePath());';
  const run = spawnSync(process.execPath, ["--input-type=module", "--eval", script], {
    cwd: __dirname,
    encoding: "utf8",
    timeout: 60_000,
  });
  const file = run.stdout?.trim().split("\n").pop() ?? "";
  if (run.status !== 0 || !existsSync(file)) return undefined;
  // It needs system libraries that a bare system lacks.
  return spawnSync(file, ["--version", "--no-sandbox"], { timeout: 20_000 }).status === 0 ? file : undefined;
};

let found: string | null | undefined;

/**
 * The program file of a browser: OXYGEN_BROWSER if set ("none" for none), else an installed one, else the npm-packaged
 * one; undefined when there is none.
 * @throws when OXYGEN_BROWSER names a file that does not exist.
 */
export const findBrowser = (): string | undefined => {
  const asked = process.env.OXYGEN_BROWSER;
  if (asked === "none") return undefined;
  if (asked) {
    if (!existsSync(asked)) throw new Error(`OXYGEN_BROWSER names ${asked}, which does not exist.`);
    return asked;
  }
  found ??= likelyPlaces(process.platform, process.env).find((file) => existsSync(file)) ?? packagedBrowser() ?? null;
  return found ?? undefined;
};

/** Keep the browser from asking anything of the network by itself, and let it run in containers. */
const quietFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts the browser without a window. @throws when none is found. */
export const launchBrowser = (): Promise<Browser> => {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error("No browser found: install Chromium, Chrome or Edge, or set OXYGEN_BROWSER.");
  return chromium.launch({ executablePath, args: quietFlags, headless: true });
};
