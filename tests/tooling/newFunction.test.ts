import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { readCatalogue } from "../../src/catalogue/readCatalogue";
import { makeFunction } from "../../src/tooling/newFunction";

let root: string;
beforeEach(() => (root = fs.mkdtempSync(path.join(os.tmpdir(), "scaffold-"))));
afterEach(() => fs.rmSync(root, { recursive: true, force: true }));

const read = (file: string): string => fs.readFileSync(path.join(root, file), "utf8");

/** The function as it stands, its imports led back to the project's own files. */
const importable = (file: string): void => {
  const source = path.join(__dirname, "../../src").replace(/\\/g, "/");
  fs.writeFileSync(path.join(root, file), read(file).replace(/"\.\.\/\.\.\//g, `"${source}/`));
};

it("makes a function and its test that keep every rule but the words still to be written", () => {
  const [file, test] = makeFunction(root, "making", "litresByMorning");
  expect([file, test].map((each) => each!.replace(/\\/g, "/"))).toEqual([
    "src/functions/making/litresByMorning.ts",
    "tests/functions/making/litresByMorning.test.ts",
  ]);
  importable(file!);
  expect(() => readCatalogue(path.join(root, "src/functions"))).toThrow("about.rule is empty");
  fs.writeFileSync(path.join(root, file!), read(file!).replace(/: "",/g, ': "to be said",'));
  jest.resetModules();
  const [found] = readCatalogue(path.join(root, "src/functions"));
  expect(found!.record.id).toBe("LITRES_BY_MORNING");
  expect(found!.call([[1]])).toEqual([[1]]);
});

it("reads quantities, dates and texts, a default where there is one of the name", () => {
  const words = [
    "from:date",
    "site:text",
    "capacity:litres.atLeast(5)",
    "[empty_days]:emptyDays",
    "[rest]:hours.whole",
  ];
  const [file] = makeFunction(root, "making", "litresByMorning", words);
  const made = read(file!);
  expect(made).toContain(`export const args = cellArguments({
  from: date,
  site: text,
  capacity: litres.atLeast(5),
  empty_days: emptyDays.default(defaults.empty_days),
  rest: hours.whole().mayBeOmitted(),
});`);
  expect(made).toContain(" * @param capacity What it is [L]\n * @param [empty_days] What it is [days]");
  expect(made).toContain("from: any[][], site: any[][], capacity: any[][], empty_days?: any[][], rest?: any[][]");
  importable(file!);
  expect(() => readCatalogue(path.join(root, "src/functions"))).toThrow("about.rule is empty");
});

it.each([
  ["level", /"level" is no argument; write name:quantity/],
  ["[level:litres", /is no argument/],
  ["level:liters", /there is no quantity "liters"; there are: .*litres/],
  ["Level:litres", /is no argument/],
])("refuses the argument %s", (words, refusal) => {
  expect(() => makeFunction(root, "making", "litresByMorning", [words])).toThrow(refusal);
});

it("refuses a needed argument after one that may be left out", () => {
  expect(() => makeFunction(root, "making", "litresByMorning", ["[keep]:litres", "level:litres"])).toThrow(
    /stands before/,
  );
});

it("makes a test that fails until a check value is filled in", () => {
  const [, test] = makeFunction(root, "making", "litresByMorning");
  expect(read(test!)).toContain("Number.NaN");
});

it.each([
  ["nowhere", "litresByMorning", /no group "nowhere"/],
  ["making", "LitresByMorning", /not a camelCase name/],
  ["making", "ab", /not a camelCase name/],
])("refuses %s %s", (group, name, words) => {
  expect(() => makeFunction(root, group, name)).toThrow(words);
});

it("never writes over a function", () => {
  makeFunction(root, "making", "litresByMorning");
  expect(() => makeFunction(root, "making", "litresByMorning")).toThrow(/exists already/);
});
