import type { CellError } from "../excel/cellValues";
import { isErrorCell } from "../excel/cellValues";
import { type CellArgument, type Failure, formatNumber, isBlank, plainCell, quoteCell, refuse } from "./argument";

/** Serial 61 is 1 March 1900, the first day on which Excel's serials and the calendar agree (ECMA-376, 1900 date base). */
export const firstSerial = 61;
/** 9999-12-31. */
export const lastSerial = 2958465;

const isoText = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?$/;
/** Days from serial 0 to 1970-01-01 in the 1900 system. */
const epochSerial = 25569;

/** Serial of an ISO date or date-time, or undefined when there is no such day. */
export function serialOfIso(text: string): number | undefined {
  const match = isoText.exec(text.trim());
  if (!match) return undefined;
  const [year, month, day, hour, minute, second] = match.slice(1).map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const date = new Date(Date.UTC(year, month - 1, day));
  date.setUTCFullYear(year);
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day || hour > 23 || minute > 59 || second > 59)
    return undefined;
  return date.getTime() / 86400000 + epochSerial + (hour * 3600 + minute * 60 + second) / 86400;
}

/** The day of a serial as yyyy-mm-dd, for error words. */
export const isoDay = (serial: number): string =>
  new Date((Math.floor(serial) - epochSerial) * 86400000).toISOString().slice(0, 10);

/** A date (its time of day cut off) or a date-time, as a serial of the 1900 system; text in ISO form is read too. */
export class DateArgument<T extends number | undefined = number> implements CellArgument<T> {
  readonly shape = "cell";
  readonly unit: string;
  readonly min = firstSerial;
  readonly max = lastSerial + 1 - 1e-6;
  readonly defaultValue = undefined;
  /** The fast path leaves fractions to `read`, which cuts them off. */
  readonly wholeOnly: boolean;

  constructor(
    private readonly keepsTime: boolean,
    readonly optional = false,
  ) {
    this.wholeOnly = !keepsTime;
    this.unit = keepsTime ? "date-time" : "date";
  }

  mayBeOmitted(): DateArgument<number | undefined> {
    return new DateArgument<number | undefined>(this.keepsTime, true);
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell as CellError;
    const plain = plainCell(cell);
    if (isBlank(plain)) return this.optional ? (undefined as T) : refuse(label, "is blank; enter a date");
    if (typeof plain === "string") {
      const serial = serialOfIso(plain);
      if (serial === undefined)
        return refuse(label, `${quoteCell(plain)} is text, not a date; enter a date, or text as YYYY-MM-DD`);
      return this.inRange(serial, label);
    }
    if (typeof plain !== "number" || !Number.isFinite(plain))
      return refuse(label, `is ${quoteCell(plain)}; enter a date`);
    return this.inRange(plain, label);
  }

  private inRange(serial: number, label: string): T | Failure {
    if (serial < this.min || serial > this.max) {
      return refuse(label, `is ${formatNumber(serial)}, which is no date from 1900-03-01 on; enter a date`);
    }
    return (this.keepsTime ? serial : Math.floor(serial)) as T;
  }
}

/** A whole date [date]; a time of day is cut off. */
export const date = new DateArgument(false);
/** A date with its time of day [date-time]. */
export const dateTime = new DateArgument(true);
