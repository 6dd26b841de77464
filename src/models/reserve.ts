/** What an outage of the power takes from the liquid in reserve. */
export interface OutageReserve {
  /** L a day at the patient */
  readonly dailyNeed: number;
  readonly meanOutageHours: number;
  /** Share of outages to be carried, 0 to under 1. */
  readonly level: number;
  /** Hours after the outage until liquid accumulates. */
  readonly restartHours: number;
  /** L */
  readonly capacity: number;
  /** L drawn per L needed */
  readonly drawRatio: number;
  /** Days in which full vessels without power boil empty. */
  readonly emptyDays: number;
}

/**
 * Hours that an outage of exponential length lasts at most, in a share `level` of outages: −mean·ln(1 − level)
 * (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.7, percent point function).
 */
export const outageHours = (meanHours: number, level: number): number => -meanHours * Math.log1p(-level);

/** Liquid [L] drawn until it accumulates again, and boiled away while the power is off. */
export function reserveForOutage(given: OutageReserve): number {
  const outage = outageHours(given.meanOutageHours, given.level);
  const drawn = (given.dailyNeed * given.drawRatio * (outage + given.restartHours)) / 24;
  return drawn + ((given.capacity / given.emptyDays) * outage) / 24;
}
