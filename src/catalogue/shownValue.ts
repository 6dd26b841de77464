import type { ExampleError } from "../arguments/about";
import { isoDay, isoMinute } from "../arguments/date";

/** A serial as yyyy-mm-dd, with hh:mm where asked. */
export const isoDate = (serial: number, withTime: boolean): string => (withTime ? isoMinute : isoDay)(serial);

/** Does this unit or table heading hold dates? */
export const holdsDates = (words: string): boolean => /\bdate\b/i.test(words);

/** A value as help shows it, by the unit of the result or the heading of its column. */
export function shownValue(value: number | string | boolean | ExampleError, unitOrHeading: string): string {
  if (typeof value === "object") return `${value.error} ${value.words}`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number" && holdsDates(unitOrHeading)) return isoDate(value, /time/i.test(unitOrHeading));
  return String(value);
}
