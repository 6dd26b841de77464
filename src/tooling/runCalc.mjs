/**
 * `npm run calc`: bundles src/tooling/calc.ts once, since reading its thousand files one by one takes seconds, and runs the
 * bundle in a thread of its own, so that a calculation without end or without bounds can be stopped with words.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, renameSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { clearTimeout, setTimeout } from "node:timers";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { inTurn, isReadOnly } from "./inTurn.mjs";

const tooling = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(tooling, "..", "..");
const sources = path.join(project, "src");
const bundle = path.join(project, "build", "calc.js");

/** @returns {number} */
const newest = (/** @type {string} */ folder) =>
  readdirSync(folder, { withFileTypes: true }).reduce((latest, entry) => {
    const file = path.join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "generated" ? latest : Math.max(latest, newest(file));
    return Math.max(latest, statSync(file).mtimeMs);
  }, statSync(folder).mtimeMs);

const isBuilt = () => {
  if (!existsSync(bundle)) return false;
  const made = statSync(bundle).mtimeMs;
  const lockFile = path.join(project, "package-lock.json");
  const parts = ["arguments", "catalogue", "cells", "check", "engine", "functions", "models", "tooling"];
  return (
    parts.every((part) => newest(path.join(sources, part)) <= made) &&
    (!existsSync(lockFile) || statSync(lockFile).mtimeMs <= made)
  );
};

const build = async () => {
  // tsx brings esbuild along.
  const require = createRequire(createRequire(import.meta.url).resolve("tsx/package.json"));
  const { build: bundleUp } = require("esbuild");
  const tsx = createRequire(import.meta.url).resolve("tsx/cli");
  const generated = spawnSync(process.execPath, [tsx, path.join(tooling, "generate.ts")], {
    cwd: project,
    encoding: "utf8",
  });
  if (generated.status !== 0) throw new Error(`Reading the functions failed:\n${generated.stdout}${generated.stderr}`);
  const beside = `${bundle}.${process.pid}`;
  mkdirSync(path.dirname(bundle), { recursive: true });
  await bundleUp({
    entryPoints: [path.join(tooling, "calc.ts")],
    outfile: beside,
    bundle: true,
    minifySyntax: true,
    minifyWhitespace: true,
    platform: "node",
    target: "node20",
    logLevel: "error",
  });
  renameSync(beside, bundle);
};

const prepare = async () => {
  if (isBuilt()) return;
  process.stderr.write("Preparing calc; this is done once.\n");
  await inTurn(path.join(project, "build", "building-calc"), async () => {
    if (!isBuilt()) await build();
  });
};

/** Seconds after which even a calculation that does not listen is stopped: some more than it gives itself. */
const mostSeconds = () => {
  const { argv } = process;
  const at = argv.indexOf("--seconds");
  const given = Number(at >= 0 ? argv[at + 1] : argv.find((word) => word.startsWith("--seconds="))?.slice(10));
  return (given > 0 ? given : 600) + 5;
};

const memory = 4096;

const run = () =>
  new Promise((resolve) => {
    const worker = new Worker(bundle, {
      argv: process.argv.slice(2),
      workerData: { isTerminal: Boolean(process.stderr.isTTY) },
      resourceLimits: { maxOldGenerationSizeMb: memory, maxYoungGenerationSizeMb: 256 },
    });
    const stop = (/** @type {string} */ words) => {
      process.stderr.write(`${words} Nothing was written.\n`);
      void worker.terminate().then(() => resolve(2));
    };
    const seconds = mostSeconds();
    const timer = setTimeout(
      () => stop(`The calculation did not end within ${seconds} s. --seconds allows more.`),
      Math.min(seconds * 1000, 2 ** 31 - 1),
    );
    worker.on("error", (fault) => {
      clearTimeout(timer);
      if (fault.code === "ERR_WORKER_OUT_OF_MEMORY")
        stop(`The calculation needs more than ${memory / 1024} GB of memory.`);
      else {
        process.stderr.write(`${fault.message}\n`);
        resolve(1);
      }
    });
    worker.on("exit", (code) => {
      clearTimeout(timer);
      resolve(code);
    });
  });

try {
  await prepare();
  process.exitCode = await run();
} catch (fault) {
  process.stderr.write(
    isReadOnly(fault)
      ? `calc has to be prepared once, and ${project} can't be written. Run it once where it can, or copy the folder.\n`
      : `${fault.message}\n`,
  );
  process.exitCode = 1;
}
