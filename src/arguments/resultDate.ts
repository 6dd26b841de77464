import { type CellDate, type CellError, dateCell, dateTimeCell, invalid } from "../cells/cellValues";
import { firstSerial, lastDay } from "../models/calendar";

/** A computed date-time for a cell, or words when no date of Excel stands for it; `what` begins the sentence. */
export function dateTimeResult(serial: number, what: string): CellDate | CellError {
  if (!(serial < lastDay + 1))
    return invalid(`${what} would be after the year 9999; check the amount, the rate and the hours`);
  if (serial < firstSerial)
    return invalid(`${what} would be before 1900-03-01; check the date, the amount and the rate`);
  return dateTimeCell(serial);
}

/** A computed day for a cell, part days cut off, or words when no date of Excel stands for it; `what` begins the sentence. */
export function dateResult(serial: number, what: string): CellDate | CellError {
  if (!(serial < lastDay + 1)) return invalid(`${what} would be after the year 9999; check the dates and intervals`);
  if (serial < firstSerial) return invalid(`${what} would be before 1900-03-01; check the dates and intervals`);
  return dateCell(serial);
}
