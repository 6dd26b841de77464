import { ErrorValueObject, type BaseValueObject, type ErrorType } from "@univerjs/engine-formula";

/**
 * How an error keeps its words. The engine copies an error object's custom data into the cell it writes (`custom`), so
 * the words travel there; `upstreamPatches.ts` gives them back when a formula reads that cell.
 */
const key = "errorWords";

export const errorWithWords = (code: string, words: string): ErrorValueObject =>
  new ErrorValueObject(code as ErrorType, words).withCustomData({ [key]: words });

/** The words an error object carries, "" if it has none. */
export const wordsOfValue = (value: BaseValueObject): string => {
  const words: unknown = value.getCustomData()?.[key];
  return typeof words === "string" ? words : "";
};

/** What the engine leaves in a cell, as far as it is read here. */
export interface EngineCell {
  v?: unknown;
  t?: unknown;
  f?: unknown;
  si?: unknown;
  s?: unknown;
  custom?: unknown;
}

/** The words of an error cell, "" if the cell holds no error or the error came without words. */
export const wordsOfCell = (cell: EngineCell | null | undefined): string => {
  if (typeof cell?.v !== "string" || !cell.v.startsWith("#")) return "";
  const words = (cell.custom as Record<string, unknown> | null | undefined)?.[key];
  return typeof words === "string" ? words : "";
};

/** What an error of a built-in function means, for a reader who sees only its code. */
const plainWords: Readonly<Record<string, string>> = {
  "#DIV/0!": "a division by zero",
  "#N/A": "no value is available",
  "#NAME?": "a name in the formula is not known here",
  "#NULL!": "the two ranges have no cell in common",
  "#NUM!": "a number is outside what the function takes",
  "#REF!": "a reference points to a cell that does not exist, or to no spill",
  "#SPILL!": "the result needs cells that are not empty, or leaves the sheet",
  "#CALC!": "the result is an empty array",
  "#CYCLE!": "the formula depends on itself",
  "#VALUE!": "an input is of the wrong kind",
  "#ERROR!": "the formula cannot be read: look at its parentheses, commas and quotes",
};

/** Words for any error: its own, or what its code means. */
export const spokenWords = (code: string, words: string): string =>
  words || (plainWords[code] ?? "the formula gives an error");
