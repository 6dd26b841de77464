import { spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "..", "..");

/** A copy of the project's sources in a folder of its own, with the packages of this one. */
export class ScratchCopy {
  readonly root = fs.mkdtempSync(path.join(os.tmpdir(), "scratch-copy-"));

  constructor() {
    for (const name of ["src", "tests", "package.json", "tsconfig.json", "README.md", "DEVELOPERS.md", ".config"])
      fs.cpSync(path.join(project, name), path.join(this.root, name), { recursive: true });
    fs.symlinkSync(fs.realpathSync(path.join(project, "node_modules")), path.join(this.root, "node_modules"));
  }

  file(...parts: string[]): string {
    return path.join(this.root, ...parts);
  }

  read(...parts: string[]): string {
    return fs.readFileSync(this.file(...parts), "utf8");
  }

  /** Changes one text, which must be there. */
  change(file: string, from: string | RegExp, to: string): void {
    const before = this.read(file);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${file} holds no ${from}`);
    fs.writeFileSync(this.file(file), after);
  }

  /** Runs a TypeScript file of the copy; what it printed, and its exit code. */
  run(script: string, ...words: string[]): { code: number | null; out: string; err: string } {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [require.resolve("tsx/cli"), this.file(script), ...words],
      { cwd: this.root, encoding: "utf8" },
    );
    return { code: status, out: stdout, err: stderr };
  }

  remove(): void {
    fs.rmSync(this.root, { recursive: true, force: true });
  }
}

/** Recomputes every example of every function and prints the ones that do not hold, a line each. */
export const examplesScript = `
import { evaluateCall, parseConstantFormula } from "../src/catalogue/constantFormula";
import { readCatalogue } from "../src/catalogue/readCatalogue";
const found = readCatalogue();
const calls = new Map(found.map((each) => [each.record.id, each.call]));
const plain = (cell: any) => (cell && typeof cell === "object" && "basicValue" in cell ? cell.basicValue : cell);
let held = 0;
for (const { record } of found)
  for (const example of record.examples) {
    const result = evaluateCall(parseConstantFormula(example.formula), (id: string) => calls.get(id)) as any[][];
    const wanted: any = example.result;
    const same = (got: any, want: any) =>
      typeof want === "number" ? Math.abs(plain(got) - want) <= (example.tolerance ?? Math.abs(want) * 1e-9 + 1e-12) : plain(got) === want;
    const holds = Array.isArray(wanted)
      ? wanted.every((line, row) => line.every((cell: any, column: number) => same(result[row]?.[column], cell)))
      : typeof wanted === "object"
        ? (result[0]![0] as any).message?.includes(wanted.words)
        : same(result[0]![0], wanted);
    if (holds) held++;
    else console.log("does not hold: " + example.formula);
  }
console.log("held: " + held);
`;
