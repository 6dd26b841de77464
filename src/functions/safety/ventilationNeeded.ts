import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, litresPerMinute, number } from "../../arguments/quantity";
import { oxygenInAir, ventilationNeeded as airOf } from "../../models/roomOxygen";

export const args = cellArguments({
  release: litresPerMinute,
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
  mixing: number.atLeast(1).default(defaults.mixing),
});

/**
 * Fresh air that keeps a steady release of pure oxygen under the limit, with a factor for poor mixing: cold vapour pools low.
 *
 * @customfunction VENTILATION_NEEDED
 * @param release Pure oxygen released into the room [L/min]
 * @param [limit] Oxygen not to be passed, as a fraction
 * @param [mixing] Dilution factor for poor mixing: 1 only for perfect mixing, 3 to 10 in real rooms
 * @returns Fresh air [m³/h]
 */
export function ventilationNeeded(release: any[][], limit?: any[][], mixing?: any[][]): any[][] {
  return eachCell(args, [release, limit, mixing], (given) => airOf(given.release, given.limit, given.mixing));
}

export const about: About = {
  rule: "mixing × release × 60 / 1000 × (1 − limit) / (limit − 0.21)",
  range:
    "Limit above 0.21 and under 1, mixing 1 or more. Well mixed (mixing 1) is optimistic: cold vapour pools low, so inlets and outlets near the floor count most. A steady release only, not a spill.",
  source:
    "Dilution balance and mixing factor of industrial ventilation texts (from memory); limit of 23.5 %: OSHA 29 CFR 1910.146",
  examples: [
    { formula: "=OXYGEN.VENTILATION_NEEDED(10)", result: 55.08, source: "3 × 0.6 m³/h × 0.765/0.025" },
    {
      formula: "=OXYGEN.VENTILATION_NEEDED(1,0.235,1)",
      result: 1.836,
      source: "30.6 L/min of fresh air for each L/min released, well mixed",
    },
  ],
  seeAlso: ["ROOM_OXYGEN", "RELEASE_LIMIT", "SITE_CHECK"],
  caution:
    "A first figure for whoever designs the ventilation. Local codes and the maker's manual may ask for more, for low openings and for an oxygen alarm.",
};
