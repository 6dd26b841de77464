import { defaults, inWords } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, metres } from "../../arguments/quantity";
import { siteArea as areaOf } from "../../models/site";

export const args = cellArguments({
  length: metres.positive(),
  width: metres.positive(),
  clearance: metres.default(defaults.clearance),
  units: count.atLeast(1).default(defaults.units),
});

/**
 * Floor that plants take with clearance all round; they stand side by side across their width and share one gap.
 *
 * @customfunction SITE_AREA
 * @param length Length of one plant [m]
 * @param width Width of one plant [m]
 * @param [clearance] Clear distance all round and between plants [m]
 * @param [units] Plants side by side
 * @returns Floor needed [m²]
 */
export function siteArea(length: any[][], width: any[][], clearance?: any[][], units?: any[][]): any[][] {
  return eachCell(args, [length, width, clearance, units], (given) =>
    areaOf(given.length, given.width, given.clearance, given.units),
  );
}

export const about: About = {
  gives: "area",
  rule: "(length + 2 × clearance) × (units × width + (units + 1) × clearance)",
  range: "Length and width above 0, at least one unit. Walkways, vessels and cylinders come on top.",
  source: `Plain geometry; the clearance of ${inWords(defaults.clearance)} is an own planning default above the usual 1.8 m (6 ft)`,
  examples: [
    {
      formula: "=OXYGEN.SITE_AREA(2,1)",
      result: (2 + 2 * defaults.clearance.value) * (1 + 2 * defaults.clearance.value),
      source: "(2 + 2 × clearance) × (1 + 2 × clearance)",
    },
    {
      formula: "=OXYGEN.SITE_AREA(2.4,1.1,2.5,3)",
      result: 98.42,
      note: "Three in a row with a gap between each two",
      source: "(2.4 + 5) × (3.3 + 10)",
    },
  ],
  seeAlso: ["SITE_CHECK", "ROOM_OXYGEN"],
};
