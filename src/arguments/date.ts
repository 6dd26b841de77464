import { isErrorCell } from "../cells/cellValues";
import { daysInMonth, epochSerial, firstSerial, lastDay, serialOfDay } from "../models/calendar";
import { firstGivenDay, lastGivenDay } from "../models/plausible";
import {
  type CellArgument,
  type Failure,
  isBlank,
  plainCell,
  quoteCell,
  refuse,
  refuseBlank,
  strangeCell,
} from "./argument";

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

const asDigits = /^(19|20|21)(\d\d)(0[1-9]|1[0-2])([0-2]\d|3[01])$/;

/** What a number that is no date most likely was meant as. */
function likelyDate(value: number): string {
  const digits = asDigits.exec(String(value));
  if (digits) return `: write ${digits[1]}${digits[2]}-${digits[3]}-${digits[4]}`;
  if (Number.isInteger(value) && value >= 1900 && value <= 2100)
    return `, which looks like a year; enter a date, or text such as ${value}-03-01`;
  if (value >= firstSerial && value <= lastDay)
    return `, the date ${isoDay(value)}; dates from 1990-01-01 to 2100-12-31 are taken: check the year`;
  return ", which is no date from 1990-01-01 to 2100-12-31; enter a date";
}

/**
 * A date (its time of day cut off) or a date-time from 1990 to 2100, as a serial of the 1900 system; text in ISO form is
 * read too.
 */
export class DateArgument<T extends number | undefined = number> implements CellArgument<T> {
  readonly shape = "cell";
  readonly kind: "date" | "date-time";
  readonly unit: string;
  readonly min = firstGivenDay;
  readonly max = lastGivenDay + 1 - 1e-6;
  readonly defaultValue = undefined;
  /** The fast path leaves fractions to `read`, which cuts them off. */
  readonly wholeOnly: boolean;

  constructor(
    private readonly keepsTime: boolean,
    readonly optional = false,
    readonly mayBeBlank = false,
  ) {
    this.wholeOnly = !keepsTime;
    this.kind = keepsTime ? "date-time" : "date";
    this.unit = keepsTime ? "date-time" : "date";
  }

  mayBeOmitted(): DateArgument<number | undefined> {
    return new DateArgument<number | undefined>(this.keepsTime, true);
  }

  /** A cell of a list or table that may be empty: then reads as undefined. */
  orBlank(): DateArgument<number | undefined> {
    return new DateArgument<number | undefined>(this.keepsTime, false, true);
  }

  read(cell: unknown, label: string): T | Failure {
    if (isErrorCell(cell)) return cell;
    const plain = plainCell(cell);
    if (isBlank(plain)) return this.mayBeBlank ? (undefined as T) : refuseBlank(this, label, "enter a date");
    if (typeof plain === "string") {
      const serial = serialOfIso(plain);
      if (serial === undefined)
        return refuse(label, `${quoteCell(plain)} is text, not a date; enter a date, or text as YYYY-MM-DD`);
      return this.inRange(serial, label, `${quoteCell(plain)}`);
    }
    if (typeof plain !== "number") {
      return refuse(
        label,
        typeof plain === "boolean" ? `is ${quoteCell(plain)}; enter a date` : `${strangeCell}; enter a date`,
      );
    }
    return this.inRange(plain, label, quoteCell(plain));
  }

  private inRange(serial: number, label: string, given: string): T | Failure {
    if (!(serial >= this.min && serial <= this.max)) return refuse(label, `is ${given}${likelyDate(serial)}`);
    return (this.keepsTime ? serial : Math.floor(serial)) as T;
  }
}

/** A whole date [date]; a time of day is cut off. */
export const date = new DateArgument(false);
/** A date with its time of day [date-time]. */
export const dateTime = new DateArgument(true);

/** The largest number that still counts the days of a list; from 1900 on it looks like a year. */
const lastDayNumber = 1899;

/** Does the first column of a list hold the day's number, 1, 2, 3 …, in place of its date? */
export const isDayNumber = (day: number): boolean => day <= lastDayNumber;

/** A date, or the number of a day in a list. */
class DayArgument extends DateArgument {
  override read(cell: unknown, label: string): number | Failure {
    const plain = plainCell(cell);
    return typeof plain === "number" && Number.isInteger(plain) && plain >= 0 && isDayNumber(plain)
      ? plain
      : super.read(cell, label);
  }
}

export const readDay: CellArgument<number> = new DayArgument(false);
