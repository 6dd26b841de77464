/**
 * Every reference row that says "computed", worked out anew from the standard or equation that it names. Nothing here
 * comes from the product: the rows check the product, and this checks the rows.
 */
import * as oxygen from "./oxygen";

type Inputs = any;
type Answer = (inputs: Inputs) => number;

const atmosphere = 101325;
const psi = 6894.757293168;
const pound = 0.45359237;
const fahrenheit = (f: number): number => (f - 32) / 1.8 + 273.15;
const room = 294.25;
/** 70 °F, as older rows have it. */
const seventy = 294.2611;
const gauge = (bar: number): number => bar * 1e5 + atmosphere;
const psig = (value: number): number => value * psi + atmosphere;

const boiling = () => oxygen.saturation(atmosphere);
const reference = (T = seventy) => oxygen.gasDensity(T, atmosphere);

/** ISO 2533:1975, up to 11 km of geopotential height. */
const standard = {
  pressure: (h: number): number => 101325 * (1 - (0.0065 * h) / 288.15) ** (9.80665 / (287.05287 * 0.0065)),
  density: (h: number): number => standard.pressure(h) / (287.05287 * (288.15 - 0.0065 * h)),
};

const densityAltitude: Answer = ({ pressure_altitude_m: h, T_C }) => {
  const density = standard.pressure(h) / (287.05287 * (T_C + 273.15));
  return oxygen.bisect((at) => standard.density(at) - density, -2000, 11000);
};

/** Tables of probabilities by plain products. */
const poisson = (k: number, mean: number): number => {
  let term = Math.exp(-mean);
  for (let each = 1; each <= k; each++) term *= mean / each;
  return term;
};
const poissonCdf = (k: number, mean: number): number =>
  Array.from({ length: k + 1 }, (_, each) => poisson(each, mean)).reduce((sum, each) => sum + each, 0);
const leastWith = (level: number, cdf: (k: number) => number): number => {
  let k = 0;
  while (cdf(k) < level) k++;
  return k;
};
const binomialCdf = (k: number, n: number, p: number): number => {
  let [term, sum] = [(1 - p) ** n, 0];
  for (let each = 0; each <= k; each++) {
    sum += term;
    term *= ((n - each) / (each + 1)) * (p / (1 - p));
  }
  return sum;
};

/** Φ by Simpson's rule from 0. */
const normalCdf = (z: number): number => {
  const steps = 2000;
  const width = z / steps;
  const density = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(0) + density(z);
  for (let step = 1; step < steps; step++) sum += density(step * width) * (step % 2 ? 4 : 2);
  return 0.5 + (sum * width) / 3;
};
const normalQuantile = (level: number): number => oxygen.bisect((z) => normalCdf(z) - level, -8, 8);
const normalLoss: Answer = ({ z }) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) - z * (1 - normalCdf(z));

const bilinear: Answer = ({ T_axis_C: temperatures, alt_axis_m: heights, table, T_C, alt_m }) => {
  const t = (T_C - temperatures[0]) / (temperatures[1] - temperatures[0]);
  const h = (alt_m - heights[0]) / (heights[1] - heights[0]);
  const [[a, b], [c, d]] = table;
  // Rows by temperature or by height: the mean of the corners tells which, where both give the same it doesn't matter.
  return a * (1 - t) * (1 - h) + b * (1 - t) * h + c * t * (1 - h) + d * t * h;
};

const straight = (points: number[], values: number[], at: number): number => {
  const right = points.findIndex((point) => point >= at);
  const share = (at - points[right - 1]!) / (points[right]! - points[right - 1]!);
  return values[right - 1]! + share * (values[right]! - values[right - 1]!);
};

/** NIST, Cryogenic Material Properties: log10 of c_p [J/(kg·K)] over log10 T; 304 read, 6061-T6 from memory. */
const metals = {
  SS304: [22.0061, -127.5528, 303.647, -381.0098, 274.0328, -112.9212, 24.7593, -2.239153],
  Al6061: [46.6467, -314.292, 866.662, -1298.3, 1162.27, -637.795, 210.351, -38.3094, 2.96344],
};
const specificHeat = (metal: keyof typeof metals, T: number): number =>
  10 ** metals[metal].reduce((sum, c, power) => sum + c * Math.log10(T) ** power, 0);

