import { type CellCall } from "../cells/cellValues";
import fs from "node:fs";
import path from "node:path";
import { parseTree, type IFunction } from "custom-functions-metadata/lib/parseTree";
import type { About } from "../arguments/about";
import type { Argument, CellArgument } from "../arguments/argument";
import type { CellArguments } from "../arguments/eachCell";
import { kinds } from "../arguments/kinds";
import { groups } from "./groups";
import type { ArgumentRecord, FunctionRecord } from "./record";

/** What a function's file exports, found by running it. */
interface FunctionModule {
  args: CellArguments<Record<string, Argument>>;
  about: About;
  [name: string]: unknown;
}

/** One function as read from its file. */
export interface ReadFunction {
  record: FunctionRecord;
  metadata: IFunction;
  /** Name of the exported function, which is also the file's name. */
  exportName: string;
  /** The function itself. */
  call: CellCall;
  args: CellArguments<Record<string, Argument>>;
}

/** A function's file breaks a rule; the message names file and rule. */
export class CatalogueError extends Error {}

const cellAddress = /^[A-Z]{1,3}[0-9]{1,7}$/;
const legalId = /^[A-Z][A-Z0-9_]{2,63}$/;

/** "CamelCase" file name of an id: HOURS_TO_FILL → hoursToFill. */
const exportNameOf = (id: string): string =>
  id.toLowerCase().replace(/_([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());

/** A default as the words must give it. */
export const defaultWords = (value: number | string | boolean): string =>
  typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : String(value);

/** The unit that words name in brackets, "" where they name none. */
const unitIn = (words: string): string => /\[([^\]]+)\]/.exec(words)?.[1] ?? "";

function readArgument(
  fail: (rule: string) => never,
  parameter: IFunction["parameters"][number],
  schema: Argument,
): ArgumentRecord {
  const name = parameter.name;
  const description = parameter.description?.trim() ?? "";
  if (description === "") fail(`argument ${name} has no description (is its @param misspelt?)`);
  if (description.length > 512) fail(`the description of argument ${name} is longer than 512 characters`);
  if (parameter.dimensionality !== "matrix" || parameter.type !== "any") fail(`argument ${name} must be typed any[][]`);
  const unit = unitIn(description);
  if (unit !== schema.unit)
    fail(`argument ${name} has the unit [${unit}] in its words and [${schema.unit}] in its schema`);
  if (Boolean(parameter.optional) !== schema.optional) {
    fail(
      `argument ${name} is ${parameter.optional ? "optional" : "required"} in its words and ${schema.optional ? "optional" : "required"} in its schema`,
    );
  }
  if (/, (?:[-\d.]+|TRUE|FALSE) if omitted/.test(description))
    fail(`argument ${name} names its default in its words; src/models/defaults.ts holds it and the words are added`);
  const record: ArgumentRecord = {
    name,
    description,
    unit,
    optional: schema.optional,
    shape: schema.shape,
    kind: schema.kind,
  };
  const { defaultValue } = schema;
  if (defaultValue !== undefined) {
    record.default = defaultValue;
    record.description = `${description}, ${defaultWords(defaultValue)} if omitted`;
  }
  const choices = (schema as CellArgument).choices;
  if (choices) record.choices = [...choices];
  return record;
}

/** Reads one function's file: its JSDoc through Microsoft's generator, its schema and `about` by running it. */
function readFunctionFile(root: string, file: string, loaded: FunctionModule): ReadFunction {
  const fail = (rule: string): never => {
    throw new CatalogueError(`src/functions/${file}: ${rule}`);
  };
  const source = fs.readFileSync(path.join(root, file), "utf8");
  const parsed = parseTree(source, path.join(root, file));
  const errors = parsed.extras.flatMap((extra) => extra.errors);
  if (errors.length > 0) fail(errors.join("; "));
  if (parsed.functions.length !== 1) {
    fail(
      `has ${parsed.functions.length} custom functions; exactly one is wanted, as "export function" with @customfunction (a const is skipped in silence)`,
    );
  }
  const metadata = parsed.functions[0]!;
  const id = metadata.id;
  if (!legalId.test(id) || cellAddress.test(id))
    fail(`the id "${id}" is not 3 to 64 of A–Z, 0–9 and _, or looks like a cell address`);
  const exportName = exportNameOf(id);
  if (path.posix.basename(file) !== `${exportName}.ts`) fail(`must be named ${exportName}.ts after its id ${id}`);
  const call = loaded[exportName];
  if (typeof call !== "function") return fail(`must export function ${exportName}`);
  if (!loaded.args?.names || !loaded.about) fail("must export args and about");
  const description = metadata.description?.trim().replace(/\s+/g, " ") ?? "";
  if (description === "" || description.length > 1024) fail("needs a description of 1 to 1024 characters");

  const names = metadata.parameters.map((parameter) => parameter.name);
  if (names.join() !== loaded.args.names.join()) {
    fail(`the arguments are (${names.join(", ")}) in the words and (${loaded.args.names.join(", ")}) in the schema`);
  }
  const args = metadata.parameters.map((parameter, index) =>
    readArgument(fail, parameter, loaded.args.readers[index]!),
  );
  const firstOptional = args.findIndex((argument) => argument.optional);
  if (firstOptional >= 0 && args.slice(firstOptional).some((argument) => !argument.optional))
    fail("has a required argument after an optional one");

  const returns = /@returns\s+([^\n]+)/.exec(source)?.[1]?.trim() ?? fail("has no @returns line");
  const folder = path.posix.dirname(file);
  if (!groups.some((group) => group.name === folder)) fail(`stands in the folder ${folder}, which is no group`);
  const { rule, range, source: ruleSource, caution, examples, seeAlso = [], gives } = loaded.about;
  for (const [key, value] of Object.entries({ rule, range, source: ruleSource }))
    if (!value?.trim()) fail(`about.${key} is empty`);
  if (!examples || examples.length === 0) fail("has no example");

  if (gives === undefined) return fail("about.gives must say what the result is, a kind of src/arguments/kinds.ts");
  const unknown = ([] as readonly string[]).concat(gives).find((each) => !(each in kinds));
  if (unknown !== undefined) fail(`about.gives says "${unknown}", which is no kind of src/arguments/kinds.ts`);

  const record: FunctionRecord = {
    id,
    group: folder,
    description,
    arguments: args,
    result: {
      description: returns,
      unit: unitIn(returns),
      table: loaded.args.gives === "table",
      gives,
    },
    rule,
    range,
    source: ruleSource,
    ...(caution === undefined ? {} : { caution }),
    examples,
    seeAlso,
    file,
  };
  return { record, metadata, exportName, call: call as ReadFunction["call"], args: loaded.args };
}

const functionsRoot = path.join(__dirname, "..", "functions");

/** Paths of all function files below src/functions, with "/", in group order, then by name. */
function listFunctionFiles(root = functionsRoot): string[] {
  return groups.flatMap(({ name }) => {
    const folder = path.join(root, name);
    if (!fs.existsSync(folder)) return [];
    return fs
      .readdirSync(folder)
      .filter((file) => file.endsWith(".ts"))
      .sort()
      .map((file) => `${name}/${file}`);
  });
}

/**
 * Reads every function file under `root`. A broken rule throws CatalogueError; with `onBroken` the file is left out and
 * named instead, for work in progress.
 */
export function readCatalogue(root = functionsRoot, onBroken?: (error: unknown, file: string) => void): ReadFunction[] {
  const found: ReadFunction[] = [];
  const seen = new Map<string, string>();
  for (const file of listFunctionFiles(root)) {
    try {
      const read = readFunctionFile(root, file, require(path.join(root, file)) as FunctionModule);
      const earlier = seen.get(read.record.id);
      if (earlier) throw new CatalogueError(`src/functions/${file}: the id ${read.record.id} is also in ${earlier}`);
      seen.set(read.record.id, file);
      found.push(read);
    } catch (error) {
      if (!onBroken) throw error;
      onBroken(error, file);
    }
  }
  return found;
}
