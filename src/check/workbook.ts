/** A workbook as the check sees it: formulas as typed, values as saved, and how they are shown. No host. */

export type CheckedValue = number | string | boolean;

export interface CheckedCell {
  /** As typed, without "="; undefined for a constant and for the further cells of a spill. */
  readonly formula?: string;
  /** An error as its code, "#VALUE!". */
  readonly value?: CheckedValue;
  /** Words of the error the cell shows, where the program that calculated it gives any. */
  readonly words?: string;
  /** Number format, "General" or left out where there is none. */
  readonly format?: string;
  /** Area that the formula's result fills, "B3:C9". */
  readonly spill?: string;
}

export interface CheckedSheet {
  readonly name: string;
  readonly hidden?: boolean;
  /** By address, "B3". */
  readonly cells: ReadonlyMap<string, CheckedCell>;
}

export interface CheckedTable {
  readonly name: string;
  readonly sheet: string;
  /** With its header row, "A4:C20". */
  readonly area: string;
  readonly columns: readonly string[];
}

export interface CheckedWorkbook {
  readonly sheets: readonly CheckedSheet[];
  /** Defined names and what they stand for, without "=". */
  readonly names: ReadonlyMap<string, string>;
  readonly tables?: readonly CheckedTable[];
}

export type Severity = "danger" | "wrong" | "look";

/** What is most likely wrong in one cell. */
export interface Finding {
  readonly sheet: string;
  readonly cell: string;
  readonly rule: string;
  /** danger: the answer may flatter; wrong: the answer is most likely not what is meant; look: worth a look. */
  readonly severity: Severity;
  readonly words: string;
  /** Cells that the words speak of, "Inputs!B4". */
  readonly related: readonly string[];
}
