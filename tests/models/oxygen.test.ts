import fc from "fast-check";

import {
  absoluteFromGauge,
  compressibility,
  expansionRatio,
  flashFraction,
  gasDensity,
  idealLiquefactionWork,
  pressureFromDensity,
  referenceGasDensity,
  saturationAtPressure,
  saturationAtTemperature,
  saturationTemperatureRange,
  standardAtmosphere,
  vapourAtOneAtmosphere,
  zeroCelsius,
} from "../../src/models/oxygen";
import {
  criticalDensity,
  criticalTemperature,
  energies,
  isotherm,
  molarMass,
  residual,
} from "../../src/models/oxygenEquation";
import {
  correlatedCompressibility,
  correlatedLatentHeat,
  correlatedLiquidDensity,
  correlatedLiquidEnthalpy,
  correlatedPressure,
  correlatedVapourDensity,
} from "../reference/oxygenCorrelations";
import published from "../reference/oxygenEquation.json";
import oxygenRows from "../reference/oxygenProperties.json";
import { type Answers, checkRows } from "../reference/rows";
import webbook from "../reference/webbookOxygen.json";
import { evenly } from "../evenly";

// Exact factors of NIST SP 811.
const psi = 0.06894757293168;
const gallon = 3.785411784;
const cubicFoot = 28.316846592;
const pound = 0.45359237;

const atmospheric = saturationAtPressure(standardAtmosphere);
const kgPerLitre = atmospheric.liquidDensity / 1000;
const gasLitres = (kg: number): number => (kg * 1000) / referenceGasDensity;
const fahrenheit = (f: number): number => ((f - 32) * 5) / 9 + zeroCelsius;
const saturatedAt = (inputs: any) =>
  saturationAtPressure("p_psig" in inputs ? absoluteFromGauge(inputs.p_psig * psi) : inputs.p_kPa_abs / 100);

const boilingPoint = (i: any): number => saturatedAt(i).temperature - zeroCelsius;
const liquidDensity = (i: any): number => saturatedAt(i).liquidDensity;
const vapourDensity = (i: any): number => saturatedAt(i).vapourDensity;
const latentHeat = (i: any): number => saturatedAt(i).latentHeat;
const density = (i: any): number => gasDensity(i.p_kPa_abs / 100, "T_K" in i ? i.T_K : i.T_C + zeroCelsius);
const z = (i: any): number =>
  "T_F" in i
    ? compressibility(absoluteFromGauge(i.p_psig * psi), fahrenheit(i.T_F))
    : compressibility(i.p_bar_abs, i.T_C + zeroCelsius);
const expansion = (i: any): number => expansionRatio(standardAtmosphere, i.gas_T_C + zeroCelsius, i.gas_p_kPa / 100);

