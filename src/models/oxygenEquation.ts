/**
 * The 32-term Helmholtz equation of state of oxygen.
 *
 * Source: R. Schmidt and W. Wagner, Fluid Phase Equilibria 19 (1985) 175; tables in Stewart, Jacobsen and Wagner,
 * J. Phys. Chem. Ref. Data 20 (1991) 917. Coefficients as published with the CoolProp oxygen file.
 * Range 54.361–300 K to 80 MPa, density within 0.1 %; above 300 K (here up to 60 °C) a mild extrapolation.
 *
 *   α = α⁰ + αʳ,  δ = ρ/ρc,  τ = Tc/T
 *   αʳ = Σ n·δ^d·τ^t·exp(−δ^l), the exponential only where l > 0
 *   α⁰ = ln δ + a·ln τ + o₁ + o₂·τ + Σ p·ln(1 − exp(−θ·τ))
 *   p = ρRT(1 + δαʳδ),  u = RT·τ(α⁰τ + αʳτ),  h = u + p/ρ,  s = R(τ(α⁰τ + αʳτ) − α)
 */

/** K */
export const criticalTemperature = 154.581;
/** bar absolute */
export const criticalPressure = 50.43;
/** kg/mol */
export const molarMass = 0.0319988;
/** kg/m³, from 13 630 mol/m³ */
export const criticalDensity = 13630 * molarMass;
/** kJ/(kg·K), from the equation's own 8.31434 J/(mol·K) */
export const specificGasConstant = 8.31434 / molarMass / 1000;

/** n, d, t, l of each residual term. */
const residualTerms: readonly (readonly [n: number, d: number, t: number, l: number])[] = [
  [0.3983768749, 1, 0, 0],
  [-1.846157454, 1, 1.5, 0],
  [0.4183473197, 1, 2.5, 0],
  [0.02370620711, 2, -0.5, 0],
  [0.09771730573, 2, 1.5, 0],
  [0.03017891294, 2, 2, 0],
  [0.02273353212, 3, 0, 0],
  [0.01357254086, 3, 1, 0],
  [-0.04052698943, 3, 2.5, 0],
  [0.0005454628515, 6, 0, 0],
  [0.0005113182277, 7, 2, 0],
  [2.953466883e-7, 7, 5, 0],
  [-0.00008687645072, 8, 2, 0],
  [-0.2127082589, 1, 5, 2],
  [0.08735941958, 1, 6, 2],
  [0.127550919, 2, 3.5, 2],
  [-0.09067701064, 2, 5.5, 2],
  [-0.03540084206, 3, 3, 2],
  [-0.03623278059, 3, 7, 2],
  [0.0132769929, 5, 6, 2],
  [-0.0003254111865, 6, 8.5, 2],
  [-0.008313582932, 7, 4, 2],
  [0.002124570559, 8, 6.5, 2],
  [-0.0008325206232, 10, 5.5, 2],
  [-0.00002626173276, 2, 22, 4],
  [0.002599581482, 3, 11, 4],
  [0.009984649663, 3, 18, 4],
  [0.002199923153, 4, 11, 4],
  [-0.02591350486, 4, 23, 4],
  [-0.1259630848, 5, 17, 4],
  [0.1478355637, 5, 18, 4],
  [-0.01011251078, 5, 23, 4],
];

const logFactor = 2.51808732;
const offset = -14.716836666461498;
const slope = -0.011083985429237124;
/** p and θ of each Planck–Einstein term. */
const planckTerms: readonly (readonly [p: number, theta: number])[] = [
  [1.02323928, 14.5316979447668],
  [0.784357918, 72.8419165356674],
  [0.00337183363, 7.7710849975094],
  [-0.0170864084, 0.446425786480874],
  [0.0463751562, 34.4677188658373],
];

// Terms that share d and l differ only in temperature: summed once for an isotherm, so a solve for density at one
// temperature evaluates 18 terms without a power of τ.
const shapes = [...new Set(residualTerms.map(([, d, , l]) => `${d}|${l}`))].map((key) => {
  const [d, l] = key.split("|").map(Number) as [number, number];
  return { d, l };
});
const shapeOfTerm = residualTerms.map(([, d, , l]) => shapes.findIndex((shape) => shape.d === d && shape.l === l));
const largestPower = 10;
const largestTauPower = 23;

