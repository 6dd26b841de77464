/** `npm run calc`: computes formulas, or recomputes a workbook, with the add-in's functions and without Excel. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import type { Engine } from "../engine/engine";
import type { EngineValue } from "../engine/engineValue";
import type { EngineFunction } from "../engine/oxygenFunction";

const usage = `Computes formulas with the OXYGEN functions and the built-in ones, without Excel.

  npm run --silent calc -- "=OXYGEN.HOURS_TO_FILL(60,1.5)"    one line each; a table as rows with tabs
  npm run --silent calc -- --file formulas.txt                one formula a line; "-" reads standard input
  npm run --silent calc -- plan.xlsx                          recomputes a workbook and compares it with its saved values
  npm run --silent calc -- plan.xlsx --values plain.xlsx      and writes a copy with values in place of formulas

  --json     one line a formula: a JSON table of values, dates as serials, errors as {"error","message"}

Where the shell spoils quotation marks inside a formula (Windows), put the formula in a file and use --file.
Exit code: 0 every formula has a value (a workbook: as saved); 1 some is an error (or differs); 2 misuse.
`;

/** Where the command writes, so that tests can listen. */
export interface CalcOutput {
  out(text: string): void;
  err(text: string): void;
}

class Misuse extends Error {}

const decode = (bytes: Buffer): string => {
  // PowerShell's ">" writes UTF-16 with a mark; other editors may put a mark before UTF-8.
  const isWide = bytes[0] === 0xff && bytes[1] === 0xfe;
  return bytes.toString(isWide ? "utf16le" : "utf8").replace(/^\uFEFF/, "");
};

const readFileOrMisuse = (file: string): Buffer => {
  try {
    return readFileSync(file === "-" ? 0 : file);
  } catch (thrown) {
    throw new Misuse(`can't read ${file}: ${(thrown as Error).message}`);
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

interface Setting {
  asJson: boolean;
  output: CalcOutput;
  source: FunctionSource;
}

const startEngine = async (source: FunctionSource): Promise<{ engine: Engine; ids: string[] }> => {
  const [{ createEngine }, functions] = await Promise.all([import("../engine/engine"), source()]);
  return { engine: createEngine(functions), ids: functions.map(([id]) => id) };
};

const computeFormulas = async (formulas: readonly string[], { asJson, output, source }: Setting): Promise<number> => {
  const [{ engine }, { cellJson, cellText }, { isEngineError }] = await Promise.all([
    startEngine(source),
    import("../engine/cellText"),
    import("../engine/engineValue"),
  ]);
  const tables = await engine.calculate(formulas);
  engine.dispose();
  const line = (cells: EngineValue[]): string => cells.map((cell) => cellText(cell).replace(/\s+/g, " ")).join("\t");
  for (const table of tables) {
    output.out(asJson ? JSON.stringify(table.map((row) => row.map(cellJson))) : table.map(line).join("\n"));
  }
  return tables.some((table) => table.some((row) => row.some(isEngineError))) ? 1 : 0;
};

const recompute = async (file: string, copy: string | undefined, setting: Setting): Promise<number> => {
  const { asJson, output, source } = setting;
  const bytes = readFileOrMisuse(file);
  const [{ engine, ids }, { readWorkbook, valuesOnly }, { compareWithSaved }, { cellJson, cellText }] =
    await Promise.all([
      startEngine(source),
      import("../engine/workbookFile"),
      import("../engine/compareWithSaved"),
      import("../engine/cellText"),
    ]);
  let saved;
  try {
    saved = readWorkbook(bytes, ids);
  } catch (thrown) {
    throw new Misuse(`${path.basename(file)}: ${(thrown as Error).message}`);
  }
  const computed = await engine.calculateWorkbook(saved.sheets, saved.names);
  engine.dispose();

  const compared = compareWithSaved(saved, computed);
  const text = (value: EngineValue | undefined): string =>
    value === undefined ? "(empty)" : cellText(value).replace(/\s+/g, " ");
  const json = (value: EngineValue | undefined): unknown => (value === undefined ? null : cellJson(value));
  for (const { sheet, address, area, value, cached, differs } of compared) {
    // Of a spill that is as saved its first cell is enough.
    if (!differs && area === undefined) continue;
    const cell = `${sheet}!${area ?? address}`;
    output.out(
      asJson
        ? JSON.stringify({ cell, value: json(value), cached: json(cached), differs })
        : `${cell}\t${text(value)}\t${text(cached)}${differs ? "\tDIFFERS" : ""}`,
    );
  }
  if (copy !== undefined) {
    try {
      writeFileSync(copy, valuesOnly(bytes, saved, computed));
    } catch (thrown) {
      throw new Misuse(`can't write ${copy}: ${(thrown as Error).message}`);
    }
  }
  const formulas = compared.filter(({ area }) => area !== undefined).length;
  const differing = compared.filter(({ differs }) => differs).length;
  const verdict = differing === 0 ? "none differs" : differing === 1 ? "1 differs" : `${differing} differ`;
  const summary = `${formulas} formulas fill ${compared.length} cells; ${verdict} from the saved values`;
  // With --json every line of the output is JSON.
  (asJson ? output.err : output.out)(summary);
  return differing > 0 ? 1 : 0;
};

/** Runs the command; the number is its exit code. */
export const calc = async (
  argv: readonly string[],
  output: CalcOutput,
  source: FunctionSource = generatedFunctions,
): Promise<number> => {
  try {
    const { values, positionals } = parse(argv);
    if (values.help) {
      output.out(usage.trimEnd());
      return 0;
    }
    const setting: Setting = { asJson: values.json ?? false, output, source };
    const inputs = positionals.map(unquote);
    const workbooks = inputs.filter((input) => !input.startsWith("=") && /\.xls[xm]$/i.test(input));
    if (workbooks.length > 0) {
      const hasMore = inputs.length > 1 || values.file !== undefined;
      if (hasMore) throw new Misuse("give one workbook and no formulas beside it");
      return await recompute(workbooks[0]!, values.values, setting);
    }
    if (values.values !== undefined) throw new Misuse("--values needs a workbook");
    const lines = values.file === undefined ? [] : decode(readFileOrMisuse(values.file)).split(/\r?\n/);
    const formulas = [...inputs, ...lines.map((line) => line.trim()).filter((line) => line !== "")];
    if (formulas.length === 0) throw new Misuse("give a formula, --file or a workbook");
    return await computeFormulas(formulas, setting);
  } catch (thrown) {
    if (thrown instanceof Misuse) {
      output.err(`${thrown.message}\n\n${usage.trimEnd()}`);
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
        values: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (thrown) {
    throw new Misuse((thrown as Error).message);
  }
};

if (require.main === module) {
  const write = (stream: NodeJS.WriteStream) => (text: string) => void stream.write(`${text}\n`);
  calc(process.argv.slice(2), { out: write(process.stdout), err: write(process.stderr) }).then((code) => {
    process.exitCode = code;
  });
}
