import type { About } from "../../arguments/about";
import { type CellArgument, isBlank, isFailure, quoteCell } from "../../arguments/argument";
import { dateTime } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { litres, litresPerDay } from "../../arguments/quantity";
import { firstErrorIn, rawRange } from "../../arguments/range";
import { countedRows } from "../../arguments/rows";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { type Cells, type CellError, dateTimeCell, invalid } from "../../cells/cellValues";
import { type LogFault, type Reading, logFaults as findFaults } from "../../models/logFaults";
import { looksLikeDate, looksLikeNumber, stuckReadings } from "../../models/plausible";

export const args = tableArguments({
  dates: rawRange,
  levels: rawRange,
  capacity: litres.positive(),
  most_rise: litresPerDay.mayBeOmitted(),
  most_fall: litresPerDay.mayBeOmitted(),
});

interface Line {
  readonly cells: readonly unknown[];
  /** Cells up to the last filled one. */
  readonly filled: number;
}

/** The cells of one column or row below its heading. */
function line(cells: Cells, element: CellArgument, label: string): Line | CellError {
  if (cells.length > 1 && cells[0]!.length > 1)
    return invalid(`${label} has ${cells.length} rows and ${cells[0]!.length} columns; enter one column or one row`);
  const column = cells.length === 1 ? cells[0]!.map((cell) => [cell]) : cells;
  const { from, to } = countedRows(column, () => element);
  const first = cells.length === 1 ? 0 : from;
  return { cells: column.slice(first).map((row) => row[0]), filled: to - first };
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
    const rows = Math.max(days.filled, amounts.filled);
    if (days.cells.length < rows || amounts.cells.length < rows)
      return invalid(
        `dates has ${days.filled} and levels has ${amounts.filled} cells; they must go together one by one`,
      );

    const unread: LogFault[] = [];
    const readings: Reading[] = [];
    for (let row = 1; row <= rows; row++) {
      const [day, amount] = [days.cells[row - 1], amounts.cells[row - 1]];
      if (isBlank(day) && isBlank(amount)) {
        unread.push({ row, date: undefined, fault: "the row is blank" });
        continue;
      }
      const date = read(day, dateTime, "date");
      const level = read(amount, litres, "level");
      const known = typeof date === "number" ? date : undefined;
      if (typeof date === "string") unread.push({ row, date: undefined, fault: date });
      if (typeof level === "string") unread.push({ row, date: known, fault: level });
      readings.push({ row, date: known, level: typeof level === "number" ? level : undefined });
    }
    const found = unread
      .concat(findFaults(readings, { capacity: given.capacity, mostRise: given.most_rise, mostFall: given.most_fall }))
      .sort((a, b) => a.row - b.row);
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
  rule: `for each reading: date and level can be read; the date follows those before it (the rows are blamed that stand outside the longest rising series of dates); level ≤ capacity; change a day since the last such reading within most rise and most fall; not the same level ${stuckReadings} readings in a row (unless empty or full)`,
  range: `One column or row each, a first row of headings passed over; the two must be equally long. Blank rows at the end are cut off; a blank date, level or row before it is a fault, a blank level in the last row too. A log without faults gives one row, "no fault found": it says that the log can be, not that it is right, and without most rise and most fall no change is judged. Dates are taken from 1990 to 2100, as text in the form YYYY-MM-DD only. A row with a wrong date, or a level above the capacity, is not used as the base of the next change. ${blankAsZero}`,
  source: `Common practice, no source; ${stuckReadings} equal readings for a stuck gauge is an own planning default`,
  examples: [
    {
      formula: "=OXYGEN.LOG_FAULTS({46082;46083;46083;46084},{20;45;45;130},100,30)",
      result: [
        ["row", "date", "fault"],
        [3, 46083, "the same date as row 2"],
        [4, 46084, "level 130 L is above the capacity of 100 L"],
      ],
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.LOG_FAULTS({46082;46083;46084},{20;60;"55,5"},100,30)',
      result: [
        ["row", "date", "fault"],
        [2, 46083, "rises 40 L a day since row 1, faster than 30 L a day"],
        [3, 46084, 'level "55,5" is text that looks like a number'],
      ],
      note: "Two plants of 0.625 L/h can't add 40 L in a day",
      source: "2 × 0.625 × 24 = 30",
    },
    {
      formula: '=OXYGEN.LOG_FAULTS({46082;46083;46085;46086},{80;"";62;35},100,30,20)',
      result: [
        ["row", "date", "fault"],
        [2, 46083, "level is blank"],
        [4, 46086, "falls 27 L a day since row 3, faster than 20 L a day"],
      ],
      note: "A day without a reading, then more gone than can be drawn and lost",
      source: "(80 − 62) / 3 = 6 and 62 − 35 = 27",
    },
  ],
  seeAlso: ["VALUE_CHECK", "BOOK_BALANCE", "LOSS_FROM_READINGS"],
  caution:
    "A level that falls too fast may be a leak, not a slip: go and look, without flames or grease, before you correct the log.",
};
