import { spawnSync } from "node:child_process";
import path from "node:path";
import ts from "typescript";
import { projectFolder } from "../../src/tooling/build";

/** Newer than ES2016 (ECMA-262, 7th edition), or of a host: what must not get into the functions' layers. */
const refused = [
  "[1].flatMap((each) => [each])",
  "Object.entries({ a: 1 })",
  "Object.values({ a: 1 })",
  '"a".padStart(2)',
  '"a".replaceAll("a", "b")',
  "[1].at(-1)",
  "10n",
  "globalThis",
  "async () => 1",
  "Symbol.asyncIterator",
  "/a/s",
  "/(?<n>a)/",
  "/(?<=a)b/",
  "/(?<!a)b/",
  "/\\p{L}/u",
  "new Intl.NumberFormat()",
  "(1).toLocaleString()",
  '"a".localeCompare("b")',
  "window",
  "document.body",
  "process.env",
  "console.log()",
  "setTimeout(() => 1)",
  'fetch("a")',
  "new Date()",
  "Date.now()",
  "Math.random()",
];
const taken = [
  "[1].includes(1)",
  "2 ** 3",
  "new Map([[1, 2]])",
  "{ ...{ a: 1 } }",
  "new Map([[1, 2]]).get(1) ?? 3",
  "/a/uy",
  "Math.hypot(3, 4)",
];

const asModule = (expression: string): string => `export const value = ${expression};\n`;
const layers = ["functions/site", "arguments", "models", "cells"];

/** Words of the type check on each expression, with the settings that `npm run types` takes for these layers. */
const typeFaults = (expressions: readonly string[]): string[][] => {
  const config = path.join(projectFolder, ".config", "tsconfig.functions.json");
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(config, ts.sys.readFile).config,
    ts.sys,
    path.dirname(config),
  );
  const files = new Map(
    expressions.map((each, index) => [path.join(projectFolder, `src/models/case${index}.ts`), each]),
  );
  const host = ts.createCompilerHost({ ...options, types: [] });
  const { getSourceFile, fileExists } = host;
  host.fileExists = (file) => files.has(path.normalize(file)) || fileExists(file);
  host.getSourceFile = (file, ...rest) => {
    const expression = files.get(path.normalize(file));
    return expression === undefined
      ? getSourceFile(file, ...rest)
      : ts.createSourceFile(file, asModule(expression), ts.ScriptTarget.ES2016);
  };
  const program = ts.createProgram([...files.keys()], { ...options, types: [] }, host);
  return [...files.keys()].map((file) =>
    ts
      .getPreEmitDiagnostics(program, program.getSourceFile(file))
      .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " ")),
  );
};

/** Runs in a process of its own, since ESLint loads its settings by an import that Jest does not take. */
const lintInNode = `
  import { ESLint } from "eslint";
  import { text } from "node:stream/consumers";
  const eslint = new ESLint({ overrideConfigFile: ".config/eslint.config.mjs" });
  const counts = [];
  for (const { code, filePath } of JSON.parse(await text(process.stdin)))
    counts.push((await eslint.lintText(code, { filePath }))[0].messages.length);
  process.stdout.write(JSON.stringify(counts));
`;

/** Number of findings for each expression in a file of a layer. */
const lintFaults = (expressions: readonly string[], layer: string): number[] => {
  const files = expressions.map((each) => ({ code: asModule(each), filePath: `src/${layer}/case.ts` }));
  const run = spawnSync(process.execPath, ["--input-type=module", "-e", lintInNode], {
    cwd: projectFolder,
    input: JSON.stringify(files),
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout) as number[];
};

it.each(layers)(
  "refuses in src/%s what ES2016 has not, by types or by lint",
  (layer) => {
    const byTypes = typeFaults(refused);
    const byLint = lintFaults(refused, layer);
    expect(refused.filter((_, index) => byTypes[index]!.length + byLint[index]! === 0)).toEqual([]);
  },
  60_000,
);

it("takes what ES2016 has", () => {
  expect(typeFaults(taken).flat()).toEqual([]);
  expect(lintFaults(taken, "models")).toEqual(taken.map(() => 0));
}, 60_000);
