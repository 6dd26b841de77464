/**
 * `npm run fuzz -- --calls 1000000 --seed 1`: calls the built functions script as the host does, in a bare context, with
 * cells of every form that Excel's data types have and ranges of odd shapes. Every call must return a block of cells within
 * a second or two, never throw, hold nothing a cell can't hold, keep its input as it was, and give one shape.
 * Exits with 1 at any fault and prints the calls, shortest first.
 */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import vm from "node:vm";
import { argumentCells, firstExample } from "../../src/catalogue/constantFormula";
import type { FunctionRecord } from "../../src/catalogue/record";
import { distFolder, projectFolder } from "../../src/tooling/build";
import { drawing } from "../mutation/mutants";

const { values } = parseArgs({
  options: {
    calls: { type: "string", default: "50000" },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
    script: { type: "string", default: path.join(distFolder, "functions.js") },
  },
});

type Cell = unknown;
type Call = (...cells: (Cell[][] | null | undefined)[]) => Cell[][];

/** Longest a call may take [ms]: Excel shows #BUSY! meanwhile, and a machine under load is slower than one at rest. */
const longest = 5000;

if (!existsSync(values.script)) {
  console.error(`${values.script} is not there: npm run build makes it.`);
  process.exit(2);
}

const calls: Record<string, Call> = {};
class HostError {
  constructor(
    readonly code: string,
    readonly message: string,
  ) {}
}
const context = vm.createContext({
  CustomFunctions: {
    associate: (id: string, call: Call) => {
      calls[id] = call;
    },
    Error: HostError,
  },
});
vm.runInContext(readFileSync(values.script, "utf8"), context);

const records = (
  JSON.parse(
    readFileSync(path.join(projectFolder, "src", "catalogue", "generated", "records.json"), "utf8"),
  ) as FunctionRecord[]
).filter(({ id }) => !values.only || values.only.split(",").includes(id));

const draw = drawing(Number(values.seed));
const upTo = (count: number): number => Math.floor(draw() * count);
const oneOf = <T>(list: readonly T[]): T => list[upTo(list.length)]!;

const errorCell = (basicValue: string, errorType: string): Cell => ({
  type: "Error",
  basicType: "Error",
  basicValue,
  errorType,
});
const numbers = [
  0,
  -0,
  1,
  -1,
  0.5,
  0.21,
  0.93,
  2,
  24,
  93,
  100,
  1e-300,
  5e-324,
  1e15,
  1e300,
  1.7976931348623157e308,
  -1e300,
  46000,
  46000.5,
  61,
  60,
  2958465,
  2 ** 31,
  2 ** 53,
];
const texts = [
  "",
  " ",
  "0",
  "5 L",
  "35 psi",
  "85 °F",
  "1e999",
  "NaN",
  "Infinity",
  "5 parsecs",
  "yes",
  "TRUE",
  "2026-03-01",
  "25:00",
  "#N/A",
  "=1+1",
  "__proto__",
  "constructor",
  "toString",
  "ﬀ",
  "\u0000",
  "1,5",
  "١٢",
  "−5",
  "5\u00a0L",
  "x".repeat(3000),
];

/** One cell, in the forms of Excel's data types: https://learn.microsoft.com/office/dev/add-ins/excel/excel-data-types-concepts */
const forms: readonly (() => Cell)[] = [
  () => oneOf(numbers),
  () => draw() * 10 ** upTo(6),
  () => upTo(50),
  () => 45000 + upTo(3000),
  () => oneOf(texts),
  () => draw() < 0.5,
  () => null,
  () => "",
  () => undefined,
  () => errorCell("#DIV/0!", "Div0"),
  () => errorCell("#N/A", "NotAvailable"),
  () => ({ ...(errorCell("#SPILL!", "Spill") as object), errorSubType: "Collision" }),
  () => ({ type: "Double", basicType: "Double", basicValue: oneOf(numbers), numberFormat: "0.00" }),
  () => ({ type: "FormattedNumber", basicType: "Double", basicValue: upTo(100), numberFormat: "yyyy-mm-dd" }),
  () => ({ type: "String", basicType: "String", basicValue: oneOf(texts) }),
  () => ({ type: "Boolean", basicType: "Boolean", basicValue: true }),
  () => ({ type: "Empty", basicType: "Empty", basicValue: "" }),
  () => ({
    type: "Entity",
    text: "Plant 1",
    basicType: "Error",
    basicValue: "#VALUE!",
    properties: { rate: { type: "Double", basicValue: 1.5 } },
  }),
  () => ({
    type: "LinkedEntity",
    text: "A",
    id: { entityId: "1", domainId: "x", serviceId: 1 },
    basicType: "Error",
    basicValue: "#VALUE!",
  }),
  () => ({ type: "WebImage", address: "https://example.com/a.png", basicType: "Error", basicValue: "#VALUE!" }),
  () => ({ type: "Array", elements: [[{ type: "Double", basicValue: 1 }]], basicType: "Error", basicValue: "#VALUE!" }),
  () => ({ type: "ValueTypeNotAvailable", basicType: "Error", basicValue: "#VALUE!" }),
  () => ({}),
  () => ({ type: "Double" }),
  () => ({ type: "Double", basicValue: null }),
  () => ({ type: "Double", basicValue: NaN }),
  () => [[1]],
  () => NaN,
  () => Infinity,
];

