import fc from "fast-check";
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { projectFolder } from "../../src/tooling/build";
import { seed } from "../fixedSeed.js";

const testsFolder = path.join(projectFolder, "tests");
const files = readdirSync(testsFolder, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.(?:[cm]?[jt]sx?)$/.test(file))
  .map((file) => file.split(path.sep).join("/"));

/** Files that neither run as tests nor are named by one that is here: a misspelt name makes a test run never. */
const neverRun = (names: readonly string[], textOf: (name: string) => string): string[] => {
  const bare = (place: string): string => path.posix.basename(place).replace(/\.[cm]?[jt]sx?$/, "");
  const named = new Set(
    names.flatMap((name) => [...textOf(name).matchAll(/"([^"\n]+)"/g)].map(([, place]) => bare(place!))),
  );
  return names.filter((name) => !name.endsWith(".test.ts") && !named.has(bare(name)));
};

test("every file here is a test or is imported by one", () => {
  const known = ["skippedTestReporter.js", "fixedSeed.js", "fixedSeed.d.ts", "mutation/mutation.ts", "fuzz/fuzz.ts"];
  const textOf = (name: string): string => readFileSync(path.join(testsFolder, name), "utf8");
  expect(neverRun(files, textOf).filter((name) => !known.includes(name))).toEqual([]);
  // In parts, since this file's own texts count as names too.
  const misspelt = ["models/pressure", "tests", "ts"].join(".");
  const withIt = neverRun([...files, misspelt], (name) => (name === misspelt ? "" : textOf(name)));
  expect(withIt).toContain(misspelt);
});

describe("a run of tests", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "tests-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const run = (text: string, ...words: string[]): { status: number | null; words: string } => {
    writeFileSync(path.join(folder, "one.test.js"), text);
    const config = JSON.stringify({
      rootDir: folder,
      testMatch: ["**/*.test.js"],
      transform: {},
      reporters: [path.join(testsFolder, "skippedTestReporter.js")],
    });
    const { status, stderr } = spawnSync(
      process.execPath,
      [require.resolve("jest/bin/jest"), "--config", config, ...words],
      { encoding: "utf8" },
    );
    return { status, words: stderr };
  };
  const two = 'test("a", () => {}); test("b", () => {});';

  test.each([
    ["passes", two, 0, ""],
    ["fails where one is skipped", `${two} test.skip("c", () => {});`, 1, "did not run"],
    ["fails where one is focused", `${two} test.only("c", () => {});`, 1, "2 tests did not run"],
    ["fails where one is put off", `${two} test.todo("c");`, 1, "did not run"],
    ["passes where one needs a browser", `${two} test.skip("c [browser]", () => {});`, 0, "1 browser tests skipped"],
  ])(
    "%s",
    (_name, text, wanted, told) => {
      const { status, words } = run(text, "one");
      expect({ words, status }).toEqual({ words: expect.stringContaining(told), status: wanted });
    },
    60_000,
  );

  test("fails where a whole one has too few", () => {
    expect(run(two)).toEqual({ status: 1, words: expect.stringContaining("Was a test file lost?") });
  }, 60_000);
});

test("properties draw with one seed in every file", () => {
  expect(fc.readConfigureGlobal()).toEqual(expect.objectContaining({ seed }));
});
