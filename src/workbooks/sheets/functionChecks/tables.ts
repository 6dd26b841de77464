import { catalogue } from "../../../catalogue/catalogue";
import type { FunctionRecord } from "../../../catalogue/record";
import { holdsDates } from "../../../catalogue/shownValue";
import {
  formats,
  heading,
  link,
  note,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  type CellDescription,
  type Cells,
  type Scalar,
  type SheetDescription,
} from "../../writer";
import { addressOf, areaFrom, rangeOf } from "../../../cells/addresses";

/** Where the table of an example stands, and its expected cells. */
export interface TablePlace {
  sheet: string;
  title: string;
  live: string;
  expected: string;
}

type Example = FunctionRecord["examples"][number];
type TableExample = Example & { result: Scalar[][] };

interface Layout {
  sheet: string;
  columns: readonly number[];
  /** First column of the live and of the expected table, and whether they stand side by side. */
  place(width: number): { live: number; expected: number; beside: boolean };
}

const numberTables: Layout = {
  sheet: "Tables",
  columns: [2, ...Array.from({ length: 11 }, () => 15)],
  place: (width) => ({ live: 1, expected: width <= 5 ? 7 : 1, beside: width <= 5 }),
};

/** The last column of a table of words is the long one, so tables end at the same column. */
const wordTables: Layout = {
  sheet: "Word tables",
  columns: [2, 30, 14, 24, 80],
  place: (width) => ({ live: 5 - width, expected: 5 - width, beside: false }),
};

const longWords = 30;

const examples = catalogue.flatMap(({ id, examples: all, result }) =>
  all
    .filter((example): example is TableExample => Array.isArray(example.result) && !example.localOnly)
    .map((example) => ({ id, example, hasHeader: result.table })),
);

const layoutOf = ({ result }: TableExample): Layout =>
  result.flat().some((value) => typeof value === "string" && value.length > longWords) ? wordTables : numberTables;

const expectedCell = (rows: Scalar[][], down: number, right: number, hasHeader: boolean): CellDescription => {
  const value = rows[down]![right]!;
  if (hasHeader && down === 0) return tableHeader(String(value));
  const isDate = typeof value === "number" && hasHeader && holdsDates(`${rows[0]![right]!} ${rows[down]![0]!}`);
  return tableCell(value, { wrap: true, ...(isDate ? { format: formats.date } : {}) });
};

const cells: Record<string, Record<string, CellDescription>> = { [numberTables.sheet]: {}, [wordTables.sheet]: {} };
const nextRow: Record<string, number> = { [numberTables.sheet]: 4, [wordTables.sheet]: 4 };
const places = new Map<string, TablePlace>();

for (const { id, example, hasHeader } of examples) {
  const layout = layoutOf(example);
  const { sheet } = layout;
  const target = cells[sheet]!;
  const [height, width] = [example.result.length, example.result[0]!.length];
  const at = layout.place(width);
  const top = nextRow[sheet]!;
  const title = addressOf({ row: top, column: 1 });
  const last = layout.columns.length - 1;
  target[title] = heading(id, { across: last });
  target[addressOf({ row: top + 1, column: 1 })] = { role: "text", value: example.formula, across: last };
  const liveRow = top + 3;
  const expectedRow = at.beside ? liveRow : liveRow + height + 1;
  target[addressOf({ row: liveRow - 1, column: at.live })] = note("result");
  target[addressOf({ row: expectedRow - 1, column: at.expected })] = note("expected");
  const live = { row: liveRow, column: at.live };
  target[addressOf(live)] = {
    role: "tableCell",
    formula: example.formula,
    wrap: true,
    spill: { header: hasHeader },
  };
  example.result.forEach((row, down) =>
    row.forEach((_, right) => {
      target[addressOf({ row: expectedRow + down, column: at.expected + right })] = expectedCell(
        example.result,
        down,
        right,
        hasHeader,
      );
    }),
  );
  const area = (row: number, column: number): string => rangeOf(areaFrom({ row, column }, height, width));
  places.set(example.formula, {
    sheet,
    title,
    live: area(liveRow, at.live),
    expected: area(expectedRow, at.expected),
  });
  nextRow[sheet] = expectedRow + height + 1;
}

export const tablePlaces: ReadonlyMap<string, TablePlace> = places;

/**
 * "ok" if the live table has the expected size and every cell agrees: numbers within the tolerance, the rest letter by
 * letter. A number never passes for text of the same look, nor 0 for an empty cell.
 */
export const comparison = ({ sheet, live, expected }: TablePlace, { result, tolerance }: Example): string => {
  const rows = result as Scalar[][];
  const on = sheet.includes(" ") ? `'${sheet}'!` : `${sheet}!`;
  const [first] = live.split(":");
  const [found, wanted] = [on + live, on + expected];
  const margin = tolerance === undefined ? `1E-9*IF(ABS(${wanted})>1,ABS(${wanted}),1)` : String(tolerance);
  const same = `(ISNUMBER(${found})=ISNUMBER(${wanted}))*IFERROR(--(ABS(${found}-${wanted})<=${margin}),--EXACT(${found},${wanted}))`;
  return (
    `=IFERROR(IF(AND(ROWS(${on}${first}#)=${rows.length},COLUMNS(${on}${first}#)=${rows[0]!.length}),` +
    `IF(SUMPRODUCT(${same})=${rows.length * rows[0]!.length},"ok","differs"),"differs"),"differs")`
  );
};

const sheetOf = ({ sheet, columns }: Layout, heading: string): SheetDescription => ({
  name: sheet,
  columns,
  tab: tabColours.reference,
  freezeAt: "A4",
  print: { orientation: "landscape", titleRows: "1:1" },
  cells: {
    B1: title(heading),
    B2: text(
      "Each live table and the cells it should hold. The sheet Checks compares them cell by cell, their size too.",
      { across: columns.length - 1 },
    ),
    B3: link("Checks!B2", "To the checks"),
    ...cells[sheet],
  } satisfies Cells,
});

export const tablesSheet = sheetOf(numberTables, "Results that fill several cells");
export const wordTablesSheet = sheetOf(wordTables, "Results with long words");
