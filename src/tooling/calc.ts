/** `npm run calc`: computes formulas, or recomputes a workbook, with the add-in's functions and without Excel. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { workerData } from "node:worker_threads";
import { placesIn, rangeOf, addressOf } from "../cells/addresses";
import { checkWorkbook } from "../check/checkWorkbook";
import { notesSheet } from "../check/setAside";
import { CalculationTooLong, type CalculationLimits } from "../engine/calculateSession";
import { cellJson, cellText } from "../engine/cellText";
import { checkedWorkbook } from "../engine/checkedWorkbook";
import { compareWithSaved, isSameValue } from "../engine/compareWithSaved";
import { createEngine, UntracedCircle } from "../engine/engine";
import { isEngineError, type EngineValue } from "../engine/engineValue";
import { readWorkbook, type SavedWorkbook } from "../engine/file/readWorkbook";
import { mostAllowed, UnusableWorkbook } from "../engine/file/unusableWorkbook";
import { valuesOnly, withChanges } from "../engine/file/writeWorkbook";
import type { EngineFunction } from "../engine/oxygenFunction";
import { recalculate, type Recalculated } from "../engine/recalculate";
import type { SheetInput } from "../engine/workbookInput";
import { shownValues } from "../engine/shownValues";
import {
  changeInputs,
  findTarget,
  readSetting,
  targetAddress,
  type CellTarget,
  type ChangedWorkbook,
} from "./cellTargets";
import { Misuse } from "./misuse";
import { refusalToWrite, writeBeside } from "./writeBeside";

const usage = `Computes formulas with the OXYGEN functions and the built-in ones, without Excel.

  npm run --silent calc -- "=OXYGEN.HOURS_TO_FILL(60,1.5)"    one line each; a table as rows with tabs
  npm run --silent calc -- --file formulas.txt                one formula a line; "-" reads standard input
  npm run --silent calc -- plan.xlsx                          recomputes a workbook and compares it with its saved values

With a workbook:
  --set "Inputs!B8=300"     changes an input first; --set Name=value too; may be given again and again
                            (a number, TRUE, 2026-03-24, "a text", or nothing for a blank; entry rules are not checked)
  --print "Summary!A5"      prints these cells alone; an area or --print Name too; may be given again and again
  --check                   looks for numbers that are not what they are used as: gas as liquid, net as gross, another
                            unit in a label, a blank, a range that stops short, a hidden error; a line each
  --save copy.xlsx          writes a copy with formulas, the new inputs and results; all else as in the workbook
  --values plain.xlsx       writes a copy with values in place of formulas, for people without the add-in
  --force                   lets --save and --values overwrite; the workbook that is read is never overwritten
  --seconds 600             gives up after so long; 600 if left out

  --json     one line a formula: a JSON table of values, dates as serials, errors as {"error","message"}
  --help     this text

Where the shell spoils quotation marks inside a formula (Windows), put the formula in a file and use --file.
A workbook may hold ${mostAllowed.cells.toLocaleString("en-US")} cells, ${mostAllowed.formulas.toLocaleString("en-US")} of them formulas, in ${mostAllowed.bytes / 1024 / 1024} MB unpacked.
Exit code: 0 every formula has a value (a workbook: as saved; with --set or --print: no error in what is printed);
1 something was found with --check; some is an error, differs, depends on itself or can't be calculated here; 2 misuse, or a file that can't be used.
`;

/** Where the command writes, so that tests can listen. */
export interface CalcOutput {
  out(text: string): void;
  err(text: string): void;
  /** How far a long calculation is. */
  progress?(done: number, total: number): void;
}

const decode = (bytes: Buffer): string => {
  // PowerShell's ">" writes UTF-16 with a mark; other editors may put a mark before UTF-8.
  const isWide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return bytes.toString(isWide ? "utf16le" : "utf8").replace(/^\uFEFF/, "");
};

const readFileOrMisuse = (file: string): Buffer => {
  try {
    return readFileSync(file === "-" ? 0 : file);
  } catch (thrown) {
    const { code, message } = thrown as NodeJS.ErrnoException;
    throw new Misuse(code === "ENOENT" ? `there is no file ${file}` : `can't read ${file}: ${message}`, true);
  }
};

/** cmd.exe hands single quotes through as part of the argument. */
const unquote = (argument: string): string =>
  argument.length > 1 && argument.startsWith("'") && argument.endsWith("'") ? argument.slice(1, -1) : argument;

/** Where the functions come from; tests give others. */
export type FunctionSource = () => Promise<readonly EngineFunction[]>;

