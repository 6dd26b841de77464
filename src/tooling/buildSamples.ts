/**
 * `npm run samples`: builds every sample workbook, its formulas calculated by the local engine. A file src/workbooks/<name>.ts
 * that exports `workbook` becomes samples/<name>.xlsx, so adding one edits nothing else. `-- supply-plan` builds one only.
 */
import fs from "node:fs";
import path from "node:path";
import { functions } from "../catalogue/generated/functions";
import { createEngine } from "../engine/engine";
import { buildWorkbook, calculateWith, type WorkbookDescription } from "../workbooks/writer";

const root = path.join(__dirname, "..", "..");
const buildersFolder = path.join(root, "src", "workbooks");
export const samplesFolder = path.join(root, "samples");

const fileNameOf = (builder: string): string => builder.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** Each sample's file name without ending, with its builder's path. */
export const sampleBuilders = (): { name: string; builder: string }[] =>
  fs
    .readdirSync(buildersFolder)
    .filter((file) => file.endsWith(".ts"))
    .sort()
    .map((file) => ({ name: fileNameOf(file.slice(0, -".ts".length)), builder: path.join(buildersFolder, file) }));

/** The bytes of one sample. */
export async function buildSample(builder: string): Promise<Uint8Array> {
  const { workbook } = require(builder) as { workbook: WorkbookDescription };
  const engine = createEngine(functions);
  try {
    return await buildWorkbook(workbook, calculateWith(engine));
  } finally {
    engine.dispose();
  }
}

async function main(): Promise<void> {
  const wanted = process.argv.slice(2);
  const builders = sampleBuilders().filter(({ name }) => wanted.length === 0 || wanted.includes(name));
  if (builders.length === 0)
    throw new Error(
      `no such sample; there are: ${sampleBuilders()
        .map(({ name }) => name)
        .join(", ")}`,
    );
  fs.mkdirSync(samplesFolder, { recursive: true });
  for (const { name, builder } of builders) {
    const bytes = await buildSample(builder);
    fs.writeFileSync(path.join(samplesFolder, `${name}.xlsx`), bytes);
    console.log(`samples/${name}.xlsx: ${Math.round(bytes.length / 1024)} kB`);
  }
}

if (require.main === module) {
  main().then(
    () => process.exit(0),
    (fault: unknown) => {
      console.error(fault instanceof Error ? fault.message : fault);
      process.exit(1);
    },
  );
}
