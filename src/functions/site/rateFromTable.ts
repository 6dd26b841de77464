import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { grid } from "../../arguments/grid";
import { litresPerHour } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { airCelsius, siteAltitude } from "../../arguments/siteAir";
import { type CellError, invalid } from "../../cells/cellValues";
import { interpolateTable } from "../../models/derating";

export const args = cellArguments({
  altitude: siteAltitude,
  temperature: airCelsius,
  altitudes: list(siteAltitude),
  temperatures: list(airCelsius),
  rates: grid(litresPerHour),
});

const places = (count: number, word: string): string => `${count} ${word}${count === 1 ? "" : "s"}`;

function badAxis(name: string, axis: readonly number[], unit: string): CellError | undefined {
  const at = axis.findIndex((value, index) => index > 0 && !(value > axis[index - 1]!));
  if (at < 0) return undefined;
  return invalid(
    `${name} must rise from the first to the last; number ${at + 1} (${formatNumber(axis[at]!)} ${unit}) is not above number ${at} (${formatNumber(axis[at - 1]!)} ${unit})`,
  );
}

/** The end of the axis in place of a value beyond it by rounding only, as "68 °F" is beyond 20 °C. */
function onAxis(value: number, axis: readonly number[]): number {
  const last = axis[axis.length - 1]!;
  if (Math.abs(value - axis[0]!) < 1e-9) return axis[0]!;
  return Math.abs(value - last) < 1e-9 ? last : value;
}

const outside = (name: string, value: number, axis: readonly number[], unit: string): CellError =>
  invalid(
    `${name} ${formatNumber(value)} ${unit} is outside the table, which goes from ${formatNumber(axis[0]!)} to ${formatNumber(axis[axis.length - 1]!)} ${unit}; nothing is extrapolated: ask the maker`,
  );

/**
 * Make rate at a site from the maker's own table of rates, linear between its altitudes and temperatures. Never extrapolates.
 *
 * @customfunction RATE_FROM_TABLE
 * @param altitude Altitude of the site [m]
 * @param temperature Air temperature at the plant [°C]
 * @param altitudes Altitudes of the table's rows, rising [m]
 * @param temperatures Temperatures of the table's columns, rising [°C]
 * @param rates The table: one row an altitude, one column a temperature [L/h]
 * @returns Make rate [L/h]
 */
export function rateFromTable(
  altitude: any[][],
  temperature: any[][],
  altitudes: any[][],
  temperatures: any[][],
  rates: any[][],
): any[][] {
  return eachCell(args, [altitude, temperature, altitudes, temperatures, rates], (given) => {
    const bad = badAxis("altitudes", given.altitudes, "m") ?? badAxis("temperatures", given.temperatures, "°C");
    if (bad) return bad;
    if (given.rates.length !== given.altitudes.length || given.rates[0]!.length !== given.temperatures.length) {
      return invalid(
        `rates has ${places(given.rates.length, "row")} and ${places(given.rates[0]!.length, "column")}; with ${places(given.altitudes.length, "altitude")} and ${places(given.temperatures.length, "temperature")} it must have one row an altitude and one column a temperature`,
      );
    }
    const rate = interpolateTable(
      onAxis(given.altitude, given.altitudes),
      onAxis(given.temperature, given.temperatures),
      given.altitudes,
      given.temperatures,
      given.rates,
    );
    if (rate === "row outside") return outside("altitude", given.altitude, given.altitudes, "m");
    if (rate === "column outside") return outside("temperature", given.temperature, given.temperatures, "°C");
    return rate;
  });
}

export const about: About = {
  gives: "make rate",
  rule: "linear between the two nearest altitudes and the two nearest temperatures of the table (bilinear)",
  range:
    "Inside the table only; a point outside is #VALUE! and never extrapolated. Both axes must rise, and every cell of the table must hold a rate.",
  source: "Bilinear interpolation, any textbook of numerical methods; the rates are the maker's",
  examples: [
    {
      formula: "=OXYGEN.RATE_FROM_TABLE(1000,30,{0;2000},{20,40},{2,1.7;1.6,1.32})",
      result: 1.655,
      note: "The middle is the mean of the four corners",
      source: "(2 + 1.7 + 1.6 + 1.32)/4",
    },
    {
      formula: "=OXYGEN.RATE_FROM_TABLE({0;500;2000},20,{0;2000},{20,40},{2,1.7;1.6,1.32})",
      result: [[2], [1.9], [1.6]],
      note: "A corner, a quarter of the way, the other corner",
      source: "2, 2 − 0.4/4, 1.6",
    },
    {
      formula: "=OXYGEN.RATE_FROM_TABLE(2500,30,{0;2000},{20,40},{2,1.7;1.6,1.32})",
      result: { error: "#VALUE!", words: "altitude 2500 m is outside the table" },
      note: "Never extrapolated",
      source: "The range stated",
    },
  ],
  seeAlso: ["DERATED_RATE", "FIT_DERATING"],
};
