import { criticalDensity, criticalTemperature, molarMass } from "./oxygenEquation";

/*
 * E. W. Lemmon and R. T Jacobsen, Int. J. Thermophysics 25 (2004) 21: η = η⁰(T) + ηʳ(τ, δ), in µPa·s.
 *
 *   η⁰ = 0.0266958·√(M·T)/(σ²·Ω),  ln Ω = Σ bᵢ·(ln T*)^i,  T* = T/(ε/k)
 *   ηʳ = Σ Nᵢ·τ^tᵢ·δ^dᵢ·exp(−γᵢ·δ^lᵢ),  τ = Tc/T,  δ = ρ/ρc
 */
const collision = [0.431, -0.4623, 0.08406, 0.005341, -0.00331] as const;
/** ε/k, K */
const energyScale = 118.5;
/** σ, nm */
const sizeScale = 0.3428;
const residualTerms: readonly (readonly [n: number, t: number, d: number, l: number])[] = [
  [17.67, 0.05, 1, 0],
  [0.4042, 0, 5, 0],
  [0.0001077, 2.1, 12, 0],
  [0.351, 0, 8, 1],
  [-13.67, 0.5, 1, 2],
];

/**
 * Viscosity of oxygen gas.
 *
 * @param temperatureK K
 * @param density kg/m³
 * @returns Pa·s; within 1 % for gas by its authors
 */
export function gasViscosity(temperatureK: number, density: number): number {
  const logTemperature = Math.log(temperatureK / energyScale);
  let logOmega = 0;
  for (let i = collision.length - 1; i >= 0; i--) logOmega = logOmega * logTemperature + collision[i]!;
  const dilute =
    (0.0266958 * Math.sqrt(molarMass * 1000 * temperatureK)) / (sizeScale * sizeScale * Math.exp(logOmega));
  const tau = criticalTemperature / temperatureK;
  const delta = density / criticalDensity;
  let residual = 0;
  for (const [n, t, d, l] of residualTerms)
    residual += n * Math.pow(tau, t) * Math.pow(delta, d) * (l === 0 ? 1 : Math.exp(-Math.pow(delta, l)));
  return (dilute + residual) * 1e-6;
}
