/**
 * The add-in's version rises with functions.json: Excel keeps that file for a day and asks again only for a new version.
 * `npm run generate` raises it, once for all changes that are not committed yet; `npm run bump` does the same by itself,
 * and with `--check` changes nothing and fails when a rise is due.
 */
import { spawnSync } from "node:child_process";
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

export const isBumpDue = (record: VersionRecord, functionsJson: string): boolean =>
  hashFunctions(functionsJson) !== record.functions;

/**
 * The record after a look at functions.json; undefined when nothing is due. A version that was raised since the last
 * commit covers further changes too.
 */
export function raised(
  record: VersionRecord,
  committed: VersionRecord | undefined,
  functionsJson: string,
): VersionRecord | undefined {
  if (!isBumpDue(record, functionsJson)) return undefined;
  const functions = hashFunctions(functionsJson);
  if (committed && committed.functions === functions) return committed;
  const isRaised = committed !== undefined && committed.version !== record.version;
  return { version: isRaised ? record.version : nextVersion(record.version), functions };
}

const recordFile = inProject(".config", "manifest-version.json");
export const readRecord = (): VersionRecord => JSON.parse(readFileSync(recordFile, "utf8"));
export const readFunctions = (): string =>
  readFileSync(inProject("src", "catalogue", "generated", "functions.json"), "utf8");

/** As the last commit has it; undefined in a copy without history. */
const committedRecord = (): VersionRecord | undefined => {
  const shown = spawnSync("git", ["show", "HEAD:.config/manifest-version.json"], { cwd: project, encoding: "utf8" });
  return shown.status === 0 ? JSON.parse(shown.stdout) : undefined;
};

const replaceIn = (file: string, pattern: RegExp, text: string): void => {
  const before = readFileSync(file, "utf8");
  if (!pattern.test(before)) throw new Error(`${path.relative(project, file)} has no version in the expected place.`);
  writeFileSync(file, before.replace(pattern, text));
};

/** Raises the version everywhere where functions.json asks for it, and says so. */
export function raiseVersion(): string {
  const record = readRecord();
  const next = raised(record, committedRecord(), readFunctions());
  if (!next) return `functions.json is that of version ${record.version}; nothing to do.`;
  const { version } = next;
  replaceIn(inProject("manifest", "manifest.xml"), /<Version>[\d.]+<\/Version>/, `<Version>${version}.0</Version>`);
  replaceIn(inProject("manifest", "manifest.json"), /"version": "[\d.]+"/, `"version": "${version}"`);
  replaceIn(inProject("package.json"), /"version": "[\d.]+"/, `"version": "${version}"`);
  replaceIn(
    inProject("package-lock.json"),
    /("name": "oxygen-supply-functions",\s*"version": )"[\d.]+"(?=,\s*"lockfileVersion")/,
    `$1"${version}"`,
  );
  replaceIn(
    inProject("package-lock.json"),
    /("": \{\s*"name": "oxygen-supply-functions",\s*"version": )"[\d.]+"/,
    `$1"${version}"`,
  );
  writeFileSync(recordFile, `${JSON.stringify(next, null, 2)}\n`);
  return version === record.version
    ? `Version ${version} now stands for the changed functions.json.`
    : `Version ${record.version} → ${version}, since functions.json changed.`;
}

if (require.main === module) {
  if (process.argv.includes("--check") && isBumpDue(readRecord(), readFunctions())) {
    console.error("functions.json changed since the last version: npm run generate raises it.");
    process.exitCode = 1;
  } else if (!process.argv.includes("--check")) console.log(raiseVersion());
}
