/**
 * Calendar arithmetic on serials of the 1900 date system, from 1 March 1900 on. Serial 60 is the 29 February
 * 1900 that never was (ECMA-376, Date Representation), which is why earlier serials are left alone.
 */

export interface CalendarDay {
  readonly year: number;
  /** 1 to 12 */
  readonly month: number;
  /** 1 to 31 */
  readonly day: number;
}

/** 1 March 1900, the first day on which Excel's serials and the calendar agree (ECMA-376, 1900 date base). */
export const firstSerial = 61;
/** 9999-12-31, the last day of the 1900 date system (ECMA-376, Date Representation). */
export const lastDay = 2958465;

/** Serial of 1970-01-01. */
export const epochSerial = 25569;
/** Days from 0000-03-01 to 1970-01-01, and in 400 Gregorian years. */
const daysToEpoch = 719468;
const daysInEra = 146097;

export const isLeapYear = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

export const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeapYear(year) ? 29 : monthLengths[month - 1]!;

/** Gregorian calendar counted in years from March, so that the leap day ends a year (H. Hinnant, "chrono-Compatible Low-Level Date Algorithms"). */
export function serialOfDay({ year, month, day }: CalendarDay): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * daysInEra + dayOfEra - daysToEpoch + epochSerial;
}

/** Inverse of `serialOfDay`; a time of day is cut off. */
export function dayOfSerial(serial: number): CalendarDay {
  const days = Math.floor(serial) - epochSerial + daysToEpoch;
  const era = Math.floor(days / daysInEra);
  const dayOfEra = days - era * daysInEra;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

/**
 * The same day of the month, `months` later: the rule of Excel's EDATE. A day the month doesn't have becomes its last
 * day. Infinity beyond 9999-12-31.
 */
export function addMonths(serial: number, months: number): number {
  const { year, month, day } = dayOfSerial(serial);
  const target = year * 12 + (month - 1) + months;
  const targetYear = Math.floor(target / 12);
  if (targetYear > 9999) return Infinity;
  const targetMonth = target - targetYear * 12 + 1;
  return serialOfDay({
    year: targetYear,
    month: targetMonth,
    day: Math.min(day, daysInMonth(targetYear, targetMonth)),
  });
}
