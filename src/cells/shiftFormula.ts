import { columnLetters, isOnSheet, placeOf } from "./addresses";
import { tokensOf } from "./formulaTokens";

/** "B$3" so many rows and columns on; undefined where that is off the sheet. Parts with "$" stay. */
const shiftCorner = (corner: string, rows: number, columns: number): string | undefined => {
  const match = /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(corner)!;
  const [, fixedColumn, letters, fixedRow, digits] = match as unknown as [string, string, string, string, string];
  // Of a row alone ("$3") the first mark is the row's.
  const isRowFixed = letters === "" ? fixedColumn !== "" : fixedRow !== "";
  const column = letters === "" ? "" : shiftedColumn(letters, fixedColumn === "" ? columns : 0);
  const row = digits === "" ? "" : String(Number(digits) + (isRowFixed ? 0 : rows));
  if (column === undefined || (row !== "" && Number(row) < 1)) return undefined;
  const shifted = fixedColumn + column + fixedRow + row;
  return isOnSheet(shifted) ? shifted : undefined;
};

const shiftedColumn = (letters: string, columns: number): string | undefined => {
  const column = placeOf(`${letters}1`).column + columns;
  return column < 0 ? undefined : columnLetters(column);
};

/**
 * A formula as it reads when it is filled so many rows down and columns right: references move unless "$" holds them,
 * one that would leave the sheet becomes #REF!.
 */
export const shiftFormula = (formula: string, rows: number, columns: number): string =>
  tokensOf(formula)
    .map(({ kind, text }) => {
      if (kind !== "reference" || text.indexOf("[") > text.lastIndexOf("!") || text.indexOf("#") >= 0) return text;
      const mark = text.lastIndexOf("!") + 1;
      const corners = text.slice(mark).split(":");
      if (!corners.every((corner) => /^\$?[A-Za-z]{0,3}\$?\d*$/.test(corner))) return text;
      const shifted = corners.map((corner) => shiftCorner(corner, rows, columns));
      return text.slice(0, mark) + (shifted.indexOf(undefined) < 0 ? shifted.join(":") : "#REF!");
    })
    .join("");
