import type { Nullable } from "@univerjs/core";
import type { ArrayValueObject, BaseValueObject } from "@univerjs/engine-formula";
import type { CellDate } from "../cells/cellValues";
import { cellKind } from "./cellKind";
import { isErrorCode } from "../cells/errorCodes";
import { spokenWords, wordsOfCell, wordsOfValue, type EngineCell } from "./cellError";

/** An error as the engine hands it out; `message` is never empty. */
export interface EngineError {
  readonly error: string;
  readonly message: string;
}

/** One computed cell. A number with a date format is a CellDate. */
export type EngineValue = number | string | boolean | CellDate | EngineError;

export const isEngineError = (value: unknown): value is EngineError =>
  typeof value === "object" && value !== null && "error" in value;

export const engineError = (code: string, words = ""): EngineError => ({
  error: code,
  message: spokenWords(code, words),
});

/**
 * Does a number format show a date or a time of day? Quoted text, escaped characters and bracketed parts (colours,
 * conditions, locale) don't count; `[h]` and `[mm]` are elapsed time, a number of hours rather than a date.
 */
export const isDateFormat = (format: string): boolean => {
  if (/^general/i.test(format)) return false;
  const bare = format.replace(/"[^"]*"|\\.|_.|\*./g, "");
  if (/\[(?:h+|m+|s+)\]/i.test(bare)) return false;
  return /[ydhs]|m(?!.*[0#?])/i.test(bare.replace(/\[[^\]]*\]/g, ""));
};

const numberOrDate = (value: number, format: string): number | CellDate =>
  format !== "" && isDateFormat(format)
    ? { type: "Double", basicType: "Double", basicValue: value, numberFormat: format }
    : value;

/** A value object of the engine as a plain value. A blank result shows as 0, as in a cell. */
export const fromValueObject = (value: Nullable<BaseValueObject>): EngineValue => {
  if (value == null || value.isNull()) return 0;
  if (value.isError()) return engineError(String(value.getValue()), wordsOfValue(value));
  const raw = value.getValue();
  if (value.isBoolean()) return raw === true || raw === 1;
  if (typeof raw === "number") return numberOrDate(raw, value.getPattern());
  return raw;
};

export const isArrayValue = (value: BaseValueObject): value is ArrayValueObject => value.isArray();

const formatOf = (cell: EngineCell): string => {
  const style = cell.s as { n?: { pattern?: unknown } | null } | string | null | undefined;
  const pattern = typeof style === "object" ? style?.n?.pattern : undefined;
  return typeof pattern === "string" ? pattern : "";
};

/** A cell the engine wrote, as a plain value: its booleans come back as 1 and 0 and its errors as text. */
export const fromEngineCell = (cell: Nullable<EngineCell>): EngineValue => {
  const value = cell?.v;
  if (cell == null || value == null) return 0;
  if (cell.t === cellKind.boolean) return value === 1 || value === true || value === "TRUE";
  if (typeof value === "number") return numberOrDate(value, formatOf(cell));
  if (typeof value === "boolean") return value;
  const words = wordsOfCell(cell);
  const text = String(value);
  return words !== "" || isErrorCode(text) ? engineError(text, words) : text;
};
