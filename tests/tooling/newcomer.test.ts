import fs from "node:fs";
import { makeFunction } from "../../src/tooling/newFunction";
import { renameFunction } from "../../src/tooling/renameFunction";
import { type Ran, ScratchCopy } from "./scratchCopy";

let copy: ScratchCopy;
beforeAll(() => (copy = new ScratchCopy()));
afterAll(() => copy.remove());

const made = "src/functions/holding/restHours.ts";
const madeTest = "tests/functions/holding/restHours.test.ts";
const renamed = "src/functions/making/hoursUntilFull.ts";
const renamedTest = "tests/functions/making/hoursUntilFull.test.ts";

const clean = { code: 0, err: "" };
const passed = ({ err }: Ran): number => Number(/^Tests: .*?(\d+) passed/m.exec(err)?.[1] ?? 0);

/** The steps of DEVELOPERS.md, "Add a function"; the packages' own scripts are what npm runs. */
test("a scaffold has the quantities asked for, and is named until its words are filled in", () => {
  const steps = copy.read("DEVELOPERS.md");
  for (const step of ["npm run generate", "npx jest everyFunction", "npm run samples"]) expect(steps).toContain(step);
  const [, words] = /npm run new -- holding restHours ([^`]+)`/.exec(steps)!;
  expect(makeFunction(copy.root, "holding", "restHours", words!.replace(/'/g, "").split(" "))).toEqual([
    made,
    madeTest,
  ]);
  expect(copy.read(made)).toContain("capacity: litres.positive(),");
  expect(copy.read(made)).toContain("empty_days: emptyDays.default(defaults.empty_days),");
  expect(copy.read(made)).toContain("@param [empty_days] What it is [days]");

  const { code, err } = copy.run("src/tooling/generate.ts");
  expect(code).toBe(1);
  expect(err.trim().split("\n")).toEqual([`${made}: about.rule is empty`, "generate: 1 broken, nothing written"]);
}, 60_000);

test("a function is renamed in its file, its export and its test", () => {
  expect(renameFunction(copy.root, "HOURS_TO_FILL", "HOURS_UNTIL_FULL").length).toBeGreaterThan(10);
  expect(copy.read(renamed)).toContain("export function hoursUntilFull(");
  expect(fs.existsSync(copy.file("src/functions/making/hoursToFill.ts"))).toBe(false);
  expect(copy.read(renamedTest)).not.toMatch(/\bhoursToFill\b/);
});

test("both go through generate, the old name is gone and the tests are green", () => {
  copy.change(made, 'rule: ""', 'rule: "24 × empty days × level / capacity"');
  copy.change(made, 'range: ""', 'range: "level up to the capacity"');
  copy.change(made, 'source: ""', 'source: "plain arithmetic"');
  copy.change(made, 'gives: "liquid"', 'gives: "hours"');
  copy.change(made, "@returns What comes out [L]", "@returns Hours it takes to boil empty [h]");
  copy.change(made, "given.level)", "(24 * given.empty_days * given.level) / given.capacity)");
  copy.change(
    made,
    /examples: \[.*\]/,
    'examples: [{ formula: "=OXYGEN.REST_HOURS(30,60,5)", result: 60, source: "24 × 5 / 2" }, { formula: "=OXYGEN.REST_HOURS(30,60)", result: 12 * defaults.empty_days.value, source: "half of the days" }]',
  );
  copy.change(madeTest, "restHours([[1]], [[1]])", "restHours([[30]], [[60]], [[5]])");
  copy.change(madeTest, "Number.NaN", "60");

  expect(copy.run("src/tooling/generate.ts")).toMatchObject(clean);
  expect(copy.read("src/catalogue/generated/functions.ts")).toContain('["REST_HOURS", restHours]');
  expect(copy.read("README.md")).toContain("REST_HOURS(level, capacity, [empty_days=8])");
  const left = ["src", "tests", "README.md", "DEVELOPERS.md"]
    .flatMap((place) => copy.texts(place))
    .filter((each) => /(?<![A-Z_])HOURS_TO_FILL(?![A-Z_])|functions\/making\/hoursToFill"/.test(copy.read(each)));
  expect(left).toEqual([]);

  const ran = copy.test("^(REST_HOURS|HOURS_UNTIL_FULL)\\b", madeTest, renamedTest, "tests/everyFunction.test.ts");
  expect(ran.err).not.toContain("●");
  expect(ran.code).toBe(0);
  expect(passed(ran)).toBeGreaterThan(30);
}, 60_000);

test("a name that can't be is refused in words, and nothing changes", () => {
  const before = copy.read("README.md");
  expect(() => renameFunction(copy.root, "GROSS_DRAW", "LOX1")).toThrow("looks like a cell address");
  expect(() => renameFunction(copy.root, "GROSS_DRAW", "NET_FILL")).toThrow("there is a function NET_FILL already");
  expect(() => renameFunction(copy.root, "NO_SUCH", "OTHER_NAME")).toThrow("there is no function NO_SUCH");
  expect(copy.read("README.md")).toBe(before);
});
