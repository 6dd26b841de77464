import { quotedSheet } from "../../cells/addresses";

/** "ok" or what is to be checked; `at` is the cell that the reader is sent to. */
export interface BookCheck {
  /** "Inputs!B33" */
  at: string;
  what: string;
  /** A formula that gives "ok" or the words: begin them with the cell. */
  formula: string;
}

interface InputTable {
  sheet: string;
  /** Rows of entries, spare ones included. */
  first: number;
  last: number;
  /** Columns that are filled together or not at all. */
  columns: readonly string[];
  what: string;
}

const column = ({ sheet, first, last }: InputTable, letter: string): string =>
  `${quotedSheet(sheet)}!${letter}${first}:${letter}${last}`;

const filled = (table: InputTable, letter: string): string => {
  const cells = column(table, letter);
  return `IF(ISERROR(${cells}),1,IF(${cells}="",0,1))`;
};

const rowFound = ({ sheet, first, columns }: InputTable, words: string): string =>
  `IF(SUM(bad)=0,"ok","${sheet}!${columns[0]}"&(IFERROR(MATCH(1,bad,0),1)+${first - 1})&"${words}")`;

/** Each row of a table is filled or spare, and spare rows stand at the end. */
export const rowsWhole = (table: InputTable): BookCheck => ({
  at: `${table.sheet}!${table.columns[0]}${table.first}`,
  what: `${table.what}: whole rows`,
  formula: `=LET(n,${table.columns.map((letter) => filled(table, letter)).join("+")},bad,IF((n=0)+(n=${table.columns.length})>0,0,1),${rowFound(table, " begins a row that is filled in part: fill it or clear it")})`,
});

export const rowsTogether = (table: InputTable): BookCheck => ({
  at: `${table.sheet}!${table.columns[0]}${table.first}`,
  what: `${table.what}: no gap between rows`,
  formula: `=LET(n,${table.columns.map((letter) => filled(table, letter)).join("+")},most,MAX((n>0)*SEQUENCE(${table.last - table.first + 1})),bad,IF((n=0)*(SEQUENCE(${table.last - table.first + 1})<most)>0,1,0),${rowFound(table, " is a blank row between filled ones: move the rows below up")})`,
});

/** No row stands twice. `by` are the columns that make two rows the same. */
export const noRowTwice = (table: InputTable, by: readonly string[] = table.columns): BookCheck => ({
  at: `${table.sheet}!${table.columns[0]}${table.first}`,
  what: `${table.what}: no row twice`,
  formula: `=LET(k,${by.map((letter) => column(table, letter)).join('&"|"&')},bad,IF(k="${"|".repeat(by.length - 1)}",0,IF(MATCH(k,k,0)<SEQUENCE(${table.last - table.first + 1}),1,0)),${rowFound(table, " begins a row that stands twice: count it once")})`,
});