const generatedFunctions: FunctionSource = async () => {
  try {
    return (await import("../catalogue/generated/functions")).functions;
  } catch (thrown) {
    if ((thrown as NodeJS.ErrnoException).code !== "MODULE_NOT_FOUND") throw thrown;
    throw new Error("the list of functions is not made yet: run npm run generate first", { cause: thrown });
  }
};

interface Run {
  readonly options: Options;
  readonly output: CalcOutput;
  readonly functions: readonly EngineFunction[];
}

const oneLine = (value: EngineValue | undefined): string =>
  value === undefined ? "(empty)" : cellText(value).replace(/\s+/g, " ");

const json = (value: EngineValue | undefined): unknown => (value === undefined ? null : cellJson(value));

const computeFormulas = async (formulas: readonly string[], { options, output, functions }: Run): Promise<number> => {
  const engine = createEngine(functions);
  const tables = await engine.calculate(formulas);
  engine.dispose();
  for (const table of tables) {
    output.out(
      options.json
        ? JSON.stringify(table.map((row) => row.map(cellJson)))
        : table.map((row) => row.map(oneLine).join("\t")).join("\n"),
    );
  }
  return tables.some((table) => table.some((row) => row.some(isEngineError))) ? 1 : 0;
};

/** A list for a person: the first ten, and how many more. */
const listed = (items: readonly string[]): string =>
  items.length <= 10 ? items.join("; ") : `${items.slice(0, 10).join("; ")}; and ${items.length - 10} more`;

const count = (number: number, one: string, more: string): string =>
  `${number.toLocaleString("en-US")} ${number === 1 ? one : more}`;

/** What is not as it should be, whatever is printed. */
const warnings = ({ held, circular }: Recalculated): string[] => {
  const name = ({ sheet, address, why }: Recalculated["held"][number]): string => `${sheet}!${address} (${why})`;
  const [kept, lost] = [held.filter(({ isLost }) => !isLost), held.filter(({ isLost }) => isLost)];
  return [
    kept.length > 0
      ? `${count(kept.length, "formula", "formulas")} can't be calculated here and ${kept.length === 1 ? "keeps its saved value" : "keep their saved values"}: ${listed(kept.map(name))}`
      : "",
    lost.length > 0
      ? `${count(lost.length, "formula", "formulas")} can't be calculated here and ${lost.length === 1 ? "has no saved value" : "have no saved values"} that would do: ${listed(lost.map(name))}`
      : "",
    circular.length > 0
      ? `${count(circular.length, "formula depends on itself", "formulas depend on themselves")}: ${listed([...new Set(circular.map(({ words }) => words.replace(/^.*?: /, "")))])}`
      : "",
  ].filter((line) => line !== "");
};

interface Copies {
  readonly save?: string;
  readonly values?: string;
}

const checkCopies = (file: string, { save, values, force = false }: Options): Copies => {
  for (const copy of [save, values]) {
    if (copy === undefined) continue;
    const refusal = refusalToWrite(copy, file, force);
    if (refusal) throw new Misuse(refusal);
  }
  if (save !== undefined && values !== undefined && path.resolve(save) === path.resolve(values)) {
    throw new Misuse("--save and --values name the same file");
  }
  return { save, values };
};

const writeCopies = (
  { save, values }: Copies,
  saved: SavedWorkbook,
  { entries }: ChangedWorkbook,
  { computed }: Recalculated,
  mayOverwrite: boolean,
): void => {
  const write = (file: string, bytes: Uint8Array): void => {
    try {
      writeBeside(file, bytes, mayOverwrite);
    } catch (thrown) {
      throw new Misuse(`can't write ${file}: ${(thrown as Error).message}`);
    }
  };
  const isAsSaved = (sheet: string, address: string, value: EngineValue): boolean =>
    isSameValue(value, saved.cached(sheet, address));
  if (save !== undefined) write(save, withChanges(saved.file, entries, computed, isAsSaved));
  if (values !== undefined) write(values, valuesOnly(saved.file, computed, entries));
};

const printCells = (
  targets: readonly CellTarget[],
  shown: (sheet: string, address: string) => EngineValue | undefined,
  { options, output }: Run,
): number => {
  let hasError = false;
  for (const target of targets) {
    const { sheet, area } = target;
    const rows: (EngineValue | undefined)[][] = [];
    for (const place of placesIn(area)) {
      const value = shown(sheet, addressOf(place));
      hasError ||= isEngineError(value);
      (rows[place.row - area.startRow] ??= []).push(value);
    }
    if (!options.json) output.out(rows.map((row) => row.map(oneLine).join("\t")).join("\n"));
    else if (!rangeOf(area).includes(":")) {
      output.out(JSON.stringify({ cell: targetAddress(target), value: json(rows[0]![0]) }));
    } else output.out(JSON.stringify({ area: targetAddress(target), values: rows.map((row) => row.map(json)) }));
  }
  return hasError ? 1 : 0;
};

