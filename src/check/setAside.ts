import { cellName } from "../cells/addresses";
import type { CheckedWorkbook, Finding } from "./workbook";

/** Findings that somebody looked at and lets stand are kept in the workbook, on a sheet of this name that all can read. */
export const notesSheet = "Check notes";
export const notesHeadings = ["sheet", "cell", "rule", "reason"] as const;

export interface Note {
  readonly sheet: string;
  readonly cell: string;
  readonly rule: string;
  readonly reason: string;
}

/** The notes of a workbook; a row without a reason sets nothing aside. */
export function notesOf(workbook: CheckedWorkbook): Note[] {
  const sheet = workbook.sheets.filter(({ name }) => name.toLowerCase() === notesSheet.toLowerCase())[0];
  if (!sheet) return [];
  const notes: Note[] = [];
  const text = (row: number, column: number): string =>
    String(sheet.cells.get(cellName(row, column))?.value ?? "").trim();
  for (let row = 1; text(row, 0) !== "" || text(row, 1) !== ""; row++) {
    const note = { sheet: text(row, 0), cell: text(row, 1).toUpperCase(), rule: text(row, 2), reason: text(row, 3) };
    if (note.reason !== "") notes.push(note);
  }
  return notes;
}

export const isSetAside = ({ sheet, cell, rule }: Finding, notes: readonly Note[]): boolean =>
  notes.some(
    (note) =>
      note.sheet.toLowerCase() === sheet.toLowerCase() && note.cell === cell && note.rule.toLowerCase() === rule,
  );
