import { cellName, cellOfName } from "./cellName";

/** A cell by zero-based row and column. */
export interface Place {
  row: number;
  column: number;
}

export interface Area {
  first: Place;
  last: Place;
}

const lastRow = 1_048_576;
const lastColumn = 16_384;

export const addressOf = ({ row, column }: Place): string => cellName(row, column);

/** Reads "B3" or "$B$3" in capitals, inside the sheet; throws on anything else. */
export const placeOf = (address: string): Place => {
  if (!/^\$?[A-Z]+\$?[1-9]\d*$/.test(address)) throw new Error(`"${address}" is no cell address`);
  const place = cellOfName(address);
  if (place.row >= lastRow || place.column >= lastColumn) throw new Error(`"${address}" is beyond the sheet's edge`);
  return place;
};

/** Reads "B3:C9" or a single cell. */
export const areaOf = (range: string): Area => {
  const [start, end = start] = range.split(":");
  const [first, last] = [placeOf(start!), placeOf(end!)];
  if (first.row > last.row || first.column > last.column) throw new Error(`"${range}" runs backwards`);
  return { first, last };
};

export const rangeOf = ({ first, last }: Area): string => {
  const [start, end] = [addressOf(first), addressOf(last)];
  return start === end ? start : `${start}:${end}`;
};

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

export const overlaps = (one: Area, other: Area): boolean =>
  one.first.row <= other.last.row &&
  other.first.row <= one.last.row &&
  one.first.column <= other.last.column &&
  other.first.column <= one.last.column;

export const placesIn = function* ({ first, last }: Area): Generator<Place> {
  for (let row = first.row; row <= last.row; row++) {
    for (let column = first.column; column <= last.column; column++) yield { row, column };
  }
};
