import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { minutesOrLongRun } from "../../arguments/longRun";
import { cubicMetres, fraction, litresPerMinute, number } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom, blankAsZero } from "../../arguments/whereCautionEnds";
import { growth, oxygenInAir, roomOxygenAfter, roomOxygenLongRun } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  release: litresPerMinute,
  air_changes: number.atLeast(0).default(defaults.air_changes),
  minutes: minutesOrLongRun,
  source_purity: fraction.aboveTo(oxygenInAir, 1).default(defaults.released_purity),
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Mean oxygen in a room with a steady release, well mixed, after some minutes or in the long run. Well mixed is optimistic:
 * cold vapour pools low, and near the floor or the leak the air is far richer.
 *
 * @customfunction ROOM_OXYGEN
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param release Gas released into the room [L/min]
 * @param [air_changes] Changes of fresh air an hour
 * @param [minutes] Minutes since the release began, or the words long run; the long run if left out [min]
 * @param [source_purity] Oxygen in the gas released, as a fraction
 * @param [altitude] Altitude of the room [m]
 * @returns Oxygen in the room's air, a fraction
 */
export function roomOxygen(
  room: any[][],
  release: any[][],
  air_changes?: any[][],
  minutes?: any[][],
  source_purity?: any[][],
  altitude?: any[][],
): any[][] {
  return eachCell(args, [room, release, air_changes, minutes, source_purity, altitude], (given) => {
    const release = given.release * growth(given.altitude);
    return given.minutes === undefined
      ? roomOxygenLongRun(given.room, release, given.air_changes, given.source_purity)
      : roomOxygenAfter(given.room, release, given.air_changes, given.minutes, given.source_purity);
  });
}

const [air, gas, purity] = [400, 12, defaults.released_purity.value];
const longRun = (air * 0.21 + gas * purity) / (air + gas);

export const about: About = {
  gives: "fraction",
  rule: "long run C = (air × 0.21 + gas × purity) / (air + gas); after t minutes 0.21 + (C − 0.21) × (1 − exp(−(air + gas) × t / room)); air = air changes × room / 60, gas = release × 101.325 kPa / air pressure",
  range: `A mean, well mixed, which is optimistic: cold vapour is heavy and pools low, so the leak, the floor, pits and corners are far richer; RELEASE_LIMIT and VENTILATION_NEEDED allow for that with their mixing. Room above 0; purity above 0.21 and at most 1. Starts from fresh air; air changes bring fresh air, not room air blown round. ${altitudeOfRoom} ${blankAsZero}`,
  source: "Dilution balance of industrial-hygiene texts (from memory); air pressure: ISO 2533:1975",
  examples: [
    {
      formula: "=OXYGEN.ROOM_OXYGEN(48,12,0.5)",
      result: longRun,
      note: "In the long run, half a change of air an hour",
      source: "400 L/min of air and 12 L/min released: (0.21 × 400 + 12) / 412 = 0.2330",
    },
    {
      formula: "=OXYGEN.ROOM_OXYGEN(48,12,0.5,{0,60})",
      result: [[0.21, 0.21 + (longRun - 0.21) * (1 - Math.exp(-0.515))]],
      source: "0.21 + 0.0230 × (1 − exp(−412 × 60 / 48 000)) = 0.2193",
    },
    {
      formula: '=OXYGEN.ROOM_OXYGEN(48,12,0.5,"long run",0.93,3000)',
      result: 0.23992,
      tolerance: 0.00002,
      note: "Gas of 93 %, high up",
      source:
        "ISO 2533:1975: 70.109 kPa at 3000 m, so 12 L/min are 17.343: (0.21 × 400 + 0.93 × 17.343) / 417.343 = 0.23992",
    },
    {
      formula: "=OXYGEN.ROOM_OXYGEN(48,12)",
      result: purity,
      note: "A closed room fills in the end",
      source: "By the rule: without air C is the purity of what is released",
    },
  ],
  seeAlso: ["MINUTES_TO_LIMIT", "RELEASE_LIMIT", "VENTILATION_NEEDED", "AIRING_MINUTES", "SPILL_OXYGEN"],
  caution:
    "Not a clearance to enter or work: enriched air turns sparks, hair and cloth into fire. Measure with an oxygen meter, low down too, and follow local codes and the maker's manual.",
};
