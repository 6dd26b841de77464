import { areaOf, cellName, isInArea, placeOf } from "../../cells/addresses";
import type { SheetDescription, Validation } from "../writer";

/** Entries below each other in one column that one rule holds for. */
export interface InputRun {
  sheet: string;
  column: string;
  first: number;
  rows: number;
  validation: Validation;
  what: string;
  /** The heading over the first row, if it is that of a table of entries. */
  heading?: { at: string; words: string };
}

const ruleOf = ({ rule, refusal, blankPasses }: Validation): string =>
  JSON.stringify([rule, refusal?.words, blankPasses ?? true]);

/** The rule of a cell: its own, or that of a range of the sheet. One that only warns lets anything stay. */
const ruleFor = ({ cells, validations = [] }: SheetDescription, address: string): Validation | undefined =>
  cells[address]!.validation ??
  validations.find(
    ({ range, refusal }) => (refusal?.weight ?? "stop") === "stop" && isInArea(placeOf(address), areaOf(range)),
  );

/** What the reader may change on a sheet, with the rules for it. */
export const inputRuns = (sheet: SheetDescription): InputRun[] => {
  const cells = Object.entries(sheet.cells)
    .flatMap(([address, cell]) => {
      const isInput = (cell.role === "input" || cell.role === "tableInput") && cell.unlocked !== false;
      const validation = ruleFor(sheet, address);
      return isInput && validation ? [{ ...placeOf(address), cell, validation }] : [];
    })
    .sort((one, other) => one.column - other.column || one.row - other.row);
  const runs: (InputRun & { at: number; from: number })[] = [];
  for (const { row, column, cell, validation } of cells) {
    const before = runs[runs.length - 1];
    const isNext =
      before?.at === column &&
      before.from + before.rows === row &&
      cell.role === "tableInput" &&
      ruleOf(before.validation) === ruleOf(validation);
    if (isNext) {
      before.rows++;
      continue;
    }
    const above = row > 0 ? sheet.cells[cellName(row - 1, column)] : undefined;
    const isHeaded = cell.role === "tableInput" && above?.role === "tableHeader" && typeof above.value === "string";
    runs.push({
      sheet: sheet.name,
      column: cellName(0, column).replace(/\d+$/, ""),
      first: row + 1,
      rows: 1,
      validation,
      what: validation.prompt?.title ?? "Entry",
      ...(isHeaded ? { heading: { at: cellName(row - 1, column), words: String(above.value) } } : {}),
      at: column,
      from: row,
    });
  }
  return runs;
};
