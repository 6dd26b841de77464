import { airPressure, seaLevelPressure } from "./atmosphere";
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
 * The dilution equation of industrial-hygiene texts (ACGIH, Industrial Ventilation; from memory). Flows and volumes are
 * those in the room: `growth` turns reference litres into them.
 */

/**
 * Litres that a reference litre of gas takes up at an altitude [m]: the standard pressure over that of ISO 2533. The room
 * is taken to be as warm as the reference.
 */
export const growth = (altitude: number): number => seaLevelPressure / airPressure(altitude);

/**
 * Air changes that count near the release: the dilution factor K ≥ 1 of industrial ventilation (ACGIH; from memory)
 * divides the fresh air, Q′ = Q/K.
 */
export const effectiveAirChanges = (airChanges: number, mixing: number): number => airChanges / mixing;

/** L/min of fresh air from air changes an hour in a room [m³]. */
const freshAir = (room: number, airChanges: number): number => (room * 1000 * airChanges) / 60;

/**
 * Oxygen fraction of a room in the long run.
 *
 * @param room m³
 * @param release L/min in the room
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
 * @param release L/min in the room
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
 * @returns L/min in the room
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
 * @param release L/min in the room
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
 * @param release L/min in the room
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
 * Minutes of fresh air until an enriched room is down to the limit, with no more released: V·K/Q·ln((C − C₀)/(Cmax − C₀)),
 * the room purge equation of industrial hygiene.
 *
 * @param roomOxygen fraction now, that of air or more
 * @param airChanges fresh air changes an hour
 * @param limit fraction, above that of air
 * @param mixing dilution factor K ≥ 1
 * @returns min; 0 when it is not above the limit, undefined when no air comes in
 */
export function airingMinutes(
  roomOxygen: number,
  airChanges: number,
  limit: number,
  mixing: number,
): number | undefined {
  if (!exceeds(roomOxygen, limit)) return 0;
  if (airChanges === 0) return undefined;
  return (60 / effectiveAirChanges(airChanges, mixing)) * Math.log((roomOxygen - oxygenInAir) / (limit - oxygenInAir));
}

/*
 * A plant takes q·(P − C₀) of oxygen out of the room's air with its product q of purity P and gives the nitrogen back. Air
 * Q is blown out, Q + q of fresh air comes in:
 *
 *   V dC/dt = (Q + q)·C₀ − q·P − Q·C
 *   C∞ = C₀ − (P − C₀)·q/Q,  C(t) = C∞ + (C₀ − C∞)·exp(−Q·t/V);  with Q = 0: C(t) = C₀ − (P − C₀)·q·t/V
 */

/**
 * Oxygen fraction left in the long run in a room whose air a plant takes; never below 0.
 *
 * @param room m³
 * @param product L/min in the room, of gas that leaves it
 * @param airChanges changes of air blown out an hour
 * @param purity fraction of oxygen in the product
 */
export function plantRoomOxygenLongRun(room: number, product: number, airChanges: number, purity: number): number {
  if (product === 0) return oxygenInAir;
  return Math.max(0, oxygenInAir - ((purity - oxygenInAir) * product) / freshAir(room, airChanges));
}

/** The same some minutes after the plant starts in fresh air. */
export function plantRoomOxygenAfter(
  room: number,
  product: number,
  airChanges: number,
  minutes: number,
  purity: number,
): number {
  const taken = (purity - oxygenInAir) * product;
  const air = freshAir(room, airChanges);
  const volume = room * 1000;
  const fall = air === 0 ? (taken * minutes) / volume : (taken / air) * -Math.expm1((-air * minutes) / volume);
  return Math.max(0, oxygenInAir - fall);
}

/**
 * Oxygen fraction after spilled liquid, cold from 1 atm, has become gas at 21.1 °C and pushed out as much room air:
 * C₀ + (1 − C₀)·V gas/V room, at most 1. A mean of the room: near the floor it is far richer.
 *
 * @param room m³
 * @param liquid L
 * @param gasGrowth litres in the room of each reference litre
 */
export function spillOxygen(room: number, liquid: number, inAir: number = oxygenInAir, gasGrowth = 1): number {
  const ratio = expansionRatio(standardAtmosphere, gasReferenceCelsius + zeroCelsius, standardAtmosphere);
  return Math.min(1, inAir + ((1 - inAir) * liquid * ratio * gasGrowth) / (room * 1000));
}
