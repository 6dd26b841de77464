import { readFileSync } from "node:fs";
import path from "node:path";
import { builtFiles, buildTimeout } from "../builtFiles";
import { hashFunctions, isBumpDue, nextVersion, readFunctions, readRecord } from "../../src/tooling/bumpManifest";

const manifest = (name: string) => readFileSync(path.resolve(__dirname, "..", "..", "manifest", name), "utf8");

it("counts the last number up", () => {
  expect(nextVersion("1.2.9")).toBe("1.2.10");
  expect(() => nextVersion("1.2")).toThrow("1.2");
});

it("sees a change of content and no change of white space", () => {
  expect(hashFunctions('{"a": 1}')).toBe(hashFunctions('{\n  "a":1 }'));
  expect(hashFunctions('{"a": 2}')).not.toBe(hashFunctions('{"a": 1}'));
});

it("must be raised for other functions from 1.0.0 on", () => {
  const functions = hashFunctions('{"functions":[]}');
  expect(isBumpDue({ version: "1.0.0", functions }, '{"functions":[]}')).toBe(false);
  expect(isBumpDue({ version: "1.0.0", functions }, '{"functions":[1]}')).toBe(true);
  expect(isBumpDue({ version: "0.9.0", functions }, '{"functions":[1]}')).toBe(false);
});

it("is the same in the record and both manifests", () => {
  const { version } = readRecord();
  expect(manifest("manifest.xml")).toContain(`<Version>${version}.0</Version>`);
  expect(JSON.parse(manifest("manifest.json")).version).toBe(version);
});

it(
  "was raised since functions.json last changed (if not: npm run bump)",
  () => {
    builtFiles();
    expect(isBumpDue(readRecord(), readFunctions())).toBe(false);
  },
  buildTimeout,
);
