import fs from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { ScratchCopy, examplesScript } from "./scratchCopy";

let copy: ScratchCopy;
beforeAll(() => {
  copy = new ScratchCopy();
  copy.change("src/models/defaults.ts", /start_delay: row\(3, "h"/, 'start_delay: row(4, "h"');
});
afterAll(() => copy.remove());

/** Where a sentence speaks of the delay between switching on and liquid. */
const ofTheDelay = /start.?delay|until liquid|liquid (?:accumulates|comes|appears)|switching on|L\/h/i;
const staleNumber = /(?<![\d.,])(?:3|43) (?:h\b|hours|if omitted)|=3\]/;

/** Sentences, not whole texts: a stale one is small. The trade's rule "2 to 3 h" is where the default comes from. */
const staleIn = (text: string): string[] =>
  text
    .split(/(?<=[.;:!?])\s|\n|\|/)
    .map((sentence) => sentence.replace(/2 to 3 h/g, "").replace(/\[warm_start_hours=3\]/g, ""))
    .filter((sentence) => ofTheDelay.test(sentence) && staleNumber.test(sentence));

test("one edit of a default leaves nothing stale behind: words, help, README, samples, examples", () => {
  const generated = copy.run("src/tooling/generate.ts");
  expect(generated.err).toBe("");
  expect(generated.code).toBe(0);

  const records = JSON.parse(copy.read("src/catalogue/generated/records.json")) as {
    id: string;
    arguments: { name: string; description: string; default?: unknown }[];
  }[];
  const taking = records.flatMap((record) => record.arguments.filter(({ name }) => name === "start_delay"));
  expect(taking.length).toBeGreaterThan(5);
  for (const argument of taking) expect(argument.description).toMatch(/, 4 if omitted$/);
  expect(
    records.filter(({ id }) => id !== "START_DELAY").flatMap((record) => staleIn(JSON.stringify(record, null, 1))),
  ).toEqual([]);
  expect(staleIn(copy.read("README.md"))).toEqual([]);
  expect(copy.read("README.md")).toContain("[start_delay=4]");

  fs.writeFileSync(copy.file("tests", "examples.ts"), examplesScript);
  const examples = copy.run("tests/examples.ts");
  expect(examples.out).not.toContain("does not hold");
  expect(Number(/held: (\d+)/.exec(examples.out)![1])).toBeGreaterThan(350);

  const samples = copy.run("src/tooling/buildSamples.ts", "supply-plan", "quick-checks");
  expect(samples.code).toBe(0);
  for (const name of ["supply-plan", "quick-checks"]) {
    const parts = unzipSync(fs.readFileSync(copy.file("samples", `${name}.xlsx`)));
    const texts = Object.keys(parts)
      .filter((part) => part.endsWith(".xml"))
      .map((part) => strFromU8(parts[part]!).replace(/<[^>]+>/g, "\n"));
    expect(texts.flatMap(staleIn)).toEqual([]);
  }
}, 180_000);