/** Liquid boiled by a kilogram of metal that cools to the boiling point; with its vapour warmed to the metal's own temperature. */
const coolDown: Answer = ({ metal, T1_C, vapour_sensible: warms }) => {
  const { T: end, heat, vapour } = boiling();
  const from = T1_C + 273.15;
  const steps = 4000;
  const width = (from - end) / steps;
  const saturated = oxygen.enthalpy(vapour, end);
  // The vapour's heat in few points, straight between them.
  const points = Array.from({ length: 81 }, (_, index) => end + ((from - end) * index) / 80);
  const warmed = points.map((T, index) =>
    index === 0 ? 0 : oxygen.enthalpy(oxygen.gasDensity(T, atmosphere), T) - saturated,
  );
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    const T = end + (step + 0.5) * width;
    sum += (specificHeat(metal, T) * width) / (heat + (warms ? straight(points, warmed, T) : 0));
  }
  return sum;
};

const flash = (p1: number, p2: number): number => {
  const [before, after] = [oxygen.saturation(p1), oxygen.saturation(p2)];
  return (oxygen.enthalpy(before.liquid, before.T) - oxygen.enthalpy(after.liquid, after.T)) / after.heat;
};

/** Liquid and vapour in a rigid vessel, both saturated: internal energy [J] and the liquid's share of the volume. */
const held = (mass: number, volume: number, p: number) => {
  const { T, liquid, vapour } = oxygen.saturation(p);
  const share = (mass / volume - vapour) / (liquid - vapour);
  const energy =
    volume *
    (share * liquid * oxygen.internalEnergy(liquid, T) + (1 - share) * vapour * oxygen.internalEnergy(vapour, T));
  return { share, energy };
};
const massAt = (V_L: number, share: number, p: number): number => {
  const { liquid, vapour } = oxygen.saturation(p);
  return (V_L / 1000) * (share * liquid + (1 - share) * vapour);
};

const compressibility = (T: number, p: number): number => (p * 0.0319988) / (oxygen.gasDensity(T, p) * 8.31434 * T);

const content: Answer = ({ V_L, p_bar_g, T_C }) =>
  (V_L * oxygen.gasDensity(T_C + 273.15, gauge(p_bar_g))) / oxygen.gasDensity(288.15, atmosphere);

const settled = (density: number, T: number): number => oxygen.pressureAt(density, T);

const cascade: Answer = ({ banks_L, banks_bar_abs, receiver_L, receiver_bar_abs, T_C }) => {
  const T = T_C + 273.15;
  let density = oxygen.gasDensity(T, receiver_bar_abs * 1e5);
  for (const bar of banks_bar_abs)
    density = (density * receiver_L + oxygen.gasDensity(T, bar * 1e5) * banks_L) / (receiver_L + banks_L);
  return oxygen.pressureAt(density, T) / 1e5;
};

const atmosphericRows: Record<string, Answer> = {
  "da-1500-35": densityAltitude,
  "da-0-40": densityAltitude,
  "po2-1500": ({ altitude_m_geopotential: h, FO2 }) => (standard.pressure(h) * FO2) / 1000,
  "pio2-3000": ({ altitude_m_geopotential: h, FiO2, pH2O_kPa }) => (standard.pressure(h) / 1000 - pH2O_kPa) * FiO2,
};

const airParts: Answer = ({ fio2, source }) => (source - fio2) / (fio2 - 0.21);
const sourceFlow: Answer = ({ total, fio2, source }) => (total * (fio2 - 0.21)) / (source - 0.21);

const bedsideRows: Record<string, Answer> = {
  "clin-15a": airParts,
  "clin-15b": airParts,
  "clin-15c": airParts,
  "clin-15d": airParts,
  "clin-15e": airParts,
  "clin-16": sourceFlow,
  "clin-18": sourceFlow,
  "clin-20": ({ mv, fio2, bias, source }) => ((mv + bias) * (fio2 - 0.21)) / (source - 0.21),
};

