/** Drain, pack and tie down: masses in kg, floors in m², lengths in m, liquid in L, times in days. */
import { exceeds } from "./exceeds";
import { foot, pound } from "./unitFactors";
import { cutDownThings, roundUpThings } from "./wholeNumbers";

/** Mass of a shipment [kg]: counts × masses, and packing as a share of it. */
export const shippedMass = (counts: readonly number[], masses: readonly number[], packingShare: number): number =>
  counts.reduce((total, count, index) => total + count * masses[index]!, 0) * (1 + packingShare);

/** Last whole day [serial] on which draining may begin so that it is empty, and then warm, on the day of shipping. */
export const drainBy = (shipDate: number, level: number, drainRate: number, warmDays: number): number =>
  cutDownThings(shipDate - warmDays - level / drainRate / 24);

/** A kind of unit to be packed. */
export interface PackedKind {
  readonly count: number;
  readonly mass: number;
  readonly floor: number;
}

/** Sums of masses that should be exact, such as 0.1 + 0.2, may not fill a pallet that holds 0.3. */
const fits = (sum: number, limit: number): boolean => !exceeds(sum, limit);

/** Index of the first kind of which one unit exceeds a pallet, or -1. */
export const tooLargeForPallet = (kinds: readonly PackedKind[], palletMass: number, palletFloor: number): number =>
  kinds.findIndex((kind) => kind.count > 0 && (!fits(kind.mass, palletMass) || !fits(kind.floor, palletFloor)));

/**
 * Pallets by first-fit decreasing: units in falling order of the tighter of their shares of mass and floor (equal ones in
 * list order), each on the first pallet with room for both. Johnson, "Near-optimal bin packing algorithms", MIT 1973, for
 * one measure. Never fewer than the least number and seldom more than one above it.
 */
export function palletsNeeded(kinds: readonly PackedKind[], palletMass: number, palletFloor: number): number {
  const tighter = (kind: PackedKind): number => Math.max(kind.mass / palletMass, kind.floor / palletFloor);
  const pallets: { mass: number; floor: number }[] = [];
  const ordered = kinds.filter((kind) => kind.count > 0).sort((a, b) => tighter(b) - tighter(a));
  for (const { count, mass, floor } of ordered) {
    let left = count;
    // Units of a kind are alike, so a pallet that has no room for one has none for the rest.
    for (let at = 0; left > 0; at++) {
      const pallet = pallets[at] ?? (pallets[at] = { mass: 0, floor: 0 });
      while (left > 0 && fits(pallet.mass + mass, palletMass) && fits(pallet.floor + floor, palletFloor)) {
        pallet.mass += mass;
        pallet.floor += floor;
        left--;
      }
    }
  }
  return pallets.length;
}

/**
 * Least number of tie-downs by the length of an article that nothing blocks in the forward direction: 49 CFR 393.110(b).
 * (1) one up to 5 ft and 1100 lb; (2) two if it is heavier, or longer up to 10 ft; (3) two, and one more for each
 * further 10 ft or part of it. The rule's own figures are in feet and pounds; its rounded metric ones are not used.
 */
export function tieDownsByLength(mass: number, length: number): number {
  if (length <= 5 * foot && mass <= 1100 * pound) return 1;
  return 2 + Math.max(0, roundUpThings((length - 10 * foot) / (10 * foot)));
}

/** Tie-downs whose working loads [kg] together are at least half the mass: 49 CFR 393.106(d). */
export const tieDownsByLoad = (mass: number, workingLoad: number): number => roundUpThings(mass / 2 / workingLoad);
