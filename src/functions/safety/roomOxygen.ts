import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, fraction, litresPerMinute, minutes as time, number } from "../../arguments/quantity";
import { oxygenInAir, roomOxygenAfter, roomOxygenLongRun } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  release: litresPerMinute,
  air_changes: number.atLeast(0).default(defaults.air_changes),
  minutes: time.mayBeOmitted(),
  source_purity: fraction.aboveTo(oxygenInAir, 1).default(defaults.released_purity),
});

/**
 * Mean oxygen in a room with a steady release, well mixed, after some minutes or in the long run. Well mixed is optimistic:
 * cold vapour pools low, and near the floor or the leak the air is far richer.
 *
 * @customfunction ROOM_OXYGEN
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param release Gas released into the room [L/min]
 * @param [air_changes] Changes of fresh air an hour
 * @param [minutes] Minutes since the release began; the long run if left out [min]
 * @param [source_purity] Oxygen in the gas released, as a fraction
 * @returns Oxygen in the room's air, a fraction
 */
export function roomOxygen(
  room: any[][],
  release: any[][],
  air_changes?: any[][],
  minutes?: any[][],
  source_purity?: any[][],
): any[][] {
  return eachCell(args, [room, release, air_changes, minutes, source_purity], (given) =>
    given.minutes === undefined
      ? roomOxygenLongRun(given.room, given.release, given.air_changes, given.source_purity)
      : roomOxygenAfter(given.room, given.release, given.air_changes, given.minutes, given.source_purity),
  );
}

export const about: About = {
  rule: "long run C = (air × 0.21 + release × purity) / (air + release); after t minutes 0.21 + (C − 0.21) × (1 − exp(−(air + release) × t / room)); air = air changes × room / 60",
  range:
    "Well mixed, which is optimistic: cold vapour is heavy and pools low, so the floor, pits and corners are far richer than this mean. Room above 0; purity above 0.21 and at most 1. Starts from fresh air; air changes bring fresh air, not room air blown round.",
  source: "Dilution balance of industrial-hygiene texts (from memory)",
  examples: [
    {
      formula: "=OXYGEN.ROOM_OXYGEN(30,15,0.5)",
      result: 0.2547,
      tolerance: 0.0001,
      note: "In the long run, over the 0.235 at which air counts as enriched",
      source: "(0.21 × 0.25 + 0.015)/0.265",
    },
    {
      formula: "=OXYGEN.ROOM_OXYGEN(30,15,0.5,{0,60})",
      result: [[0.21, 0.2284]],
      tolerance: 0.0001,
      source: "0.21 + 0.04472 × (1 − exp(−0.265 × 60/30))",
    },
    { formula: "=OXYGEN.ROOM_OXYGEN(30,15)", result: 1, note: "A closed room fills in the end" },
  ],
  seeAlso: ["MINUTES_TO_LIMIT", "RELEASE_LIMIT", "VENTILATION_NEEDED", "SPILL_OXYGEN"],
  caution:
    "Not a clearance to enter or work: enriched air turns sparks, hair and cloth into fire. Measure with an oxygen meter, low down too, and follow local codes and the maker's manual.",
};
