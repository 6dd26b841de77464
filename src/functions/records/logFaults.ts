import type { About } from "../../arguments/about";
import { type CellArgument, isBlank, isFailure, quoteCell } from "../../arguments/argument";
import { isHeading } from "../../arguments/rows";
import { dateTime } from "../../arguments/date";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { litres, litresPerDay } from "../../arguments/quantity";
import { firstErrorIn, rawRange } from "../../arguments/range";
import { type CellError, dateTimeCell, invalid } from "../../cells/cellValues";
import { type LogFault, type Reading, logFaults as findFaults } from "../../models/logFaults";
import { looksLikeDate, looksLikeNumber, oddDate } from "../../models/plausible";

export const args = tableArguments({
  dates: rawRange,
  levels: rawRange,
  capacity: litres.positive(),
  most_rise: litresPerDay.mayBeOmitted(),
  most_fall: litresPerDay.mayBeOmitted(),
});

type Cells = readonly (readonly unknown[])[];

/** The cells of one column or row, a header passed over. */
function line(cells: Cells, element: CellArgument, label: string): readonly unknown[] | CellError {
  if (cells.length > 1 && cells[0]!.length > 1)
    return invalid(`${label} has ${cells.length} rows and ${cells[0]!.length} columns; enter one column or one row`);
  const values = cells.length === 1 ? cells[0]! : cells.map((row) => row[0]);
  return values.length > 1 && isHeading(values[0], element) ? values.slice(1) : values;
}

/** A value, or the fault of a cell that can't be read. */
function read(cell: unknown, element: CellArgument<number>, what: "date" | "level"): number | string {
  if (isBlank(cell)) return `${what} is blank`;
  const value = element.read(cell, what);
  if (!isFailure(value)) return value;
  if (typeof cell === "string" && looksLikeDate(cell))
    return `${what} ${quoteCell(cell)} is text that looks like a date`;
  if (typeof cell === "string" && looksLikeNumber(cell))
    return `${what} ${quoteCell(cell)} is text that looks like a number`;
  return value.message;
}

/**
 * Finds what a tired clerk gets wrong in a log of levels: dates that stand twice or out of order, levels above the capacity,
 * changes that can't be, a stuck gauge, blanks and text that only looks like a number or a date.
 *
 * @customfunction LOG_FAULTS
 * @param dates Days or date-times of the readings, in order
 * @param levels Liquid at each reading, in litres
 * @param capacity Liquid the vessels hold when full [L]
 * @param [most_rise] Most that the plants and deliveries can add, not checked if omitted [L/day]
 * @param [most_fall] Most that can be drawn and lost, not checked if omitted [L/day]
 * @returns One row a fault: row of the log without its header, date, fault
 */
export function logFaults(
  dates: any[][],
  levels: any[][],
  capacity: any[][],
  most_rise?: any[][],
  most_fall?: any[][],
): any[][] {
  return wholeTable(args, [dates, levels, capacity, most_rise, most_fall], (given) => {
    const error = firstErrorIn(given.dates) ?? firstErrorIn(given.levels);
    if (error) return [[error]];
    const days = line(given.dates, dateTime, "dates");
    if (isFailure(days)) return days;
    const amounts = line(given.levels, litres, "levels");
    if (isFailure(amounts)) return amounts;
    const unequal = sameLength({ dates: days, levels: amounts });
    if (unequal) return unequal;

    const found: LogFault[] = [];
    const readings: Reading[] = [];
    days.forEach((day, index) => {
      const row = index + 1;
      if (isBlank(day) && isBlank(amounts[index])) return;
      const date = read(day, dateTime, "date");
      const level = read(amounts[index], litres, "level");
      const odd = typeof date === "number" ? oddDate(date) : undefined;
      const known = typeof date === "number" && odd === undefined ? date : undefined;
      if (typeof date === "string") found.push({ row, date: undefined, fault: date });
      else if (odd !== undefined) found.push({ row, date, fault: `date ${odd}` });
      if (typeof level === "string") found.push({ row, date: known, fault: level });
      readings.push({ row, date: known, level: typeof level === "number" ? level : undefined });
    });
    found.push(
      ...findFaults(readings, { capacity: given.capacity, mostRise: given.most_rise, mostFall: given.most_fall }),
    );
    found.sort((a, b) => a.row - b.row);
    return [
      ["row", "date", "fault"],
      ...(found.length === 0
        ? [["", "", "no fault found"]]
        : found.map(({ row, date, fault }) => [row, date === undefined ? "" : dateTimeCell(date), fault])),
    ];
  });
}

export const about: About = {
  gives: ["count", "date-time", "text"],
  rule: "for each reading: date and level can be read; the date follows those before it (the rows are blamed that stand outside the longest rising series of dates); level ≤ capacity; change a day since the last such reading within most rise and most fall; not the same level three readings in a row (unless empty or full)",
  range:
    'One column or row each, a header passed over; the two must be equally long. Wholly blank rows are passed over but counted. A log without faults gives one row, "no fault found". Dates as text are read in the form YYYY-MM-DD only. A row with a wrong date, or a level above the capacity, is not used as the base of the next change.',
  source: "Common practice, no source; three equal readings for a stuck gauge is an own planning default",
  examples: [
    {
      formula: "=OXYGEN.LOG_FAULTS({46082;46083;46083;46084},{20;45;45;130},100,30)",
      result: [
        ["row", "date", "fault"],
        [3, 46083, "the same date as row 2"],
        [4, 46084, "level 130 L is above the capacity of 100 L"],
      ],
    },
    {
      formula: '=OXYGEN.LOG_FAULTS({46082;46083;46084},{20;60;"55,5"},100,30)',
      result: [
        ["row", "date", "fault"],
        [2, 46083, "rises 40 L a day since row 1, faster than 30 L a day"],
        [3, 46084, 'level "55,5" is text that looks like a number'],
      ],
      note: "Two plants of 0.625 L/h can't add 40 L in a day",
    },
  ],
  seeAlso: ["VALUE_CHECK", "BOOK_BALANCE", "LOSS_FROM_READINGS"],
  caution:
    "A level that falls too fast may be a leak, not a slip: go and look, without flames or grease, before you correct the log.",
};
