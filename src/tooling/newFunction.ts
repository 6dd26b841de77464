/**
 * `npm run new -- <group> <functionName>`: makes the function's file and its test. Nothing else has to be edited: the
 * reader finds the file by its folder.
 */
import fs from "node:fs";
import path from "node:path";
import { groups } from "../catalogue/groups";

const functionText = (id: string, name: string): string => `import type { About } from "../../arguments/about";
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

const testText = (
  id: string,
  name: string,
  group: string,
): string => `import { ${name} } from "../../../src/functions/${group}/${name}";

describe("${id}", () => {
  it("agrees with a published value (name the source here)", () => {
    expect(${name}([[1]])[0]![0]).toBeCloseTo(Number.NaN, 6);
  });
});
`;

/** Makes the two files below `root` and gives their paths; refuses words that no function can have. */
export function makeFunction(root: string, group: string, name: string): string[] {
  if (!groups.some((each) => each.name === group)) {
    throw new Error(`no group "${group}"; groups: ${groups.map((each) => each.name).join(", ")}`);
  }
  if (!/^[a-z][a-zA-Z0-9]{2,}$/.test(name))
    throw new Error(`"${name}" is not a camelCase name of at least three letters`);
  const id = name.replace(/[A-Z]/g, (letter) => `_${letter}`).toUpperCase();
  const files: [file: string, text: string][] = [
    [path.join("src", "functions", group, `${name}.ts`), functionText(id, name)],
    [path.join("tests", "functions", group, `${name}.test.ts`), testText(id, name, group)],
  ];
  for (const [file] of files) if (fs.existsSync(path.join(root, file))) throw new Error(`${file} exists already`);
  for (const [file, text] of files) {
    fs.mkdirSync(path.dirname(path.join(root, file)), { recursive: true });
    fs.writeFileSync(path.join(root, file), text);
  }
  return files.map(([file]) => file);
}

if (require.main === module) {
  const [group, name] = process.argv.slice(2);
  try {
    if (!group || !name)
      throw new Error(
        `usage: npm run new -- <group> <functionName>; groups: ${groups.map((each) => each.name).join(", ")}`,
      );
    for (const file of makeFunction(path.join(__dirname, "..", ".."), group, name)) console.log(`made ${file}`);
    console.log(
      `Now fill in the words, the schema, the rule, the source and a check value; then npm run generate and npx jest ${name}.`,
    );
  } catch (fault) {
    console.error((fault as Error).message);
    process.exitCode = 2;
  }
}
