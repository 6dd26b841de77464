import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { count, kilograms, share } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { shippedMass as massOf } from "../../models/moving";

export const args = cellArguments({
  counts: list(count),
  masses: list(kilograms),
  packing_share: share.between(0, 2).default(defaults.packing_share),
});

/**
 * Mass of a shipment: how many of each kind, the mass of one, and packing as a share.
 *
 * @customfunction SHIPPED_MASS
 * @param counts How many of each kind, one cell a kind
 * @param masses Mass of one of each kind [kg], in the same order
 * @param [packing_share] Mass of crates and pallets as a share of the goods, such as 0.1 or 10%, at most 2
 * @returns Mass [kg]
 */
export function shippedMass(counts: any[][], masses: any[][], packing_share?: any[][]): any[][] {
  return eachCell(
    args,
    [counts, masses, packing_share],
    (given) =>
      sameLength({ counts: given.counts, masses: given.masses }) ??
      massOf(given.counts, given.masses, given.packing_share),
  );
}

export const about: About = {
  gives: "mass",
  rule: "Σ count × mass × (1 + packing share)",
  range: `Counts are whole; both ranges have as many cells, a first row of headings is passed over, and a blank among them is #VALUE!. Packing up to twice the goods; more is taken for a percent without its sign and is #VALUE!. Crates often add a tenth or more: the default packing_share adds nothing. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.SHIPPED_MASS({2;10},{400;12.5},0.1)",
      result: 1017.5,
      note: "Goods and a tenth for crates",
      source: "(2 × 400 + 10 × 12.5) × 1.1",
    },
    {
      formula: '=OXYGEN.SHIPPED_MASS({3},{"100 lb"})',
      result: 136.077711 * (1 + defaults.packing_share.value),
      source: `NIST SP 811: 1 lb = 0.453 592 37 kg; 3 × 45.359 237 × (1 + ${defaults.packing_share.value})`,
    },
  ],
  seeAlso: ["PALLETS_NEEDED", "TRIPS_NEEDED", "TIE_DOWNS_NEEDED"],
  caution:
    "Liquid and filled cylinders are dangerous goods: UN 1073 oxygen, refrigerated liquid; UN 1072 oxygen, compressed. Declare them; the carrier and the competent authority decide what may travel and how. Weigh before lifting or flying.",
};
