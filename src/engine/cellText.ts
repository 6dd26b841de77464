import { isoDate } from "../catalogue/shownValue";
import { isCellDate } from "../cells/cellValues";
import { firstSerial } from "../models/calendar";
import { isEngineError, type EngineValue } from "./engineValue";

/** A number with the 15 significant digits Excel keeps, so that 0.1 + 0.2 prints as 0.3. */
export const fifteenDigits = (value: number): number => Number(value.toPrecision(15));

/**
 * A date serial as yyyy-mm-dd, or yyyy-mm-dd hh:mm when its number format shows hours. Serials below the first (before March
 * 1900, where Excel's calendar is off by a day) and bare times stay numbers.
 */
export const dateText = (serial: number, format: string): string => {
  if (serial < firstSerial || !/[yd]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, "")))
    return String(fifteenDigits(serial));
  return isoDate(serial, /h/i.test(format));
};

/** A value for a person: TRUE and FALSE, ISO dates, an error as its code and words. */
export const cellText = (value: EngineValue): string => {
  if (typeof value === "number") return String(fifteenDigits(value)).replace("e", "E");
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (isCellDate(value)) return dateText(value.basicValue, value.numberFormat);
  if (isEngineError(value)) return `${value.error} ${value.message}`;
  return value;
};

/** A value for a program: dates as serials, an error as `{ error, message }`. */
export const cellJson = (value: EngineValue): unknown => {
  if (typeof value === "number") return fifteenDigits(value);
  return isCellDate(value) ? fifteenDigits(value.basicValue) : value;
};
