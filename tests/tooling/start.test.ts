import { spawnSync } from "node:child_process";
import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

const tooling = path.join(__dirname, "..", "..", "src", "tooling");

const start = (...argv: string[]): { status: number | null; stdout: string; stderr: string } =>
  spawnSync(process.execPath, [require.resolve("tsx/cli"), path.join(tooling, "start.ts"), ...argv], {
    encoding: "utf8",
    timeout: 60_000,
  });

test("--help tells the options and serves nothing", () => {
  const { status, stdout } = start("--help");
  expect(status).toBe(0);
  for (const option of ["--no-open", "--port", "--host", "--trust"]) expect(stdout).toContain(option);
  expect(stdout).not.toContain("http://");
}, 90_000);

test("an option that is not known, or a port that is none, gives the options and exit code 2", () => {
  const unknown = start("--prot", "3005");
  expect([unknown.status, unknown.stderr]).toEqual([2, expect.stringMatching(/--prot[^]*npm start -- --port/)]);
  const port = start("--port", "x");
  expect([port.status, port.stderr]).toEqual([2, expect.stringMatching(/--port wants a number/)]);
}, 90_000);

describe("work in turn", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), "turn-"));
  });
  afterEach(() => {
    chmodSync(folder, 0o700);
    rmSync(folder, { recursive: true });
  });

  /** Runs a script that has `inTurn`; its lines of output. */
  const script = (code: string): string[] => {
    const address = pathToFileURL(path.join(tooling, "inTurn.mjs")).href;
    const { stdout, stderr } = spawnSync(
      process.execPath,
      ["--input-type=module", "--eval", `import { inTurn } from ${JSON.stringify(address)};\n${code}`],
      { encoding: "utf8", timeout: 20_000 },
    );
    return `${stdout}${stderr}`.trim().split("\n");
  };

  test("waits for the one before, and leaves no lock after a fault", () => {
    const lock = JSON.stringify(path.join(folder, "build", "lock"));
    const lines = script(`
      const pause = () => new Promise((resolve) => setTimeout(resolve, 50));
      const work = (name) => async () => { console.log(name, "begins"); await pause(); console.log(name, "ends"); };
      await Promise.all([inTurn(${lock}, work("one")), inTurn(${lock}, work("two"))]);
      await inTurn(${lock}, () => Promise.reject(new Error("no"))).catch(() => console.log("fault"));
      await inTurn(${lock}, work("three"));`);
    expect(lines).toEqual(["one begins", "one ends", "two begins", "two ends", "fault", "three begins", "three ends"]);
  });

  test("does not wait for a place that can't be written", () => {
    const codeAt = (lock: string): string[] =>
      script(`await inTurn(${JSON.stringify(lock)}, async () => {}).catch((fault) => console.log(fault.code));`);
    expect(codeAt(path.join(__filename, "lock"))[0]).toMatch(/^(?:ENOTDIR|EEXIST)$/);
    if (process.getuid?.() === 0) return;
    chmodSync(folder, 0o500);
    expect(codeAt(path.join(folder, "lock"))).toEqual(["EACCES"]);
  });
});
