import { evaluateCall, argumentCells, firstExample, parseConstantFormula } from "../src/catalogue/constantFormula";
import { readCatalogue, type ReadFunction } from "../src/catalogue/readCatalogue";
import { defaultWords } from "../src/catalogue/readCatalogue";
import { CellError, invalid } from "../src/cells/cellValues";
import { constantRows } from "../src/models/constants";
import { exampleDifference } from "./exampleDifference";

const found = readCatalogue();
const byId = new Map(found.map((each) => [each.record.id, each]));
const callById = (id: string) => byId.get(id)?.call;

/** A result cell as an example writes it. */
const plain = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell
    ? (cell as { basicValue: number }).basicValue
    : cell;

const allowedCell = (cell: unknown): boolean => {
  if (cell instanceof CellError) return (cell.code === "#VALUE!" || cell.code === "#N/A") && cell.message.length > 0;
  const value = plain(cell);
  return (
    (typeof value === "number" && Number.isFinite(value)) || typeof value === "string" || typeof value === "boolean"
  );
};

const firstCells = (read: ReadFunction) => argumentCells(firstExample(read.record), callById);

/** Every cell of an argument replaced. */
const replaced = (cells: (unknown[][] | undefined)[], index: number, cell: unknown): (unknown[][] | undefined)[] => {
  const copy = Array.from({ length: Math.max(cells.length, index + 1) }, (_, at) => cells[at]);
  copy[index] = [[cell]];
  return copy;
};

it("finds functions", () => {
  expect(found.length).toBeGreaterThan(0);
});

