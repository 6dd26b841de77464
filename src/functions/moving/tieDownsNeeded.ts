import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { kilograms, metres } from "../../arguments/quantity";
import { tieDownsByLength, tieDownsByLoad } from "../../models/moving";

export const args = cellArguments({
  mass: kilograms.positive(),
  length: metres.positive(),
  working_load: kilograms.positive(),
});

/**
 * Straps or chains to hold one piece of cargo on a road vehicle, by the rule of the United States.
 *
 * @customfunction TIE_DOWNS_NEEDED
 * @param mass Mass of the piece [kg]
 * @param length Its length along the vehicle [m]
 * @param working_load Working load limit of one strap across the cargo, half of it for one that ends on the cargo [kg]
 * @returns Straps, rounded up
 */
export function tieDownsNeeded(mass: any[][], length: any[][], working_load: any[][]): any[][] {
  return eachCell(args, [mass, length, working_load], (given) =>
    Math.max(tieDownsByLength(given.mass, given.length), tieDownsByLoad(given.mass, given.working_load)),
  );
}

export const about: About = {
  gives: "count",
  rule: "the larger of mass / 2 / working load, rounded up, and the least number by length: 1 up to 5 ft and 1100 lb; else 2 up to 10 ft, and 1 more for each further 10 ft or part",
  range:
    "One piece with nothing in front that blocks it (no headboard assumed). Strap over the cargo, from one side of the vehicle to the other; enter half the limit for a strap that ends on the cargo or returns to the same side. Special rules for listed goods and heavy vehicles are not in it.",
  source:
    "United States road rule 49 CFR 393.106(d) (working loads at least half the mass) and 393.110(b) (least number by length); its feet and pounds are used (1.524 m, 498.95 kg, 3.048 m)",
  examples: [
    { formula: '=OXYGEN.TIE_DOWNS_NEEDED("1100 lb","5 ft",500)', result: 1, source: "49 CFR 393.110(b)(1)" },
    {
      formula: "=OXYGEN.TIE_DOWNS_NEEDED(600,1.2,1000)",
      result: 2,
      note: "Short but heavier than 1100 lb",
      source: "49 CFR 393.110(b)(2)(i)",
    },
    {
      formula: "=OXYGEN.TIE_DOWNS_NEEDED(600,3.65,100)",
      result: 3,
      source: "600 / 2 / 100 = 3; 49 CFR 393.110(b)(3) also 3",
    },
    {
      formula: "=OXYGEN.TIE_DOWNS_NEEDED(3000,2,400)",
      result: 4,
      note: "The mass decides",
      source: "49 CFR 393.106(d): 3000 / 2 / 400 = 3.75",
    },
  ],
  seeAlso: ["SHIPPED_MASS", "PALLETS_NEEDED", "TRIPS_NEEDED"],
  caution:
    "A least number, not a lashing plan: local rules and the carrier decide, and cold vessels and cylinders also need blocking and must stand upright. Filled ones are dangerous goods (UN 1073 refrigerated liquid, UN 1072 compressed). Use no strap without a readable working load or with cuts, knots or burns.",
};
