// First step of `npm start` and, with --tests, of `npm test`: installs what is missing or of another version than the
// lock file names. Plain JavaScript, because nothing is installed yet when it is needed.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..", "..");
const oldest = 20;
const forTests = process.argv.includes("--tests");

if (Number(process.versions.node.split(".")[0]) < oldest) {
  console.error(
    `Node.js ${process.versions.node} is too old for this project: please install version ${oldest} or newer.`,
  );
  process.exit(1);
}

const { packages } = JSON.parse(readFileSync(path.join(project, "package-lock.json"), "utf8"));
const installedVersion = (place) => {
  const file = path.join(project, place, "package.json");
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).version : undefined;
};

/** Optional packages are for one kind of computer each: npm decides which of them belong here. */
const isAsLocked = ([place, { version, optional }]) => {
  const found = installedVersion(place);
  return found === version || (found === undefined && optional === true);
};

const places = Object.entries(packages).filter(([place, { link }]) => place !== "" && !link);
const hasTestPackages = places.some(([place, { dev, optional }]) => dev && !optional && installedVersion(place));
const wanted = places.filter(([, { dev }]) => forTests || !dev);
const missing = wanted.filter((entry) => !isAsLocked(entry));

if (missing.length > 0) {
  const isFresh = missing.length === wanted.filter(([, { optional }]) => !optional).length;
  // `npm ci` empties node_modules first, so that a computer without internet would lose what it has.
  const words = isFresh ? ["npm ci"] : ["npm install", "--no-save"];
  if (!forTests && !hasTestPackages) words.push("--omit=dev");
  const command = words.join(" ");
  console.log(
    isFresh
      ? `Installing what the project needs (${command}). This happens once and takes a few minutes.`
      : `Bringing the installed packages up to date: ${missing.length} missing or of another version (${command}).`,
  );
  // npm is a script of its own on Windows and can be started through a shell only; the words are fixed, not a user's.
  const run = spawnSync(command, { cwd: project, stdio: "inherit", shell: true });
  if (run.status !== 0) {
    console.error("Installing failed; see the lines above. A computer without internet needs a copy of node_modules.");
    process.exit(run.status ?? 1);
  }
}