describe.each(found.map((each) => [each.record.id, each] as const))("%s", (_id, read) => {
  const { record, call, args } = read;

  it.each(record.examples.map((example) => [example.formula, example] as const))("example %s", (_formula, example) => {
    const result = evaluateCall(parseConstantFormula(example.formula), callById);
    expect(exampleDifference(example, result as never[][])).toBeUndefined();
  });

  it("calls itself in its first example, without an error", () => {
    expect(firstExample(record).id).toBe(record.id);
    expect(typeof record.examples[0]!.result === "object" && "error" in record.examples[0]!.result).toBe(false);
  });

  it("names related functions that exist", () => {
    expect(record.seeAlso.filter((other) => !byId.has(other) || other === record.id)).toEqual([]);
  });

  it("lists its defaults in CONSTANTS", () => {
    const missing = record.arguments
      .filter((argument) => argument.default !== undefined)
      .filter((argument) => {
        const row =
          constantRows.find((each) => each.name === `${argument.name} (${record.id})`) ??
          constantRows.find((each) => each.name === argument.name);
        return row?.value !== argument.default;
      });
    expect(missing.map((argument) => `${argument.name}=${defaultWords(argument.default!)}`)).toEqual([]);
  });

  it("has for each optional argument an example whose answer changes when it is left out, and a source for each value", () => {
    const changes = (index: number): boolean =>
      record.examples.some((example) => {
        const made = parseConstantFormula(example.formula);
        if (made.id !== record.id) return false;
        const cells = argumentCells(made, callById);
        if (cells[index] === undefined) return false;
        const without = cells.map((each, at) => (at === index ? undefined : each));
        return JSON.stringify(call(...cells)) !== JSON.stringify(call(...without));
      });
    const untold = record.arguments.filter((argument, index) => argument.optional && !changes(index));
    expect(untold.map(({ name }) => name)).toEqual([]);
    const unsourced = record.examples.filter(
      ({ result, source, note }) =>
        !(typeof result === "object" && !Array.isArray(result)) && source === undefined && note === undefined,
    );
    expect(unsourced.map(({ formula }) => formula)).toEqual([]);
  });

  it("says what each column of its result is", () => {
    const { gives, table } = record.result;
    const width = call(...firstCells(read))[0]!.length;
    if (Array.isArray(gives)) expect(gives).toHaveLength(width);
    else if (!table) expect(width).toBe(1);
  });

  it("gives only results a cell can hold", () => {
    expect(
      call(...firstCells(read))
        .flat()
        .filter((cell) => !allowedCell(cell)),
    ).toEqual([]);
  });

  it("is pure: the input is left alone and the answer repeats", () => {
    const cells = firstCells(read);
    const before = JSON.stringify(cells);
    const first = JSON.stringify(call(...cells));
    expect(JSON.stringify(call(...cells))).toBe(first);
    expect(JSON.stringify(cells)).toBe(before);
  });

  if (args.names.length === 0) return;

  describe.each(args.names.map((name, index) => [name, index] as const))("argument %s", (name, index) => {
    const reader = args.readers[index]!;
    const bad = (cell: unknown): unknown => call(...replaced(firstCells(read), index, cell))[0]![0];
    const namesArgument = (cell: unknown): void => {
      expect(cell).toBeInstanceOf(CellError);
      expect((cell as CellError).code).toBe("#VALUE!");
      expect((cell as CellError).message).toContain(name);
    };

    it("answers every kind of cell with a value or words", () => {
      for (const cell of [
        null,
        undefined,
        "",
        0,
        -1,
        1e300,
        -1e300,
        1e-300,
        NaN,
        Infinity,
        true,
        false,
        "text",
        "5 parsecs",
        "7",
        {},
        { type: "Double", basicValue: 2 },
        { type: "Entity", basicValue: "#VALUE!" },
        43000.5,
      ]) {
        const result = call(...replaced(firstCells(read), index, cell));
        expect({ cell, wrong: result.flat().filter((each) => !allowedCell(each)) }).toEqual({ cell, wrong: [] });
      }
    });

    const takesAnything = reader.shape === "range" && reader.takesAnything;
    const takesBlanks = takesAnything || (reader.shape === "cell" && reader.mayBeBlank);

    if (takesAnything) {
      it("answers an error cell and a blank with different words, and refuses to be left out", () => {
        const answers = [invalid("from elsewhere"), null, 5].map((cell) =>
          JSON.stringify(call(...replaced(firstCells(read), index, cell))),
        );
        expect(new Set(answers).size).toBe(3);
        namesArgument(call(...firstCells(read).map((cells, at) => (at === index ? undefined : cells)))[0]![0]);
      });
      return;
    }

    it("lets an error cell out unchanged", () => {
      for (const error of [
        invalid("from elsewhere"),
        { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
      ]) {
        const result = call(...replaced(firstCells(read), index, error));
        expect(result.flat().every((cell) => cell === error)).toBe(true);
      }
    });

    if (reader.optional) {
      it("takes its default where it is left out, and refuses a blank cell with the way out", () => {
        const cells = Array.from({ length: args.names.length }, (_, at) => firstCells(read)[at]);
        cells[index] = undefined;
        if (reader.defaultValue !== undefined)
          expect(JSON.stringify(call(...replaced(firstCells(read), index, reader.defaultValue)))).toBe(
            JSON.stringify(call(...cells)),
          );
        for (const blank of [null, ""]) {
          namesArgument(bad(blank));
          expect((bad(blank) as CellError).message).toMatch(/is blank.*leave the argument out of the formula/);
        }
      });
    } else if (reader.shape === "range" && reader.mayBeBlank) {
      it("takes a blank for a range with nothing in it, and refuses to be left out", () => {
        for (const blank of [null, ""]) expect(allowedCell(bad(blank))).toBe(true);
        namesArgument(call(...firstCells(read).map((cells, at) => (at === index ? undefined : cells)))[0]![0]);
      });
    } else if (takesBlanks) {
      it("tells of a blank in its answer", () => {
        for (const blank of [null, ""]) expect(bad(blank)).toMatch(/blank/);
      });
    } else {
      it("refuses a blank and names the argument", () => {
        for (const blank of [null, ""]) namesArgument(bad(blank));
        expect((bad(null) as CellError).message).toMatch(/blank|column/);
      });
    }

    if (reader.shape === "cell" && Number.isFinite(reader.min)) {
      it("refuses text, TRUE and numbers out of range, and names the argument", () => {
        for (const cell of ["fast", true, "5 parsecs", "35 widgets"]) namesArgument(bad(cell));
        if (reader.min > -Number.MAX_VALUE) namesArgument(bad(reader.min - 1 - Math.abs(reader.min)));
        if (reader.max < Number.MAX_VALUE) namesArgument(bad(reader.max + 1 + Math.abs(reader.max)));
        if (reader.wholeOnly && !reader.unit.startsWith("date")) namesArgument(bad(1.5));
      });
    }
  });

  const broadcasting = args.names.flatMap((name, index) =>
    args.readers[index]!.shape === "cell" ? [[name, index] as const] : [],
  );
  if (record.result.table) {
    if (broadcasting.length > 0) {
      it("refuses a range where one cell is wanted", () => {
        for (const [name, index] of broadcasting) {
          const cells = firstCells(read);
          cells[index] = [[1], [1]];
          const result = call(
            ...Array.from({ length: Math.max(cells.length, index + 1) }, (_, at) => cells[at]),
          )[0]![0] as CellError;
          expect(result).toBeInstanceOf(CellError);
          expect(result.message).toContain(name);
        }
      });
    }
    return;
  }

  it.each(broadcasting)("broadcasts over a column, a row and a block of %s", (_name, index) => {
    const cells = Array.from({ length: Math.max(firstCells(read).length, index + 1) }, (_, at) => firstCells(read)[at]);
    const cell = cells[index]?.[0]?.[0] ?? (args.readers[index]!.defaultValue as unknown) ?? null;
    const single = JSON.stringify(call(...replaced(cells, index, cell))[0]![0]);
    const error = invalid("from elsewhere");
    cells[index] = [
      [cell, error],
      [cell, cell],
      [error, cell],
    ];
    const block = call(...cells);
    expect(block.map((line) => line.length)).toEqual([2, 2, 2]);
    expect(block[0]![1]).toBe(error);
    expect(block[2]![0]).toBe(error);
    expect([block[0]![0], block[1]![0], block[1]![1], block[2]![1]].map((each) => JSON.stringify(each))).toEqual([
      single,
      single,
      single,
      single,
    ]);
  });

  if (broadcasting.length > 1) {
    it("answers #N/A with words where a cell has no partner", () => {
      const [first, second] = broadcasting as [readonly [string, number], readonly [string, number]];
      const cells = Array.from(
        { length: Math.max(firstCells(read).length, second[1] + 1) },
        (_, at) => firstCells(read)[at],
      );
      const repeat = (index: number, times: number) =>
        Array.from({ length: times }, () => [cells[index]?.[0]?.[0] ?? null]);
      cells[first[1]] = repeat(first[1], 2);
      cells[second[1]] = repeat(second[1], 3);
      const result = call(...cells);
      expect(result).toHaveLength(3);
      expect((result[2]![0] as CellError).code).toBe("#N/A");
      expect((result[2]![0] as CellError).message).toContain("no partner");
    });
  }
});
