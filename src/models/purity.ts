import { exceeds } from "./exceeds";

/**
 * Medicinal oxygen by content: monographs "Oxygen" of the European Pharmacopoeia (at least 99.5 % V/V) and of the United
 * States Pharmacopeia (at least 99.0 %), and "Oxygen 93 per cent" of both (90.0 to 96.0 %). The first two and the third
 * of the Ph. Eur. read in transcriptions and notices of the monographs; the third of the USP from memory. The later
 * monograph "Oxygen 98 per cent" of the Ph. Eur. is not among them.
 */
const classes: readonly { readonly name: string; readonly least: number; readonly most: number }[] = [
  { name: "oxygen (Ph. Eur.)", least: 0.995, most: 1 },
  { name: "oxygen (USP)", least: 0.99, most: 1 },
  { name: "oxygen 93 (Ph. Eur., USP)", least: 0.9, most: 0.96 },
];

/**
 * Names of every class that a content of oxygen [fraction by volume] meets. 96 % does not miss 0.96 by the rounding of a
 * product.
 */
export const purityClasses = (purity: number): string[] =>
  classes.filter(({ least, most }) => !exceeds(least, purity) && !exceeds(purity, most)).map(({ name }) => name);

/** Purity of two streams of gas brought together; flows at the same reference conditions, not both 0. */
export const blendedPurity = (flow1: number, purity1: number, flow2: number, purity2: number): number =>
  (flow1 * purity1 + flow2 * purity2) / (flow1 + flow2);
