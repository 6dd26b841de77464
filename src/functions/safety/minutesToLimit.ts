import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, fraction, litresPerMinute, number } from "../../arguments/quantity";
import { noAnswer } from "../../cells/cellValues";
import { minutesToLimit as minutesOf, oxygenInAir } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  release: litresPerMinute,
  air_changes: number.atLeast(0).default(defaults.air_changes),
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
});

/**
 * Minutes until a steady release of pure oxygen brings a well-mixed room from fresh air to the limit. Well mixed is
 * optimistic: cold vapour pools low, where the limit is reached much sooner.
 *
 * @customfunction MINUTES_TO_LIMIT
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param release Pure oxygen released into the room [L/min]
 * @param [air_changes] Changes of fresh air an hour
 * @param [limit] Oxygen not to be passed, as a fraction
 * @returns Minutes to the limit [min]
 */
export function minutesToLimit(room: any[][], release: any[][], air_changes?: any[][], limit?: any[][]): any[][] {
  return eachCell(
    args,
    [room, release, air_changes, limit],
    (given) =>
      minutesOf(given.room, given.release, given.air_changes, given.limit) ??
      noAnswer("stays under the limit when well mixed; near the floor and the leak it may not"),
  );
}

export const about: About = {
  rule: "−room / (air + release) × ln(1 − (limit − 0.21) / (C − 0.21)), C the long run of ROOM_OXYGEN",
  range:
    "Room above 0, limit above 0.21 and under 1; a room that never gets there is #N/A. Well mixed, which is optimistic: cold vapour pools low. Starts from fresh air.",
  source: "Dilution balance of industrial-hygiene texts (from memory); limit of 23.5 %: OSHA 29 CFR 1910.146",
  examples: [
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(30,15)",
      result: 64.314,
      tolerance: 0.001,
      note: "Closed room",
      source: "30 000/15 × ln(0.79/0.765) = 2000 × 0.032157",
    },
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(30,15,2)",
      result: { error: "#N/A", words: "stays under the limit" },
      note: "Fresh air keeps up",
      source: "Long run (0.21 × 1000 + 15)/1015 = 0.2217",
    },
  ],
  seeAlso: ["ROOM_OXYGEN", "RELEASE_LIMIT", "VENTILATION_NEEDED"],
  caution:
    "Not time to spare: leave at the first sign of a leak, cut ignition sources if that is safe, air the room, and go back only with an oxygen meter and as local rules say.",
};
