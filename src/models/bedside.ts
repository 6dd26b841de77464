import { seaLevelPressure } from "./atmosphere";
import { oxygenInAir } from "./roomOxygen";

// Oxygen balances of mixing: fractions by volume of dry gas, `air` and `source` hold 21 % and the source's purity.

/**
 * Flow to plan with for one patient of a kind [L/min].
 *
 * Adults: WHO, Oxygen sources and distribution for COVID-19 treatment centres, interim guidance, 4 April 2020. Newborns,
 * infants, children and bubble CPAP: the upper ends of the starting ranges 0.5 to 1, 1 to 2, 1 to 4 and 5 to 10 L/min of
 * WHO, Oxygen therapy for children, 2016. Both read second hand.
 */
export const plannedFlows = {
  severe: 10,
  critical: 30,
  newborn: 1,
  infant: 2,
  child: 4,
  "bubble CPAP": 10,
} as const;

/** Source gas in a mixed flow [L/min]: total·(F − air)/(S − air). */
export const sourceFlow = (totalFlow: number, fio2: number, sourcePurity: number): number =>
  (totalFlow * (fio2 - oxygenInAir)) / (sourcePurity - oxygenInAir);

/** Mixed flow [L/min] that a source flow gives at a fraction; inverse of `sourceFlow`. */
export const totalFlow = (flow: number, fio2: number, sourcePurity: number): number =>
  (flow * (sourcePurity - oxygenInAir)) / (fio2 - oxygenInAir);

/** Oxygen fraction of a mixture of source and air; both flows in one unit, not both 0. */
export const mixedFraction = (flow: number, airFlow: number, sourcePurity: number): number =>
  oxygenInAir + (sourcePurity - oxygenInAir) * (flow / (flow + airFlow));

/** Parts of air to one part of source: (S − F)/(F − air). */
export const airParts = (fio2: number, sourcePurity: number): number => (sourcePurity - fio2) / (fio2 - oxygenInAir);

/** Water vapour pressure at 37 °C [kPa], 47 mmHg. */
export const waterVapourPressure = 6.28;

/**
 * Fraction at sea level that gives the same inspired oxygen pressure as `fio2` at an air pressure [kPa], both humidified
 * at 37 °C: the inspired-oxygen term of the alveolar gas equation, P = F·(p − 47 mmHg).
 */
export const seaLevelFraction = (fio2: number, airPressureKpa: number): number =>
  (fio2 * (airPressureKpa - waterVapourPressure)) / (seaLevelPressure - waterVapourPressure);

/** Fraction to give at an air pressure [kPa] for the worth of `fio2` at sea level, inverse of it; air is the least. */
export const fractionToSet = (fio2: number, airPressureKpa: number): number =>
  Math.max(oxygenInAir, (fio2 * (seaLevelPressure - waterVapourPressure)) / (airPressureKpa - waterVapourPressure));

/** Oxygen taken up at rest [L/min] by a body of a mass [kg]: 10·kg^0.75 mL/min. */
export const oxygenUptake = (bodyMass: number): number => Math.pow(bodyMass, 0.75) / 100;

/** Fraction inhaled from a nasal cannula at 1–6 L/min, by the teaching rule. */
export const cannulaFraction = (flow: number): number => 0.2 + 0.04 * flow;