const flashPercent: Answer = ({ p1_psig, p2_psig }) => flash(psig(p1_psig), psig(p2_psig)) * 100;
const transferred: Answer = ({ drawn_L, p1_psig, p2_psig, metal_kg, sigma_kg_per_kg = 0 }) => {
  const [before, after] = [oxygen.saturation(psig(p1_psig)), oxygen.saturation(psig(p2_psig))];
  const left = (drawn_L / 1000) * before.liquid * (1 - flash(before.p, after.p)) - sigma_kg_per_kg * metal_kg;
  return (left / after.liquid) * 1000;
};

const boilOffRows: Record<string, Answer> = {
  "leak-10d-35": ({ V_L, empty_days, vent_psig }) => {
    const { liquid, heat } = oxygen.saturation(psig(vent_psig));
    return (V_L / 1000 / empty_days / 86400) * liquid * heat;
  },
  "ner-from-W": ({ Q_W, V_L }) => ((Q_W * 86400) / ((V_L / 1000) * boiling().liquid * boiling().heat)) * 100,
  "leak-vent-correction": ({ vented_kg_per_day }) => {
    const { liquid, vapour, heat } = boiling();
    return ((vented_kg_per_day / 86400) * heat * liquid) / (liquid - vapour);
  },
  "hold-95-0-22": ({ V_L, fill_frac, p1_psig, p2_psig, Q_W }) => {
    const mass = massAt(V_L, fill_frac, psig(p1_psig));
    const energy = (p: number) => held(mass, V_L / 1000, p).energy;
    return (energy(psig(p2_psig)) - energy(psig(p1_psig))) / Q_W / 3600;
  },
  "hold-95-0-22-level": ({ V_L, fill_frac, p1_psig, p2_psig }) =>
    held(massAt(V_L, fill_frac, psig(p1_psig)), V_L / 1000, psig(p2_psig)).share * 100,
  "maxfill-35": ({ relief_psig, max_fill_at_relief }) =>
    ((max_fill_at_relief * oxygen.saturation(psig(relief_psig)).liquid) / boiling().liquid) * 100,
  "flash-22-0": flashPercent,
  "flash-10-0": flashPercent,
  "flash-35-10": flashPercent,
  "cool-O2-SS304-latent": coolDown,
  "cool-O2-Al6061-vapour": coolDown,
  "eff-mass": ({ drawn_L, drawn_sat_psig, delivered_L, delivered_sat_psig }) =>
    ((delivered_L * oxygen.saturation(psig(delivered_sat_psig)).liquid) /
      (drawn_L * oxygen.saturation(psig(drawn_sat_psig)).liquid)) *
    100,
  "transfer-warm": transferred,
  "transfer-cold": transferred,
};

const poissonLevel: Answer = ({ mean, mean_lead, level }) => leastWith(level, (k) => poissonCdf(k, mean ?? mean_lead));
const binomialLevel: Answer = ({ n, p, level }) => leastWith(level, (k) => binomialCdf(k, n, p));

const censusRows: Record<string, Answer> = {
  "cen-03": poissonLevel,
  "cen-04": ({ mean, places }) => 1 - poissonCdf(places, mean),
  "cen-05": poissonLevel,
  "cen-06": binomialLevel,
  "cen-07": binomialLevel,
  "cen-08": ({ means, flows, level }) => {
    const sums = new Map<number, number>();
    for (let one = 0; one < 60; one++)
      for (let two = 0; two < 60; two++) {
        const flow = one * flows[0] + two * flows[1];
        sums.set(flow, (sums.get(flow) ?? 0) + poisson(one, means[0]) * poisson(two, means[1]));
      }
    let reached = 0;
    for (const [flow, chance] of [...sums].sort(([one], [other]) => one - other)) {
      reached += chance;
      if (reached >= level) return flow;
    }
    return NaN;
  },
  "cen-10": ({ offered, places }) => {
    const terms = Array.from({ length: places + 1 }, (_, k) => poisson(k, offered));
    return terms[places]! / terms.reduce((sum, each) => sum + each, 0);
  },
  "cen-12": poissonLevel,
  "inv-18": poissonLevel,
};

