import { spawnSync } from "node:child_process";
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { projectFolder } from "../../src/tooling/build";

const packages = {
  "": { name: "project" },
  "node_modules/sheet": { version: "1.0.0" },
  "node_modules/sheet/node_modules/part": { version: "2.0.0" },
  "node_modules/other-system": { version: "1.0.0", optional: true },
  "node_modules/checker": { version: "3.0.0", dev: true },
};
const forStart = { "node_modules/sheet": "1.0.0", "node_modules/sheet/node_modules/part": "2.0.0" };
const forTests = { ...forStart, "node_modules/checker": "3.0.0" };

const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true })));

/** Runs the script in a project with these packages installed; gives what it asked of a stand-in for npm. */
const askedOfNpm = (installed: Record<string, string>, ...words: string[]): string => {
  const folder = mkdtempSync(path.join(os.tmpdir(), "oxygen-install-"));
  folders.push(folder);
  const write = (file: string, content: string): string => {
    const target = path.join(folder, file);
    mkdirSync(path.dirname(target), { recursive: true });
    writeFileSync(target, content);
    return target;
  };
  const script = write("src/tooling/ensureInstalled.mjs", "");
  copyFileSync(path.join(projectFolder, "src", "tooling", "ensureInstalled.mjs"), script);
  write("package-lock.json", JSON.stringify({ packages }));
  for (const [place, version] of Object.entries(installed)) write(`${place}/package.json`, JSON.stringify({ version }));
  const log = write("log", "");
  chmodSync(write("bin/npm", `#!/bin/sh\necho "$@" >> "${log}"\n`), 0o755);
  const { status } = spawnSync(process.execPath, [script, ...words], {
    env: { ...process.env, PATH: `${path.join(folder, "bin")}:${process.env.PATH}` },
  });
  expect(status).toBe(0);
  return readFileSync(log, "utf8").trim();
};

const testElsewhere = process.platform === "win32" ? test.skip : test;

testElsewhere.each([
  ["start, nothing there", {}, [], "ci --omit=dev"],
  ["start, all there", forStart, [], ""],
  ["start, all there and what tests need", forTests, [], ""],
  ["start, one missing", { "node_modules/sheet": "1.0.0" }, [], "install --no-save --omit=dev"],
  ["start, one of another version", { ...forStart, "node_modules/sheet": "0.9.0" }, [], "install --no-save --omit=dev"],
  [
    "start, one out of date beside what tests need",
    { ...forTests, "node_modules/sheet": "0.9.0" },
    [],
    "install --no-save",
  ],
  ["test, nothing there", {}, ["--tests"], "ci"],
  ["test, only what start needs", forStart, ["--tests"], "install --no-save"],
  ["test, all there", forTests, ["--tests"], ""],
])("npm %s [not on Windows]", (_name, installed, words, asked) => {
  expect(askedOfNpm(installed as unknown as Record<string, string>, ...words)).toBe(asked);
});
