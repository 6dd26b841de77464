import { isErrorCell } from "../cells/cellValues";
import { daysInMonth, epochSerial, lastDay, serialOfDay } from "../models/calendar";
import { type CellArgument, type Failure, formatNumber, isBlank, plainCell, quoteCell, refuse } from "./argument";

/** Serial 61 is 1 March 1900, the first day on which Excel's serials and the calendar agree (ECMA-376, 1900 date base). */
export const firstSerial = 61;

const isoText = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2}))?)?$/;

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
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return undefined;
  if (hour > 23 || minute > 59 || second > 59) return undefined;
  return serialOfDay({ year, month, day }) + (hour * 3600 + minute * 60 + second) / 86400;
}

const isoOfEpochMinutes = (minutes: number): string => new Date(minutes * 60_000).toISOString();

/** The day of a serial as yyyy-mm-dd. */
export const isoDay = (serial: number): string =>
  isoOfEpochMinutes((Math.floor(serial) - epochSerial) * 1440).slice(0, 10);

/** The nearest minute to a serial as yyyy-mm-dd hh:mm. */
export const isoMinute = (serial: number): string =>
  isoOfEpochMinutes(Math.round((serial - epochSerial) * 1440))
    .slice(0, 16)
    .replace("T", " ");

/** A date (its time of day cut off) or a date-time, as a serial of the 1900 system; text in ISO form is read too. */
export class DateArgument<T extends number | undefined = number> implements CellArgument<T> {
  readonly shape = "cell";
  readonly unit: string;
  readonly min = firstSerial;
  readonly max = lastDay + 1 - 1e-6;
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
    if (isErrorCell(cell)) return cell;
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