const printFormulas = (
  saved: SavedWorkbook,
  recalculated: Recalculated,
  hasSettings: boolean,
  { options, output }: Run,
): number => {
  const compared = compareWithSaved(saved, recalculated.computed);
  const mark = hasSettings ? "CHANGED" : "DIFFERS";
  for (const { sheet, address, area, value, cached, differs } of compared) {
    // Of a spill that is as saved its first cell is enough.
    if (!differs && area === undefined) continue;
    const cell = `${sheet}!${area ?? address}`;
    output.out(
      options.json
        ? JSON.stringify({ cell, value: json(value), cached: json(cached), differs })
        : `${cell}\t${oneLine(value)}\t${oneLine(cached)}${differs ? `\t${mark}` : ""}`,
    );
  }
  const formulas = compared.filter(({ area }) => area !== undefined).length;
  const differing = compared.filter(({ differs }) => differs).length;
  const verdict = differing === 0 ? "none differs" : differing === 1 ? "1 differs" : `${differing} differ`;
  const summary = `${formulas} formulas fill ${compared.length} cells; ${verdict} from the saved values`;
  // With --json every line of the output is JSON.
  (options.json ? output.err : output.out)(summary);
  if (hasSettings) return compared.some(({ value }) => isEngineError(value)) ? 1 : 0;
  return differing > 0 ? 1 : 0;
};

const mostPrinted = 100_000;

const targetsOf = (saved: SavedWorkbook, asked: readonly string[]): CellTarget[] =>
  asked.map((name) => {
    const target = findTarget(saved, name);
    const { startRow, startColumn, endRow, endColumn } = target.area;
    if ((endRow - startRow + 1) * (endColumn - startColumn + 1) > mostPrinted) {
      throw new Misuse(`--print ${name}: that is more than ${mostPrinted.toLocaleString("en-US")} cells`);
    }
    return target;
  });

const severityWords = { danger: "DANGER", wrong: "wrong", look: "look" } as const;

/** A line a finding: the gravest first. */
const printFindings = async (
  saved: SavedWorkbook,
  { computed }: Recalculated,
  inputs: readonly SheetInput[],
  { options, output }: Run,
): Promise<number> => {
  const { catalogue } = await import("../catalogue/catalogue");
  const { findings, setAside, formulas } = checkWorkbook(checkedWorkbook(saved, computed, inputs), catalogue);
  for (const finding of findings) {
    const { sheet, cell, rule, severity, words } = finding;
    output.out(
      options.json ? JSON.stringify(finding) : `${severityWords[severity]}\t${sheet}!${cell}\t${rule}: ${words}`,
    );
  }
  const aside = setAside.length > 0 ? `; ${setAside.length} set aside on the sheet ${notesSheet}` : "";
  (options.json ? output.err : output.out)(
    `${count(findings.length, "finding", "findings")} in ${count(formulas, "formula", "formulas")}${aside}`,
  );
  return findings.length > 0 ? 1 : 0;
};

const recompute = async (file: string, run: Run): Promise<number> => {
  const { options, output, functions } = run;
  const copies = checkCopies(file, options);
  const seconds = Number(options.seconds ?? 600);
  if (!(seconds > 0)) throw new Misuse(`--seconds wants a number above 0, not "${options.seconds}"`);
  const limits: CalculationLimits = { progress: output.progress, until: Date.now() + seconds * 1000 };
  const saved = readWorkbook(
    readFileOrMisuse(file),
    functions.map(([id]) => id),
  );
  const settings = (options.set ?? []).map((text) => readSetting(saved, text));
  const targets = targetsOf(saved, options.print ?? []);
  const inputs = changeInputs(saved.sheets, settings);
  const formulas = saved.sheets
    .flatMap(({ cells }) => Object.values(cells))
    .filter(({ formula }) => formula !== undefined);
  output.progress?.(0, formulas.length);
  const engine = createEngine(functions);
  let recalculated: Recalculated;
  try {
    recalculated = await recalculate(engine, saved, inputs.sheets, inputs.changed, limits);
  } catch (thrown) {
    if (!(thrown instanceof CalculationTooLong)) throw thrown;
    throw new Misuse(
      `${path.basename(file)}: calculating takes longer than ${seconds} s; nothing was written. --seconds allows more`,
    );
  } finally {
    engine.dispose();
  }
  writeCopies(copies, saved, inputs, recalculated, options.force ?? false);
  const shown = shownValues(saved, inputs.entries, recalculated.computed);
  const code = options.check
    ? await printFindings(saved, recalculated, inputs.sheets, run)
    : targets.length > 0
      ? printCells(targets, shown, run)
      : printFormulas(saved, recalculated, settings.length > 0, run);
  const words = warnings(recalculated);
  for (const line of words) output.err(line);
  return words.length > 0 ? 1 : code;
};

