import {
  absoluteFromGauge,
  flashFraction,
  saturationAtPressure,
  standardAtmosphere,
  vapourAtOneAtmosphere,
  zeroCelsius,
} from "./oxygen";

/** Metals that liquid cools; carbon steel is left out, since it is too brittle in the cold. */
export const metals = ["stainless", "aluminium", "copper"] as const;
export type Metal = (typeof metals)[number];

/**
 * Specific heat, J/(kg·K): log₁₀ c = Σ aₖ·(log₁₀ T)^k, 4–300 K, curve fit within 5 %.
 * NIST Cryogenic Material Properties (trc.nist.gov/cryogenics; Marquardt, Le and Radebaugh, Cryocoolers 11, 2000).
 * All three sets read in several independent public transcriptions of the NIST pages that agree with one another.
 */
const specificHeatCoefficients: Readonly<Record<Metal, readonly number[]>> = {
  // 304 stainless
  stainless: [22.0061, -127.5528, 303.647, -381.0098, 274.0328, -112.9212, 24.7593, -2.239153],
  // 6061-T6
  aluminium: [46.6467, -314.292, 866.662, -1298.3, 1162.27, -637.795, 210.351, -38.3094, 2.96344],
  // oxygen-free high-conductivity
  copper: [-1.91844, -0.15973, 8.61013, -18.996, 21.9661, -12.7328, 3.54322, -0.3797],
};

/** End of the fits, K. A warmer metal keeps the value at 300 K: it rises by under 3 % to 60 °C. */
const fitEnd = 300;

/**
 * Specific heat of a metal.
 *
 * @param temperatureK K, 4 to 340; held at its value for 300 K above that
 * @returns J/(kg·K)
 */
export function specificHeat(metal: Metal, temperatureK: number): number {
  const x = Math.log10(Math.min(temperatureK, fitEnd));
  const coefficients = specificHeatCoefficients[metal];
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + coefficients[k]!;
  return Math.pow(10, sum);
}

// Gauss–Legendre nodes and weights, 5 points on [−1, 1] (Abramowitz and Stegun, table 25.4).
const gauss: readonly (readonly [node: number, weight: number])[] = [
  [0, 0.5688888888888889],
  [-0.5384693101056831, 0.47862867049936647],
  [0.5384693101056831, 0.47862867049936647],
  [-0.906179845938664, 0.23692688505618908],
  [0.906179845938664, 0.23692688505618908],
];
const panelWidth = 30;

function integrate(from: number, to: number, f: (x: number) => number): number {
  const panels = Math.max(1, Math.ceil((to - from) / panelWidth));
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + (2 * panel + 1) * half;
    for (const [node, weight] of gauss) sum += weight * f(middle + node * half);
  }
  return sum * half;
}

/** Integral over temperature, split where the fits end so that each part is smooth. */
function integrateOverTemperature(from: number, to: number, f: (temperatureK: number) => number): number {
  if (to <= from) return 0;
  if (to <= fitEnd || from >= fitEnd) return integrate(from, to, f);
  return integrate(from, fitEnd, f) + integrate(fitEnd, to, f);
}

/**
 * Heat a metal gives up on cooling, ∫c dT.
 *
 * @param fromK K
 * @param toK K, the warmer end
 * @returns kJ/kg; 0 when toK is not above fromK
 */
export const heatBetween = (metal: Metal, fromK: number, toK: number): number =>
  integrateOverTemperature(fromK, toK, (t) => specificHeat(metal, t)) / 1000;

/**
 * Oxygen boiled to cool a kilogram of metal to the boiling point at 1 atm:
 *
 *   ∫ c(T)/(L + use·(h vapour(T) − h vapour, saturated)) dT
 *
 * The vapour leaves at the metal's temperature with a share `use` of its cold used: 0 only the latent heat (most
 * oxygen), 1 all the cold of the vapour (least). Energy balance as in cryogenic engineering texts (R. F. Barron,
 * Cryogenic Systems; from memory); properties from the equation of state and the NIST fits.
 *
 * @param startCelsius °C, up to 60; at or below the boiling point nothing boils
 * @param vapourUse 0–1
 * @returns kg oxygen per kg metal
 */
export function coolDownPerKilogram(metal: Metal, startCelsius: number, vapourUse: number): number {
  const boiling = saturationAtPressure(standardAtmosphere);
  const start = startCelsius + zeroCelsius;
  if (vapourUse === 0) return heatBetween(metal, boiling.temperature, start) / boiling.latentHeat;
  return integrateOverTemperature(boiling.temperature, start, (t) => {
    const vapourCold = vapourAtOneAtmosphere(t).enthalpy - boiling.vapourEnthalpy;
    return specificHeat(metal, t) / 1000 / (boiling.latentHeat + vapourUse * vapourCold);
  });
}

/**
 * Oxygen boiled to cool a mass of metal.
 *
 * @param metalMass kg
 * @returns kg oxygen
 * @see coolDownPerKilogram
 */
export const coolDownLoss = (metalMass: number, metal: Metal, startCelsius: number, vapourUse: number): number =>
  metalMass === 0 ? 0 : metalMass * coolDownPerKilogram(metal, startCelsius, vapourUse);

/**
 * Liquid to draw for a net fill, from flash and cool-down:
 *
 *   draw = ((fill·ρ(to) + cool-down)/(1 − flash))/ρ(from)
 *
 * @param netFill L at the end pressure
 * @param fromPressure bar gauge
 * @param toPressure bar gauge
 * @param coolDown kg oxygen boiled on warm metal
 * @returns L at the start pressure
 */
export function estimatedDraw(netFill: number, fromPressure: number, toPressure: number, coolDown: number): number {
  const from = absoluteFromGauge(fromPressure);
  const to = absoluteFromGauge(toPressure);
  const needed = (netFill * saturationAtPressure(to).liquidDensity) / 1000 + coolDown;
  return ((needed / (1 - flashFraction(from, to))) * 1000) / saturationAtPressure(from).liquidDensity;
}
