import { standardAtmosphere } from "./referenceConditions";
import {
  criticalDensity,
  criticalPressure,
  criticalTemperature,
  energies,
  isotherm,
  type Isotherm,
  pressureScale,
  residual,
} from "./oxygenEquation";
import { recentAnswers } from "./recentAnswers";

export const absoluteFromGauge = (gaugeBar: number): number => gaugeBar + standardAtmosphere;
export const gaugeFromAbsolute = (absoluteBar: number): number => absoluteBar - standardAtmosphere;

/** Liquid and vapour in equilibrium. Energies have an arbitrary zero: use differences. */
export interface Saturation {
  /** K */
  readonly temperature: number;
  /** bar absolute */
  readonly pressure: number;
  /** kg/m³ */
  readonly liquidDensity: number;
  /** kg/m³ */
  readonly vapourDensity: number;
  /** kJ/kg */
  readonly liquidEnthalpy: number;
  /** kJ/kg */
  readonly vapourEnthalpy: number;
  /** kJ/kg */
  readonly liquidInternalEnergy: number;
  /** kJ/kg */
  readonly vapourInternalEnergy: number;
  /** kJ/(kg·K) */
  readonly liquidEntropy: number;
  /** kJ/(kg·K) */
  readonly vapourEntropy: number;
  /** Heat of vaporisation, kJ/kg */
  readonly latentHeat: number;
}

/** bar absolute; a little wider than the 0.5–25 bar offered in cells. */
export const saturationPressureRange = { least: 0.1, most: 30 } as const;

// Ancillary correlations, used as starting points only. Coefficients as published with the CoolProp oxygen file.
type Ancillary = readonly (readonly [n: number, t: number])[];
const pressureAncillary: Ancillary = [
  [-7.645535357219451, 1.019],
  [2.4214288702883655, 1.177],
  [9.642620060548747, 2.44],
  [-10.094822869854763, 2.493],
  [-1.6856689587691926, 5.646],
  [1.2776407609527567, 10.887],
];
const liquidAncillary: Ancillary = [
  [2.398534228348317, 0.398],
  [-0.9602489731250617, 0.86],
  [4.608521959548032, 1.704],
  [-4.459907685966375, 2.122],
  [1.4756239105744295, 4.266],
  [-71.13005503778817, 18.786],
];
const vapourAncillary: Ancillary = [
  [-4.045898237284726, 0.311],
  [13.351580368749335, 0.407],
  [-13.257394903986311, 0.472],
  [-0.5839929431960236, 1.701],
  [-2.395023810536666, 4.684],
  [-4.561062605120816, 16.677],
];
const ancillarySum = (terms: Ancillary, theta: number): number => {
  let sum = 0;
  for (const [n, t] of terms) sum += n * Math.pow(theta, t);
  return sum;
};

/** ln(p/pc) of the ancillary and its derivative with respect to 1/T. */
function ancillaryLogPressure(temperatureK: number): { log: number; slope: number } {
  const theta = 1 - temperatureK / criticalTemperature;
  let sum = 0;
  let sumSlope = 0;
  for (const [n, t] of pressureAncillary) {
    const term = n * Math.pow(theta, t);
    sum += term;
    sumSlope += (t * term) / theta;
  }
  return {
    log: (criticalTemperature / temperatureK) * sum,
    slope: criticalTemperature * sum + temperatureK * sumSlope,
  };
}

const newtonSteps = 40;

/** A point on the saturation line as the solve for density leaves it: δ of both phases. */
interface Coexistence {
  readonly at: Isotherm;
  readonly liquid: number;
  readonly vapour: number;
  /** bar absolute */
  readonly pressure: number;
}

/**
 * Densities at which both phases have one pressure and one Gibbs energy at a temperature.
 * Newton's method in the form of R. Akasaka, J. Thermal Sci. Technol. 3 (2008) 442, with
 * J = δ(1 + δαʳδ), K = δαʳδ + αʳ + ln δ and K′ = J′/δ; a step is halved until both phases stay on their own side.
 *
 * @param near A solution close by to start from; without it the ancillaries
 */
