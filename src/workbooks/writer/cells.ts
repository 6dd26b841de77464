import { addressOf, placeOf } from "../../cells/addresses";
import type { CellDescription, Cells, Scalar } from "./description";
import type { Role } from "./theme";

type Extra = Omit<CellDescription, "role" | "value" | "formula">;

/** A constant, or a formula when it starts with "=". */
const cell = (role: Role, content: Scalar | undefined, extra: Extra = {}): CellDescription =>
  typeof content === "string" && content.startsWith("=")
    ? { ...extra, role, formula: content }
    : { ...extra, role, ...(content === undefined ? {} : { value: content }) };

export const title = (words: string, extra?: Extra): CellDescription => cell("title", words, extra);
export const subtitle = (words: string, extra?: Extra): CellDescription => cell("subtitle", words, extra);
/** Without words it carries the heading's rule on over further columns. */
export const heading = (words = "", extra?: Extra): CellDescription => cell("heading", words, extra);
/** A heading whose rule runs over so many columns. */
export const headingRow = (words: string, columns: number): CellDescription[] => [
  heading(words),
  ...Array.from({ length: columns - 1 }, () => heading()),
];
/** Running text, wrapped; merge it over columns with `across`. */
export const text = (content: Scalar, extra?: Extra): CellDescription => cell("text", content, extra);
export const label = (words: string, extra?: Extra): CellDescription => cell("label", words, extra);
export const unit = (words: string): CellDescription => cell("unit", words);
export const note = (words: string, extra?: Extra): CellDescription => cell("note", words, extra);
/** Begin the words with "Caution:"; the box and the bold letters must not be the only sign. */
export const caution = (words: string, extra?: Extra): CellDescription => cell("caution", words, extra);
/** A cell the user changes; unlocked on a protected sheet. Leave the content out for an empty one. */
export const input = (content?: Scalar, extra?: Extra): CellDescription => cell("input", content, extra);
export const output = (content: Scalar, extra?: Extra): CellDescription => cell("output", content, extra);
/** The one result a sheet is there for. */
export const answer = (content: Scalar, extra?: Extra): CellDescription => cell("answer", content, extra);
export const tableHeader = (words: string, extra?: Extra): CellDescription => cell("tableHeader", words, extra);
export const tableCell = (content?: Scalar, extra?: Extra): CellDescription => cell("tableCell", content, extra);
export const tableInput = (content?: Scalar, extra?: Extra): CellDescription => cell("tableInput", content, extra);
export const total = (content: Scalar, extra?: Extra): CellDescription => cell("total", content, extra);

/** A formula that spills a table; its first row is the heading unless `spill.header` says no. */
export const table = (formula: string, extra: Extra = {}): CellDescription => ({
  ...extra,
  role: "tableCell",
  formula,
  spill: { header: true, ...extra.spill },
});

/** A jump to another place of the workbook: `link("Plan!A1", "To the plan")`. */
export const link = (to: string, words: string, tip?: string): CellDescription => ({
  role: "link",
  value: words,
  link: { to, ...(tip ? { tip } : {}) },
});

/** Rows of cells from the top-left address on; null leaves a cell alone. Spread it into `cells`. */
export const block = (topLeft: string, rows: readonly (readonly (CellDescription | null)[])[]): Cells => {
  const start = placeOf(topLeft);
  return Object.fromEntries(
    rows.flatMap((row, down) =>
      row.flatMap((description, right) =>
        description ? [[addressOf({ row: start.row + down, column: start.column + right }), description] as const] : [],
      ),
    ),
  );
};
