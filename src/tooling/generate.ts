/**
 * `npm run generate`: derives everything that comes from the function files. Writes src/catalogue/generated
 * (records.json, functions.ts, functions.json for each program) and src/models/generated/functionSources.json, all git-ignored, and the
 * README's function table between its markers; where functions.json changed it raises the version. `-- --skip-broken` leaves out files that break a rule and names them.
 */
import fs from "node:fs";
import path from "node:path";
import { functionsJson } from "../catalogue/functionsJson";
import { readCatalogue } from "../catalogue/readCatalogue";
import { replaceReadmeTable } from "../catalogue/readmeTable";
import { isBumpDue, raiseVersion, readFunctions, readRecord } from "./bumpManifest";

const root = path.join(__dirname, "..", "..");

/** Writes only what changed, so that watchers and caches stay quiet. */
function write(file: string, content: string): void {
  const target = path.join(root, file);
  fs.mkdirSync(path.dirname(target), { recursive: true });
  if (fs.existsSync(target) && fs.readFileSync(target, "utf8") === content) return;
  fs.writeFileSync(target, content);
}

/** SOURCE_OF reads this file, so it has to exist before the function files can be run. */
const sourcesFile = "src/models/generated/functionSources.json";
if (!fs.existsSync(path.join(root, sourcesFile))) write(sourcesFile, "{}\n");

const skipBroken = process.argv.includes("--skip-broken");
const broken: string[] = [];
const found = readCatalogue(undefined, (error, file) => {
  const words = error instanceof Error ? error.message : String(error);
  broken.push(words.startsWith("src/functions/") ? words : `src/functions/${file}: ${words.split("\n")[0]}`);
});
if (broken.length > 0) {
  for (const words of broken) console.error(skipBroken ? `left out: ${words}` : words);
  if (!skipBroken) {
    console.error(`generate: ${broken.length} broken, nothing written`);
    process.exit(1);
  }
}
const generated = "// Made by `npm run generate` from src/functions; not committed.\n";

write(
  "src/catalogue/generated/records.json",
  `${JSON.stringify(
    found.map(({ record }) => record),
    null,
    1,
  )}\n`,
);
write(
  "src/catalogue/generated/functions.ts",
  [
    generated,
    'import type { CellCall } from "../../cells/cellValues";\n',
    ...found.map(
      ({ record, exportName }) =>
        `import { ${exportName} } from "../../functions/${record.file.replace(/\.ts$/, "")}";\n`,
    ),
    "\n/** Every function by its id, without the namespace. */\n",
    "export const functions: ReadonlyArray<readonly [id: string, call: CellCall]> = [\n",
    ...found.map(({ record, exportName }) => `  ["${record.id}", ${exportName}],\n`),
    "];\n",
  ].join(""),
);
write(
  "src/catalogue/generated/functionIds.ts",
  [
    generated,
    "/** The ids alone, for the script that runs the functions only when one is called. */\n",
    "export const functionIds: readonly string[] = [\n",
    ...found.map(({ record }) => `  "${record.id}",\n`),
    "];\n",
  ].join(""),
);
for (const [file, program] of [
  ["functions.json", "Microsoft 365"],
  ["functions-perpetual.json", "perpetual Excel"],
] as const)
  write(`src/catalogue/generated/${file}`, `${JSON.stringify(functionsJson(found, program), null, 1)}\n`);
write(
  sourcesFile,
  `${JSON.stringify(Object.fromEntries(found.map(({ record }) => [record.id, record.source])), null, 1)}\n`,
);

const readme = path.join(root, "README.md");
if (fs.existsSync(readme))
  write(
    "README.md",
    replaceReadmeTable(
      fs.readFileSync(readme, "utf8"),
      found.map(({ record }) => record),
    ),
  );

console.log(`generate: ${found.length} functions`);
// Of a catalogue with files left out no version is worth keeping.
if (broken.length === 0 && isBumpDue(readRecord(), readFunctions())) console.log(raiseVersion());
