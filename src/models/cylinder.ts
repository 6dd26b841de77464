import {
  absoluteFromGauge,
  gasDensity,
  gaugeFromAbsolute,
  pressureFromDensity,
  referenceGasDensity,
  zeroCelsius,
} from "./oxygen";

/** bar gauge: 0.5 to 301.325 bar absolute, so that a cylinder open to thin air reads; up to 300 bar absolute checked against published values */
export const cylinderPressureRange = { least: -0.51325, most: 300.31175 } as const;
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

/**
 * Words on gas hotter than stated: its density at 21.1 °C over that at 30, 40 and 50 °C, 50 to 300 bar gauge, by the
 * equation of state.
 */
export const hotGas =
  "Gas hotter than the temperature given makes this too much: reckoned at 21.1 °C, by up to 4 % where it is 30 °C, 9 % at 40 °C and 14 % at 50 °C.";

/**
 * Minutes that a cylinder lasts at a flow, down to the pressure that is kept; 0 at or below that.
 *
 * @param waterVolume L
 * @param pressure bar gauge
 * @param flow L/min of gas
 * @param keepPressure bar gauge
 * @param temperatureC °C
 */
export const minutesOnCylinder = (
  waterVolume: number,
  pressure: number,
  flow: number,
  keepPressure: number,
  temperatureC: number,
): number => (pressure <= keepPressure ? 0 : gasToFill(waterVolume, keepPressure, pressure, temperatureC) / flow);

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