const answers: Answers = {
  "o2-tsat-1atm": boilingPoint,
  "o2-tsat-3bar": boilingPoint,
  "o2-tsat-10bar": boilingPoint,
  "o2-tsat-20bar": boilingPoint,
  "o2-tsat-10psig": boilingPoint,
  "o2-tsat-22psig": boilingPoint,
  "o2-tsat-35psig": boilingPoint,
  "o2-rhol-2bar": liquidDensity,
  "o2-rhol-3bar": liquidDensity,
  "o2-rhol-10psig": liquidDensity,
  "o2-rhol-35psig": liquidDensity,
  "o2-wb-rhol": liquidDensity,
  "o2-rhov-3bar": vapourDensity,
  "o2-rhov-10bar": vapourDensity,
  "o2-rhov-20bar": vapourDensity,
  "o2-hfg-3bar": latentHeat,
  "o2-hfg-5bar": latentHeat,
  "o2-hfg-10bar": latentHeat,
  "o2-wb-hfg": latentHeat,
  "o2-psat-100K": (i) => saturationAtTemperature(i.T_K).pressure * 100,
  "o2-crit-T": () => criticalTemperature,
  "o2-crit-rho": () => criticalDensity,
  "o2-gas-300K": density,
  "o2-gas-0C": density,
  "o2-gas-15C": density,
  "o2-gas-70F": density,
  "o2-gas-25C": density,
  "o2-exp-20C": expansion,
  "o2-exp-70F": expansion,
  "ifc-gal-kg": (i) => i.liquid_gal_US * gallon * kgPerLitre,
  "ifc-gal-scf": (i) => gasLitres(i.liquid_gal_US * gallon * kgPerLitre) / cubicFoot,
  "ifc-L-kg": (i) => i.liquid_L * kgPerLitre,
  "ifc-L-scf": (i) => gasLitres(i.liquid_L * kgPerLitre) / cubicFoot,
  "ifc-L-m3": (i) => gasLitres(i.liquid_L * kgPerLitre) / 1000,
  "ifc-kg-scf": (i) => gasLitres(i.mass_kg) / cubicFoot,
  "ifc-lb-m3": (i) => gasLitres(i.mass_lb * pound) / 1000,
  "ifc-100scf-lb": (i) => (i.gas_scf * cubicFoot * referenceGasDensity) / 1000 / pound,
  "ifc-100scf-gal": (i) => (i.gas_scf * cubicFoot * referenceGasDensity) / 1000 / kgPerLitre / gallon,
  "ifc-m3-L": (i) => (i.gas_m3_70F * referenceGasDensity) / kgPerLitre,
  "o2-lb-gasL": (i) => gasLitres(i.mass_lb * pound),
  "o2-Lh-to-Lmin": (i) => gasLitres(i.liquid_L_per_h * kgPerLitre) / 60,
  "o2-Lmin-to-Lh": (i) => (i.gas_L_per_min * 60 * referenceGasDensity) / 1000 / kgPerLitre,
  "o2-Z-0C-150bar": z,
  "o2-Z-0C-300bar": z,
  "o2-Z-15C-137bar": z,
  "o2-Z-25C-150bar": z,
  "o2-Z-25C-300bar": z,
  "o2-Z-60C-300bar": z,
  "o2-Z-70F-2015psig": z,
  "o2-Z-70F-2200psig": z,
  "o2-liquefy-load": (i) =>
    ((vapourAtOneAtmosphere(i.gas_T_C + zeroCelsius).enthalpy - atmospheric.liquidEnthalpy) *
      i.liquid_L_per_h *
      kgPerLitre *
      1000) /
    3600,
  "wmin-liq": (i) => idealLiquefactionWork(i.T0_K),
  "mass-20L-lb": (i) => (i.lox_L * kgPerLitre) / pound,
  "vent-gas": (i) => gasLitres(i.leak_L_per_day * kgPerLitre) / 1440,
  // The row gives the absolute pressure reached, not the rise, and prints its start to a thousandth of a degree.
  "trapped-1K": (i) => pressureFromDensity(atmospheric.liquidDensity, atmospheric.temperature + i.rise_K) / 10,
  "amt-03": (i) => i.kg / kgPerLitre,
  "amt-04": (i) => gasLitres(i.kg) / 1000,
  "amt-06": (i) => i.gas_m3 * referenceGasDensity,
  "amt-07": (i) => gasLitres(i.gal_liquid * gallon * kgPerLitre) / cubicFoot,
  "amt-09": (i) => expansionRatio(standardAtmosphere, i.temp_C + zeroCelsius, standardAtmosphere),
};

// 1e-4 where the row refers its gas to 21.1111 °C and this project to 21.1 °C; the rest agrees to its printed digits.
checkRows("oxygen properties", oxygenRows, answers, 1e-4);

