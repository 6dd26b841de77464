import { spawnSync } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "..", "..");

export interface Ran {
  code: number | null;
  out: string;
  err: string;
}

/** A copy of the project's sources in a folder of its own, with the packages of this one. */
export class ScratchCopy {
  readonly root = fs.mkdtempSync(path.join(os.tmpdir(), "scratch-copy-"));

  constructor() {
    for (const name of [
      "src",
      "tests",
      "manifest",
      "package.json",
      "package-lock.json",
      "tsconfig.json",
      "README.md",
      "DEVELOPERS.md",
      ".config",
    ])
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

  /** Paths of the texts in a folder, or of one text. */
  texts(place: string): string[] {
    if (!fs.statSync(this.file(place)).isDirectory()) return /\.(?:tsx?|json|md|html)$/.test(place) ? [place] : [];
    return fs.readdirSync(this.file(place)).flatMap((name) => this.texts(`${place}/${name}`));
  }

  /** Runs a TypeScript file of the copy; what it printed, and its exit code. */
  run(script: string, ...words: string[]): Ran {
    return this.node(require.resolve("tsx/cli"), this.file(script), ...words);
  }

  /** Runs test files of the copy, those tests whose name the pattern fits. */
  test(pattern: string, ...files: string[]): Ran {
    return this.node(require.resolve("jest/bin/jest"), "--watchman=false", "-i", "-t", pattern, ...files);
  }

  private node(...words: string[]): Ran {
    const { status, stdout, stderr } = spawnSync(process.execPath, words, { cwd: this.root, encoding: "utf8" });
    return { code: status, out: stdout, err: stderr };
  }

  remove(): void {
    fs.rmSync(this.root, { recursive: true, force: true });
  }
}
