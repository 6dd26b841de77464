/** A cell by row and column from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** Rows and columns from 0, both ends included. */
export interface Area {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

/** Rows and columns of a sheet. Source: Microsoft, "Excel specifications and limits". */
export const sheetSize = { rows: 1_048_576, columns: 16_384 };

export const columnLetters = (column: number): string => {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
};

/** Row and column from 0 to "B3". */
export const cellName = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

export const addressOf = ({ row, column }: Place): string => cellName(row, column);

const columnOf = (letters: string): number => {
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
};

const checked = (place: Place, text: string): Place => {
  if (place.row >= sheetSize.rows || place.column >= sheetSize.columns) {
    throw new Error(`"${text}" is beyond the sheet's edge`);
  }
  return place;
};

/** Does a corner of a reference ("$B$3", a column "B", a row "3") lie on the sheet? "XFE1" is a name. */
export const isOnSheet = (corner: string): boolean => {
  const [, letters = "A", digits = "1"] = /^\$?([A-Za-z]*)\$?(\d*)$/.exec(corner) || [];
  // No row is 0, and Excel writes none with a 0 before it: "C0" is a name.
  if (digits.charAt(0) === "0") return false;
  return columnOf(letters || "A") < sheetSize.columns && Number(digits || 1) <= sheetSize.rows;
};

/** Reads "B3" or "$B$3" inside the sheet; throws on anything else. */
export const placeOf = (address: string): Place => {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/.exec(address);
  if (!match) throw new Error(`"${address}" is no cell address`);
  return checked({ row: Number(match[2]) - 1, column: columnOf(match[1]!) }, address);
};

/** Reads "B3:C9", a single cell, whole columns "B:C" or whole rows "3:9"; throws on anything else. */
export const areaOf = (range: string): Area => {
  const [start, end = start] = range.split(":") as [string, string?];
  const columns = /^\$?([A-Za-z]{1,3}):\$?([A-Za-z]{1,3})$/.exec(range);
  const rows = /^\$?([1-9]\d{0,6}):\$?([1-9]\d{0,6})$/.exec(range);
  let first: Place;
  let last: Place;
  if (columns) {
    first = checked({ row: 0, column: columnOf(columns[1]!) }, range);
    last = checked({ row: sheetSize.rows - 1, column: columnOf(columns[2]!) }, range);
  } else if (rows) {
    first = checked({ row: Number(rows[1]) - 1, column: 0 }, range);
    last = checked({ row: Number(rows[2]) - 1, column: sheetSize.columns - 1 }, range);
  } else {
    first = placeOf(start);
    last = placeOf(end);
  }
  if (first.row > last.row || first.column > last.column) throw new Error(`"${range}" runs backwards`);
  return { startRow: first.row, startColumn: first.column, endRow: last.row, endColumn: last.column };
};

/** The area of so many rows and columns from a cell on. */
export const areaFrom = ({ row, column }: Place, rows: number, columns: number): Area => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

export const rangeOf = ({ startRow, startColumn, endRow, endColumn }: Area): string => {
  const [start, end] = [cellName(startRow, startColumn), cellName(endRow, endColumn)];
  return start === end ? start : `${start}:${end}`;
};

export const isInArea = ({ row, column }: Place, { startRow, startColumn, endRow, endColumn }: Area): boolean =>
  row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;

export const overlaps = (one: Area, other: Area): boolean =>
  one.startRow <= other.endRow &&
  other.startRow <= one.endRow &&
  one.startColumn <= other.endColumn &&
  other.startColumn <= one.endColumn;

/** Row by row. */
export const placesIn = function* ({ startRow, startColumn, endRow, endColumn }: Area): Generator<Place> {
  for (let row = startRow; row <= endRow; row++) {
    for (let column = startColumn; column <= endColumn; column++) yield { row, column };
  }
};

/** The addresses of all cells of "B3:C5", row by row. */
export const cellsOfArea = (range: string): string[] => Array.from(placesIn(areaOf(range)), addressOf);

export const absolute = (range: string): string => range.replace(/\$?([A-Z]+)\$?(\d+)/g, "$$$1$$$2");

/** As a formula needs it: quoted unless it is plain letters, digits and "_" that can't be read as something else. */
export const quotedSheet = (name: string): string =>
  /^[A-Za-z_]\w*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) && !/^(?:R\d*C?\d*|C\d*)$/i.test(name)
    ? name
    : `'${name.replace(/'/g, "''")}'`;

/** Splits "Sheet name!A1:B2" or "'Sheet name'!A1:B2". */
export const sheetAndRange = (reference: string): { sheet: string; range: string } => {
  const mark = reference.lastIndexOf("!");
  if (mark < 1) throw new Error(`"${reference}" names no sheet`);
  const sheet = reference
    .slice(0, mark)
    .replace(/^'(.*)'$/, "$1")
    .replace(/''/g, "'");
  return { sheet, range: reference.slice(mark + 1).replace(/\$/g, "") };
};

/** "Sheet name!A1" in the form that goes into a file: quoted where needed, every part absolute. */
export const absoluteReference = (reference: string): string => {
  const { sheet, range } = sheetAndRange(reference);
  return `${quotedSheet(sheet)}!${absolute(range)}`;
};
