import { ScratchCopy } from "./scratchCopy";

let copy: ScratchCopy;
beforeAll(() => {
  copy = new ScratchCopy();
  copy.change("src/models/defaults.ts", /start_delay: row\(3, "h"/, 'start_delay: row(4, "h"');
});
afterAll(() => copy.remove());

/** Where a sentence speaks of the delay between switching on and liquid. */
const ofTheDelay = /start.?delay|until liquid|liquid (?:accumulates|comes|appears)|switching on|L\/h/i;
/** 3 h itself, and the 43 h that 60 L at 1.5 L/h take with it. */
const staleNumber = /(?<![\d.,])(?:3|43) (?:h\b|hours|if omitted)|=3\]/;

/** Sentences, not whole texts: a stale one is small. The trade's rule "2 to 3 h" is where the default comes from. */
const staleIn = (text: string): string[] =>
  text
    .split(/(?<=[.;:!?])\s|\n|\|/)
    .map((sentence) => sentence.replace(/2 to 3 h/g, "").replace(/\[warm_start_hours=3\]/g, ""))
    .filter((sentence) => ofTheDelay.test(sentence) && staleNumber.test(sentence));

test("a stale sentence would be seen", () => {
  expect(staleIn("The answer must follow: 3 h + litres / 1.5 L/h.")).not.toEqual([]);
  expect(staleIn('="60 L at 1.5 L/h want 43 h. Yours: "&A1')).not.toEqual([]);
  expect(staleIn("Hours from switching on until liquid accumulates [h], 3 if omitted")).not.toEqual([]);
});

test("one edit of a default leaves nothing stale behind: words, help, README, CONSTANTS, samples, examples", () => {
  const generated = copy.run("src/tooling/generate.ts");
  expect([generated.code, generated.err]).toEqual([0, ""]);

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

  const examples = copy.run("tests/tooling/everyExample.ts");
  expect(examples.err).toBe("");
  expect(examples.out).toMatch(/^computed: \d{3}\n$/);

  const texts = copy.run("tests/tooling/everyText.ts");
  expect(texts.err).toBe("");
  expect(texts.out).toContain("start_delay: 4 h: ");
  expect(texts.out).toContain("60 L at 1.5 L/h want 44 h.");
  expect(texts.out).toContain("4 h + litres / 1.5 L/h");
  expect(staleIn(texts.out)).toEqual([]);
}, 120_000);
