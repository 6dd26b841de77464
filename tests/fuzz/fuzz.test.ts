import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { projectFolder } from "../../src/tooling/build";

/** One function a fault, and one that is sound. */
const bodies: Readonly<Record<string, readonly [body: string, told: string]>> = {
  HOURS_TO_FILL: ["throw new TypeError('x');", "throws TypeError"],
  FULL_AT: ["return [[NaN]];", "gives NaN"],
  LEVEL_AFTER: ["return [[1 / 0]];", "gives Infinity"],
  LIQUID_MADE: ["return [[undefined]];", "gives undefined"],
  READY_AT: ["return 1;", "gives no block"],
  DAY_OUTPUT: ["return [[1], [1, 2]];", "gives rows of several lengths"],
  SWITCH_ON_BY: ["if (given) given.push([1]); return [[1]];", "changes its input"],
  PLANTS_NEEDED: ["return [[new CustomFunctions.Error('#VALUE!', '')]];", "gives an error without words"],
  STANDBY_SHARE: ["return [[1]];", ""],
};

test("the fuzz tells each kind of fault from what is sound", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "fuzz-"));
  const script = path.join(folder, "functions.js");
  writeFileSync(
    script,
    Object.entries(bodies)
      .map(([id, [body]]) => `CustomFunctions.associate("${id}", function (given) { ${body} });`)
      .join("\n"),
  );
  const words = ["--calls", "900", "--only", Object.keys(bodies).join(), "--script", script];
  const { status, stdout } = spawnSync(
    process.execPath,
    [require.resolve("tsx/cli"), path.join(__dirname, "fuzz.ts"), ...words],
    { cwd: projectFolder, encoding: "utf8" },
  );
  rmSync(folder, { recursive: true });
  for (const [id, [, told]] of Object.entries(bodies))
    if (told === "") expect(stdout).not.toContain(id);
    else expect(stdout).toContain(`${id} ${told}`);
  expect(status).toBe(1);
}, 120_000);
