import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { count, kilograms, squareMetres } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { palletsNeeded as palletsFor, tooLargeForPallet } from "../../models/moving";

export const args = cellArguments({
  counts: list(count),
  masses: list(kilograms),
  floors: list(squareMetres),
  pallet_mass: kilograms.positive().default(defaults.pallet_mass),
  pallet_floor: squareMetres.positive().default(defaults.pallet_floor),
});

/** More units than any shipment of this kind; keeps the packing quick. */
const mostUnits = 100000;

/**
 * Pallets for a shipment of whole units, by mass and by floor.
 *
 * @customfunction PALLETS_NEEDED
 * @param counts How many of each kind, one cell a kind
 * @param masses Mass of one of each kind [kg], in the same order
 * @param floors Floor one of each kind takes up [m²], in the same order
 * @param [pallet_mass] Mass a pallet carries [kg]
 * @param [pallet_floor] Floor of a pallet [m²]
 * @returns Pallets
 */
export function palletsNeeded(
  counts: any[][],
  masses: any[][],
  floors: any[][],
  pallet_mass?: any[][],
  pallet_floor?: any[][],
): any[][] {
  return eachCell(args, [counts, masses, floors, pallet_mass, pallet_floor], (given) => {
    const unequal =
      sameLength({ counts: given.counts, masses: given.masses }) ??
      sameLength({ counts: given.counts, floors: given.floors });
    if (unequal) return unequal;
    const units = given.counts.reduce((total, each) => total + each, 0);
    if (units > mostUnits)
      return invalid(`counts add up to ${formatNumber(units)} units; ${mostUnits} at most are packed here`);
    const kinds = given.counts.map((each, index) => ({
      count: each,
      mass: given.masses[index]!,
      floor: given.floors[index]!,
    }));
    const tooLarge = tooLargeForPallet(kinds, given.pallet_mass, given.pallet_floor);
    if (tooLarge < 0) return palletsFor(kinds, given.pallet_mass, given.pallet_floor);
    const { mass, floor } = kinds[tooLarge]!;
    return invalid(
      `masses and floors: unit ${tooLarge + 1} of the list (${formatNumber(mass)} kg, ${formatNumber(floor)} m²) exceeds a pallet of pallet_mass ${formatNumber(given.pallet_mass)} kg and pallet_floor ${formatNumber(given.pallet_floor)} m²`,
    );
  });
}

export const about: About = {
  gives: "count",
  rule: "first-fit decreasing: units in falling order of the tighter of mass / pallet mass and floor / pallet floor, each on the first pallet with room for both",
  range: `Whole units, not stacked, 100 000 at most. Floors are compared by area alone: shapes that leave gaps need more. A unit that exceeds a pallet is #VALUE!. The method may now and then ask for one pallet more than a perfect packing. ${blankAsZero}`,
  source: `First-fit decreasing: Johnson, Near-optimal bin packing algorithms, MIT 1973 (from memory); pallet floor: ${defaults.pallet_floor.source}; pallet mass: ${defaults.pallet_mass.source}`,
  examples: [
    {
      formula: "=OXYGEN.PALLETS_NEEDED({17},{100},{0.3})",
      result: Math.ceil(17 / Math.floor(defaults.pallet_floor.value / 0.3 + 1e-9)),
      note: "The floor is tighter",
      source: `17 / INT(${defaults.pallet_floor.value}/0.3), rounded up`,
    },
    {
      formula: "=OXYGEN.PALLETS_NEEDED({17},{260},{0.3},{907;700},1.2)",
      result: [[6], [9]],
      note: "The floor takes four, the mass three or two",
      source: "17 / INT(907/260) and 17 / INT(700/260), rounded up",
    },
    {
      formula: "=OXYGEN.PALLETS_NEEDED({2;4},{700;250},{0.6;0.3},1000,0.7)",
      result: 4,
      note: "A smaller pallet takes one large unit or two small ones",
      source: "by hand: 0.6 + 0.3 m² is above 0.7, 2 × 0.3 m² is not",
    },
  ],
  seeAlso: ["SHIPPED_MASS", "TRIPS_NEEDED", "TIE_DOWNS_NEEDED"],
  caution:
    "Keep to the load plate of the truck, aircraft and lifting gear, and spread the mass. Cylinders and cold vessels stand upright and secured; filled ones are dangerous goods (UN 1072 compressed, UN 1073 refrigerated liquid): the carrier and the competent authority decide.",
};
