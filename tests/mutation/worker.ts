import { readFileSync } from "node:fs";
import path from "node:path";
import { projectFolder } from "../../src/tooling/build";
import type { Mutant } from "./mutants";
import { firstFailure, plannedFor, warmUp } from "./warmSuite";

process.on("message", (mutant: Mutant) => {
  const file = path.join(projectFolder, mutant.file);
  const text = readFileSync(file, "utf8");
  process.send!({ allowed: 20_000 + 4 * plannedFor(file).milliseconds });
  void firstFailure(file, text.slice(0, mutant.start) + mutant.to + text.slice(mutant.end)).then((by) =>
    process.send!({ done: true, by }),
  );
});

warmUp();
process.send!({ ready: true });
