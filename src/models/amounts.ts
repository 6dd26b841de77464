import { cubicFoot, gallon, pound } from "./unitFactors";
import {
  absoluteFromGauge,
  compressibility,
  expansionRatio,
  gasDensity,
  gasEnthalpy,
  gaugeFromAbsolute,
  referenceGasDensity,
  saturationAtPressure,
  saturationAtTemperature,
  standardAtmosphere,
  zeroCelsius,
} from "./oxygen";

// Pressures here are bar gauge and temperatures °C, as cells hold them; ranges are the caller's.

/** Density of saturated liquid [kg/L] at a vessel pressure [bar gauge]. */
export const liquidDensity = (pressure: number): number =>
  saturationAtPressure(absoluteFromGauge(pressure)).liquidDensity / 1000;

/** Temperature [°C] at which liquid boils at a vessel pressure [bar gauge]. */
export const boilingPoint = (pressure: number): number =>
  saturationAtPressure(absoluteFromGauge(pressure)).temperature - zeroCelsius;

/** Vessel pressure [bar gauge] at which liquid boils at a temperature [°C]. */
export const saturationPressure = (celsius: number): number =>
  gaugeFromAbsolute(saturationAtTemperature(celsius + zeroCelsius).pressure);

/** Heat of vaporisation [kJ/kg] at a vessel pressure [bar gauge]. */
export const latentHeat = (pressure: number): number => saturationAtPressure(absoluteFromGauge(pressure)).latentHeat;

/** Compressibility factor of the gas at a pressure [bar gauge] and temperature [°C]. */
export const compressibilityAt = (pressure: number, celsius: number): number =>
  compressibility(absoluteFromGauge(pressure), celsius + zeroCelsius);

/** Density of the gas [kg/m³] at a pressure [bar gauge] and temperature [°C]. */
export const gasDensityAt = (pressure: number, celsius: number): number =>
  gasDensity(absoluteFromGauge(pressure), celsius + zeroCelsius);

/** Gas [L] from a litre of saturated liquid: vessel pressure [bar gauge], gas temperature [°C] and pressure [bar gauge]. */
export const gasFromALitre = (pressure: number, gasCelsius: number, gasPressure: number): number =>
  expansionRatio(absoluteFromGauge(pressure), gasCelsius + zeroCelsius, absoluteFromGauge(gasPressure));

/**
 * Gas [reference L] that leaves a vessel for each litre its level falls at a pressure [bar gauge]: (ρl − ρv)/ρ reference,
 * since vapour stays behind in the space of the liquid.
 */
export function gasDrawnForALitre(pressure: number): number {
  const at = saturationAtPressure(absoluteFromGauge(pressure));
  return (at.liquidDensity - at.vapourDensity) / referenceGasDensity;
}

/**
 * Heat [kW] that turns saturated liquid at a vessel's pressure [bar gauge] into gas of a temperature [°C] at that pressure,
 * for a flow [L/min] of reference gas: ṁ·(h gas − h liquid), the first law for steady flow.
 */
export function vaporiserDuty(flow: number, gasCelsius: number, pressure: number): number {
  const inVessel = absoluteFromGauge(pressure);
  const massFlow = ((flow / 1000) * referenceGasDensity) / 60;
  return massFlow * (gasEnthalpy(inVessel, gasCelsius + zeroCelsius) - saturationAtPressure(inVessel).liquidEnthalpy);
}

/** What an amount of oxygen may be stated in. */
export const amountUnits = ["liquid L", "liquid gal", "gas L", "gas m3", "gas ft3", "kg", "lb"] as const;
export type AmountUnit = (typeof amountUnits)[number];

/** Kilograms in one of a unit; liquid saturated at 1 atm, gas at 1 atm and a temperature [°C]. */
function kilogramsIn(unit: AmountUnit, gasCelsius: number): number {
  const liquid = (): number => saturationAtPressure(standardAtmosphere).liquidDensity / 1000;
  const gas = (): number => gasDensityAt(0, gasCelsius) / 1000;
  switch (unit) {
    case "liquid L":
      return liquid();
    case "liquid gal":
      return liquid() * gallon;
    case "gas L":
      return gas();
    case "gas m3":
      return gas() * 1000;
    case "gas ft3":
      return gas() * cubicFoot;
    case "kg":
      return 1;
    case "lb":
      return pound;
  }
}

/** The same mass of oxygen in another unit; gas at 1 atm and a temperature [°C]. */
export const convertAmount = (amount: number, from: AmountUnit, to: AmountUnit, gasCelsius: number): number =>
  from === to ? amount : (amount * kilogramsIn(from, gasCelsius)) / kilogramsIn(to, gasCelsius);

/**
 * The same gas counted at another temperature and the same pressure of 1 atm, as an ideal gas: V₂ = V₁·T₂/T₁ (law of
 * Charles and Gay-Lussac). Real oxygen differs by at most 0.15 % from −40 to 60 °C.
 */
export const gasRestated = (gas: number, fromCelsius: number, toCelsius: number): number =>
  fromCelsius === toCelsius ? gas : (gas * (toCelsius + zeroCelsius)) / (fromCelsius + zeroCelsius);
