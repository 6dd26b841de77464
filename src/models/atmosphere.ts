/**
 * Troposphere of the ISO 2533:1975 standard atmosphere, dry air, −500 to 11 000 m of geopotential altitude.
 *
 *   T = T₀ + βH,  p = p₀·(1 + βH/T₀)^(−g/(βR)),  ρ = p/(RT)
 *
 * Constants of the standard: g 9.80665 m/s², R 287.05287 J/(kg·K), T₀ 288.15 K, p₀ 101.325 kPa, ρ₀ 1.225 kg/m³,
 * β −0.0065 K/m.
 */
import { standardAtmosphereKpa, zeroCelsius } from "./referenceConditions";
import { standardGravity } from "./unitFactors";

const airGasConstant = 287.05287;
const lapseRate = -0.0065;
/** K at sea level */
const seaLevelTemperature = 288.15;
/** kPa at sea level */
export const seaLevelPressure = standardAtmosphereKpa;
/** kg/m³ at sea level */
export const seaLevelAirDensity = 1.225;
const pressureExponent = -standardGravity / (lapseRate * airGasConstant);

/** m, geopotential */
export const altitudeRange = { least: -500, most: 11000 } as const;
/** °C of air near the ground; the extremes on record are −89 and 57 °C, so that °F entered as °C is mostly caught. */
export const airTemperatureRange = { least: -90, most: 60 } as const;

/** Standard temperature [°C] at a geopotential altitude [m]. */
export const standardTemperature = (altitude: number): number =>
  seaLevelTemperature + lapseRate * altitude - zeroCelsius;

/** Standard pressure [kPa] at a geopotential altitude [m]. */
export const airPressure = (altitude: number): number =>
  seaLevelPressure * Math.pow(1 + (lapseRate * altitude) / seaLevelTemperature, pressureExponent);

/** Geopotential altitude [m] at which the standard pressure [kPa] is met; inverse of `airPressure`. */
export const altitudeFromPressure = (pressureKpa: number): number =>
  (seaLevelTemperature / lapseRate) * Math.expm1(Math.log(pressureKpa / seaLevelPressure) / pressureExponent);

/** Density [kg/m³] of dry air at the standard pressure of an altitude [m] and an actual temperature [°C]. */
export const airDensity = (altitude: number, temperatureC: number): number =>
  (airPressure(altitude) * 1000) / (airGasConstant * (temperatureC + zeroCelsius));

/** That density over 1.225 kg/m³. */
export const airDensityRatio = (altitude: number, temperatureC: number): number =>
  airDensity(altitude, temperatureC) / seaLevelAirDensity;

/**
 * What a gauge read at an altitude [m] shows [bar] as gauge over 1.01325 bar: a gauge shows the pressure above the air
 * about it, and the standard air there is thinner.
 */
export const gaugeCorrected = (pressure: number, altitude: number): number =>
  pressure - (seaLevelPressure - airPressure(altitude)) / 100;
