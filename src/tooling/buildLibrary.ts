/**
 * `npm run library`: the functions on plain values, the models and the catalogue as ES modules with types, in
 * build/library, which is a package of its own without dependencies.
 */
import { execFileSync } from "node:child_process";
import fs from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { readCatalogue, type ReadFunction } from "../catalogue/readCatalogue";
import type { ArgumentRecord, FunctionRecord } from "../catalogue/record";

// tsx brings esbuild along.
const { build } = createRequire(require.resolve("tsx/package.json"))("esbuild") as typeof import("esbuild");

const project = path.join(__dirname, "..", "..");
const packageName = "oxygen-supply-functions";

/** What a wide list of words must not end a comment with. */
const inComment = (words: string): string => words.replace(/\*\//g, "* /");

const valueType = ({ result: { gives } }: FunctionRecord): string =>
  gives === "text" ? "string" : gives === "flag" ? "boolean" : gives === "value" ? "PlainResult" : "number";

const argumentType = ({ name, optional, shape }: ArgumentRecord): string =>
  `${name}${optional ? "?" : ""}: ${shape === "range" ? "Range | Plain" : "Plain"}`;

const declarationOf = ({ record, exportName }: ReadFunction): string => {
  const args = `[${record.arguments.map(argumentType).join(", ")}]`;
  const type = record.result.table ? `TableFunction<${args}>` : `CellFunction<${args}, ${valueType(record)}>`;
  const lines = [
    record.description,
    ...record.arguments.map(({ name, description }) => `@param ${name} ${description}`),
    `@returns ${record.result.description}`,
    `@remarks Rule: ${record.rule}. Range: ${record.range} Source: ${record.source}`,
    ...(record.caution === undefined ? [] : [`Caution: ${record.caution}`]),
    `@example ${record.examples[0]!.formula}`,
  ];
  return `/**\n${lines.map((line) => ` * ${inComment(line.replace(/\s+/g, " "))}`).join("\n")}\n */\nexport declare const ${exportName}: ${type};\n`;
};

/** `cell` before a name is the function as cells call it. */
const callOf = ({ record, exportName, args }: ReadFunction): string =>
  `export const ${exportName} = plainCall(cell_${exportName}, ${record.result.table}, ${JSON.stringify(
    args.readers.map(({ shape }) => shape === "range"),
  )});`;

const head = `// Made by \`npm run library\` of ${packageName} from src/functions.\n`;
const shared = `export { CellError } from "./cells/cellValues.js";\nexport { dateOf, isError, serialOf } from "./library/plainCall.js";\n`;

/** The entry of the functions, beside which nothing else stands: it names src by its full path. */
const entryOf = (found: readonly ReadFunction[]): string => {
  const src = path.join(project, "src").replace(/\\/g, "/");
  return [
    `import { plainCall } from "${src}/library/plainCall";`,
    `export { CellError } from "${src}/cells/cellValues";`,
    `export { dateOf, isError, serialOf } from "${src}/library/plainCall";`,
    ...found.map(
      ({ record, exportName }) =>
        `import { ${exportName} as cell_${exportName} } from "${src}/functions/${record.file.replace(/\.ts$/, "")}";`,
    ),
    ...found.map(callOf),
  ].join("\n");
};

/** Declarations of what the library hands out, with the endings that Node's own resolution wants. */
function writeTypes(out: string, files: readonly string[]): void {
  const config = path.join(out, "tsconfig.json");
  fs.writeFileSync(
    config,
    JSON.stringify({
      extends: path.join(project, "tsconfig.json"),
      compilerOptions: {
        noEmit: false,
        declaration: true,
        emitDeclarationOnly: true,
        rootDir: path.join(project, "src"),
        outDir: out,
        types: [],
        typeRoots: [path.join(project, "node_modules", "@types")],
      },
      include: [],
      files,
    }),
  );
  execFileSync(process.execPath, [require.resolve("typescript/bin/tsc"), "-p", config], { stdio: "inherit" });
  fs.rmSync(config);
  for (const file of fs.readdirSync(out, { recursive: true, encoding: "utf8" })) {
    if (!file.endsWith(".d.ts")) continue;
    const full = path.join(out, file);
    const withEndings = fs
      .readFileSync(full, "utf8")
      .replace(/((?:from|import\()\s*")(\.{1,2}\/[^"]+?)(?:\.ts)?(")/g, "$1$2.js$3");
    fs.writeFileSync(full, withEndings);
  }
}

/** Makes the library in `out` and gives how many functions and models it holds. */
export async function buildLibrary(
  out = path.join(project, "build", "library"),
): Promise<{ functions: number; models: number }> {
  fs.rmSync(out, { recursive: true, force: true });
  fs.mkdirSync(out, { recursive: true });
  const found = readCatalogue();
  const models = fs.readdirSync(path.join(project, "src", "models")).filter((file) => file.endsWith(".ts"));
  const entry = path.join(out, "entry.ts");
  fs.writeFileSync(entry, entryOf(found));
  await build({
    entryPoints: {
      functions: entry,
      catalogue: path.join(project, "src", "catalogue", "catalogue.ts"),
      ...Object.fromEntries(
        models.map((file) => [`models/${path.parse(file).name}`, path.join(project, "src", "models", file)]),
      ),
    },
    outdir: out,
    bundle: true,
    splitting: true,
    chunkNames: "shared/[hash]",
    format: "esm",
    target: "es2020",
    logLevel: "error",
  });
  fs.rmSync(entry);
  writeTypes(out, [
    path.join(project, "src", "library", "plainCall.ts"),
    path.join(project, "src", "catalogue", "catalogue.ts"),
    ...models.map((file) => path.join(project, "src", "models", file)),
  ]);
  fs.writeFileSync(
    path.join(out, "functions.d.ts"),
    `${head}import type { CellFunction, Plain, PlainResult, Range, TableFunction } from "./library/plainCall.js";\n` +
      `export type { Answer, CellFunction, Plain, PlainResult, Range, TableFunction } from "./library/plainCall.js";\n${shared}\n` +
      found.map(declarationOf).join("\n"),
  );
  fs.writeFileSync(
    path.join(out, "catalogue.d.ts"),
    `${head}export * from "./catalogue/catalogue.js";\nexport type * from "./catalogue/record.js";\n`,
  );
  const { version, license, description } = JSON.parse(
    fs.readFileSync(path.join(project, "package.json"), "utf8"),
  ) as Record<"version" | "license" | "description", string>;
  const place = (file: string) => ({ types: `./${file}.d.ts`, import: `./${file}.js` });
  fs.writeFileSync(
    path.join(out, "package.json"),
    `${JSON.stringify(
      {
        name: packageName,
        version,
        description,
        license,
        type: "module",
        sideEffects: false,
        exports: { ".": place("functions"), "./catalogue": place("catalogue"), "./models/*": place("models/*") },
      },
      null,
      2,
    )}\n`,
  );
  fs.copyFileSync(path.join(project, "LICENSE"), path.join(out, "LICENSE"));
  return { functions: found.length, models: models.length };
}

if (require.main === module) {
  void buildLibrary().then(({ functions, models }) =>
    process.stdout.write(
      `build/library: ${functions} functions on plain values, ${models} models and the catalogue, as ES modules with types\n`,
    ),
  );
}