function coexist(temperatureK: number, near?: Coexistence): Coexistence {
  const at = isotherm(temperatureK);
  const theta = 1 - temperatureK / criticalTemperature;
  let liquid = near ? near.liquid : 1 + ancillarySum(liquidAncillary, theta);
  let vapour = near
    ? near.vapour
    : Math.exp((criticalTemperature / temperatureK) * ancillarySum(vapourAncillary, theta));
  for (let step = 0; step < newtonSteps; step++) {
    const l = residual(at, liquid);
    const v = residual(at, vapour);
    const pressureGap = liquid * (1 + l.first) - vapour * (1 + v.first);
    const gibbsGap = l.first + l.alpha - v.first - v.alpha + Math.log(liquid / vapour);
    const vapourPart = (pressureGap / liquid - gibbsGap) / (1 / liquid - 1 / vapour);
    const liquidPart = vapourPart - pressureGap;
    let liquidStep = liquidPart / (1 + 2 * l.first + l.second);
    let vapourStep = vapourPart / (1 + 2 * v.first + v.second);
    while (liquid + liquidStep < 1 || vapour + vapourStep <= 0 || vapour + vapourStep > 1) {
      liquidStep /= 2;
      vapourStep /= 2;
    }
    liquid += liquidStep;
    vapour += vapourStep;
    // Convergence is quadratic: after a step this small the error is below rounding.
    if (Math.abs(liquidStep) < 1e-8 * liquid && Math.abs(vapourStep) < 1e-8 * vapour) break;
  }
  return { at, liquid, vapour, pressure: pressureScale(temperatureK) * vapour * (1 + residual(at, vapour).first) };
}

function saturationOf({ at, liquid, vapour, pressure }: Coexistence): Saturation {
  const liquidDensity = liquid * criticalDensity;
  const vapourDensity = vapour * criticalDensity;
  const ofLiquid = energies(at, liquidDensity);
  const ofVapour = energies(at, vapourDensity);
  return {
    temperature: at.temperature,
    pressure,
    liquidDensity,
    vapourDensity,
    liquidEnthalpy: ofLiquid.enthalpy,
    vapourEnthalpy: ofVapour.enthalpy,
    liquidInternalEnergy: ofLiquid.internalEnergy,
    vapourInternalEnergy: ofVapour.internalEnergy,
    liquidEntropy: ofLiquid.entropy,
    vapourEntropy: ofVapour.entropy,
    latentHeat: ofVapour.enthalpy - ofLiquid.enthalpy,
  };
}

function solveAtPressure(pressureBar: number): Saturation {
  const { least, most } = saturationPressureRange;
  if (!(pressureBar >= least && pressureBar <= most))
    throw new RangeError(`saturation pressure ${pressureBar} bar is outside ${least}–${most} bar absolute`);
  // ln p is nearly straight in 1/T, so Newton's steps in those variables do not overshoot.
  const wanted = Math.log(pressureBar / criticalPressure);
  let inverse = 1 / 100;
  let logSlope = 0;
  for (let step = 0; step < newtonSteps; step++) {
    const guess = ancillaryLogPressure(1 / inverse);
    logSlope = guess.slope;
    const change = (wanted - guess.log) / logSlope;
    inverse += change;
    if (Math.abs(change) < 1e-6 * inverse) break;
  }
  let found = coexist(1 / inverse);
  for (let step = 0; step < newtonSteps; step++) {
    // The ancillary is within 2e-5 and so is its slope, so each step gains some four digits.
    const gap = Math.log(pressureBar / found.pressure);
    if (Math.abs(gap) < 1e-12) break;
    inverse += gap / logSlope;
    found = coexist(1 / inverse, found);
    // Rounding in the liquid's pressure is the floor; one step from here lands on it.
    if (Math.abs(gap) < 1e-8) break;
  }
  return { ...saturationOf(found), pressure: pressureBar };
}

const solveAtTemperature = (temperatureK: number): Saturation => saturationOf(coexist(temperatureK));

const recentAtPressure = recentAnswers(8, solveAtPressure);
const recentAtTemperature = recentAnswers(8, solveAtTemperature);

/**
 * Saturated oxygen at a pressure.
 *
 * @param pressureBar bar absolute, 0.1–30
 * @throws RangeError outside
 */
export const saturationAtPressure = (pressureBar: number): Saturation => recentAtPressure(pressureBar, 0);

/** K, the boiling points at the ends of `saturationPressureRange` (about 72.5 and 142.3). */
export const saturationTemperatureRange = {
  least: solveAtPressure(saturationPressureRange.least).temperature,
  most: solveAtPressure(saturationPressureRange.most).temperature,
} as const;

/**
 * Saturated oxygen at a temperature.
 *
 * @param temperatureK K, in `saturationTemperatureRange`
 * @throws RangeError outside
 */
export function saturationAtTemperature(temperatureK: number): Saturation {
  const { least, most } = saturationTemperatureRange;
  if (!(temperatureK >= least && temperatureK <= most))
    throw new RangeError(`saturation temperature ${temperatureK} K is outside ${least}–${most} K`);
  return recentAtTemperature(temperatureK, 0);
}

/**
 * Share of a saturated liquid that flashes off when its pressure is let down at constant enthalpy.
 *
 * @param fromBar bar absolute
 * @param toBar bar absolute
 * @returns mass fraction; 0 when the end pressure is not lower
 */
export function flashFraction(fromBar: number, toBar: number): number {
  if (toBar >= fromBar) return 0;
  const end = saturationAtPressure(toBar);
  return (saturationAtPressure(fromBar).liquidEnthalpy - end.liquidEnthalpy) / end.latentHeat;
}
