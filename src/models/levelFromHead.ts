import { absoluteFromGauge, saturationAtPressure } from "./oxygen";
import { standardGravity } from "./unitFactors";

/**
 * Height of liquid that a differential-pressure gauge shows: h = Δp/((ρl − ρv)·g), since the vapour above the liquid weighs
 * on both taps.
 *
 * @param difference mbar
 * @param pressure bar gauge, liquid and vapour saturated at it
 * @returns m
 */
export function liquidHeight(difference: number, pressure: number): number {
  const at = saturationAtPressure(absoluteFromGauge(pressure));
  return (difference * 100) / ((at.liquidDensity - at.vapourDensity) * standardGravity);
}

/**
 * Share of a lying cylinder with flat ends that is filled to a share of its diameter: the circular segment over the circle,
 * (θ − sin θ)/2π with cos(θ/2) = 1 − 2x.
 */
export function lyingShare(heightShare: number): number {
  const angle = 2 * Math.acos(1 - 2 * heightShare);
  return (angle - Math.sin(angle)) / (2 * Math.PI);
}
