import { defaults } from "./defaults";
import { airPressure, seaLevelPressure } from "./atmosphere";

/**
 * Share of the rated rate that is left at a site: (p/p₀)·(1 − loss·max(0, T − T rated)), never above 1, never below 0.
 * Own planning rule, no published curve: thin air feeds the plant in proportion to its pressure, warm air costs a
 * constant share per degree.
 *
 * @param altitude m, geopotential
 * @param temperatureC °C
 * @param lossPerDegree share per °C
 * @param ratedTemperatureC °C
 */
export function ratedShare(
  altitude: number,
  temperatureC: number,
  lossPerDegree: number,
  ratedTemperatureC: number,
): number {
  const thinAir = airPressure(altitude) / seaLevelPressure;
  const warmAir = 1 - lossPerDegree * Math.max(0, temperatureC - ratedTemperatureC);
  return Math.min(1, Math.max(0, thinAir * warmAir));
}

/** Make rate at a site, in the unit of `ratedRate`. @see ratedShare */
export const deratedRate = (
  ratedRate: number,
  altitude: number,
  temperatureC: number,
  lossPerDegree: number,
  ratedTemperatureC: number,
): number => ratedRate * ratedShare(altitude, temperatureC, lossPerDegree, ratedTemperatureC);

/** Where a value lies on an axis: index of the interval's start and the share of the way to its end. */
function placeOnAxis(axis: readonly number[], value: number): { index: number; share: number } | undefined {
  if (axis.length === 1) return value === axis[0] ? { index: 0, share: 0 } : undefined;
  for (let index = 0; index + 1 < axis.length; index++) {
    const from = axis[index]!;
    const to = axis[index + 1]!;
    if (value >= Math.min(from, to) && value <= Math.max(from, to))
      return { index, share: (value - from) / (to - from) };
  }
  return undefined;
}

/**
 * Two-way linear interpolation in a table.
 *
 * @param rowAxis Strictly rising or strictly falling, one value a row of the table
 * @param columnAxis The same, one value a column
 * @param table table[row][column]
 * @returns The value, or which axis does not reach the point: nothing is extrapolated
 */
export function interpolateTable(
  row: number,
  column: number,
  rowAxis: readonly number[],
  columnAxis: readonly number[],
  table: readonly (readonly number[])[],
): number | "row outside" | "column outside" {
  const inRows = placeOnAxis(rowAxis, row);
  if (!inRows) return "row outside";
  const inColumns = placeOnAxis(columnAxis, column);
  if (!inColumns) return "column outside";
  const along = (r: number): number => {
    const values = table[r]!;
    const from = values[inColumns.index]!;
    return inColumns.share === 0 ? from : from + inColumns.share * (values[inColumns.index + 1]! - from);
  };
  const first = along(inRows.index);
  return inRows.share === 0 ? first : first + inRows.share * (along(inRows.index + 1) - first);
}

export interface DeratingFit {
  /** In the unit of the rates */
  readonly ratedRate: number;
  /** Share per °C above 21.1 °C */
  readonly lossPerDegree: number;
  /** Root mean square of the misfit of ln(rate) */
  readonly residual: number;
  /** False when the runs can't tell the loss and the default was kept */
  readonly lossFitted: boolean;
}

/**
 * Rated rate R and loss per degree k that fit a site's own runs, by least squares of
 * ln(rate) = ln R + ln(rated share at k). R drops out (the mean of the misfit), so the search is over k alone, from 0
 * to where the warmest run would make nothing: a scan brackets the least sum of squares, bisection of its derivative
 * finds it to rounding.
 *
 * One run, or none above 21.1 °C, or runs that are all alike in what the loss does to them, keep the default loss.
 *
 * @param altitudes m
 * @param temperaturesC °C
 * @param rates All above 0; one for each altitude and temperature; at least one
 */
export function fitDerating(
  altitudes: readonly number[],
  temperaturesC: readonly number[],
  rates: readonly number[],
): DeratingFit {
  const logRates = rates.map(Math.log);
  const thinAir = altitudes.map((altitude) => airPressure(altitude) / seaLevelPressure);
  const degrees = temperaturesC.map((t) => Math.max(0, t - defaults.rated_temperature.value));
  const count = rates.length;
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / count;

  const misfit = (loss: number): { logRated: number; deviations: number[] } => {
    const gaps = logRates.map((y, i) => y - Math.log(Math.min(1, thinAir[i]! * (1 - loss * degrees[i]!))));
    const logRated = mean(gaps);
    return { logRated, deviations: gaps.map((gap) => gap - logRated) };
  };
  const squares = (loss: number): number => misfit(loss).deviations.reduce((sum, d) => sum + d * d, 0);
  // Half the derivative of the sum of squares; a run held at the rated rate does not answer to the loss.
  const slope = (loss: number): number => {
    const { deviations } = misfit(loss);
    return deviations.reduce((sum, d, i) => {
      const left = 1 - loss * degrees[i]!;
      return thinAir[i]! * left >= 1 ? sum : sum + (d * degrees[i]!) / left;
    }, 0);
  };
  const answer = (loss: number, lossFitted: boolean): DeratingFit => {
    const { logRated, deviations } = misfit(loss);
    return {
      ratedRate: Math.exp(logRated),
      lossPerDegree: loss,
      residual: Math.sqrt(mean(deviations.map((d) => d * d))),
      lossFitted,
    };
  };

  const warmest = Math.max(...degrees);
  const alike = degrees.every((d) => Math.abs(d - degrees[0]!) < 1e-9) && thinAir.every((share) => share <= 1);
  if (count < 2 || warmest === 0 || alike) return answer(defaults.loss_per_degree.value, false);

  const steps = 400;
  const most = (1 / warmest) * (1 - 1e-9);
  let best = 0;
  let least = Infinity;
  for (let step = 0; step <= steps; step++) {
    const sum = squares((most * step) / steps);
    if (sum < least) {
      least = sum;
      best = step;
    }
  }
  let low = (most * Math.max(0, best - 1)) / steps;
  let high = (most * Math.min(steps, best + 1)) / steps;
  if (best === 0 && slope(0) >= 0) return answer(0, true);
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (slope(middle) >= 0) high = middle;
    else low = middle;
  }
  return answer((low + high) / 2, true);
}

/**
 * Hours from switching on until liquid gathers: the warm start, longer when the plant starts cold.
 * Common practice, no source.
 *
 * @param temperatureC °C
 * @param warmStartHours h
 * @param coldExtraHours h added below the limit
 * @param coldBelowC °C
 */
export const startDelay = (
  temperatureC: number,
  warmStartHours: number,
  coldExtraHours: number,
  coldBelowC: number,
): number => warmStartHours + (temperatureC < coldBelowC ? coldExtraHours : 0);
