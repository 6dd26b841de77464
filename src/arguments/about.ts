import { type Kind } from "./kinds";
import type { CellError } from "../cells/cellValues";

/** An error, told by a part of its words. */
export interface ExampleError {
  error: CellError["code"];
  words: string;
}

/** A worked case: shown in help, recomputed by the tests and listed in the function-check workbook. */
export interface Example {
  /** As typed in a cell, with the leading "=" and the namespace. Constants only, no cell references. */
  formula: string;
  /** The value, or the whole table with its header row; an error as `{ error: "#N/A", words: "…" }`. */
  result: number | string | boolean | (number | string | boolean | ExampleError)[][] | ExampleError;
  /** Largest difference allowed from `result`; exact (1e-9 relative) if left out. */
  tolerance?: number;
  /** Where the expected value comes from, when it isn't plain arithmetic. */
  source?: string;
  /** What the case shows, in a few words. */
  note?: string;
  /** The result is that of the local engine: other programs have their own, so that no workbook compares it. */
  localOnly?: true;
}

/** What a function's file says beside its JSDoc words, its schema and its formula. */
export interface About {
  /** What the result is: of one kind, or a kind for each column of a table. */
  gives: Kind | readonly Kind[];
  /** The rule as a formula in words or symbols, one line. */
  rule: string;
  /** Range of validity and what happens outside. */
  range: string;
  /** Published source of the rule, or "common practice, no source", or "own planning default". */
  source: string;
  examples: [Example, ...Example[]];
  /** Ids of related functions. */
  seeAlso?: string[];
  /** Set where the work can hurt someone. */
  caution?: string;
}
