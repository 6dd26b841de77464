import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, number } from "../../arguments/quantity";
import { invalid, noAnswer } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { airingMinutes as minutesOf, oxygenInAir } from "../../models/roomOxygen";

export const args = cellArguments({
  room_oxygen: fraction,
  air_changes: number.atLeast(0),
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
  mixing: number.atLeast(1).default(defaults.mixing),
});

/**
 * Minutes to air an enriched room until it is down to the limit, once the leak is shut, with a factor for poor mixing.
 *
 * @customfunction AIRING_MINUTES
 * @param room_oxygen Oxygen in the room now, as a fraction
 * @param air_changes Changes of fresh air an hour while it is aired
 * @param [limit] Oxygen to come down to, as a fraction
 * @param [mixing] Dilution factor for poor mixing: 1 only for perfect mixing, up to 10 in real rooms
 * @returns Minutes to the limit [min]
 */
export function airingMinutes(room_oxygen: any[][], air_changes: any[][], limit?: any[][], mixing?: any[][]): any[][] {
  return eachCell(args, [room_oxygen, air_changes, limit, mixing], (given) => {
    if (exceeds(oxygenInAir, given.room_oxygen)) {
      return invalid(
        `room_oxygen of ${formatNumber(given.room_oxygen)} is below the 0.21 of air: the room is short of oxygen, which is another danger; stay out, air it, and enter only as local rules say. A reading in percent has its sign: 24%`,
      );
    }
    return (
      minutesOf(given.room_oxygen, given.air_changes, given.limit, given.mixing) ??
      noAnswer("stays enriched: no fresh air comes in; open it up from outside, and count the air changes then")
    );
  });
}

const { limit, mixing } = { limit: defaults.limit.value, mixing: defaults.mixing.value };

export const about: About = {
  gives: "minutes",
  rule: "mixing × 60 / air changes × ln((room oxygen − 0.21) / (limit − 0.21))",
  range:
    "Room oxygen 0.21 to 1, less is #VALUE!, since the room is then short of oxygen; limit above 0.21 and under 1; mixing 1 or more. 0 where the room is at the limit already; without fresh air #N/A. Nothing more is released, and no liquid boils on the floor. Fresh air from outdoors, not room air blown round. The gas meter of one spot is not the room: cold vapour stays in pits and corners.",
  source: `Room purge equation of industrial hygiene, V/Q × ln(C₁/C₂), with Q/K for poor mixing: teaching pages on industrial ventilation (read second hand); limit: ${defaults.limit.source}`,
  examples: [
    {
      formula: "=OXYGEN.AIRING_MINUTES(0.4,6)",
      result: mixing * 10 * Math.log(0.19 / (limit - 0.21)),
      note: "A room at 40 %, six changes of air an hour",
      source: `${mixing} × 60 / 6 × ln(0.19 / (${limit} − 0.21))`,
    },
    {
      formula: "=OXYGEN.AIRING_MINUTES(0.3,4,0.25,{1,5})",
      result: [[15 * Math.log(2.25), 75 * Math.log(2.25)]],
      note: "Perfectly mixed, and poorly",
      source: "60 / 4 × ln(0.09 / 0.04) = 12.16, and five times that",
    },
    {
      formula: "=OXYGEN.AIRING_MINUTES(0.22,0)",
      result: 0,
      note: "Not above the limit",
      source: "By the rule: nothing to bring down",
    },
    {
      formula: "=OXYGEN.AIRING_MINUTES(0.4,0)",
      result: { error: "#N/A", words: "no fresh air comes in" },
      source: "By the rule: it takes for ever",
    },
  ],
  seeAlso: ["ROOM_OXYGEN", "SPILL_OXYGEN", "MINUTES_TO_LIMIT", "CAUTIONS"],
  caution:
    "A time to wait outside, not a clearance: an oxygen meter decides, at the floor and in the corners too, by someone trained. No switches, no flames, no vehicles meanwhile; soaked clothes and bedding stay dangerous and are aired in the open. Local codes lead.",
};
