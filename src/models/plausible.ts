import { zeroCelsius } from "./referenceConditions";
import { firstSerial, lastDay, serialOfDay } from "./calendar";

/** Limits beyond which a cell is more likely a slip than a measurement. CONSTANTS lists them. */

/** Warmest and coldest air measured on Earth [°C]: Furnace Creek 1913, Vostok 1983 (World Meteorological Organization). */
export const warmestAir = 56.7;
export const coldestAir = -89.2;
/** Oxygen boils between these at 0.03 and 50 bar [°C]; only cryogenic liquid and its vapour are as cold. */
export const coldestOxygen = -218.8;
export const warmestColdOxygen = -118.5;
/** Pressure of the fullest cylinders in common use [bar gauge]. */
export const fullestCylinder = 300;
/** Vacuum [bar gauge]. */
const vacuum = -1.01325;
/** Gas flow of a whole hospital [L/min]. */
export const largestFlow = 5000;
/** Liquid of the largest site vessels [L]. */
export const largestLevel = 100000;
/** The years of dates that are given; before and after, a slip in the year is more likely. */
export const firstGivenYear = 1990;
export const lastGivenYear = 2100;
export const firstGivenDay = serialOfDay({ year: firstGivenYear, month: 1, day: 1 });
export const lastGivenDay = serialOfDay({ year: lastGivenYear, month: 12, day: 31 });
/** Equal readings in a row after which a gauge is taken to be stuck. */
export const stuckReadings = 3;

const shown = (value: number): string => String(Number(value.toPrecision(7)));
/** Converted figures are for recognising, not for copying. */
const about = (value: number): string => String(Number(value.toPrecision(4)));

export type CheckedKind = "fraction" | "flow" | "level" | "temperature" | "pressure" | "count";

/** What is odd about a number as a fraction, flow [L/min], level [L], temperature [°C], pressure [bar gauge] or count; undefined if nothing. */
export function oddNumber(value: number, kind: CheckedKind): string | undefined {
  switch (kind) {
    case "fraction":
      if (value < 0) return "is below 0; a fraction is from 0 to 1";
      if (value > 100) return "is above 100 %; a fraction is from 0 to 1";
      return value > 1 ? `looks like a percent: enter ${shown(value)}% or ${shown(value / 100)}` : undefined;
    case "flow":
      if (value < 0) return "is below 0; a flow is 0 or more";
      return value > largestFlow
        ? `is more than a whole hospital uses; is it L/h or L/day? ${shown(value)} L/day is ${about(value / 1440)} L/min`
        : undefined;
    case "level":
      if (value < 0) return "is below 0; a level is 0 or more";
      return value > largestLevel ? "is more than the largest site vessels hold; is it gas, or mL?" : undefined;
    case "temperature":
      if (value < -zeroCelsius) return "is below absolute zero (−273.15 °C)";
      if (value > 200 && value < 335)
        return `is hotter than any air; it looks like kelvin: ${shown(value)} K is ${about(value - zeroCelsius)} °C`;
      if (value > warmestAir)
        return `is hotter than any air; it looks like °F: ${shown(value)} °F is ${about(((value - 32) * 5) / 9)} °C, or enter "${shown(value)} °F"`;
      if (value < coldestOxygen) return "is colder than oxygen freezes (−218.8 °C)";
      return value < coldestAir && value > warmestColdOxygen
        ? "is colder than any air and warmer than liquid oxygen"
        : undefined;
    case "pressure":
      if (value < vacuum) return "is below vacuum (−1.013 bar gauge)";
      if (value <= fullestCylinder) return undefined;
      return value <= 5000
        ? `is above the fullest cylinders (300 bar); it looks like psi: ${shown(value)} psi is ${about(value * 0.0689475729)} bar, or enter "${shown(value)} psi"`
        : `is above the fullest cylinders (300 bar); it looks like kPa: ${shown(value)} kPa is ${about(value / 100)} bar, or enter "${shown(value)} kPa"`;
    case "count":
      if (value < 0) return "is below 0; a count is 0 or more";
      return Number.isInteger(value) ? undefined : "is not a whole number";
  }
}

/** What is odd about a number as a date serial; undefined if nothing. */
export function oddDate(serial: number): string | undefined {
  const day = Math.floor(serial) % 100;
  const month = Math.floor(serial / 100) % 100;
  if (serial >= 19000101 && serial <= 21001231 && month >= 1 && month <= 12 && day >= 1 && day <= 31) {
    return "is a date run together as a number; enter it with separators, as 2026-03-01";
  }
  if (serial >= 1900 && serial <= lastGivenYear && Number.isInteger(serial))
    return "looks like a year alone; enter day, month and year";
  if (serial < firstSerial) return "is a small number, not a date";
  if (serial >= lastDay + 1) return "is too large for a date";
  return serial < firstGivenDay || serial >= lastGivenDay + 1
    ? `is a date outside ${firstGivenYear} to ${lastGivenYear}; check the year`
    : undefined;
}

const monthWord = /\b(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\b/i;
const numericDate = /^\d{1,4}\s*[-/.]\s*\d{1,2}\s*[-/.]\s*\d{1,4}(\b.*)?$/;

/** "05/03/2026", "5 March 2026", "2026-03-05". */
export const looksLikeDate = (text: string): boolean =>
  numericDate.test(text.trim()) || (monthWord.test(text) && /\d/.test(text));

/** "12.5", "12,5", "1 200", "'93". */
export const looksLikeNumber = (text: string): boolean => /^['’]?[+\-−]?\d[\d,.'’ \u00a0\u202f]*$/.test(text.trim());
