import { rounding } from "./exceeds";
import { gasDrawnForALitre } from "./amounts";

// Liquid in L; what comes and goes in L/day.

/** Standing loss [L/day] of a vessel [L] that a full one would be emptied by in some days. */
export const dailyLoss = (capacity: number, emptyDays: number): number => capacity / emptyDays;

/**
 * Oxygen lost over nitrogen lost from one vessel, litre for litre: the heat that boils a litre, ρ·Δh at 1 atm, of nitrogen
 * over that of oxygen is 0.6603 (Span et al. 2000, J. Phys. Chem. Ref. Data 29:1361; Schmidt & Wagner 1985), and the heat
 * that leaks in goes with the distance from 300 K, 209.8 over 222.6 K = 0.9424 (conduction; radiation barely changes, so
 * the true factor is up to 6 % larger).
 */
export const oxygenPerNitrogenLoss = 0.622;

/** A vessel's liquid and what changes it. */
export interface Holding {
  /** L */
  readonly level: number;
  /** L, when full */
  readonly capacity: number;
  /** L/day drawn */
  readonly dailyDraw: number;
  /** Days in which the standing loss alone empties a full vessel */
  readonly emptyDays: number;
  /** L/day made, before the standing loss */
  readonly dailyMade: number;
}

/**
 * Draw plus constant standing loss less what is made [L/day]. A rest that is only rounding of equal sums counts as 0: it
 * would answer "empty in ten million years".
 */
function netDraw({ capacity, dailyDraw, emptyDays, dailyMade }: Holding): number {
  const gone = dailyDraw + dailyLoss(capacity, emptyDays);
  const rest = gone - dailyMade;
  return Math.abs(rest) <= rounding * gone ? 0 : rest;
}

/** Days until empty; 0 when it is empty now, undefined when it does not run empty. */
export function daysUntilEmpty(holding: Holding): number | undefined {
  if (holding.level === 0) return 0;
  const net = netDraw(holding);
  return net > 0 ? holding.level / net : undefined;
}

/** Level [L] after some days, from 0 to the capacity. */
export const levelLeft = (days: number, holding: Holding): number =>
  Math.min(holding.capacity, Math.max(0, holding.level - netDraw(holding) * days));

/**
 * Liquid [L] that an outage costs full plants: what they would have made until they make liquid again, and what boils off
 * while the power is out, at most all of it.
 *
 * @param rate L/h of one plant
 * @param capacity L of one plant
 */
export const outageCost = (
  outageHours: number,
  restartHours: number,
  rate: number,
  capacity: number,
  plants: number,
  emptyDays: number,
): number =>
  plants *
  ((outageHours + restartHours) * rate + Math.min(capacity, (dailyLoss(capacity, emptyDays) * outageHours) / 24));

/**
 * Hours for which a vessel feeds a patient.
 *
 * @param usable L of liquid above what is kept
 * @param flow L/min of gas at 21.1 °C, 1 atm
 * @param economiser True when the boil-off goes to the patient, so that the larger of the two empties the vessel
 * @param pressure bar gauge of the vessel
 */
export function vesselHours(
  usable: number,
  flow: number,
  capacity: number,
  emptyDays: number,
  economiser: boolean,
  pressure: number,
): number {
  const patient = (flow * 60) / gasDrawnForALitre(pressure);
  const standing = dailyLoss(capacity, emptyDays) / 24;
  return usable / (economiser ? Math.max(patient, standing) : patient + standing);
}
