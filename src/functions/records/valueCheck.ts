import type { About } from "../../arguments/about";
import { anyCell } from "../../arguments/anyCell";
import { formatNumber, isFailure, quoteCell } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { type Quantity, measured, number as bareNumber } from "../../arguments/quantity";
import { choice } from "../../arguments/text";
import { measures } from "../../arguments/units";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import {
  type CheckedKind,
  coldestAir,
  coldestOxygen,
  firstGivenYear,
  fullestCylinder,
  largestFlow,
  largestLevel,
  lastGivenYear,
  looksLikeDate,
  looksLikeNumber,
  oddDate,
  oddNumber,
  warmestAir,
  warmestColdOxygen,
} from "../../models/plausible";

export const args = cellArguments({
  value: anyCell,
  kind: choice<CheckedKind | "date">(["fraction", "flow", "level", "temperature", "pressure", "date", "count"]),
});

/** Without limits: what lies outside is told by the check itself. */
const readers: Readonly<Record<CheckedKind, Quantity>> = {
  fraction: measured(measures.fraction),
  flow: measured(measures.flow),
  level: measured(measures.liquid),
  temperature: measured(measures.temperature),
  pressure: measured(measures.gaugePressure),
  count: bareNumber,
};

function whatIsWrong(value: number | string | boolean, kind: CheckedKind | "date"): string | undefined {
  if (typeof value === "boolean") return `is no ${kind}; enter a ${kind === "date" ? "date" : "number"}`;
  if (typeof value === "number") {
    if (!Number.isFinite(value)) return "is not a finite number";
    return kind === "date" ? oddDate(value) : oddNumber(value, kind);
  }
  if (looksLikeDate(value))
    return `is text that looks like a date; ${kind === "date" ? "enter it as a date" : `a ${kind} is wanted here`}`;
  if (looksLikeNumber(value))
    return `is text that looks like a number; enter it as a ${kind === "date" ? "date" : "number"}`;
  if (kind === "date") return "is text, not a date";
  const read = readers[kind].read(value, "");
  return isFailure(read) ? read.message.trim() : oddNumber(read, kind);
}

/**
 * Says what is wrong with a cell, or "ok": a percent typed as a number, °F in a column of °C, psi for bar, text that looks
 * like a number or a date, a value that can't be.
 *
 * @customfunction VALUE_CHECK
 * @param value The cell to check
 * @param kind What it should hold: fraction, flow (L/min), level (L), temperature (°C), pressure (bar gauge), date or count
 * @returns "ok", or what is wrong
 */
export function valueCheck(value: any[][], kind: any[][]): any[][] {
  return eachCell(args, [value, kind], (given) => {
    if (given.value === undefined) return `blank: nothing is entered; a ${given.kind} is wanted here`;
    const wrong = whatIsWrong(given.value, given.kind);
    if (wrong === undefined) return "ok";
    const quoted = quoteCell(given.value);
    return wrong.startsWith(quoted) ? wrong : `${quoted} ${wrong}`;
  });
}

const minus = (value: number): string => formatNumber(value).replace("-", "−");

export const about: About = {
  gives: "text",
  rule: `the value against the limits of its kind: fraction 0 to 1; flow 0 to ${largestFlow} L/min; level 0 to ${largestLevel} L; temperature of air ${minus(coldestAir)} to ${warmestAir} °C or of cold oxygen ${minus(coldestOxygen)} to ${minus(warmestColdOxygen)} °C; pressure −1.013 to ${fullestCylinder} bar gauge; date in ${firstGivenYear} to ${lastGivenYear}; count a whole number from 0`,
  range: `Text with a unit of the kind is read and judged in the base unit. °F below ${Math.ceil(warmestAir)} and psi below ${fullestCylinder} can't be told from °C and bar. A blank is told; an error cell goes out unchanged. "ok" says that a value can be, not that it is right. ${blankAsZero}`,
  source:
    "Air temperatures: the extremes recognised by the World Meteorological Organization; freezing and critical point of oxygen: Schmidt & Wagner 1985; the other limits are own planning defaults",
  examples: [
    {
      formula: '=OXYGEN.VALUE_CHECK(93,"fraction")',
      result: "93 looks like a percent: enter 93% or 0.93",
      source: "93 / 100",
    },
    { formula: '=OXYGEN.VALUE_CHECK(0.93,"fraction")', result: "ok", source: "0.93 is from 0 to 1" },
    {
      formula: '=OXYGEN.VALUE_CHECK("","level")',
      result: "blank: nothing is entered; a level is wanted here",
      source: "The rule stated",
    },
    {
      formula: '=OXYGEN.VALUE_CHECK(86,"temperature")',
      result: '86 is hotter than any air; it looks like °F: 86 °F is 30 °C, or enter "86 °F"',
      source: "(86 − 32) × 5/9 = 30",
    },
    {
      formula: '=OXYGEN.VALUE_CHECK("12,5","level")',
      result: '"12,5" is text that looks like a number; enter it as a number',
      source: "A decimal comma in text",
    },
    {
      formula: '=OXYGEN.VALUE_CHECK("05/03/2026","date")',
      result: '"05/03/2026" is text that looks like a date; enter it as a date',
      source: "5 March or May 3: text that can be read two ways",
    },
  ],
  seeAlso: ["LOG_FAULTS", "BOOK_BALANCE", "CONVERT_AMOUNT"],
  caution: "It finds slips of the pen, not wrong readings: check the gauge itself before you act on a figure.",
};
