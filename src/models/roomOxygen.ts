import { exceeds } from "./exceeds";
import { expansionRatio, gasReferenceCelsius, standardAtmosphere, zeroCelsius } from "./oxygen";

/** Oxygen in air, as taken everywhere in this project. */
export const oxygenInAir = 0.21;

/*
 * Well-mixed room of volume V with fresh air Qv and a release Ql of oxygen fraction Cl; what comes in pushes as much
 * out:
 *
 *   V dC/dt = Qv·C₀ + Ql·Cl − (Qv + Ql)·C
 *   C∞ = (Qv·C₀ + Ql·Cl)/(Qv + Ql),  C(t) = C∞ + (C₀ − C∞)·exp(−(Qv + Ql)·t/V)
 *
 * The dilution equation of industrial-hygiene texts (ACGIH, Industrial Ventilation; from memory).
 */

/** L/min of fresh air from air changes an hour in a room [m³]. */
const freshAir = (room: number, airChanges: number): number => (room * 1000 * airChanges) / 60;

/**
 * Oxygen fraction of a room in the long run.
 *
 * @param room m³
 * @param release L/min
 * @param airChanges fresh air changes an hour
 * @param releasePurity fraction of oxygen in what is released
 */
export function roomOxygenLongRun(
  room: number,
  release: number,
  airChanges: number,
  releasePurity: number,
  inAir: number = oxygenInAir,
): number {
  if (release === 0) return inAir;
  const air = freshAir(room, airChanges);
  return (air * inAir + release * releasePurity) / (air + release);
}

/**
 * Oxygen fraction of a room some minutes after a release starts in fresh air.
 *
 * @param room m³
 * @param release L/min
 * @param airChanges fresh air changes an hour
 * @param minutes min
 * @param releasePurity fraction
 */
export function roomOxygenAfter(
  room: number,
  release: number,
  airChanges: number,
  minutes: number,
  releasePurity: number,
  inAir: number = oxygenInAir,
): number {
  const longRun = roomOxygenLongRun(room, release, airChanges, releasePurity, inAir);
  const exchange = ((freshAir(room, airChanges) + release) * minutes) / (room * 1000);
  return inAir + (longRun - inAir) * -Math.expm1(-exchange);
}

/**
 * Release of pure oxygen that brings a room to the limit in the long run.
 *
 * @param room m³
 * @param airChanges fresh air changes an hour
 * @param limit fraction, above that of air and below the purity
 * @returns L/min
 */
export const releaseLimit = (
  room: number,
  airChanges: number,
  limit: number,
  releasePurity = 1,
  inAir: number = oxygenInAir,
): number => (freshAir(room, airChanges) * (limit - inAir)) / (releasePurity - limit);

/**
 * Minutes from fresh air to the limit.
 *
 * @param room m³
 * @param release L/min
 * @param airChanges fresh air changes an hour
 * @param limit fraction, above that of air
 * @returns min, or undefined when the room stays under the limit (also when it only nears it without end)
 */
export function minutesToLimit(
  room: number,
  release: number,
  airChanges: number,
  limit: number,
  releasePurity = 1,
  inAir: number = oxygenInAir,
): number | undefined {
  const longRun = roomOxygenLongRun(room, release, airChanges, releasePurity, inAir);
  if (!exceeds(longRun, limit)) return undefined;
  const exchangePerMinute = (freshAir(room, airChanges) + release) / (room * 1000);
  return -Math.log1p(-(limit - inAir) / (longRun - inAir)) / exchangePerMinute;
}

/**
 * Fresh air that keeps a release under the limit: Qv = K·Ql·(Cl − Cmax)/(Cmax − C₀).
 *
 * @param release L/min
 * @param limit fraction, above that of air
 * @param mixing dilution factor K ≥ 1; 1 only for perfect mixing
 * @returns m³/h
 */
export const ventilationNeeded = (
  release: number,
  limit: number,
  mixing: number,
  releasePurity = 1,
  inAir: number = oxygenInAir,
): number => (mixing * release * 60 * (releasePurity - limit)) / (limit - inAir) / 1000;

/**
 * Oxygen fraction after spilled liquid, cold from 1 atm, has become gas at 21.1 °C and pushed out as much room air:
 * C₀ + (1 − C₀)·V gas/V room, at most 1. A mean of the room: near the floor it is far richer.
 *
 * @param room m³
 * @param liquid L
 */
export function spillOxygen(room: number, liquid: number, inAir: number = oxygenInAir): number {
  const ratio = expansionRatio(standardAtmosphere, gasReferenceCelsius + zeroCelsius, standardAtmosphere);
  return Math.min(1, inAir + ((1 - inAir) * liquid * ratio) / (room * 1000));
}
