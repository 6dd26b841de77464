/** `npm run calc`: computes formulas, or recomputes a workbook, with the add-in's functions and without Excel. */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import type { Engine } from "../engine/engine";
import type { EngineValue } from "../engine/engineValue";

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

const startEngine = async (): Promise<{ engine: Engine; ids: string[] }> => {
  const list = import("../catalogue/generated/functions").catch((thrown: NodeJS.ErrnoException) => {
    if (thrown.code !== "MODULE_NOT_FOUND") throw thrown;
    throw new Error("the list of functions is not made yet: run npm run generate first", { cause: thrown });
  });
  const [{ createEngine }, { functions }] = await Promise.all([import("../engine/engine"), list]);
  return { engine: createEngine(functions), ids: functions.map(([id]) => id) };
};

const computeFormulas = async (formulas: readonly string[], asJson: boolean, { out }: CalcOutput): Promise<number> => {
  const [{ engine }, { cellJson, cellText }, { isEngineError }] = await Promise.all([
    startEngine(),
    import("../engine/cellText"),
    import("../engine/engineValue"),
  ]);
  const tables = await engine.calculate(formulas);
  engine.dispose();
  const line = (cells: EngineValue[]): string => cells.map((cell) => cellText(cell).replace(/\s+/g, " ")).join("\t");
  for (const table of tables) {
    out(asJson ? JSON.stringify(table.map((row) => row.map(cellJson))) : table.map(line).join("\n"));
  }
  return tables.some((table) => table.some((row) => row.some(isEngineError))) ? 1 : 0;
};

const same = (
  a: EngineValue | undefined,
  b: EngineValue | undefined,
  json: (value: EngineValue) => unknown,
): boolean => {
  const plain = (value: EngineValue | undefined): unknown => {
    // An empty text and no value look alike in a cell, and a file may hold either.
    if (value === undefined || value === "") return "";
    const cell = json(value);
    return typeof cell === "object" && cell !== null ? (cell as { error: string }).error : cell;
  };
  const [left, right] = [plain(a), plain(b)];
  if (typeof left !== "number" || typeof right !== "number") return left === right;
  // Two engines may add in another order: a few units in the last of 15 digits.
  return Math.abs(left - right) <= 1e-12 * Math.max(Math.abs(left), Math.abs(right)) + 1e-300;
};

const recompute = async (
  file: string,
  copy: string | undefined,
  asJson: boolean,
  output: CalcOutput,
): Promise<number> => {
  const bytes = readFileOrMisuse(file);
  const [{ engine, ids }, { filledCells, readWorkbook, valuesOnly }, { cellJson, cellText }, { cellsOfArea }] =
    await Promise.all([
      startEngine(),
      import("../engine/workbookFile"),
      import("../engine/cellText"),
      import("../engine/cellName"),
    ]);
  let saved;
  try {
    saved = readWorkbook(bytes, ids);
  } catch (thrown) {
    throw new Misuse(`${path.basename(file)}: ${(thrown as Error).message}`);
  }
  const computed = await engine.calculateWorkbook(saved.sheets, saved.names);
  engine.dispose();

  const text = (value: EngineValue | undefined): string =>
    value === undefined ? "(empty)" : cellText(value).replace(/\s+/g, " ");
  let formulaCount = 0;
  let cellCount = 0;
  let differences = 0;
  for (const { name, cells } of computed) {
    for (const [address, cell] of Object.entries(cells)) {
      formulaCount++;
      const filled = new Map(filledCells(address, cell));
      // Cells that the saved result filled and the new one doesn't.
      const input = saved.sheets.find((sheet) => sheet.name === name)?.cells[address];
      const savedArea = input?.formula !== undefined && input.ref ? input.ref : address;
      for (const inner of cellsOfArea(savedArea)) if (!filled.has(inner)) filled.set(inner, "");
      for (const [inner, value] of filled) {
        cellCount++;
        const before = saved.cached(name, inner);
        const differs = !same(value, before, cellJson);
        if (differs) differences++;
        if (!differs && inner !== address) continue;
        const place = `${name}!${inner === address ? cell.area : inner}`;
        if (asJson) {
          const line = {
            cell: `${name}!${inner}`,
            value: cellJson(value),
            cached: before === undefined ? null : cellJson(before),
            differs,
          };
          output.out(JSON.stringify(line));
        } else {
          output.out(`${place}\t${text(value)}\t${text(before)}${differs ? "\tDIFFERS" : ""}`);
        }
      }
    }
  }
  if (copy !== undefined) writeFileSync(copy, valuesOnly(bytes, saved, computed));
  const summary = `${formulaCount} formulas fill ${cellCount} cells; ${differences === 0 ? "none differs" : differences === 1 ? "1 differs" : `${differences} differ`} from the saved values`;
  if (asJson) output.err(summary);
  else output.out(summary);
  return differences > 0 ? 1 : 0;
};

/** Runs the command; the number is its exit code. */
export const calc = async (argv: readonly string[], output: CalcOutput): Promise<number> => {
  try {
    const { values, positionals } = parse(argv);
    if (values.help) {
      output.out(usage.trimEnd());
      return 0;
    }
    const inputs = positionals.map(unquote);
    const workbooks = inputs.filter((input) => !input.startsWith("=") && /\.xls[xm]$/i.test(input));
    if (workbooks.length > 0) {
      if (inputs.length > 1 || values.file !== undefined)
        throw new Misuse("give one workbook and no formulas beside it");
      return await recompute(workbooks[0]!, values.values, values.json ?? false, output);
    }
    if (values.values !== undefined) throw new Misuse("--values needs a workbook");
    const lines = values.file === undefined ? [] : decode(readFileOrMisuse(values.file)).split(/\r?\n/);
    const formulas = [...inputs, ...lines.map((line) => line.trim()).filter((line) => line !== "")];
    if (formulas.length === 0) throw new Misuse("give a formula, --file or a workbook");
    return await computeFormulas(formulas, values.json ?? false, output);
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
