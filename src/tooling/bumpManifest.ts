/**
 * `npm run bump`: raises the add-in's version when functions.json has changed since the last bump. Excel keeps
 * functions.json for a day and asks again only for a new version. `--check` changes nothing and fails when one is due.
 */
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const project = path.resolve(__dirname, "..", "..");
const inProject = (...parts: string[]): string => path.join(project, ...parts);

/** What the version stands for. */
export interface VersionRecord {
  version: string;
  /** SHA-256 of functions.json, written without white space, so that formatting needs no new version. */
  functions: string;
}

export const hashFunctions = (functionsJson: string): string =>
  createHash("sha256")
    .update(JSON.stringify(JSON.parse(functionsJson)))
    .digest("hex");

/** `1.2.3` → `1.2.4`. */
export const nextVersion = (version: string): string => {
  const [major, minor, patch] = version.split(".").map(Number);
  if (![major, minor, patch].every(Number.isInteger)) throw new Error(`"${version}" is no version of three numbers.`);
  return `${major}.${minor}.${Number(patch) + 1}`;
};

/**
 * Must the version be raised? Before 1.0.0 functions come and go by the hour and nobody's Excel holds an old list for
 * long, so a version there covers whatever functions.json says.
 */
export const isBumpDue = (record: VersionRecord, functionsJson: string): boolean =>
  !record.version.startsWith("0.") && hashFunctions(functionsJson) !== record.functions;

const recordFile = inProject(".config", "manifest-version.json");
export const readRecord = (): VersionRecord => JSON.parse(readFileSync(recordFile, "utf8"));
export const readFunctions = (): string =>
  readFileSync(inProject("src", "catalogue", "generated", "functions.json"), "utf8");

const replaceIn = (file: string, pattern: RegExp, text: string): void => {
  const before = readFileSync(file, "utf8");
  if (!pattern.test(before)) throw new Error(`${path.relative(project, file)} has no version in the expected place.`);
  writeFileSync(file, before.replace(pattern, text));
};

const bump = (): string => {
  const record = readRecord();
  const functions = hashFunctions(readFunctions());
  if (functions === record.functions) return `functions.json is that of version ${record.version}; nothing to do.`;
  if (process.argv.includes("--check")) {
    if (isBumpDue(record, readFunctions()))
      throw new Error("functions.json changed since the last version: npm run bump.");
    return `Version ${record.version} covers functions.json.`;
  }
  const version = nextVersion(record.version);
  replaceIn(inProject("manifest", "manifest.xml"), /<Version>[\d.]+<\/Version>/, `<Version>${version}.0</Version>`);
  replaceIn(inProject("manifest", "manifest.json"), /"version": "[\d.]+"/, `"version": "${version}"`);
  replaceIn(inProject("package.json"), /"version": "[\d.]+"/, `"version": "${version}"`);
  writeFileSync(recordFile, `${JSON.stringify({ version, functions } satisfies VersionRecord, null, 2)}\n`);
  return `Version ${record.version} → ${version}.`;
};

if (require.main === module) {
  try {
    console.log(bump());
  } catch (fault) {
    console.error((fault as Error).message);
    process.exitCode = 1;
  }
}