const cylinderRows: Record<string, Answer> = {
  "cont-J": content,
  "cont-50-150": content,
  "cont-50-200": content,
  "settle-2015-60F": ({ settled_psig, settled_T_F, gas_T_F }) =>
    (settled(oxygen.gasDensity(fahrenheit(settled_T_F), psig(settled_psig)), fahrenheit(gas_T_F)) - atmosphere) / psi,
  "settle-2015-100F": ({ settled_psig, settled_T_F, gas_T_F }) =>
    (settled(oxygen.gasDensity(fahrenheit(settled_T_F), psig(settled_psig)), fahrenheit(gas_T_F)) - atmosphere) / psi,
  "settle-137-40C": ({ settled_bar_g, settled_T_C, gas_T_C }) =>
    (settled(oxygen.gasDensity(settled_T_C + 273.15, gauge(settled_bar_g)), gas_T_C + 273.15) - atmosphere) / 1e5,
  "eq-real": ({ V1_L, p1_bar_abs, V2_L, p2_bar_abs, T_C }) =>
    cascade({
      banks_L: V1_L,
      banks_bar_abs: [p1_bar_abs],
      receiver_L: V2_L,
      receiver_bar_abs: p2_bar_abs,
      T_C,
    }),
  "cascade-3": cascade,
  "mass-cyl-J": ({ V_L, p_bar_g, T_C }) => (V_L / 1000) * oxygen.gasDensity(T_C + 273.15, gauge(p_bar_g)),
};

const demandRows: Record<string, Answer> = {
  "clin-06": ({ severe, critical }) => ((severe[0] * severe[1] + critical[0] * critical[1]) * 1440) / 1000,
  "clin-07": ({ gas_L, cylinder_L, keep_share }) => Math.ceil(gas_L / (cylinder_L * (1 - keep_share))),
  "clin-11": ({ mean_flow, mean_total_L }) => mean_total_L / (mean_flow * 1440),
  "clin-28": ({ n, first, next, share }) => first + (n - 1) * next * share,
  "clin-29": ({ n, first, next, share }) => first + (n - 1) * next * share,
};

const deratingRows: Record<string, Answer> = {
  bilinear,
  "bilinear-2": bilinear,
  "derate-default": ({ T_C, altitude_m_geopotential: h, T_ref_C, k_T_per_K }) =>
    (standard.pressure(h) / 101325) * (1 - k_T_per_K * Math.max(0, T_C - T_ref_C)),
};

/** Work to make a litre of liquid without loss: T₀·Δs − Δh from gas at T₀ and 1 atm. */
const leastWork: Answer = ({ T0_K }) => {
  const { T, liquid } = boiling();
  const gas = oxygen.gasDensity(T0_K, atmosphere);
  const work =
    T0_K * (oxygen.entropy(gas, T0_K) - oxygen.entropy(liquid, T)) -
    (oxygen.enthalpy(gas, T0_K) - oxygen.enthalpy(liquid, T));
  return (work * liquid) / 1000 / 3.6e6;
};

const electricityRows: Record<string, Answer> = {
  "nec-continuous": ({ breaker_A }) => breaker_A / 1.25,
  "vd-10awg-pct": ({ I_A, len_m, V }) => (2 * I_A * (1.24 / 304.8) * len_m) / V,
  "skva-3hp-sag30": ({ hp, kVA_per_hp, sag }) => hp * kVA_per_hp * (1 - sag) ** 2,
  "lra-3hp-K": ({ hp, kVA_per_hp, V }) => (hp * kVA_per_hp * 1000) / V,
  "mix-05": ({ load, unit, points, gal_h }) => straight(points, gal_h, load / unit) * 3.785411784,
  "fuel-interp": ({ load_frac, points, L_h }) => straight(points, L_h, load_frac),
  "wmin-liq": leastWork,
};

const atPressure = (of: (state: oxygen.Saturation) => number): Answer => {
  return ({ p_kPa_abs, p_psig }) => of(oxygen.saturation(p_kPa_abs !== undefined ? p_kPa_abs * 1000 : psig(p_psig)));
};
const celsius = atPressure(({ T }) => T - 273.15);
const liquid = atPressure((state) => state.liquid);
const vapour = atPressure((state) => state.vapour);
const heat = atPressure((state) => state.heat / 1000);
const gas: Answer = ({ T_C, p_kPa_abs }) => oxygen.gasDensity(T_C + 273.15, p_kPa_abs * 1000);
const expansion: Answer = ({ gas_T_C }) => boiling().liquid / reference(gas_T_C + 273.15);
const z: Answer = ({ T_C, T_F, p_bar_abs, p_psig }) =>
  compressibility(
    T_C === undefined ? fahrenheit(T_F) : T_C + 273.15,
    p_bar_abs === undefined ? psig(p_psig) : p_bar_abs * 1e5,
  );

