import {
  absoluteFromGauge,
  gasDensity,
  gaugeFromAbsolute,
  pressureFromDensity,
  referenceGasDensity,
  zeroCelsius,
} from "./oxygen";

/** bar gauge: 1 to 301.4 bar absolute, where the gas is checked against published values */
export const cylinderPressureRange = { least: 0, most: 300 } as const;
/** °C */
export const cylinderTemperatureRange = { least: -40, most: 60 } as const;

// Gas litres are at 21.1 °C, 101.325 kPa throughout; pressures bar gauge; temperatures °C. Real gas by the equation of
// state of Schmidt and Wagner (1985).

const densityAt = (pressure: number, temperatureC: number): number =>
  gasDensity(absoluteFromGauge(pressure), temperatureC + zeroCelsius);
const pressureAt = (density: number, temperatureC: number): number =>
  gaugeFromAbsolute(pressureFromDensity(density, temperatureC + zeroCelsius));

/**
 * Gas in a cylinder, with what stays in it at 0 bar gauge.
 *
 * @param waterVolume L
 * @param pressure bar gauge
 * @param temperatureC °C
 * @returns L gas
 */
export const cylinderContent = (waterVolume: number, pressure: number, temperatureC: number): number =>
  (waterVolume * densityAt(pressure, temperatureC)) / referenceGasDensity;

/**
 * Pressure at which a cylinder holds a content; inverse of `cylinderContent`. The caller refuses results outside the
 * range of the equation.
 *
 * @param waterVolume L
 * @param content L gas
 * @param temperatureC °C
 * @returns bar gauge
 */
export const cylinderPressure = (waterVolume: number, content: number, temperatureC: number): number =>
  pressureAt((content * referenceGasDensity) / waterVolume, temperatureC);

/**
 * Pressure of a closed cylinder brought to another temperature: constant density.
 *
 * @param pressure bar gauge
 * @param temperatureC °C
 * @param settledTemperatureC °C
 * @returns bar gauge
 */
export const settledPressure = (pressure: number, temperatureC: number, settledTemperatureC: number): number =>
  temperatureC === settledTemperatureC ? pressure : pressureAt(densityAt(pressure, temperatureC), settledTemperatureC);

/**
 * Gas to add to take a cylinder from one pressure to another at one temperature; minutes follow from the flow.
 *
 * @returns L gas
 */
export const gasToFill = (
  waterVolume: number,
  fromPressure: number,
  toPressure: number,
  temperatureC: number,
): number =>
  cylinderContent(waterVolume, toPressure, temperatureC) - cylinderContent(waterVolume, fromPressure, temperatureC);

export interface CascadeStep {
  /** Place of the bank in the list given, from 0 */
  readonly bank: number;
  /** bar gauge */
  readonly bankAfter: number;
  /** bar gauge */
  readonly cylinderAfter: number;
}

/**
 * Filling a cylinder from banks by letting each in turn come to one pressure with it, lowest bank first (ties by list
 * order): ρ = (V₁ρ₁ + V₂ρ₂)/(V₁ + V₂) at one temperature. A bank not above the cylinder is not opened.
 *
 * @param waterVolume L, of the cylinder
 * @param pressure bar gauge, in the cylinder at the start
 * @param bankVolumes L each
 * @param bankPressures bar gauge each
 * @param temperatureC °C
 */
export function cascadeFill(
  waterVolume: number,
  pressure: number,
  bankVolumes: readonly number[],
  bankPressures: readonly number[],
  temperatureC: number,
): CascadeStep[] {
  const order = bankPressures.map((_, bank) => bank).sort((a, b) => bankPressures[a]! - bankPressures[b]! || a - b);
  let cylinder = pressure;
  return order.map((bank) => {
    const bankPressure = bankPressures[bank]!;
    if (bankPressure <= cylinder) return { bank, bankAfter: bankPressure, cylinderAfter: cylinder };
    const bankVolume = bankVolumes[bank]!;
    const mass = waterVolume * densityAt(cylinder, temperatureC) + bankVolume * densityAt(bankPressure, temperatureC);
    const common = pressureAt(mass / (waterVolume + bankVolume), temperatureC);
    // Rounding must not take it past either side.
    cylinder = Math.min(bankPressure, Math.max(cylinder, common));
    return { bank, bankAfter: cylinder, cylinderAfter: cylinder };
  });
}