describe("oxygen against the NIST WebBook (printed digits)", () => {
  const { saturation, vapour, molarMass_g: m } = webbook;
  const at = saturationAtPressure(webbook.pressure_bar);

  test("saturation at 0.02 MPa", () => {
    expect(Math.abs(at.temperature - saturation.temperature_K)).toBeLessThan(0.001);
    expect(Math.abs(at.liquidDensity / saturation.liquidDensity - 1)).toBeLessThan(5e-5);
    expect(Math.abs(at.vapourDensity / saturation.vapourDensity - 1)).toBeLessThan(1e-4);
    const perMole = (kJPerKg: number): number => (kJPerKg * m) / 1000;
    expect(perMole(at.latentHeat)).toBeCloseTo(saturation.vapourEnthalpy_kJ_mol - saturation.liquidEnthalpy_kJ_mol, 3);
    expect(perMole(at.vapourInternalEnergy - at.liquidInternalEnergy)).toBeCloseTo(
      saturation.vapourInternalEnergy_kJ_mol - saturation.liquidInternalEnergy_kJ_mol,
      3,
    );
    expect((at.vapourEntropy - at.liquidEntropy) * m).toBeCloseTo(
      saturation.vapourEntropy_J_molK - saturation.liquidEntropy_J_molK,
      1,
    );
  });

  test.each(vapour as [number, number, number][])("vapour at %d K", (temperature, printedDensity, printedEnthalpy) => {
    expect(Math.abs(pressureFromDensity(printedDensity, temperature) / webbook.pressure_bar - 1)).toBeLessThan(1e-4);
    const rise =
      ((energies(isotherm(temperature), printedDensity).enthalpy - at.vapourEnthalpy) * molarMass * 1000) / 1000;
    expect(Math.abs(rise - (printedEnthalpy - saturation.vapourEnthalpy_kJ_mol))).toBeLessThan(2.5e-4);
  });
});

describe("oxygen against the correlations", () => {
  const worst: Record<string, number> = {};
  const note = (name: string, deviation: number): number => {
    worst[name] = Math.max(worst[name] ?? 0, Math.abs(deviation));
    return Math.abs(deviation);
  };

  test("saturation, 0.5–25 bar", () => {
    for (let p = 0.5; p <= 25; p *= 1.05) {
      const s = saturationAtPressure(p);
      expect(note("pressure", correlatedPressure(s.temperature) / p - 1)).toBeLessThan(3e-5);
      expect(note("liquid", correlatedLiquidDensity(s.temperature) / s.liquidDensity - 1)).toBeLessThan(1e-3);
      expect(note("vapour", correlatedVapourDensity(s.temperature) / s.vapourDensity - 1)).toBeLessThan(1e-3);
      if (s.temperature < 88 || s.temperature > 134) continue;
      expect(note("latent heat", correlatedLatentHeat(s.temperature) / s.latentHeat - 1)).toBeLessThan(3e-4);
      const rise = s.liquidEnthalpy - atmospheric.liquidEnthalpy;
      expect(note("liquid enthalpy kJ/kg", correlatedLiquidEnthalpy(s.temperature) - rise)).toBeLessThan(0.05);
    }
  });

  test("compressibility, 1–300 bar, −40…60 °C", () => {
    for (let p = 1; p <= 300; p += 13)
      for (let celsius = -40; celsius <= 60; celsius += 10) {
        const t = celsius + zeroCelsius;
        expect(note("Z", correlatedCompressibility(p, t) / compressibility(p, t) - 1)).toBeLessThan(1e-3);
      }
  });

  afterAll(() => {
    const text = Object.entries(worst).map(([name, deviation]) => `${name} ${deviation.toExponential(1)}`);
    process.stdout.write(`oxygen against correlations, worst: ${text.join(", ")}\n`);
  });
});

const pressures = evenly(0.1, 30);
const gasPressures = evenly(0.5, 301.4);
const gasTemperatures = evenly(233.15, 333.15);

