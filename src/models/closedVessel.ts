import { absoluteFromGauge, saturationAtPressure, standardAtmosphere } from "./oxygen";

/** How a closed vessel gets from one pressure to another. */
export type ClosedVesselWarming =
  | {
      readonly kind: "reaches";
      /** Hours to the end pressure */
      readonly hours: number;
      /** Liquid at the end pressure, L */
      readonly endLevel: number;
    }
  | {
      /** The liquid swells until no vapour is left before the end pressure; from there pressure climbs steeply. */
      readonly kind: "liquid-full";
      /** Pressure at which the last vapour goes, bar gauge */
      readonly pressure: number;
      /** Hours until then */
      readonly hours: number;
      /** Level at the start that would only just be liquid-full at the end pressure, L */
      readonly mostLevel: number;
    }
  | {
      /** The last liquid evaporates before the end pressure. */
      readonly kind: "dry";
      /** Pressure at which the last liquid goes, bar gauge */
      readonly pressure: number;
      /** Hours until then */
      readonly hours: number;
    };

const secondsPerHour = 3600;

/** The end at which a monotonic `excess` changes sign, by bisection of [low, high] down to rounding. */
function crossing(low: number, high: number, excess: (x: number) => number): number {
  const risesFrom = excess(low) <= 0;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (excess(middle) <= 0 === risesFrom) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Warming of a closed, rigid vessel by a constant heat leak, liquid and vapour in equilibrium at one pressure all the
 * time, metal not counted:
 *
 *   M = ρl·L + ρv·(V − L),  v = V/M,  x = (v − vl)/(vv − vl),  U = M·(ul + x·(uv − ul)),  t = (U₂ − U₁)/Q
 *
 * First law for a closed rigid volume (no work, no flow); properties of Schmidt and Wagner (1985). A real vessel that
 * stands still stratifies and gets there sooner: the caller multiplies by its mixing factor.
 *
 * @param brimVolume Volume to the brim, L, above 0
 * @param level Liquid at the start, L, 0 to the brim
 * @param fromPressure bar gauge
 * @param toPressure bar gauge, above fromPressure
 * @param heatLeak W, above 0
 */
export function warmClosedVessel(
  brimVolume: number,
  level: number,
  fromPressure: number,
  toPressure: number,
  heatLeak: number,
): ClosedVesselWarming {
  const start = saturationAtPressure(absoluteFromGauge(fromPressure));
  const end = saturationAtPressure(absoluteFromGauge(toPressure));
  // kg per L of vessel
  const liquidMass = (level * start.liquidDensity) / 1000;
  const vapourMass = ((brimVolume - level) * start.vapourDensity) / 1000;
  const mass = liquidMass + vapourMass;
  const density = (mass * 1000) / brimVolume;
  const startEnergy = liquidMass * start.liquidInternalEnergy + vapourMass * start.vapourInternalEnergy;
  const hoursTo = (energy: number): number => ((energy - startEnergy) * 1000) / heatLeak / secondsPerHour;

  if (density >= end.liquidDensity) {
    const mostLevel =
      (brimVolume * (end.liquidDensity - start.vapourDensity)) / (start.liquidDensity - start.vapourDensity);
    const pressure = crossing(
      fromPressure,
      toPressure,
      (p) => density - saturationAtPressure(absoluteFromGauge(p)).liquidDensity,
    );
    const full = saturationAtPressure(absoluteFromGauge(pressure));
    return { kind: "liquid-full", pressure, hours: hoursTo(mass * full.liquidInternalEnergy), mostLevel };
  }
  if (density <= end.vapourDensity) {
    const pressure = crossing(
      fromPressure,
      toPressure,
      (p) => saturationAtPressure(absoluteFromGauge(p)).vapourDensity - density,
    );
    const dry = saturationAtPressure(absoluteFromGauge(pressure));
    return { kind: "dry", pressure, hours: hoursTo(mass * dry.vapourInternalEnergy) };
  }
  // Same quality as in the specific volumes, written with the liquid's share of the volume.
  const share = (density - end.vapourDensity) / (end.liquidDensity - end.vapourDensity);
  const endLevel = share * brimVolume;
  const endEnergy =
    (endLevel * end.liquidDensity * end.liquidInternalEnergy +
      (brimVolume - endLevel) * end.vapourDensity * end.vapourInternalEnergy) /
    1000;
  return { kind: "reaches", hours: hoursTo(endEnergy), endLevel };
}

/**
 * Liquid, cold from 1 atm, that fills no more than a share of the vessel once warmed to the relief pressure: the ratio
 * of the two liquid densities times that share. ADR, packing instruction P203, asks this of flammable gases; of oxygen only
 * that share at filling.
 *
 * @param brimVolume Volume to the brim, L
 * @param reliefPressure bar gauge
 * @param fullShare Largest share that may be liquid at relief pressure, 0–1
 * @returns L of liquid saturated at 1 atm
 */
export const mostColdFill = (brimVolume: number, reliefPressure: number, fullShare: number): number =>
  (brimVolume * fullShare * saturationAtPressure(absoluteFromGauge(reliefPressure)).liquidDensity) /
  saturationAtPressure(standardAtmosphere).liquidDensity;

/**
 * Heat leak that boils a volume of saturated liquid a day, the level method: Q = V̇·ρl·Δh.
 *
 * @param litresPerDay L/day
 * @param pressure bar gauge
 * @returns W
 */
export function heatLeakFromLoss(litresPerDay: number, pressure: number): number {
  const at = saturationAtPressure(absoluteFromGauge(pressure));
  return (litresPerDay * at.liquidDensity * at.latentHeat) / 86400;
}

/** Inverse of `heatLeakFromLoss`: L/day of saturated liquid at a pressure [bar gauge] from a heat leak [W]. */
export function lossFromHeatLeak(watts: number, pressure: number): number {
  const at = saturationAtPressure(absoluteFromGauge(pressure));
  return (watts * 86400) / (at.liquidDensity * at.latentHeat);
}
