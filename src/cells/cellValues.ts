/**
 * What goes into and comes out of a cell, free of any host: the functions use these shapes everywhere and
 * `excel/boundary.ts` turns them into what Excel's runtime wants.
 */

/** A range as it comes in, row by row. */
export type Cells = readonly (readonly unknown[])[];

/** A pure function as the catalogue lists it: ranges in, an array of rows out; a single cell is [[v]]. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- the cell boundary itself: functions type their cells as Excel's generator wants
export type CellCall = (...cells: any[]) => any[][];

/** Codes whose words Excel shows to the user; any other code loses its message. */
export type SpokenCode = "#VALUE!" | "#N/A";

/** An error result with words. `#VALUE!`: an input can't be right. `#N/A`: the question has no answer. */
export class CellError {
  constructor(
    readonly code: SpokenCode,
    readonly message: string,
  ) {}
}

/** The input can't be right: say which argument, what came and what is wanted. */
export const invalid = (words: string): CellError => new CellError("#VALUE!", words);

/** The question has no answer (never empties, no shortfall), so IFNA can catch it. */
export const noAnswer = (words: string): CellError => new CellError("#N/A", words);

/** Excel's own data-type form of a number that carries a number format. */
export interface CellDate {
  readonly type: "Double";
  readonly basicType: "Double";
  readonly basicValue: number;
  readonly numberFormat: string;
}

/** A whole date: the serial's fraction is cut off. */
export const dateCell = (serial: number): CellDate => ({
  type: "Double",
  basicType: "Double",
  basicValue: Math.floor(serial),
  numberFormat: "yyyy-mm-dd",
});

/** A date with its time of day, to the second that Excel shows as a minute. */
export const dateTimeCell = (serial: number): CellDate => ({
  type: "Double",
  basicType: "Double",
  basicValue: serial,
  numberFormat: "yyyy-mm-dd hh:mm",
});

/** A cell of a result. Empty cells are "", never null. */
export type CellResult = number | string | boolean | CellDate | CellError;

/** A spilled result, one array a row. */
export type CellTable = CellResult[][];

export const isCellDate = (cell: unknown): cell is CellDate =>
  typeof cell === "object" && cell !== null && (cell as CellDate).type === "Double";

/**
 * Is this cell an error that came in? Three forms exist: our own (local engine), Excel's data-type form
 * (`allowErrorForDataTypeAny`), and the runtime's CustomFunctions.Error.
 */
export const isErrorCell = (cell: unknown): cell is CellError => {
  if (typeof cell !== "object" || cell === null) return false;
  if (cell instanceof CellError) return true;
  const { type, basicType, code } = cell as { type?: unknown; basicType?: unknown; code?: unknown };
  // Pictures and linked data carry an error as their fallback value and are none themselves.
  if (typeof type === "string") return type === "Error";
  return basicType === "Error" || (typeof code === "string" && code.charAt(0) === "#");
};
