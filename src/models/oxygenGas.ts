import {
  criticalDensity,
  criticalTemperature,
  energies,
  isotherm,
  pressureScale,
  residual,
  specificGasConstant,
} from "./oxygenEquation";
import { gasReferenceCelsius, standardAtmosphere, zeroCelsius } from "./referenceConditions";
import { saturationAtPressure } from "./oxygenSaturation";
import { recentAnswers } from "./recentAnswers";

/**
 * Density on the gas side by Newton's method inside a bracket that shrinks with each step; a step that leaves it
 * becomes a bisection, so the solve can't diverge.
 */
function solveGasDensity(pressureBar: number, temperatureK: number): number {
  const at = isotherm(temperatureK);
  const wanted = pressureBar / pressureScale(temperatureK);
  let low = 0;
  // Above the critical temperature pressure rises all the way; below it the callers stay left of the saturated vapour
  // at 1 atm, far from δ = 0.1 where that branch may end.
  let high = temperatureK > criticalTemperature ? 3 : 0.1;
  let delta = Math.min(wanted, high / 2);
  for (let step = 0; step < 100; step++) {
    const r = residual(at, delta);
    const gap = delta * (1 + r.first) - wanted;
    if (gap > 0) high = delta;
    else low = delta;
    let next = delta - gap / (1 + 2 * r.first + r.second);
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    const change = Math.abs(next - delta);
    delta = next;
    if (change < 1e-10 * delta) break;
  }
  return delta * criticalDensity;
}

const recentDensity = recentAnswers(8, solveGasDensity);

/**
 * Density of the gas above its critical temperature.
 *
 * @param pressureBar bar absolute, above 0 and up to 400
 * @param temperatureK K, above 154.581 and up to 340
 * @returns kg/m³
 * @throws RangeError outside
 */
export function gasDensity(pressureBar: number, temperatureK: number): number {
  if (!(pressureBar > 0 && pressureBar <= 400 && temperatureK > criticalTemperature && temperatureK <= 340))
    throw new RangeError(`gas at ${pressureBar} bar absolute and ${temperatureK} K is outside the model`);
  return recentDensity(pressureBar, temperatureK);
}

/** Density [kg/m³] of the gas that a gas litre stands for: 21.1 °C, 101.325 kPa. */
export const referenceGasDensity = gasDensity(standardAtmosphere, zeroCelsius + gasReferenceCelsius);

/**
 * Compressibility factor Z = p/(ρRT).
 *
 * @param pressureBar bar absolute
 * @param temperatureK K
 */
export const compressibility = (pressureBar: number, temperatureK: number): number =>
  (pressureBar * 100) / (gasDensity(pressureBar, temperatureK) * specificGasConstant * temperatureK);

/**
 * Litres of gas from a litre of saturated liquid.
 *
 * @param liquidBar vessel pressure, bar absolute
 * @param gasK gas temperature, K
 * @param gasBar gas pressure, bar absolute
 */
export const expansionRatio = (liquidBar: number, gasK: number, gasBar: number): number =>
  saturationAtPressure(liquidBar).liquidDensity / gasDensity(gasBar, gasK);

/** Vapour at one atmosphere. */
export interface Vapour {
  /** kg/m³ */
  readonly density: number;
  /** kJ/kg, on the zero of the saturation enthalpies */
  readonly enthalpy: number;
  /** kJ/(kg·K) */
  readonly entropy: number;
}

/**
 * Vapour at 1 atm.
 *
 * @param temperatureK K, from the boiling point (a colder one gives the saturated vapour) to 340
 */
export function vapourAtOneAtmosphere(temperatureK: number): Vapour {
  const saturated = saturationAtPressure(standardAtmosphere);
  if (temperatureK <= saturated.temperature)
    return {
      density: saturated.vapourDensity,
      enthalpy: saturated.vapourEnthalpy,
      entropy: saturated.vapourEntropy,
    };
  const density = solveGasDensity(standardAtmosphere, temperatureK);
  const { enthalpy, entropy } = energies(isotherm(temperatureK), density);
  return { density, enthalpy, entropy };
}

/**
 * Enthalpy of the gas above its critical temperature, on the zero of the saturation enthalpies.
 *
 * @param pressureBar bar absolute, above 0 and up to 400
 * @param temperatureK K, above 154.581 and up to 340
 * @returns kJ/kg
 */
export const gasEnthalpy = (pressureBar: number, temperatureK: number): number =>
  energies(isotherm(temperatureK), gasDensity(pressureBar, temperatureK)).enthalpy;

/**
 * Least work that could make a litre of liquid, saturated at 1 atm, from gas at 1 atm and ambient temperature:
 * w = T₀·(s gas − s liquid) − (h gas − h liquid), the second law for steady flow. Real small plants need far more.
 *
 * @param ambientK K, above the boiling point, up to 340
 * @returns kWh/L
 */
export function idealLiquefactionWork(ambientK: number): number {
  const liquid = saturationAtPressure(standardAtmosphere);
  const gas = vapourAtOneAtmosphere(ambientK);
  const work = ambientK * (gas.entropy - liquid.liquidEntropy) - (gas.enthalpy - liquid.liquidEnthalpy);
  return (work * liquid.liquidDensity) / 1000 / 3600;
}
