import fs from "node:fs";
import { ScratchCopy } from "./scratchCopy";

let copy: ScratchCopy;
beforeAll(() => (copy = new ScratchCopy()));
afterAll(() => copy.remove());

/** The steps of DEVELOPERS.md, "Add a function", from the scaffold to green. */
test("a new function goes from scaffold to green by the steps that are written down", () => {
  const steps = copy.read("DEVELOPERS.md");
  for (const step of [
    "npm run new -- ",
    "npm run generate",
    "npx jest everyFunction",
    "npm run samples",
    "npm run rename -- ",
  ])
    expect(steps).toContain(step);

  const made = copy.run(
    "src/tooling/newFunction.ts",
    "holding",
    "restHours",
    "level:litres",
    "capacity:litres.positive",
    "[empty_days]:emptyDays",
  );
  expect(made.err).toBe("");
  const file = "src/functions/holding/restHours.ts";
  expect(copy.read(file)).toContain("capacity: litres.positive(),");
  expect(copy.read(file)).toContain("empty_days: emptyDays.default(defaults.empty_days),");
  expect(copy.read(file)).toContain("@param [empty_days] What it is [days]");

  const scaffold = copy.run("src/tooling/generate.ts");
  expect(scaffold.code).toBe(1);
  expect(scaffold.err.trim().split("\n")).toEqual([
    "src/functions/holding/restHours.ts: about.rule is empty",
    "generate: 1 broken, nothing written",
  ]);

  copy.change(file, 'rule: ""', 'rule: "24 × empty days × level / capacity"');
  copy.change(file, 'range: ""', 'range: "level up to the capacity"');
  copy.change(file, 'source: ""', 'source: "plain arithmetic"');
  copy.change(file, 'gives: "liquid"', 'gives: "hours"');
  copy.change(file, "@returns What comes out [L]", "@returns Hours it takes to boil empty [h]");
  copy.change(file, "given.level)", "(24 * given.empty_days * given.level) / given.capacity)");
  copy.change(
    file,
    /examples: \[.*\]/,
    'examples: [{ formula: "=OXYGEN.REST_HOURS(30,60,5)", result: 60 }, { formula: "=OXYGEN.REST_HOURS(30,60)", result: 12 * defaults.empty_days.value }]',
  );
  const generated = copy.run("src/tooling/generate.ts");
  expect([generated.code, generated.err]).toEqual([0, ""]);
  expect(copy.read("src/catalogue/generated/functions.ts")).toContain('["REST_HOURS", restHours]');
  expect(copy.read("README.md")).toContain("REST_HOURS(level, capacity, [empty_days=8])");
}, 120_000);

test("a function is renamed everywhere", () => {
  const renamed = copy.run("src/tooling/renameFunction.ts", "HOURS_TO_FILL", "HOURS_UNTIL_FULL");
  expect(renamed.err).toBe("");
  expect(fs.existsSync(copy.file("src/functions/making/hoursUntilFull.ts"))).toBe(true);
  expect(fs.existsSync(copy.file("src/functions/making/hoursToFill.ts"))).toBe(false);
  expect(fs.existsSync(copy.file("tests/functions/making/hoursUntilFull.test.ts"))).toBe(true);
  expect(copy.read("src/functions/making/hoursUntilFull.ts")).toContain("export function hoursUntilFull(");
  const generated = copy.run("src/tooling/generate.ts", "--skip-broken");
  expect(generated.err).not.toContain("hoursUntilFull");
  const left: string[] = [];
  const look = (folder: string): void => {
    for (const entry of fs.readdirSync(copy.file(folder), { withFileTypes: true })) {
      const inside = `${folder}/${entry.name}`;
      if (entry.isDirectory()) look(inside);
      else if (/\.(?:ts|tsx|json|md)$/.test(entry.name) && /(?<![A-Z_])HOURS_TO_FILL(?![A-Z_])/.test(copy.read(inside)))
        left.push(inside);
    }
  };
  look("src");
  look("tests");
  expect(left.filter((file) => !file.endsWith("newcomer.test.ts"))).toEqual([]);
  expect(copy.read("README.md")).not.toContain("HOURS_TO_FILL");
}, 120_000);

test("a name that can't be is refused in words, and nothing changes", () => {
  const address = copy.run("src/tooling/renameFunction.ts", "GROSS_DRAW", "LOX1");
  expect([address.code, address.err.trim()]).toEqual([2, expect.stringContaining("looks like a cell address")]);
  const unknown = copy.run("src/tooling/renameFunction.ts", "NO_SUCH", "OTHER_NAME");
  expect([unknown.code, unknown.err.trim()]).toEqual([2, "there is no function NO_SUCH"]);
});