/** The residual terms summed at one temperature. */
export interface Isotherm {
  /** K */
  readonly temperature: number;
  readonly tau: number;
  /** Σ n·τ^t by shape: gives αʳ and its density derivatives. */
  readonly value: readonly number[];
  /** Σ n·t·τ^t by shape: gives τ·αʳτ. */
  readonly tauDerivative: readonly number[];
}

export function isotherm(temperatureK: number): Isotherm {
  const tau = criticalTemperature / temperatureK;
  const value = new Array<number>(shapes.length).fill(0);
  const tauDerivative = new Array<number>(shapes.length).fill(0);
  // Every t is a multiple of one half, from −½ to 23: τ^t stands at index 2t + 1.
  const root = Math.sqrt(tau);
  const tauPowers = [1 / root];
  for (let k = 1; k <= 2 * largestTauPower + 1; k++) tauPowers.push(tauPowers[k - 1]! * root);
  for (let i = 0; i < residualTerms.length; i++) {
    const [n, , t] = residualTerms[i]!;
    const shape = shapeOfTerm[i]!;
    const term = n * tauPowers[2 * t + 1]!;
    value[shape]! += term;
    tauDerivative[shape]! += t * term;
  }
  return { temperature: temperatureK, tau, value, tauDerivative };
}

/** αʳ, δ·αʳδ, δ²·αʳδδ and τ·αʳτ at one point. */
export interface Residual {
  readonly alpha: number;
  readonly first: number;
  readonly second: number;
  readonly tau: number;
}

export function residual(at: Isotherm, delta: number): Residual {
  const powers = new Array<number>(largestPower + 1);
  powers[0] = 1;
  for (let k = 1; k <= largestPower; k++) powers[k] = powers[k - 1]! * delta;
  const squared = powers[2]!;
  const fourth = powers[4]!;
  const decaySquared = Math.exp(-squared);
  const decayFourth = Math.exp(-fourth);

  let alpha = 0;
  let first = 0;
  let second = 0;
  let tau = 0;
  for (let i = 0; i < shapes.length; i++) {
    const { d, l } = shapes[i]!;
    const decay = l === 0 ? 1 : l === 2 ? decaySquared : decayFourth;
    const lDeltaL = l === 0 ? 0 : l === 2 ? 2 * squared : 4 * fourth;
    const form = powers[d]! * decay;
    const term = at.value[i]! * form;
    alpha += term;
    first += term * (d - lDeltaL);
    second += term * ((d - lDeltaL) * (d - 1 - lDeltaL) - l * lDeltaL);
    tau += at.tauDerivative[i]! * form;
  }
  return { alpha, first, second, tau };
}

/** bar absolute per unit of δ(1 + δαʳδ) at a temperature [K]. */
export const pressureScale = (temperatureK: number): number =>
  (criticalDensity * specificGasConstant * temperatureK) / 100;

/**
 * Pressure from density and temperature.
 *
 * @param density kg/m³
 * @param temperatureK K
 * @returns bar absolute
 */
export function pressureFromDensity(density: number, temperatureK: number): number {
  const delta = density / criticalDensity;
  return pressureScale(temperatureK) * delta * (1 + residual(isotherm(temperatureK), delta).first);
}

/** Energies of one phase; their zero is that of the coefficient file, so only differences mean anything. */
export interface Energies {
  /** kJ/kg */
  readonly enthalpy: number;
  /** kJ/kg */
  readonly internalEnergy: number;
  /** kJ/(kg·K) */
  readonly entropy: number;
}

/** Enthalpy, internal energy and entropy at a density [kg/m³] on an isotherm. */
export function energies(at: Isotherm, density: number): Energies {
  const { tau, temperature } = at;
  const delta = density / criticalDensity;
  const r = residual(at, delta);
  let ideal = Math.log(delta) + logFactor * Math.log(tau) + offset + slope * tau;
  let idealTau = logFactor + slope * tau;
  for (const [p, theta] of planckTerms) {
    ideal += p * Math.log1p(-Math.exp(-theta * tau));
    idealTau += (p * theta * tau) / Math.expm1(theta * tau);
  }
  const rt = specificGasConstant * temperature;
  const caloric = idealTau + r.tau;
  return {
    internalEnergy: rt * caloric,
    enthalpy: rt * (caloric + 1 + r.first),
    entropy: specificGasConstant * (caloric - ideal - r.alpha),
  };
}