const isWorkbook = (input: string): boolean => !input.startsWith("=") && /\.(?:xl[a-z]{1,2}|ods)$/i.test(input);

/** Runs the command; the number is its exit code. */
export const calc = async (
  argv: readonly string[],
  output: CalcOutput,
  source: FunctionSource = generatedFunctions,
): Promise<number> => {
  let file: string | undefined;
  try {
    const { values: options, positionals } = parse(argv);
    if (options.help) {
      output.out(usage.trimEnd());
      return 0;
    }
    const inputs = positionals.map(unquote);
    file = inputs.find(isWorkbook);
    if (file !== undefined) {
      const hasMore = inputs.length > 1 || options.file !== undefined;
      if (hasMore) throw new Misuse("give one workbook and no formulas beside it", true);
      return await recompute(file, { options, output, functions: await source() });
    }
    const needing = (["values", "save", "set", "print", "check", "force", "seconds"] as const).find(
      (name) => options[name] !== undefined,
    );
    if (needing) throw new Misuse(`--${needing} needs a workbook`, true);
    const lines = options.file === undefined ? [] : decode(readFileOrMisuse(options.file)).split(/\r?\n/);
    const formulas = [...inputs, ...lines.map((line) => line.trim()).filter((line) => line !== "")];
    if (formulas.length === 0) throw new Misuse("give a formula, --file or a workbook", true);
    return await computeFormulas(formulas, { options, output, functions: await source() });
  } catch (thrown) {
    if (thrown instanceof Misuse) {
      output.err(thrown.needsUsage ? `${thrown.message}\n\n${usage.trimEnd()}` : `${thrown.message}.`);
      return 2;
    }
    if (thrown instanceof UnusableWorkbook || thrown instanceof UntracedCircle) {
      output.err(`${path.basename(file ?? "")} ${thrown.message}.`);
      return 2;
    }
    output.err(thrown instanceof Error ? thrown.message : String(thrown));
    return 1;
  }
};

const parse = (argv: readonly string[]) => {
  try {
    return parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        file: { type: "string" },
        json: { type: "boolean" },
        check: { type: "boolean" },
        set: { type: "string", multiple: true },
        print: { type: "string", multiple: true },
        save: { type: "string" },
        values: { type: "string" },
        force: { type: "boolean" },
        seconds: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (thrown) {
    throw new Misuse((thrown as Error).message, true);
  }
};

type Options = ReturnType<typeof parse>["values"];

/** So many formulas take some seconds before the first of them is calculated. */
const large = 10_000;

const thousands = (number: number): string => number.toLocaleString("en-US");

/** A line that is written over where a person watches, and one each ten seconds elsewhere; at once for a large workbook. */
const progressLine = (stream: NodeJS.WriteStream, isTerminal: boolean): ((done: number, total: number) => void) => {
  const start = Date.now();
  let last = 0;
  let isShown = false;
  return (done, total) => {
    const now = Date.now();
    const isDone = total > 0 && done >= total;
    if (isTerminal && isShown && isDone) {
      stream.write("\r\x1b[K");
      isShown = false;
    }
    const isDue = last === 0 ? total >= large || now - start > 1000 : now - last > (isTerminal ? 200 : 10_000);
    if (isDone || total === 0 || !isDue) return;
    last = now;
    const words =
      done === 0
        ? `putting ${thousands(total)} formulas in order`
        : `${thousands(done)} of ${thousands(total)} formulas calculated`;
    stream.write(isTerminal ? `\r\x1b[K${words}` : `${words}\n`);
    isShown = true;
  };
};

if (require.main === module) {
  // A thread does not see itself what its output goes to.
  const { isTerminal } = (workerData ?? { isTerminal: Boolean(process.stderr.isTTY) }) as { isTerminal: boolean };
  const write = (stream: NodeJS.WriteStream) => (text: string) => void stream.write(`${text}\n`);
  const output = {
    out: write(process.stdout),
    err: write(process.stderr),
    progress: progressLine(process.stderr, isTerminal),
  };
  const flushed = (stream: NodeJS.WriteStream): Promise<void> =>
    new Promise((resolve) => stream.write("", () => resolve()));
  calc(process.argv.slice(2), output).then(async (code) => {
    await Promise.all([flushed(process.stdout), flushed(process.stderr)]);
    // A calculation that was given up leaves Univer's message ports open, which would keep the process alive.
    process.exit(code);
  });
}