const block = (rows: number, columns: number, cell: () => Cell): Cell[][] =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, cell));

/** An argument: mostly one of its example's with something changed, so that calls go deeper than the first refusal. */
function argument(example: Cell[][] | undefined): Cell[][] | null | undefined {
  const kind = draw();
  if (example && kind < 0.45) return example;
  if (example && kind < 0.7) {
    const copy = example.map((row) => [...row]);
    const row = upTo(copy.length);
    copy[row]![upTo(copy[row]!.length)] = oneOf(forms)();
    return copy;
  }
  if (kind < 0.78) return oneOf([null, undefined]);
  if (kind < 0.9) return [[oneOf(forms)()]];
  if (kind < 0.97) return block(1 + upTo(6), 1 + upTo(4), () => oneOf(forms)());
  if (kind < 0.98) return [[]];
  if (kind < 0.99 && example) return [...example, ...block(upTo(40), example[0]!.length, () => oneOf([null, ""]))];
  return block(1 + upTo(40), 1, () => upTo(20));
}

/** What a cell of a result must not be, in words. */
function wrongCell(cell: Cell, came: ReadonlySet<string>): string | undefined {
  if (typeof cell === "number") return Number.isFinite(cell) ? undefined : String(cell);
  if (typeof cell === "string")
    return cell.length > 32767
      ? "a text longer than a cell"
      : /\b(?:NaN|undefined|\[object)\b/.test(cell)
        ? `the text ${cell.slice(0, 80)}`
        : undefined;
  if (typeof cell === "boolean") return undefined;
  if (cell instanceof HostError) {
    if (came.has(cell.code)) return undefined;
    if (cell.code !== "#VALUE!" && cell.code !== "#N/A" && !/^(?:invalidValue|notAvailable)$/.test(cell.code))
      return `the error ${cell.code}`;
    return cell.message ? undefined : "an error without words";
  }
  if (typeof cell !== "object" || cell === null) return String(cell);
  if ("basicValue" in cell || "type" in cell) return undefined;
  return `an object ${JSON.stringify(cell)}`;
}

const spelled = (value: unknown): string =>
  JSON.stringify(value, (_key, each) =>
    typeof each === "number" && !Number.isFinite(each) ? String(each) : each === undefined ? "undefined" : each,
  ) ?? "undefined";

function faultOf(call: Call, given: (Cell[][] | null | undefined)[]): string | undefined {
  const before = spelled(given);
  // An error cell goes out as it came, without words.
  const came = new Set(
    given
      .flatMap((each) => (each ?? []).flat() as { type?: string; basicValue?: string }[])
      .filter((each) => each?.type === "Error")
      .map((each) => each.basicValue!),
  );
  let got: Cell[][];
  const start = performance.now();
  try {
    got = call(...given);
  } catch (error) {
    if (error instanceof HostError) return undefined;
    return `throws ${String(error).slice(0, 200)}`;
  }
  const took = performance.now() - start;
  if (spelled(given) !== before) return "changes its input";
  if (took > longest) return `takes ${Math.round(took)} ms`;
  if (!Array.isArray(got) || got.length === 0 || !Array.isArray(got[0]))
    return `gives no block: ${spelled(got).slice(0, 80)}`;
  if (got.some((row) => row.length !== got[0]!.length)) return "gives rows of several lengths";
  for (const cell of got.flat()) {
    const wrong = wrongCell(cell, came);
    if (wrong !== undefined) return `gives ${wrong}`;
  }
  return undefined;
}

const examplesOf = new Map(
  records.map((record) => {
    const callById = (id: string): Call | undefined => calls[id];
    return [
      record.id,
      record.examples.flatMap((_, at) => {
        try {
          return [
            argumentCells({ ...firstExample({ ...record, examples: [record.examples[at]!] }) }, callById as never),
          ];
        } catch {
          return [];
        }
      }),
    ] as const;
  }),
);

const faults = new Map<string, { count: number; shortest: string }>();
const wanted = Number(values.calls);
const started = Date.now();
for (let made = 0; made < wanted; made++) {
  const record = records[made % records.length]!;
  const example = oneOf(examplesOf.get(record.id)!) ?? [];
  const given = record.arguments.map((_, at) => argument(example[at] as Cell[][] | undefined));
  const fault = faultOf(calls[record.id]!, given);
  if (fault === undefined) continue;
  const key = `${record.id} ${fault.replace(/[\d.]+/g, "#").slice(0, 60)}`;
  const text = `${record.id} ${fault}\n    ${spelled(given).slice(0, 600)}`;
  const known = faults.get(key);
  faults.set(key, {
    count: (known?.count ?? 0) + 1,
    shortest: known && known.shortest.length <= text.length ? known.shortest : text,
  });
}
for (const { count, shortest } of faults.values()) console.log(`${count} times: ${shortest}`);
const seconds = (Date.now() - started) / 1000;
console.log(
  `${wanted} calls of ${records.length} functions, seed ${values.seed}: ${faults.size} kinds of fault, ${seconds.toFixed(0)} s`,
);
if (faults.size > 0) process.exitCode = 1;
