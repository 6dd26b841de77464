/**
 * `npm run new -- <group> <functionName>`: makes the function's file and its test. Nothing else has to be edited: the
 * reader finds the file by its folder.
 */
import fs from "node:fs";
import path from "node:path";
import { groups } from "../catalogue/groups";

const [group, name] = process.argv.slice(2);
const root = path.join(__dirname, "..", "..");

function stop(words: string): never {
  console.error(words);
  process.exit(2);
}

if (!group || !name)
  stop("usage: npm run new -- <group> <functionName>\ngroups: " + groups.map((each) => each.name).join(", "));
if (!groups.some((each) => each.name === group))
  stop(`no group "${group}"; groups: ${groups.map((each) => each.name).join(", ")}`);
if (!/^[a-z][a-zA-Z0-9]{2,}$/.test(name)) stop(`"${name}" is not a camelCase name of at least three letters`);

const id = name.replace(/[A-Z]/g, (letter) => `_${letter}`).toUpperCase();
const functionFile = path.join(root, "src", "functions", group, `${name}.ts`);
const testFile = path.join(root, "tests", "functions", group, `${name}.test.ts`);
for (const file of [functionFile, testFile])
  if (fs.existsSync(file)) stop(`${path.relative(root, file)} exists already`);

const functionText = `import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres } from "../../arguments/quantity";

export const args = cellArguments({
  amount: litres.positive(),
});

/**
 * What it answers, in one sentence.
 *
 * @customfunction ${id}
 * @param amount What it is [L]
 * @returns What comes out [L]
 */
export function ${name}(amount: any[][]): any[][] {
  return eachCell(args, [amount], (given) => given.amount);
}

export const about: About = {
  rule: "",
  range: "",
  source: "",
  examples: [{ formula: "=OXYGEN.${id}(1)", result: 1 }],
};
`;

const testText = `import { ${name} } from "../../../src/functions/${group}/${name}";

describe("${id}", () => {
  it("agrees with a published value (name the source here)", () => {
    expect(${name}([[1]])[0]![0]).toBeCloseTo(Number.NaN, 6);
  });
});
`;

for (const [file, text] of [
  [functionFile, functionText],
  [testFile, testText],
] as const) {
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, text);
  console.log(`made ${path.relative(root, file)}`);
}
console.log(
  `Now fill in the words, the schema, the rule, the source and a check value; then npm run generate and npx jest ${name}.`,
);
