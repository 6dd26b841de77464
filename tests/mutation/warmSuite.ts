/**
 * Runs test files over and over in one process: what a mutant does not touch stays loaded. Knows as much of Jest as the
 * tests of arguments, cells, functions, models and check use, with Jest's own `expect`.
 */
import { existsSync, readFileSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";
import { transformSync } from "@swc/core";
import { projectFolder } from "../../src/tooling/build";

type Run = () => unknown;
interface Test {
  readonly title: string;
  readonly run: Run;
  readonly before: readonly Run[];
}
interface Module {
  exports: Record<string, unknown>;
}

const own = createRequire(path.join(projectFolder, "package.json"));
/** Packages that come as ES modules alone. */
const compiled = /node_modules[\\/](?:yalps|hucre)[\\/]/;
const isCompiled = (file: string): boolean => !file.includes("node_modules") || compiled.test(file);

const resolved = new Map<string, string>();
function resolve(from: string, name: string): string {
  const key = `${path.dirname(from)} ${name}`;
  const known = resolved.get(key);
  if (known) return known;
  let found: string | undefined;
  if (name.startsWith(".") || path.isAbsolute(name)) {
    const base = path.resolve(path.dirname(from), name);
    found = [base, `${base}.ts`, `${base}.tsx`, `${base}.js`, path.join(base, "index.ts")].find(
      (each) => existsSync(each) && statSync(each).isFile(),
    );
  }
  if (!found) {
    try {
      found = createRequire(from).resolve(name);
    } catch {
      const folder = path.join(projectFolder, "node_modules", name);
      const { exports, module, main } = JSON.parse(readFileSync(path.join(folder, "package.json"), "utf8"));
      const entry = exports?.["."]?.import ?? exports?.import ?? module ?? main;
      found = path.join(folder, typeof entry === "string" ? entry : (entry.default ?? entry.node));
    }
  }
  resolved.set(key, found);
  return found;
}

const compile = (file: string, text: string): vm.Script => {
  const { code } = transformSync(text, {
    filename: file,
    jsc: { parser: { syntax: "typescript", tsx: file.endsWith("x") }, target: "es2022" },
    module: { type: "commonjs" },
    sourceMaps: false,
  });
  return new vm.Script(`(function (exports, require, module, __filename, __dirname) {${code}\n})`, { filename: file });
};

const scripts = new Map<string, vm.Script>();
const modules = new Map<string, Module>();
/** Files that a file asks for, as it was seen to do. */
const asked = new Map<string, Set<string>>();
let replacement: { file: string; text: string } | undefined;
let memo: ((...given: unknown[]) => unknown) | undefined;

function load(file: string): Record<string, unknown> {
  const known = modules.get(file);
  if (known) return known.exports;
  const module: Module = { exports: {} };
  modules.set(file, module);
  if (file.endsWith(".json")) return (module.exports = JSON.parse(readFileSync(file, "utf8")));
  let script = scripts.get(file);
  if (replacement?.file === file) script = compile(file, replacement.text);
  else if (!script) scripts.set(file, (script = compile(file, readFileSync(file, "utf8"))));
  const askedHere = asked.get(file) ?? new Set<string>();
  asked.set(file, askedHere);
  const requireHere = (name: string): unknown => {
    if (name === "custom-functions-metadata/lib/parseTree") return rememberingParser(file);
    if (name.startsWith("node:") || createRequire(file).resolve.paths(name) === null) return own(name);
    const wanted = resolve(file, name);
    if (!isCompiled(wanted)) return own(wanted);
    askedHere.add(wanted);
    return load(wanted);
  };
  requireHere.resolve = (name: string) => resolve(file, name);
  try {
    script.runInThisContext()(module.exports, requireHere, module, file, path.dirname(file));
  } catch (error) {
    modules.delete(file);
    throw error;
  }
  return module.exports;
}

/** The reader's parser, which a mutant of a formula changes nothing for unless the text given to it is another. */
function rememberingParser(file: string): unknown {
  const real = own(resolve(file, "custom-functions-metadata/lib/parseTree")) as {
    parseTree: (...given: unknown[]) => unknown;
  };
  const answers = new Map<string, unknown>();
  memo ??= (...given) => {
    const key = JSON.stringify(given);
    if (!answers.has(key)) answers.set(key, real.parseTree(...given));
    return structuredClone(answers.get(key));
  };
  return { ...real, parseTree: memo };
}

// What the tests find in the global scope.
let collected: Test[] = [];
let titles: string[] = [];
let befores: Run[][] = [[]];
const filled = (title: string, row: unknown[]): string => {
  let at = 0;
  return title.replace(/%[sdifjop]|%%/g, (sign) => (sign === "%%" ? "%" : String(row[at++])));
};
type Define = (title: string, run: (...row: never[]) => unknown, timeout?: number) => void;
const withEach = (define: Define): Define =>
  Object.assign(define, {
    each:
      (rows: readonly unknown[]): Define =>
      (title, run) => {
        for (const row of rows) {
          const list = Array.isArray(row) ? row : [row];
          define(filled(title, list), () => run(...(list as never[])));
        }
      },
  });
const test = withEach((title, run) => {
  collected.push({ title: [...titles, title].join(" "), run: run as Run, before: befores.flat() });
});
const describe = withEach((title, run) => {
  titles.push(title);
  befores.push([]);
  (run as Run)();
  befores.pop();
  titles.pop();
});
const nothing = (): void => undefined;
Object.assign(globalThis, {
  test,
  it: test,
  describe,
  expect: own("expect").expect,
  beforeAll: (run: Run) => {
    let ran = false;
    befores.at(-1)!.push(() => (ran ? undefined : ((ran = true), run())));
  },
  beforeEach: (run: Run) => befores.at(-1)!.push(run),
  afterAll: nothing,
  afterEach: nothing,
  jest: { setTimeout: nothing },
});
own("fast-check").configureGlobal({ seed: 20261125 });

const inFolder = (folder: string): string[] =>
  readdirSync(path.join(projectFolder, "tests", folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => path.join(projectFolder, "tests", folder, file));

export const testFiles = [
  path.join(projectFolder, "tests", "everyFunction.test.ts"),
  ...["arguments", "cells", "functions", "models", "reference"].flatMap(inFolder),
  path.join(projectFolder, "tests", "check", "planted.test.ts"),
];

/** Tests that take seconds and are asked last, in milliseconds on one core of 2026. */
const slow: Readonly<Record<string, number>> = {
  "everyFunction.test.ts": 12_000,
  "recompute.test.ts": 13_000,
  "deliveriesNeeded.test.ts": 14_000,
  "flowAtLevel.test.ts": 10_000,
  "stockPlan.test.ts": 9_500,
  "planChance.test.ts": 7_000,
  "eachCell.test.ts": 3_600,
  "bestMix.test.ts": 10_000,
};
const tookUnchanged = (file: string): number => slow[path.basename(file)] ?? 300;

/** Tests by file and title that fail unchanged too, since they need more of Jest than is here; found as they fail. */
const needJest = new Set<string>();
const passUnchanged = new Set<string>();

let functionFiles: ReadonlyMap<string, string> = new Map();

/** Distance of a file from the one it needs, over what it asks for. */
function distances(to: string): Map<string, number> {
  const askers = new Map<string, string[]>();
  for (const [file, wanted] of asked) for (const each of wanted) askers.set(each, [...(askers.get(each) ?? []), file]);
  const found = new Map([[to, 0]]);
  for (const file of found.keys())
    for (const asker of askers.get(file) ?? []) if (!found.has(asker)) found.set(asker, found.get(file)! + 1);
  return found;
}

/** What a file's tests are, freshly loaded, or why it can't be. */
function testsOf(file: string): Test[] | string {
  modules.delete(file);
  collected = [];
  titles = [];
  befores = [[]];
  try {
    load(file);
    return collected;
  } catch (error) {
    return String(error).slice(0, 120);
  }
}

async function runFile(file: string, wants: (title: string) => boolean): Promise<string | undefined> {
  const tests = testsOf(file);
  if (typeof tests === "string") return "";
  for (const { title, run, before } of tests) {
    if (!wants(title) || needJest.has(`${file} ${title}`)) continue;
    try {
      for (const each of before) await each();
      await run();
    } catch {
      return title;
    }
  }
  return undefined;
}

const readsAll = (file: string): boolean =>
  asked.get(file)?.has(path.join(projectFolder, "src/catalogue/readCatalogue.ts")) === true;

/** Loads everything once, unchanged, which tells what asks for what. */
export function warmUp(): void {
  for (const file of testFiles) testsOf(file);
  const { readCatalogue } = load(path.join(projectFolder, "src/catalogue/readCatalogue.ts")) as {
    readCatalogue: () => { record: { id: string; file: string } }[];
  };
  functionFiles = new Map(
    readCatalogue().map(({ record }) => [record.id, path.join(projectFolder, "src/functions", record.file)]),
  );
}

/** What is run for a mutant of this file, nearest first, and how long that takes unchanged. */
export function plannedFor(file: string): { files: string[]; ids: Set<string>; milliseconds: number } {
  const near = distances(file);
  const ids = new Set([...functionFiles].filter(([, place]) => near.has(place)).map(([id]) => id));
  const cost = (each: string): number =>
    tookUnchanged(each) * (readsAll(each) ? Math.max(0.05, ids.size / functionFiles.size) : 1) +
    200 * (near.get(each) ?? 2);
  const files = testFiles
    .filter((each) => near.has(each) || (readsAll(each) && ids.size > 0))
    .sort((a, b) => cost(a) - cost(b));
  return { files, ids, milliseconds: files.reduce((sum, each) => sum + cost(each), 0) };
}

/** The first test that fails with the file's text replaced; undefined where all pass. */
export async function firstFailure(file: string, text: string): Promise<string | undefined> {
  const { files, ids } = plannedFor(file);
  const drop = (): void => {
    for (const each of distances(file).keys()) modules.delete(each);
    for (const each of testFiles) modules.delete(each);
    modules.delete(path.join(projectFolder, "src/catalogue/readCatalogue.ts"));
  };
  const mute = process.stdout.write;
  process.stdout.write = () => true;
  const put = (changed: boolean): void => {
    replacement = changed ? { file, text } : undefined;
    drop();
  };
  try {
    for (const each of files) {
      const isForAll = readsAll(each);
      const wants = (title: string): boolean => {
        if (!isForAll) return true;
        const named = /\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+\b/.exec(title)?.[0];
        return named === undefined || !functionFiles.has(named) || ids.has(named);
      };
      for (;;) {
        put(true);
        const failed = await runFile(each, wants);
        if (failed === undefined) break;
        const key = `${each} ${failed}`;
        const told = `${path.basename(each)}: ${failed}`;
        if (failed === "" || passUnchanged.has(key)) return told;
        put(false);
        if ((await runFile(each, (title) => title === failed)) === undefined) {
          passUnchanged.add(key);
          return told;
        }
        needJest.add(key);
      }
    }
    return undefined;
  } finally {
    put(false);
    process.stdout.write = mute;
  }
}
