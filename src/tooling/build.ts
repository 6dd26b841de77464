/**
 * `npm run build`: reads the functions, then makes everything under dist/. `--if-needed` builds only what is out of date.
 * `--host https://addins.example.internal` (or OXYGEN_HOST) names the address the add-in will be served from,
 * https://localhost:3000 if left out.
 */
import { spawnSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import webpack, { type Configuration } from "webpack";
import { helpPage } from "../catalogue/helpPage";
import type { FunctionRecord } from "../catalogue/record";
import policies from "../server/contentSecurityPolicy.json";

export const projectFolder = path.resolve(__dirname, "..", "..");
export const distFolder = path.join(projectFolder, "dist");

const host = (): string => process.env.OXYGEN_HOST ?? "";

/** Written last, so that a build that was broken off counts as none; holds the host that was built for. */
export const buildStamp = path.join(projectFolder, "build", "built.txt");

const generate = (): void => {
  const script = path.join(projectFolder, "src", "tooling", "generate.ts");
  const run = spawnSync(process.execPath, [require.resolve("tsx/cli"), script], {
    cwd: projectFolder,
    stdio: "inherit",
  });
  if (run.status !== 0) throw new Error("Reading the functions failed; see the lines above.");
};

const bundle = (configurations: Configuration[]): Promise<void> =>
  new Promise((resolve, reject) => {
    webpack(configurations, (fault, stats) => {
      if (fault) return reject(fault);
      const text = stats?.toString("errors-warnings") ?? "";
      if (text.trim() !== "") console.log(text);
      if (stats?.hasErrors()) return reject(new Error("The build failed; see the lines above."));
      resolve();
    });
  });

const writeHelp = (): void => {
  const catalogueFolder = path.join(projectFolder, "src", "catalogue");
  const records = JSON.parse(
    readFileSync(path.join(catalogueFolder, "generated", "records.json"), "utf8"),
  ) as FunctionRecord[];
  writeFileSync(path.join(distFolder, "help.html"), helpPage(records, policies.default));
  for (const style of ["palette.css", "help.css"])
    copyFileSync(path.join(catalogueFolder, style), path.join(distFolder, style));
};

export const build = async (): Promise<void> => {
  rmSync(buildStamp, { force: true });
  generate();
  rmSync(distFolder, { recursive: true, force: true });
  await bundle(require(path.join(projectFolder, "webpack.config.js")));
  if (!existsSync(path.join(distFolder, "functions.js"))) throw new Error("The build made no functions script.");
  writeHelp();
  mkdirSync(path.dirname(buildStamp), { recursive: true });
  writeFileSync(buildStamp, host());
};

const newest = (file: string): number => {
  const entry = statSync(file);
  if (!entry.isDirectory()) return entry.mtimeMs;
  if (path.basename(file) === "generated") return 0;
  return readdirSync(file).reduce((latest, name) => Math.max(latest, newest(path.join(file, name))), entry.mtimeMs);
};

/** Is everything under dist/ made from the files as they are now? */
const isBuilt = (): boolean => {
  if (!existsSync(buildStamp) || !existsSync(distFolder) || readFileSync(buildStamp, "utf8") !== host()) return false;
  const sources = ["src", "manifest", "samples", "webpack.config.js", "package-lock.json"].map((name) =>
    path.join(projectFolder, name),
  );
  return sources.filter((file) => existsSync(file)).every((file) => newest(file) <= statSync(buildStamp).mtimeMs);
};

const lock = path.join(projectFolder, "build", "building");

/**
 * Builds when something changed; of several processes that ask at once, one builds and the others wait.
 * @throws with words where something has to be built and the folder can't be written.
 */
export const buildIfNeeded = async (beforeBuild: () => void = () => undefined): Promise<void> => {
  if (isBuilt()) return;
  const { inTurn, isReadOnly } = await import("./inTurn.mjs");
  try {
    await inTurn(lock, async () => {
      if (isBuilt()) return;
      beforeBuild();
      await build();
    });
  } catch (fault) {
    if (!isReadOnly(fault as NodeJS.ErrnoException)) throw fault;
    throw new Error(
      `The project has to be built first, and ${projectFolder} can't be written. Copy it to a folder that can, or build it there once with npm run build.`,
      { cause: fault },
    );
  }
};

if (require.main === module) {
  const { values } = parseArgs({
    options: { host: { type: "string" }, "if-needed": { type: "boolean", default: false } },
  });
  if (values.host !== undefined) process.env.OXYGEN_HOST = values.host;
  (values["if-needed"] ? buildIfNeeded() : build()).then(
    () => console.log(`${path.relative(process.cwd(), distFolder) || "dist"} is built.`),
    (fault: Error) => {
      console.error(fault.message);
      process.exitCode = 1;
    },
  );
}
