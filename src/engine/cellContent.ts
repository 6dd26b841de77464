import type { ICellData } from "@univerjs/core";
import { cellKind } from "./cellKind";
import { contentWithWords } from "./cellError";
import type { SheetCell } from "./workbookInput";

export const withEquals = (formula: string): string => {
  const trimmed = formula.trim();
  return trimmed.startsWith("=") ? trimmed : `=${trimmed}`;
};

/** What is typed in, in the engine's own form. */
export const cellContent = (cell: SheetCell): ICellData => {
  if (cell.formula !== undefined) return { f: withEquals(cell.formula) };
  const { value, words } = cell;
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: cellKind.boolean };
  if (typeof value === "number") return { v: value, t: cellKind.number };
  return { v: value, t: cellKind.text, ...(words ? contentWithWords(words) : {}) };
};
