/**
 * Oxygen by the equation of Schmidt & Wagner 1985 (coefficients in oxygenEquation.json), solved here by bisection and
 * without any code of the product, and its viscosity by Lemmon & Jacobsen 2004, Int. J. Thermophys. 25:21 (coefficients
 * from memory, held against the rows that a library computed).
 */
import equation from "../oxygenEquation.json";

const R = equation.gas_constant_J_per_mol_K;
const M = equation.molar_mass_kg_per_mol;
const Tc = equation.critical_temperature_K;
const rhoc = equation.critical_density_mol_per_m3;

const { ideal } = equation;

/** The reduced Helmholtz energy and the first derivatives that follow, at mol/m³ and K. */
function helmholtz(density: number, T: number) {
  const delta = density / rhoc;
  const tau = Tc / T;
  let [residual, byDelta, byTau] = [0, 0, 0];
  for (const { n, d, t, l } of equation.residual) {
    const power = l > 0 ? delta ** l : 0;
    const term = n * delta ** d * tau ** t * Math.exp(-power);
    residual += term;
    byDelta += (term * (d - l * power)) / delta;
    byTau += (term * t) / tau;
  }
  let ideal0 = Math.log(delta) + ideal.log * Math.log(tau) + ideal.o1 + ideal.o2 * tau;
  let idealByTau = ideal.log / tau + ideal.o2;
  for (const [index, n] of ideal.planck_n.entries()) {
    const t = ideal.planck_t[index]!;
    ideal0 += n * Math.log(1 - Math.exp(-t * tau));
    idealByTau += (n * t) / (Math.exp(t * tau) - 1);
  }
  return { delta, tau, residual, byDelta, byTau, ideal0, idealByTau };
}

/** [Pa] */
const pressure = (density: number, T: number): number => {
  const { delta, byDelta } = helmholtz(density, T);
  return density * R * T * (1 + delta * byDelta);
};

/** [J/kg], [J/(kg·K)] */
export const enthalpy = (density: number, T: number): number => {
  const { delta, tau, byDelta, byTau, idealByTau } = helmholtz(density / M, T);
  return (R * T * (1 + delta * byDelta + tau * (idealByTau + byTau))) / M;
};
export const internalEnergy = (density: number, T: number): number => {
  const { tau, byTau, idealByTau } = helmholtz(density / M, T);
  return (R * T * tau * (idealByTau + byTau)) / M;
};
export const entropy = (density: number, T: number): number => {
  const { tau, byTau, idealByTau, ideal0, residual } = helmholtz(density / M, T);
  return (R * (tau * (idealByTau + byTau) - ideal0 - residual)) / M;
};
/** g/(RT) [-] */
const gibbs = (density: number, T: number): number => {
  const { delta, byDelta, ideal0, residual } = helmholtz(density, T);
  return ideal0 + residual + 1 + delta * byDelta;
};

export function bisect(zero: (x: number) => number, low: number, high: number): number {
  const rising = zero(high) > 0;
  if (zero(low) > 0 === rising) throw new RangeError("no zero between");
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (zero(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** First place from `from` on, in steps, where a slope changes its sign. */
const turn = (T: number, from: number, step: number): number => {
  let density = from;
  const slope = (at: number) => pressure(at * (1 + 1e-7), T) - pressure(at * (1 - 1e-7), T);
  while (slope(density) > 0) density += step;
  return density;
};

/** Gas or fluid above the critical temperature, density [kg/m³] at K and Pa. */
export const gasDensity = (T: number, p: number): number =>
  M * bisect((density) => pressure(density, T) - p, 1e-3, T > Tc ? 36000 : turn(T, 20, 20));

/** Both phases at a temperature [K]: densities [kg/m³] at which pressure and Gibbs energy agree. */
function saturationAt(T: number): { p: number; liquid: number; vapour: number } {
  const topOfVapour = turn(T, 20, 20);
  const bottomOfLiquid = turn(T, 40000, -20);
  const highest = pressure(topOfVapour, T) * (1 - 1e-9);
  const vapourAt = (p: number) => bisect((density) => pressure(density, T) - p, 1e-6, topOfVapour);
  const liquidAt = (p: number) => bisect((density) => pressure(density, T) - p, bottomOfLiquid, 45000);
  const lowest = Math.max(1, pressure(bottomOfLiquid, T) * (1 + 1e-9));
  const p = bisect((each) => gibbs(vapourAt(each), T) - gibbs(liquidAt(each), T), lowest, highest);
  return { p, liquid: liquidAt(p) * M, vapour: vapourAt(p) * M };
}

export interface Saturation {
  readonly T: number;
  readonly p: number;
  readonly liquid: number;
  readonly vapour: number;
  /** Heat of vaporisation [J/kg]. */
  readonly heat: number;
}

const withHeat = (T: number): Saturation => {
  const phases = saturationAt(T);
  return { T, ...phases, heat: enthalpy(phases.vapour, T) - enthalpy(phases.liquid, T) };
};

const known = new Map<number, Saturation>();

/** At a pressure [Pa]. */
export function saturation(p: number): Saturation {
  const before = known.get(p);
  if (before) return before;
  // Secant steps on ln p over 1/T, which is all but straight.
  const from = (T: number) => ({ x: 1 / T, y: Math.log(saturationAt(T).p / p) });
  let [one, two] = [from(75), from(153)];
  for (let step = 0; step < 60 && Math.abs(two.y) > 1e-12; step++) {
    const x = two.x - (two.y * (two.x - one.x)) / (two.y - one.y);
    one = two;
    two = from(1 / x);
  }
  const found = withHeat(1 / two.x);
  known.set(p, found);
  return found;
}

export const saturationAtTemperature = withHeat;

/** Compressed liquid [kg/m³] at K and density: its pressure [Pa]. */
export const pressureAt = (density: number, T: number): number => pressure(density / M, T);

/** [Pa·s] at K and kg/m³. */
export function viscosity(T: number, density: number): number {
  const reduced = Math.log(T / 118.5);
  const omega = Math.exp(
    [0.431, -0.4623, 0.08406, 0.005341, -0.00331].reduce((sum, b, index) => sum + b * reduced ** index, 0),
  );
  const dilute = (0.0266958 * Math.sqrt(M * 1000 * T)) / (0.3428 ** 2 * omega);
  const tau = Tc / T;
  const delta = density / M / rhoc;
  const dense =
    17.67 * tau ** 0.05 * delta +
    0.4042 * delta ** 5 +
    0.0001077 * tau ** 2.1 * delta ** 12 +
    0.351 * delta ** 8 * Math.exp(-delta) -
    13.67 * tau ** 0.5 * delta * Math.exp(-(delta ** 2));
  return (dilute + dense) * 1e-6;
}