const propertyRows: Record<string, Answer> = {
  "o2-tsat-1atm": celsius,
  "o2-rhol-2bar": liquid,
  "o2-tsat-3bar": celsius,
  "o2-rhol-3bar": liquid,
  "o2-hfg-3bar": heat,
  "o2-rhov-3bar": vapour,
  "o2-hfg-5bar": heat,
  "o2-tsat-10bar": celsius,
  "o2-hfg-10bar": heat,
  "o2-rhov-10bar": vapour,
  "o2-tsat-20bar": celsius,
  "o2-rhov-20bar": vapour,
  "o2-tsat-10psig": celsius,
  "o2-rhol-10psig": liquid,
  "o2-tsat-22psig": celsius,
  "o2-tsat-35psig": celsius,
  "o2-rhol-35psig": liquid,
  "o2-psat-100K": ({ T_K }) => oxygen.saturationAtTemperature(T_K).p / 1000,
  "o2-gas-0C": gas,
  "o2-gas-15C": gas,
  "o2-gas-70F": gas,
  "o2-gas-25C": gas,
  "o2-exp-20C": expansion,
  "o2-exp-70F": expansion,
  "o2-lb-gasL": ({ mass_lb }) => ((mass_lb * pound) / reference()) * 1000,
  "o2-Lh-to-Lmin": ({ liquid_L_per_h }) => (liquid_L_per_h * boiling().liquid) / reference() / 60,
  "o2-Lmin-to-Lh": ({ gas_L_per_min }) => (gas_L_per_min * 60 * reference()) / boiling().liquid,
  "o2-Z-0C-150bar": z,
  "o2-Z-0C-300bar": z,
  "o2-Z-15C-137bar": z,
  "o2-Z-25C-150bar": z,
  "o2-Z-25C-300bar": z,
  "o2-Z-60C-300bar": z,
  "o2-Z-70F-2015psig": z,
  "o2-Z-70F-2200psig": z,
  "o2-liquefy-load": ({ liquid_L_per_h, gas_T_C }) => {
    const { T, liquid: density } = boiling();
    const from = gas_T_C + 273.15;
    const drop = oxygen.enthalpy(oxygen.gasDensity(from, atmosphere), from) - oxygen.enthalpy(density, T);
    return (liquid_L_per_h / 1000 / 3600) * density * drop;
  },
  "wmin-liq": leastWork,
  "mass-20L-lb": ({ lox_L }) => ((lox_L / 1000) * boiling().liquid) / pound,
  "vent-gas": ({ leak_L_per_day }) => (leak_L_per_day * boiling().liquid) / reference() / 1440,
  "trapped-1K": ({ rise_K }) => {
    const { T, liquid: density } = boiling();
    return oxygen.pressureAt(density, T + rise_K) / 1e6;
  },
  "amt-09": ({ liquid_L, temp_C }) => (liquid_L * 861 * (temp_C + 273.15)) / 294.25,
};

const freshAir: Answer = ({ leak_L_min, leak_O2_pct, C_amb_pct, C_max_pct }) =>
  (leak_L_min * (leak_O2_pct - C_max_pct)) / (C_max_pct - C_amb_pct);
const steady: Answer = ({ leak_L_min, leak_O2_pct, fresh_L_min, C_amb_pct, C0_pct }) =>
  (leak_L_min * leak_O2_pct + fresh_L_min * (C_amb_pct ?? C0_pct)) / (leak_L_min + fresh_L_min);
const gasOfLiquid = (litres: number, T = seventy): number => (litres / 1000) * (boiling().liquid / reference(T));

