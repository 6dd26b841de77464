import { type CellArgument, type Cells, isBlank, isBlankRow, isFailure, isLeftOut, plainCell } from "./argument";
import { ChoiceArgument, TextArgument } from "./text";

/** What a clerk writes for "no value": never a heading, so that it is refused and not passed over. */
const placeholder = /^(n\/?a|none|nil|unknown|tbd|pending)$/i;

/** Letters of any script as plain ranges: the oldest runtimes of Excel don't know Unicode classes in expressions. */
const letter = "A-Za-z\\u00C0-\\u065F\\u066A-\\u1FFF\\u2C00-\\uFFFF";
const letterFirst = new RegExp(`^[${letter}]`);
/** "about 12" and "March 1" are values written out, "O2 need" is a heading. */
const numberInside = new RegExp(`[^${letter}\\d]\\d`);
/** A letter that stands for a digit: "l2" for 12, "O.5" for 0.5. */
const mistypedNumber = /^[lIoO][\d.,lIoO]*\d[\d.,lIoO]*$/;

/** Text at the head of a column: it begins with a letter, holds no number and can't be read as a value. */
export const isHeading = (cell: unknown, element: CellArgument): boolean => {
  const plain = plainCell(cell);
  if (typeof plain !== "string") return false;
  const text = plain.trim();
  return (
    letterFirst.test(text) &&
    !numberInside.test(text) &&
    !mistypedNumber.test(text) &&
    !placeholder.test(text) &&
    isFailure(element.read(text, ""))
  );
};

const holdsNumbers = (reader: CellArgument): boolean =>
  !(reader instanceof TextArgument) && !(reader instanceof ChoiceArgument);

/**
 * Is the first row one of headings? Every cell of it that should hold a number, date or flag is a heading and there are
 * rows below. Where no column holds numbers (a list of choices), the row below must read, so that a mistyped word is
 * refused and not passed over.
 */
function startsWithHeadings(cells: Cells, rows: number, readerOf: (column: number) => CellArgument): boolean {
  if (rows < 2) return false;
  let told = 0;
  let choices = 0;
  for (let column = 0; column < cells[0]!.length; column++) {
    const reader = readerOf(column);
    const cell = cells[0]![column];
    if (reader instanceof TextArgument) continue;
    if (isHeading(cell, reader)) {
      if (holdsNumbers(reader)) told++;
      else if (!isFailure(reader.read(cells[1]![column], ""))) choices++;
      else return false;
    } else if (!(reader.mayBeBlank && isBlank(plainCell(cell)))) return false;
  }
  return told + choices > 0;
}

export interface CountedRows {
  /** Index of the first row that counts: 1 below headings. */
  readonly from: number;
  /** Index after the last row that counts; the rows below it are blank. */
  readonly to: number;
}

/** Number of rows up to the last one that holds something. */
export function filledRows(cells: Cells): number {
  let rows = cells.length;
  while (rows > 0 && isBlankRow(cells[rows - 1]!)) rows--;
  return rows;
}

/**
 * The one rule for lists and tables: blank rows at the end are cut off, then a first row of headings is passed over.
 * Blank rows in between stay, and are refused where they are read.
 */
export function countedRows(cells: Cells, readerOf: (column: number) => CellArgument): CountedRows {
  const to = filledRows(cells);
  return { from: startsWithHeadings(cells, to, readerOf) ? 1 : 0, to };
}

/** A range with nothing in it, left out or not. */
export const isEmpty = (cells: Cells | null | undefined): cells is null | undefined =>
  isLeftOut(cells) || filledRows(cells) === 0;
