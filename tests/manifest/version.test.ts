import { readFileSync } from "node:fs";
import path from "node:path";
import { builtFiles, buildTimeout } from "../builtFiles";
import {
  hashFunctions,
  isBumpDue,
  nextVersion,
  raised,
  readFunctions,
  readRecord,
} from "../../src/tooling/bumpManifest";

const manifest = (name: string) => readFileSync(path.resolve(__dirname, "..", "..", "manifest", name), "utf8");

it("counts the last number up", () => {
  expect(nextVersion("1.2.9")).toBe("1.2.10");
  expect(() => nextVersion("1.2")).toThrow("1.2");
});

it("sees a change of content and no change of white space", () => {
  expect(hashFunctions('{"a": 1}')).toBe(hashFunctions('{\n  "a":1 }'));
  expect(hashFunctions('{"a": 2}')).not.toBe(hashFunctions('{"a": 1}'));
});

describe("for other functions", () => {
  const old = { version: "1.0.0", functions: hashFunctions('{"functions":[]}') };
  const changed = { version: "1.0.1", functions: hashFunctions('{"functions":[1]}') };

  it("rises once, and covers what changes until it is committed", () => {
    expect(isBumpDue(old, '{"functions":[]}')).toBe(false);
    expect(raised(old, old, '{"functions":[]}')).toBeUndefined();
    expect(isBumpDue(old, '{"functions":[1]}')).toBe(true);
    expect(raised(old, old, '{"functions":[1]}')).toEqual(changed);
    const more = raised(changed, old, '{"functions":[1,2]}');
    expect(more?.version).toBe("1.0.1");
    expect(more?.functions).toBe(hashFunctions('{"functions":[1,2]}'));
    expect(raised(changed, changed, '{"functions":[1,2]}')?.version).toBe("1.0.2");
  });

  it("goes back when the change is taken back, and rises without a history too", () => {
    expect(raised(changed, old, '{"functions":[]}')).toEqual(old);
    expect(raised(old, undefined, '{"functions":[1]}')).toEqual(changed);
  });
});

it("is the same in the record and both manifests", () => {
  const { version } = readRecord();
  expect(manifest("manifest.xml")).toContain(`<Version>${version}.0</Version>`);
  expect(JSON.parse(manifest("manifest.json")).version).toBe(version);
  const lock = JSON.parse(manifest(path.join("..", "package-lock.json")));
  expect([lock.version, lock.packages[""].version]).toEqual([version, version]);
  expect(JSON.parse(manifest(path.join("..", "package.json"))).version).toBe(version);
});

it(
  "was raised since functions.json last changed (if not: npm run generate)",
  () => {
    builtFiles();
    expect(isBumpDue(readRecord(), readFunctions())).toBe(false);
  },
  buildTimeout,
);
