import type { EngineValue } from "./engineValue";

/** A cell that is typed in: a value, or a formula in its typed form with the leading "=". */
export type SheetCell =
  | {
      /** The text of an error code stands for the error. */
      readonly value: number | string | boolean;
      /** Words of an error that stands in the cell. */
      readonly words?: string;
      readonly formula?: undefined;
    }
  | {
      readonly formula: string;
      /** The cells its result filled when it was saved ("A1:C5"); these are not taken as typed in. */
      readonly ref?: string;
      readonly value?: unknown;
    };

export interface SheetInput {
  readonly name: string;
  /** By address: "B2". */
  readonly cells: Readonly<Record<string, SheetCell>>;
}

export interface WorkbookNames {
  /** Workbook-wide names: `{ Rate: "Plan!$B$2" }`, or a formula with "=". */
  readonly names?: Readonly<Record<string, string>>;
  readonly tables?: readonly TableInput[];
  /** Names that mean different things on different sheets, in capitals. */
  readonly ambiguous?: readonly string[];
}

export interface TableInput {
  readonly name: string;
  readonly sheet: string;
  /** With its header row. */
  readonly ref: string;
  readonly columns: readonly string[];
}

/** What a formula cell shows; `spill` holds all its cells when it fills more than one. */
export interface ComputedCell {
  readonly value: EngineValue;
  readonly spill?: EngineValue[][];
  /** The filled area, "A1:C5"; one cell "A1" if it doesn't spill. */
  readonly area: string;
  /** The formula depends on itself, and its value says so. */
  readonly isCircular?: boolean;
}

export interface ComputedSheet {
  readonly name: string;
  /** Formula cells only, by address. */
  readonly cells: Readonly<Record<string, ComputedCell>>;
}
