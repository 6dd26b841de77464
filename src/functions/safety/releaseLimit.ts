import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, fraction, number } from "../../arguments/quantity";
import { oxygenInAir, releaseLimit as limitOf } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  air_changes: number.atLeast(0),
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
});

/**
 * Steady release of pure oxygen that brings a well-mixed room to the limit in the long run. Well mixed is optimistic: cold
 * vapour pools low, where the limit is passed much sooner.
 *
 * @customfunction RELEASE_LIMIT
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param air_changes Changes of fresh air an hour
 * @param [limit] Oxygen not to be passed, as a fraction
 * @returns Release that reaches the limit [L/min]
 */
export function releaseLimit(room: any[][], air_changes: any[][], limit?: any[][]): any[][] {
  return eachCell(args, [room, air_changes, limit], (given) => limitOf(given.room, given.air_changes, given.limit));
}

export const about: About = {
  rule: "air changes × room × 1000 / 60 × (limit − 0.21) / (1 − limit)",
  range:
    "Room above 0, limit above 0.21 and under 1. Without fresh air any release gets there: 0. Well mixed, which is optimistic: cold vapour pools low. Stay far below this; VENTILATION_NEEDED has a factor for poor mixing.",
  source: "Dilution balance of industrial-hygiene texts (from memory); limit of 23.5 %: OSHA 29 CFR 1910.146",
  examples: [
    {
      formula: "=OXYGEN.RELEASE_LIMIT(30,2)",
      result: 1000 * (0.025 / 0.765),
      source: "1000 L/min of fresh air × 0.025/0.765",
    },
    { formula: "=OXYGEN.RELEASE_LIMIT(30,0)", result: 0, note: "A closed room stands no release for ever" },
  ],
  seeAlso: ["ROOM_OXYGEN", "VENTILATION_NEEDED", "MINUTES_TO_LIMIT"],
  caution:
    "A ceiling of arithmetic, not an allowance: find and stop leaks, measure low down, and follow local codes and the maker's manual.",
};
