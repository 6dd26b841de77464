// First step of `npm start`: plain JavaScript, because nothing is installed yet when it is needed.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..", "..");
const oldest = 20;

if (Number(process.versions.node.split(".")[0]) < oldest) {
  console.error(
    `Node.js ${process.versions.node} is too old for this project: please install version ${oldest} or newer.`,
  );
  process.exit(1);
}

if (!existsSync(path.join(project, "node_modules", "tsx", "package.json"))) {
  console.log("Installing what the project needs (npm ci). This happens once and takes a few minutes.");
  // npm is a script of its own on Windows and can be started through a shell only; the words are fixed, not a user's.
  const run = spawnSync("npm ci", { cwd: project, stdio: "inherit", shell: true });
  if (run.status !== 0) {
    console.error("Installing failed; see the lines above. A computer without internet needs a copy of node_modules.");
    process.exit(run.status ?? 1);
  }
}
