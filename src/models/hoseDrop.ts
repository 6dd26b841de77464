import { absoluteFromGauge, gasDensity, gasReferenceCelsius, referenceGasDensity, zeroCelsius } from "./oxygen";
import { gasViscosity } from "./oxygenViscosity";

/** From this Reynolds number on the flow is taken as turbulent. */
const turbulentFrom = 2300;

/**
 * Darcy friction factor of a round pipe: 64/Re below Re 2300, from there Colebrook and White's
 * 1/√f = −2·log₁₀(k/(3.7·D) + 2.51/(Re·√f)) (C. F. Colebrook, J. Inst. Civil Eng. 11 (1939) 133).
 *
 * @param relativeRoughness k/D, up to 0.05
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds < turbulentFrom) return 64 / reynolds;
  // Each pass lessens the error at least fivefold over the whole range.
  let root = 6;
  for (let step = 0; step < 60; step++) {
    const next = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 * root) / reynolds);
    const change = Math.abs(next - root);
    root = next;
    if (change < 1e-13 * root) break;
  }
  return 1 / (root * root);
}

/**
 * Pressure that gas loses on its way through a hose, as a share of the absolute pressure at its inlet, taken with the
 * density at the inlet all the way (Darcy and Weisbach): x = f·L/D·ρ·v²/2/p₁.
 *
 * @param flow L/min of reference gas, above 0
 * @param length m
 * @param bore mm
 * @param pressure bar gauge at the inlet
 * @param roughness mm
 */
export function inletDropShare(
  flow: number,
  length: number,
  bore: number,
  pressure: number,
  roughness: number,
): number {
  const temperature = gasReferenceCelsius + zeroCelsius;
  const inlet = absoluteFromGauge(pressure);
  const density = gasDensity(inlet, temperature);
  const diameter = bore / 1000;
  const area = (Math.PI * diameter * diameter) / 4;
  // kg/s over m² and kg/m³
  const velocity = (flow / 60000) * (referenceGasDensity / density / area);
  const reynolds = (density * velocity * diameter) / gasViscosity(temperature, density);
  const drop = (frictionFactor(reynolds, roughness / bore) * length * density * velocity * velocity) / (2 * diameter);
  return drop / (inlet * 1e5);
}

/**
 * The drop [bar] of gas that expands on its way at one temperature: p₁² − p₂² = 2·x·p₁², from the same balance with the
 * density in proportion to pressure, its small gain of speed left out.
 *
 * @param share of `inletDropShare`, below a half
 * @param pressure bar gauge at the inlet
 */
export const isothermalDrop = (share: number, pressure: number): number =>
  absoluteFromGauge(pressure) * (1 - Math.sqrt(1 - 2 * share));
