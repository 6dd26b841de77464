import { spawnSync } from "node:child_process";
import path from "node:path";
import { distFolder, projectFolder } from "../src/tooling/build";

/** Long enough for a build on a slow machine. */
export const buildTimeout = 300_000;

/** Builds in a process of its own, when something changed, and gives the folder with the built files. */
export const builtFiles = (): string => {
  const script = path.join(projectFolder, "src", "tooling", "build.ts");
  const run = spawnSync(process.execPath, [require.resolve("tsx/cli"), script, "--if-needed"], {
    cwd: projectFolder,
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(`npm run build failed:\n${run.stdout}${run.stderr}`);
  return distFolder;
};
