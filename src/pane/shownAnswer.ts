import type { FunctionRecord } from "../catalogue/record";
import { shownValue } from "../catalogue/shownValue";
import { isCellDate, isErrorCell } from "../cells/cellValues";
import { errorWords } from "../cells/errorCodes";
import { element } from "./element";

const rounded = (value: number): number => Number(value.toPrecision(10));

/** One cell of an answer in words: numbers with at most ten digits, errors with what they say. */
export function cellWords(cell: unknown, unitOrHeading: string): string {
  if (cell === null || cell === undefined) return "(empty)";
  if (isCellDate(cell)) return shownValue(cell.basicValue, cell.numberFormat.includes("hh") ? "date-time" : "date");
  if (isErrorCell(cell)) {
    const { code, message, basicValue } = cell as unknown as { code?: string; message?: string; basicValue?: string };
    const shown = code ?? basicValue ?? "#VALUE!";
    return `${shown} ${message || (errorWords[shown] ?? "")}`.trim();
  }
  if (typeof cell === "number") return shownValue(rounded(cell), unitOrHeading);
  return shownValue(cell as string | boolean, unitOrHeading);
}

const mostRows = 40;

/** An answer of one cell as a line, of several as a table. */
export function shownAnswer(cells: readonly (readonly unknown[])[], { result }: FunctionRecord): HTMLElement {
  if (cells.length === 1 && cells[0]!.length === 1) {
    const [[cell]] = cells as [[unknown]];
    const unit =
      isErrorCell(cell) || isCellDate(cell) || !result.unit || /date/.test(result.unit) ? "" : ` ${result.unit}`;
    return element(
      "p",
      { class: isErrorCell(cell) ? "answer refused" : "answer" },
      `${cellWords(cell, result.unit)}${unit}`,
    );
  }
  const head = result.table ? cells[0]!.map((cell) => cellWords(cell, "")) : undefined;
  const rows = result.table ? cells.slice(1) : cells;
  const row = (line: readonly unknown[]): HTMLElement =>
    element("tr", {}, ...line.map((cell, column) => element("td", {}, cellWords(cell, head?.[column] ?? result.unit))));
  return element(
    "div",
    { class: "scroll", tabindex: "0", role: "group", "aria-label": "Answer, a table" },
    element(
      "table",
      {},
      head
        ? element("thead", {}, element("tr", {}, ...head.map((cell) => element("th", { scope: "col" }, cell))))
        : null,
      element("tbody", {}, ...rows.slice(0, mostRows).map(row)),
    ),
    rows.length > mostRows ? element("p", { class: "note" }, `and ${rows.length - mostRows} more rows`) : null,
  );
}
