/**
 * The functions as a program calls them: plain values, lists and tables in, plain values or a table out. The rules are
 * those of a cell: null is a blank cell and is refused, undefined is an argument left out of the formula.
 */
import { CellError, isCellDate, type CellCall, type CellResult } from "../cells/cellValues";
import { firstSerial } from "../models/calendar";

/** What a cell may hold: a number in the argument's unit, text (with a unit, or a word), TRUE or FALSE, a date, nothing. */
export type Plain = number | string | boolean | Date | null;

/** A list stands for a column; a table is given row by row. */
export type Range = readonly Plain[] | readonly (readonly Plain[])[];

export type PlainResult = number | string | boolean;

/** An answer, or an error with its words. */
export type Answer<Value extends PlainResult = PlainResult> = Value | CellError;

/** A function of single values: one value for each cell; lists and tables broadcast as they do in a sheet. */
export interface CellFunction<Args extends readonly unknown[], Value extends PlainResult> {
  (...given: Args): Answer<Value>;
  (...given: { [Index in keyof Args]: Args[Index] | Range }): Answer<Value>[][];
}

/** A function that gives a table with its header row, or one error in place of it. */
export type TableFunction<Args extends readonly unknown[]> = (...given: Args) => Answer[][];

/** An error with words, in place of an answer. */
export const isError = (answer: unknown): answer is CellError => answer instanceof CellError;

const dayLength = 86400000;
/** Serial 0 of the 1900 system as dates from 1 March 1900 on count it. */
const serialZero = Date.UTC(1899, 11, 30);

/** Serial of a date in the 1900 system of workbooks, by its time in UTC. */
export const serialOf = (date: Date): number => (date.getTime() - serialZero) / dayLength;

/** The date of a serial, its time in UTC. */
export function dateOf(serial: number): Date {
  if (!(serial >= firstSerial)) throw new RangeError(`a serial must be ${firstSerial} or more; this is ${serial}`);
  return new Date(serialZero + Math.round(serial * dayLength));
}

const isRow = (given: Plain | readonly Plain[]): given is readonly Plain[] => Array.isArray(given);

const cellOf = (given: Plain): unknown => (given instanceof Date ? serialOf(given) : given);

const cellsOf = (given: Plain | Range | undefined): unknown[][] | undefined => {
  if (given === undefined) return undefined;
  if (!Array.isArray(given)) return [[cellOf(given as Plain)]];
  return (given as readonly (Plain | readonly Plain[])[]).map((row) => (isRow(row) ? row.map(cellOf) : [cellOf(row)]));
};

const resultOf = (cell: CellResult): Answer => (isCellDate(cell) ? cell.basicValue : cell);

/** `ranges` names by place the arguments that are taken whole, so that a list there asks for no list of answers. */
export const plainCall = (call: CellCall, givesTable: boolean, ranges: readonly boolean[]) => {
  return (...given: (Plain | Range | undefined)[]): Answer | Answer[][] => {
    const result = (call(...given.map(cellsOf)) as CellResult[][]).map((row) => row.map(resultOf));
    const asksForList = given.some((each, index) => Array.isArray(each) && !ranges[index]);
    return givesTable || asksForList ? result : result[0]![0]!;
  };
};
