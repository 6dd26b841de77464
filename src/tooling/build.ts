/**
 * `npm run build`: reads the functions, then makes everything under dist/.
 * OXYGEN_HOST names the https address the add-in will be served from, https://localhost:3000 if unset.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import webpack, { type Configuration } from "webpack";

export const projectFolder = path.resolve(__dirname, "..", "..");
export const distFolder = path.join(projectFolder, "dist");

/** Written last, so that a build that was broken off counts as none. */
export const buildStamp = path.join(projectFolder, "build", "built.txt");

const generate = (): void => {
  const script = path.join(projectFolder, "src", "tooling", "generate.ts");
  const run = spawnSync(process.execPath, [require.resolve("tsx/cli"), script], { cwd: projectFolder, stdio: "inherit" });
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

export const build = async (): Promise<void> => {
  rmSync(buildStamp, { force: true });
  generate();
  rmSync(distFolder, { recursive: true, force: true });
  await bundle(require(path.join(projectFolder, "webpack.config.js")));
  if (!existsSync(path.join(distFolder, "functions.js"))) throw new Error("The build made no functions script.");
  mkdirSync(path.dirname(buildStamp), { recursive: true });
  writeFileSync(buildStamp, `${new Date().toISOString()}\n`);
};

if (require.main === module) {
  build().then(
    () => console.log(`Built into ${path.relative(process.cwd(), distFolder) || "."}.`),
    (fault: Error) => {
      console.error(fault.message);
      process.exitCode = 1;
    },
  );
}
