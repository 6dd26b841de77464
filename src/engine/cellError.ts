import { ErrorValueObject, type BaseValueObject, type ErrorType } from "@univerjs/engine-formula";
import { errorWords } from "../cells/errorCodes";

/**
 * How an error keeps its words. The engine copies an error object's custom data into the cell it writes (`custom`), so
 * the words travel there; `upstreamPatches.ts` gives them back when a formula reads that cell.
 */
const key = "errorWords";

export const errorWithWords = (code: string, words: string): ErrorValueObject =>
  new ErrorValueObject(code as ErrorType, words).withCustomData({ [key]: words });

/** The part of a cell's content that gives the error it holds its words. */
export const contentWithWords = (words: string): { custom: Record<string, string> } => ({ custom: { [key]: words } });

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

/** Words for any error: its own, or what its code means. */
export const spokenWords = (code: string, words: string): string =>
  words || (errorWords[code] ?? "the formula gives an error");