const roomRows: Record<string, Answer> = {
  "vent-1Lmin-100": freshAir,
  "vent-1Lmin-93": freshAir,
  "ss-conc": steady,
  "transient-60": (inputs) => {
    const { V_m3, leak_L_min, fresh_L_min, C0_pct, minutes } = inputs;
    const end = steady(inputs);
    return end + (C0_pct - end) * Math.exp((-(leak_L_min + fresh_L_min) * minutes) / (V_m3 * 1000));
  },
  "spill-1L": ({ lox_L, room_m3, C0_pct }) => {
    // The row names 0.8605 m³ a litre.
    const volume = Number(gasOfLiquid(lox_L).toFixed(4));
    return (C0_pct * (room_m3 - volume) + 100 * volume) / room_m3;
  },
  "spill-40L-gas": ({ lox_L, gas_T_C }) => gasOfLiquid(lox_L, gas_T_C + 273.15),
  "site-03": ({ room: volume, release, air_changes }) => {
    const fresh = (volume * air_changes) / 60;
    return (0.21 * fresh + release / 1000) / (fresh + release / 1000);
  },
};

const stockRows: Record<string, Answer> = {
  "inv-01": ({ level }) => normalQuantile(level),
  "inv-02": ({ mean, sd, lead, z: quantile }) => mean * lead + quantile * sd * Math.sqrt(lead),
  "inv-03": ({ mean, sd, lead, level }) => mean * lead + normalQuantile(level) * sd * Math.sqrt(lead),
  "inv-14a": normalLoss,
  "inv-14b": normalLoss,
  "inv-14c": normalLoss,
  "inv-14d": normalLoss,
};

const drawn: Answer = ({ gauge: bar }) => {
  const state = oxygen.saturation(gauge(bar));
  return (state.liquid - state.vapour) / reference(room);
};
const duty: Answer = ({ flow, celsius: temperature, gauge: bar }) => {
  const state = oxygen.saturation(gauge(bar));
  const T = temperature + 273.15;
  const rise = oxygen.enthalpy(oxygen.gasDensity(T, gauge(bar)), T) - oxygen.enthalpy(state.liquid, state.T);
  return ((flow / 60000) * reference(room) * rise) / 1000;
};
const head: Answer = ({ mbar, height, volume, lying, gauge: bar }) => {
  const state = oxygen.saturation(gauge(bar));
  const share = (mbar * 100) / (state.liquid - state.vapour) / 9.80665 / height;
  if (!lying) return volume * share;
  const angle = 2 * Math.acos(1 - 2 * share);
  return (volume * (angle - Math.sin(angle))) / (2 * Math.PI);
};
const viscosity: Answer = ({ kelvin, bar }) => oxygen.viscosity(kelvin, oxygen.gasDensity(kelvin, bar * 1e5)) * 1e6;

/** Colebrook and White, by bisection on 1/√f. */
const friction = (reynolds: number, roughness: number): number =>
  1 / oxygen.bisect((x) => x + 2 * Math.log10(roughness / 3.7 + (2.51 * x) / reynolds), 1, 40) ** 2;
const hose: Answer = ({ flow, length, bore, gauge: bar, roughness }) => {
  const p = gauge(bar);
  const density = oxygen.gasDensity(room, p);
  const diameter = bore / 1000;
  const speed = ((flow / 60000) * reference(room)) / density / ((Math.PI * diameter ** 2) / 4);
  const reynolds = (density * speed * diameter) / oxygen.viscosity(room, density);
  const factor = reynolds < 2300 ? 64 / reynolds : friction(reynolds, roughness / bore);
  const x = (((factor * length) / diameter) * density * speed ** 2) / 2 / p;
  return (p / 1e5) * (1 - Math.sqrt(1 - 2 * x));
};

const byPrefix: readonly (readonly [prefix: string, answer: Answer])[] = [
  ["drawn-", drawn],
  ["duty-", duty],
  ["head-", head],
  ["viscosity-", viscosity],
  ["hose-", hose],
];

const files: Readonly<Record<string, Record<string, Answer>>> = {
  atmosphere: atmosphericRows,
  bedside: bedsideRows,
  boilOffAndTransfer: boilOffRows,
  census: censusRows,
  cylinders: cylinderRows,
  demand: demandRows,
  derating: deratingRows,
  electricity: electricityRows,
  oxygenProperties: propertyRows,
  roomOxygen: roomRows,
  stock: stockRows,
};

/** What a row comes to; undefined where it is not worked out here. */
export function recomputed(file: string, id: string, inputs: unknown): number | undefined {
  const answer =
    files[file]?.[id] ?? byPrefix.find(([prefix]) => file === "vesselsAndHoses" && id.startsWith(prefix))?.[1];
  return answer?.(inputs);
}
