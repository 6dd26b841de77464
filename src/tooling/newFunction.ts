/**
 * `npm run new -- <group> <functionName> [name:quantity …]`: makes the function's file and its test, for example
 * `npm run new -- holding restHours level:litres capacity:litres.positive '[empty_days]:emptyDays'`. Nothing else has to be
 * edited: the reader finds the file by its folder. An argument in brackets takes its row of src/models/defaults.ts, where
 * there is one of its name.
 */
import fs from "node:fs";
import path from "node:path";
import * as dates from "../arguments/date";
import { metal } from "../arguments/metal";
import * as quantities from "../arguments/quantity";
import * as texts from "../arguments/text";
import { groups } from "../catalogue/groups";
import { defaults } from "../models/defaults";

interface Reader {
  readonly unit: string;
  readonly kind: string;
}

const isReader = (value: unknown): value is Reader => typeof value === "object" && value !== null && "read" in value;

/** Every reader that may be asked for, with its file in src/arguments. */
const readers = new Map<string, { reader: Reader; file: string }>();
for (const [file, exported] of Object.entries({ date: dates, metal: { metal }, quantity: quantities, text: texts }))
  for (const [name, value] of Object.entries(exported)) if (isReader(value)) readers.set(name, { reader: value, file });

/** An argument as asked for: `level:litres`, `capacity:litres.positive()`, `[keep]:litres`. */
interface AskedArgument extends Reader {
  readonly name: string;
  /** The exported reader, its file, and the expression that begins with it. */
  readonly quantity: string;
  readonly file: string;
  readonly expression: string;
  readonly optional: boolean;
}

/** Reads `name:reader`, in brackets where it may be left out; a reader named alone is one of the quantities. */
export function readAsked(words: string): AskedArgument {
  const match = /^(?:\[([a-z][a-z0-9_]*)\]|([a-z][a-z0-9_]*)):(\w+)((?:\.\w+(?:\([^()]*\))?)*)$/.exec(words);
  if (!match)
    throw new Error(`"${words}" is no argument; write name:quantity, such as level:litres or '[keep]:litres'`);
  const [, inBrackets, bare, quantity, more] = match as unknown as [
    string,
    string | undefined,
    string | undefined,
    string,
    string,
  ];
  const name = (inBrackets ?? bare)!;
  const found = readers.get(quantity);
  if (!found)
    throw new Error(`there is no quantity "${quantity}"; there are: ${[...readers.keys()].sort().join(", ")}`);
  const calls = more.replace(/\.(\w+)(?![\w(])/g, ".$1()");
  const { unit, kind } = found.reader;
  return {
    name,
    quantity,
    file: found.file,
    unit,
    kind,
    expression: quantity + calls,
    optional: inBrackets !== undefined,
  };
}

const unitWords = ({ unit }: Reader): string => (unit === "" ? "" : ` [${unit}]`);

const schemaOf = ({ name, expression, optional }: AskedArgument): string => {
  const missing = name in defaults ? `.default(defaults.${name})` : ".mayBeOmitted()";
  return `  ${name}: ${expression}${optional ? missing : ""},`;
};

function functionText(id: string, name: string, asked: readonly AskedArgument[]): string {
  const files = [...new Set(["eachCell", ...asked.map(({ file }) => file)])].sort();
  const names = (file: string): string[] =>
    file === "eachCell"
      ? ["cellArguments", "eachCell"]
      : [...new Set(asked.filter((each) => each.file === file).map(({ quantity }) => quantity))].sort();
  const imports = [
    'import type { About } from "../../arguments/about";',
    ...files.map((file) => `import { ${names(file).join(", ")} } from "../../arguments/${file}";`),
    ...(asked.some(({ optional, name: argument }) => optional && argument in defaults)
      ? ['import { defaults } from "../../models/defaults";']
      : []),
  ];
  const first = asked[0]!;
  return `${imports.join("\n")}

export const args = cellArguments({
${asked.map(schemaOf).join("\n")}
});

/**
 * What it answers, in one sentence.
 *
 * @customfunction ${id}
${asked.map((each) => ` * @param ${each.optional ? `[${each.name}]` : each.name} What it is${unitWords(each)}`).join("\n")}
 * @returns What comes out${unitWords(first)}
 */
export function ${name}(${asked.map((each) => `${each.name}${each.optional ? "?" : ""}: any[][]`).join(", ")}): any[][] {
  return eachCell(args, [${asked.map((each) => each.name).join(", ")}], (given) => given.${first.name});
}

export const about: About = {
  gives: "${first.kind}",
  rule: "",
  range: "",
  source: "",
  examples: [{ formula: "=OXYGEN.${id}(${asked
    .filter((each) => !each.optional)
    .map(() => 1)
    .join(",")})", result: 1 }],
};
`;
}

function testText(id: string, name: string, group: string, asked: readonly AskedArgument[]): string {
  const cells = asked.filter((each) => !each.optional).map(() => "[[1]]");
  return `import { ${name} } from "../../../src/functions/${group}/${name}";

describe("${id}", () => {
  it("agrees with a published value (name the source here)", () => {
    expect(${name}(${cells.join(", ")})[0]![0]).toBeCloseTo(Number.NaN, 6);
  });
});
`;
}

/** Makes the two files below `root` and gives their paths; refuses words that no function can have. */
export function makeFunction(root: string, group: string, name: string, words: readonly string[] = []): string[] {
  if (!groups.some((each) => each.name === group)) {
    throw new Error(`no group "${group}"; groups: ${groups.map((each) => each.name).join(", ")}`);
  }
  if (!/^[a-z][a-zA-Z0-9]{2,}$/.test(name))
    throw new Error(`"${name}" is not a camelCase name of at least three letters`);
  const asked = (words.length > 0 ? words : ["amount:litres.positive"]).map(readAsked);
  const late = asked.findIndex((each) => each.optional);
  if (late >= 0 && asked.slice(late).some((each) => !each.optional))
    throw new Error("an argument that may be left out stands before one that may not");
  const id = name.replace(/[A-Z]/g, (letter) => `_${letter}`).toUpperCase();
  const files: [file: string, text: string][] = [
    [path.join("src", "functions", group, `${name}.ts`), functionText(id, name, asked)],
    [path.join("tests", "functions", group, `${name}.test.ts`), testText(id, name, group, asked)],
  ];
  for (const [file] of files) if (fs.existsSync(path.join(root, file))) throw new Error(`${file} exists already`);
  for (const [file, text] of files) {
    fs.mkdirSync(path.dirname(path.join(root, file)), { recursive: true });
    fs.writeFileSync(path.join(root, file), text);
  }
  return files.map(([file]) => file);
}

if (require.main === module) {
  const [group, name, ...words] = process.argv.slice(2);
  try {
    if (!group || !name)
      throw new Error(
        `usage: npm run new -- <group> <functionName> [name:quantity …]; groups: ${groups.map((each) => each.name).join(", ")}`,
      );
    for (const file of makeFunction(path.join(__dirname, "..", ".."), group, name, words)) console.log(`made ${file}`);
    console.log(
      `Now fill in the words, the schema, the rule, the source and a check value; then npm run generate and npx jest ${name}.`,
    );
  } catch (fault) {
    console.error((fault as Error).message);
    process.exitCode = 2;
  }
}
