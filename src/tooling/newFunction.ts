/**
 * `npm run new -- <group> <functionName> [name:quantity …]`: makes the function's file and its test, for example
 * `npm run new -- holding restHours level:litres capacity:litres.positive [empty_days]:emptyDays`. Nothing else has to be
 * edited: the reader finds the file by its folder. An argument in brackets takes its row of src/models/defaults.ts, where
 * there is one of its name.
 */
import fs from "node:fs";
import path from "node:path";
import * as dates from "../arguments/date";
import * as quantities from "../arguments/quantity";
import { groups } from "../catalogue/groups";
import { defaults } from "../models/defaults";

/** An argument as asked for: `level:litres`, `capacity:litres.positive()`, `[keep]:litres`. */
interface AskedArgument {
  name: string;
  /** Expression of its reader, from src/arguments/quantity.ts or src/arguments/date.ts. */
  reader: string;
  /** The exported reader that the expression begins with. */
  quantity: string;
  from: "quantity" | "date";
  optional: boolean;
}

/** Reads `name:reader`, in brackets where it may be left out; a reader named alone is one of the quantities. */
export function readAsked(words: string): AskedArgument {
  const match = /^(\[?)([a-z][a-z0-9_]*)\]?:(\w+)((?:\.\w+(?:\([^()]*\))?)*)$/.exec(words);
  if (!match) throw new Error(`"${words}" is no argument; write name:quantity, such as level:litres or [keep]:litres`);
  const [, bracket, name, quantity, more] = match as unknown as [string, string, string, string, string];
  const from = quantity in quantities ? "quantity" : quantity in dates ? "date" : undefined;
  if (!from) {
    const known = [...Object.keys(quantities), "date", "dateTime"].filter((each) => isReader(each)).sort();
    throw new Error(`there is no quantity "${quantity}"; there are: ${known.join(", ")}`);
  }
  const calls = more.replace(/\.(\w+)(?!\w*\()/g, ".$1()").replace(/\(\)\(/g, "(");
  return { name, reader: `${quantity}${calls}`, quantity, from, optional: bracket === "[" };
}

const isReader = (name: string): boolean => {
  const each = (quantities as Record<string, unknown>)[name] ?? (dates as Record<string, unknown>)[name];
  return typeof each === "object" && each !== null && "read" in each;
};

const unitOf = ({ quantity, from }: AskedArgument): string => {
  const { unit } = ((from === "quantity" ? quantities : dates) as unknown as Record<string, { unit: string }>)[
    quantity
  ]!;
  return unit === "" ? "" : ` [${unit}]`;
};

const schemaOf = ({ name, reader, optional }: AskedArgument): string => {
  if (!optional) return `  ${name}: ${reader},`;
  return name in defaults ? `  ${name}: ${reader}.default(defaults.${name}),` : `  ${name}: ${reader}.mayBeOmitted(),`;
};

function functionText(id: string, name: string, asked: readonly AskedArgument[]): string {
  const names = (from: AskedArgument["from"]): string =>
    [...new Set(asked.filter((each) => each.from === from).map(({ quantity }) => quantity))].sort().join(", ");
  const imports = [
    'import type { About } from "../../arguments/about";',
    'import { cellArguments, eachCell } from "../../arguments/eachCell";',
    names("date") && `import { ${names("date")} } from "../../arguments/date";`,
    names("quantity") && `import { ${names("quantity")} } from "../../arguments/quantity";`,
    asked.some((each) => each.optional && each.name in defaults) && 'import { defaults } from "../../models/defaults";',
  ].filter(Boolean);
  const first = asked[0]!;
  return `${imports.join("\n")}

export const args = cellArguments({
${asked.map(schemaOf).join("\n")}
});

/**
 * What it answers, in one sentence.
 *
 * @customfunction ${id}
${asked.map((each) => ` * @param ${each.optional ? `[${each.name}]` : each.name} What it is${unitOf(each)}`).join("\n")}
 * @returns What comes out${unitOf(first)}
 */
export function ${name}(${asked.map((each) => `${each.name}${each.optional ? "?" : ""}: any[][]`).join(", ")}): any[][] {
  return eachCell(args, [${asked.map((each) => each.name).join(", ")}], (given) => given.${first.name});
}

export const about: About = {
  gives: "${((first.from === "quantity" ? quantities : dates) as unknown as Record<string, { kind: string }>)[first.quantity]!.kind}",
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
