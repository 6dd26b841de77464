import type { CellDate, CellError } from "../../cells/cellValues";
import { addressOf, type Place } from "../../cells/addresses";
import type { Scalar } from "./description";

/** A cell of a calculated result. An error from a built-in may carry any code; words are not kept in a file. */
export type CachedCell = Scalar | null | CellDate | CellError | { readonly error: string };

export interface CellToCalculate extends Place {
  value?: Scalar;
  /** As typed, with the leading "=". */
  formula?: string;
}

/** The workbook as an engine needs it. Rows and columns count from zero. */
export interface WorkbookToCalculate {
  sheets: readonly { name: string; cells: readonly CellToCalculate[] }[];
  /** Defined names, absolute: { name: "Capacity", refersTo: "Start!$B$3" }. */
  names: readonly { name: string; refersTo: string }[];
}

/** The value or the table of each formula cell, by `formulaKey`. */
export type CalculatedValues = ReadonlyMap<string, readonly (readonly CachedCell[])[]>;

/** Works out every formula of a workbook. */
export type Calculate = (workbook: WorkbookToCalculate) => CalculatedValues | Promise<CalculatedValues>;

/** "Start!B5", the sheet's name as it stands, without quotes. */
export const formulaKey = (sheet: string, place: Place): string => `${sheet}!${addressOf(place)}`;
