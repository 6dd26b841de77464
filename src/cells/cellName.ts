/** Rows and columns from 0, both ends included. */
export interface Area {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

export const columnLetters = (column: number): string => {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
};

/** Row and column from 0 to "B3". */
export const cellName = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** "B3" or "$B$3" to row and column from 0. Throws on anything else. */
export const cellOfName = (name: string): { row: number; column: number } => {
  const match = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})$/.exec(name);
  if (!match) throw new Error(`"${name}" is no cell address`);
  let column = 0;
  for (const letter of match[1]!.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(match[2]) - 1, column: column - 1 };
};

/** "B3:C5" or "B3" to its area. Throws on anything else. */
export const areaOf = (reference: string): Area => {
  const [from, to] = reference.split(":");
  const start = cellOfName(from!);
  const end = to === undefined ? start : cellOfName(to);
  return { startRow: start.row, startColumn: start.column, endRow: end.row, endColumn: end.column };
};

/** The addresses of all cells of "B3:C5", row by row. */
export const cellsOfArea = (reference: string): string[] => {
  const { startRow, startColumn, endRow, endColumn } = areaOf(reference);
  const names: string[] = [];
  for (let row = startRow; row <= endRow; row++) {
    for (let column = startColumn; column <= endColumn; column++) names.push(cellName(row, column));
  }
  return names;
};
