/** Values as help shows them: dates as ISO days, flags as Excel writes them. */

/** Days from the 1900 system's day 0 to the Unix epoch. */
const epochSerial = 25569;

/** A serial as yyyy-mm-dd, with hh:mm where asked. */
export function isoDate(serial: number, withTime: boolean): string {
  const text = new Date(Math.round((serial - epochSerial) * 86_400) * 1000).toISOString();
  return withTime ? `${text.slice(0, 10)} ${text.slice(11, 16)}` : text.slice(0, 10);
}

/** Does this unit or table heading hold dates? */
export const holdsDates = (words: string): boolean => /\bdate\b/i.test(words);

/** One value, by the unit of the result or the heading of its column. */
export function shownValue(value: number | string | boolean, unitOrHeading: string): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number" && holdsDates(unitOrHeading)) return isoDate(value, /time/i.test(unitOrHeading));
  return String(value);
}
