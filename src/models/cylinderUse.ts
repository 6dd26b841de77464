import { countAtLevel, poisson } from "./counts";
import { cutDownThings, roundUpThings } from "./wholeNumbers";

/**
 * Handbook factors of cylinder sizes [L of gas for each psi gauge], by letter: full content over 2200 psi, rounded down.
 * Respiratory-care and emergency-medical teaching texts give the same list.
 */
export const sizeFactors = { D: 0.16, E: 0.28, M: 1.56, H: 3.14, K: 3.14 } as const;

/** Gas in a cylinder above the pressure that stays in it [L], by its size factor [L/psi]; pressures in psi gauge. */
export const contentByFactor = (pressurePsi: number, factor: number, keepPsi: number): number =>
  Math.max(0, pressurePsi - keepPsi) * factor;

/** Minutes that a content [L gas] lasts at a flow [L/min] when a share stays in the cylinder. */
export const cylinderMinutes = (content: number, flow: number, keepShare: number): number =>
  (content * (1 - keepShare)) / flow;

/** Whole cylinders for an amount of gas [L] when a share of each content [L] stays in it. */
export const cylindersNeeded = (gas: number, content: number, keepShare: number): number =>
  roundUpThings(gas / (content * (1 - keepShare)));

/** Whole cylinders filled in some hours [h]; each booster fills one after the other, with a change [min] for every one. */
export const cylindersFilled = (hours: number, fillMinutes: number, changeMinutes: number, boosters: number): number =>
  cutDownThings((hours * 60) / (fillMinutes + changeMinutes)) * boosters;

/** Cylinders away for filling and carrying, on average: used a day × days until each is back full. */
export const meanAway = (usedPerDay: number, turnaroundDays: number): number => usedPerDay * turnaroundDays;

/**
 * Cylinders to own so that a share of days finds a full one: Palm's theorem. Where cylinders are used up at random at a
 * steady mean and each is away for a time of any distribution, those away are Poisson of the mean number away; the
 * cylinders in use come on top.
 *
 * @param level above 0 and under 1
 */
export const cylindersToOwn = (usedPerDay: number, turnaroundDays: number, level: number, inUse: number): number => {
  const mean = meanAway(usedPerDay, turnaroundDays);
  return roundUpThings(inUse) + (mean === 0 ? 0 : countAtLevel(poisson(mean), level));
};
