import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { CatalogueError, readCatalogue } from "../../src/catalogue/readCatalogue";

/** A function file that keeps every rule; each case below breaks one. */
const good = `
import { cellArguments, eachCell } from "${path.join(__dirname, "../../src/arguments/eachCell").replace(/\\/g, "/")}";
import { litres } from "${path.join(__dirname, "../../src/arguments/quantity").replace(/\\/g, "/")}";

export const args = cellArguments({ amount: litres.positive(), share: litres.default({ value: 2, unit: "L", source: "made up" }) });

/**
 * Doubles an amount.
 *
 * @customfunction TWICE_AS_MUCH
 * @param amount What it is [L]
 * @param [share] What else it is [L]
 * @returns Twice the amount [L]
 */
export function twiceAsMuch(amount: any[][], share?: any[][]): any[][] {
  return eachCell(args, [amount, share], (given) => given.amount * given.share);
}

export const about = { gives: "liquid", rule: "2 × amount", range: "above 0", source: "plain arithmetic", examples: [{ formula: "=OXYGEN.TWICE_AS_MUCH(1)", result: 2 }] };
`;

let folder: string;
const read = (source: string, name = "twiceAsMuch") => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), "functions-"));
  fs.mkdirSync(path.join(folder, "amounts"));
  fs.writeFileSync(path.join(folder, "amounts", `${name}.ts`), source);
  return readCatalogue(folder);
};

afterEach(() => fs.rmSync(folder, { recursive: true, force: true }));

it("joins words, schema and examples", () => {
  const [found] = read(good);
  expect(found!.record).toMatchObject({
    id: "TWICE_AS_MUCH",
    group: "amounts",
    arguments: [
      { name: "amount", unit: "L", optional: false },
      { name: "share", default: 2, description: "What else it is [L], 2 if omitted" },
    ],
  });
});

it.each([
  [
    "a const that the generator skips in silence",
    good.replace(
      "export function twiceAsMuch(amount: any[][], share?: any[][]): any[][] {",
      "export const twiceAsMuch = (amount: any[][], share?: any[][]): any[][] => {",
    ),
    /0 custom functions/,
  ],
  ["a result of no kind", good.replace('gives: "liquid", ', ""), /about\.gives must say what the result is/],
  ["a result of an unknown kind", good.replace('"liquid", rule', '"liquids", rule'), /"liquids", which is no kind/],
  ["a missing unit", good.replace("What it is [L]", "What it is"), /unit \[\] in its words and \[L\] in its schema/],
  [
    "a missing description",
    good.replace("@param amount What it is [L]", "@param amont What it is [L]"),
    /amount has no description/,
  ],
  [
    "another order in the schema",
    good.replace(
      '{ amount: litres.positive(), share: litres.default({ value: 2, unit: "L", source: "made up" }) }',
      '{ share: litres.default({ value: 2, unit: "L", source: "made up" }), amount: litres.positive() }',
    ),
    /\(amount, share\) in the words and \(share, amount\) in the schema/,
  ],
  [
    "a default in the words",
    good.replace("else it is [L]", "else it is [L], 2 if omitted"),
    /names its default in its words/,
  ],
  [
    "optional in the words only",
    good.replace('litres.default({ value: 2, unit: "L", source: "made up" })', "litres"),
    /share is optional in its words and required in its schema/,
  ],
  ["an illegal id", good.replace("@customfunction TWICE_AS_MUCH", "@customfunction LOX1"), /looks like a cell address/],
  [
    "an id other than the file's name",
    good.replace("@customfunction TWICE_AS_MUCH", "@customfunction TWICE_OVER"),
    /must be named twiceOver\.ts/,
  ],
  [
    "a type that is not a range",
    good.replace("(amount: any[][], share", "(amount: number, share"),
    /must be typed any\[\]\[\]/,
  ],
  ["no example", good.replace(/examples: \[.*\] \}/, "examples: [] }"), /no example/],
  ["no source", good.replace('source: "plain arithmetic"', 'source: ""'), /about.source is empty/],
])("fails on %s", (_name, source, words) => {
  expect(source).not.toBe(good);
  expect(() => read(source)).toThrow(CatalogueError);
  expect(() => read(source)).toThrow(words);
});

it("fails on a duplicate id", () => {
  read(good);
  fs.mkdirSync(path.join(folder, "site"));
  fs.copyFileSync(path.join(folder, "amounts", "twiceAsMuch.ts"), path.join(folder, "site", "twiceAsMuch.ts"));
  expect(() => readCatalogue(folder)).toThrow(/the id TWICE_AS_MUCH is also in amounts\/twiceAsMuch\.ts/);
});

it("leaves broken files out on request and names them", () => {
  read(good);
  fs.writeFileSync(path.join(folder, "amounts", "zero.ts"), good.replace(/TWICE_AS_MUCH/g, "LOX1"));
  const broken: string[] = [];
  expect(readCatalogue(folder, (_error, file) => broken.push(file))).toHaveLength(1);
  expect(broken).toEqual(["amounts/zero.ts"]);
});