describe("the equation of state against its published coefficients, term by term", () => {
  const states = fc.tuple(evenly(0.001, 2.7), evenly(72, 335));

  test("residual part", () => {
    fc.assert(
      fc.property(states, ([delta, t]) => {
        const tau = published.critical_temperature_K / t;
        const terms = published.residual.map(
          ({ n, d, t: power, l }) => n * delta ** d * tau ** power * (l > 0 ? Math.exp(-(delta ** l)) : 1),
        );
        const scale = terms.reduce((sum, term) => sum + Math.abs(term), 0);
        const alpha = terms.reduce((sum, term) => sum + term, 0);
        expect(Math.abs(residual(isotherm(t), delta).alpha - alpha)).toBeLessThan(1e-13 * scale);
      }),
    );
  });

  test("whole: entropy is −R·(α − τ·α_τ) with τ·α_τ from a finite difference", () => {
    const { log, o1, o2, planck_n, planck_t } = published.ideal;
    const alpha = (delta: number, tau: number): number =>
      published.residual.reduce(
        (sum, { n, d, t, l }) => sum + n * delta ** d * tau ** t * (l > 0 ? Math.exp(-(delta ** l)) : 1),
        Math.log(delta) + log * Math.log(tau) + o1 + o2 * tau,
      ) + planck_n.reduce((sum, n, k) => sum + n * Math.log(1 - Math.exp(-planck_t[k]! * tau)), 0);
    const gasConstant = published.gas_constant_J_per_mol_K / published.molar_mass_kg_per_mol / 1000;
    fc.assert(
      fc.property(states, ([delta, t]) => {
        const tau = published.critical_temperature_K / t;
        // Five points: the high powers of τ leave too large an error with three.
        const at = (steps: number): number => alpha(delta, tau * (1 + steps * 1e-4));
        const slope = (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / 12e-4;
        const density = delta * published.critical_density_mol_per_m3 * published.molar_mass_kg_per_mol;
        const got = energies(isotherm(t), density);
        // Between the two phases in the cold the terms are large and cancel: the error goes with their size.
        const size = published.residual.reduce(
          (sum, { n, d, t: power, l }) =>
            sum + Math.abs(power * n) * delta ** d * tau ** power * (l > 0 ? Math.exp(-(delta ** l)) : 1),
          10,
        );
        const entropyError = got.entropy - gasConstant * (slope - alpha(delta, tau));
        expect(Math.abs(entropyError / (gasConstant * size))).toBeLessThan(1e-9);
        expect(Math.abs((got.internalEnergy / (gasConstant * t) - slope) / size)).toBeLessThan(1e-9);
        const pressure = pressureFromDensity(density, t);
        expect(got.enthalpy - got.internalEnergy).toBeCloseTo((pressure * 100) / density, 6);
      }),
    );
  });
});

describe("oxygen: properties that hold everywhere", () => {
  test("pressure and temperature are each other's inverse", () => {
    fc.assert(
      fc.property(pressures, (p) => {
        const t = saturationAtPressure(p).temperature;
        if (t < saturationTemperatureRange.least || t > saturationTemperatureRange.most) return;
        expect(Math.abs(saturationAtTemperature(t).pressure / p - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test("both phases have one pressure and one Gibbs energy", () => {
    fc.assert(
      fc.property(pressures, (p) => {
        const s = saturationAtPressure(p);
        // The liquid is so stiff that the last bit of its density moves its pressure by some 1e-9 bar.
        expect(Math.abs(pressureFromDensity(s.liquidDensity, s.temperature) - p)).toBeLessThan(1e-8);
        expect(Math.abs(pressureFromDensity(s.vapourDensity, s.temperature) / p - 1)).toBeLessThan(1e-9);
        expect(Math.abs(s.latentHeat - s.temperature * (s.vapourEntropy - s.liquidEntropy))).toBeLessThan(1e-8);
      }),
    );
  });

  test("along the saturation line everything goes one way", () => {
    fc.assert(
      fc.property(pressures, evenly(1.0001, 2), (p, factor) => {
        if (p * factor > 30) return;
        const a = saturationAtPressure(p);
        const b = saturationAtPressure(p * factor);
        expect(b.temperature).toBeGreaterThan(a.temperature);
        expect(b.liquidDensity).toBeLessThan(a.liquidDensity);
        expect(b.vapourDensity).toBeGreaterThan(a.vapourDensity);
        expect(b.latentHeat).toBeLessThan(a.latentHeat);
        expect(b.liquidEnthalpy).toBeGreaterThan(a.liquidEnthalpy);
      }),
    );
  });

  test("gas density and pressure are each other's inverse", () => {
    fc.assert(
      fc.property(gasPressures, gasTemperatures, (p, t) => {
        expect(Math.abs(pressureFromDensity(gasDensity(p, t), t) / p - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test("gas density rises with pressure and falls with temperature", () => {
    fc.assert(
      fc.property(gasPressures, gasTemperatures, (p, t) => {
        expect(gasDensity(p * 1.001, t)).toBeGreaterThan(gasDensity(p, t));
        expect(gasDensity(p, t + 0.1)).toBeLessThan(gasDensity(p, t));
      }),
    );
  });

  test("derivatives of the residual agree with finite differences", () => {
    fc.assert(
      fc.property(evenly(0.01, 2.6), evenly(75, 330), (delta, t) => {
        const step = 1e-5;
        const at = isotherm(t);
        const here = residual(at, delta);
        const up = residual(at, delta * (1 + step));
        const down = residual(at, delta * (1 - step));
        const scale = 1 + Math.abs(here.second) + Math.abs(here.first) + Math.abs(here.tau);
        expect(Math.abs((up.alpha - down.alpha) / (2 * step) - here.first) / scale).toBeLessThan(1e-6);
        const second = (up.first - down.first) / (2 * step) - here.first;
        expect(Math.abs(second - here.second) / scale).toBeLessThan(1e-6);
        const warmer = residual(isotherm(t / (1 + step)), delta);
        const colder = residual(isotherm(t / (1 - step)), delta);
        expect(Math.abs((warmer.alpha - colder.alpha) / (2 * step) - here.tau) / scale).toBeLessThan(1e-6);
      }),
    );
  });

  test("flash is 0 without a pressure drop, grows with it and stays below 1", () => {
    expect(flashFraction(2, 2)).toBe(0);
    expect(flashFraction(1, 2)).toBe(0);
    fc.assert(
      fc.property(pressures, pressures, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        if (high < low * 1.001) return;
        const share = flashFraction(high, low);
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThan(1);
        if (high * 1.01 <= 30) expect(flashFraction(high * 1.01, low)).toBeGreaterThan(share);
      }),
    );
  });

  test("vapour at 1 atm starts from the saturated vapour and warms as a gas does", () => {
    const start = vapourAtOneAtmosphere(atmospheric.temperature + 1e-6);
    expect(Math.abs(start.density / atmospheric.vapourDensity - 1)).toBeLessThan(1e-6);
    expect(Math.abs(start.enthalpy - atmospheric.vapourEnthalpy)).toBeLessThan(1e-4);
    expect(vapourAtOneAtmosphere(60)).toEqual(vapourAtOneAtmosphere(atmospheric.temperature));
    for (let t = 91; t < 333; t += 1) {
      const heat = vapourAtOneAtmosphere(t + 0.5).enthalpy - vapourAtOneAtmosphere(t - 0.5).enthalpy;
      // cp of the vapour: 0.97 kJ/(kg·K) at the boiling point, 0.91–0.93 warm (NIST WebBook, from memory).
      expect(heat).toBeGreaterThan(0.9);
      expect(heat).toBeLessThan(0.98);
    }
  });

  test("outside its range the model refuses", () => {
    for (const p of [0.09, 30.1, NaN, -1]) expect(() => saturationAtPressure(p)).toThrow(RangeError);
    for (const t of [60, 150, NaN]) expect(() => saturationAtTemperature(t)).toThrow(RangeError);
    expect(() => gasDensity(0, 290)).toThrow(RangeError);
    expect(() => gasDensity(10, 120)).toThrow(RangeError);
    expect(() => gasDensity(NaN, 290)).toThrow(RangeError);
  });

  test("asking again, after others, gives the same answer", () => {
    const first = saturationAtPressure(1.7);
    for (let p = 2; p < 20; p += 1) saturationAtPressure(p);
    expect(saturationAtPressure(1.7)).toEqual(first);
    expect(saturationAtPressure(1.7)).toBe(saturationAtPressure(1.7));
  });
});
