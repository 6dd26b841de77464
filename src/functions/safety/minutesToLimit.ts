import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, fraction, litresPerMinute, number } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom, blankAsZero } from "../../arguments/whereCautionEnds";
import { noAnswer } from "../../cells/cellValues";
import { effectiveAirChanges, growth, minutesToLimit as minutesOf, oxygenInAir } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  release: litresPerMinute,
  air_changes: number.atLeast(0).default(defaults.air_changes),
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
  mixing: number.atLeast(1).default(defaults.mixing),
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Minutes until a steady release of pure oxygen brings a room from fresh air to the limit, with a factor for poor mixing of
 * the fresh air. Near the leak and the floor it comes sooner, since cold vapour pools low.
 *
 * @customfunction MINUTES_TO_LIMIT
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param release Pure oxygen released into the room [L/min]
 * @param [air_changes] Changes of fresh air an hour
 * @param [limit] Oxygen not to be passed, as a fraction
 * @param [mixing] Dilution factor for poor mixing: 1 only for perfect mixing, up to 10 in real rooms
 * @param [altitude] Altitude of the room [m]
 * @returns Minutes to the limit [min]
 */
export function minutesToLimit(
  room: any[][],
  release: any[][],
  air_changes?: any[][],
  limit?: any[][],
  mixing?: any[][],
  altitude?: any[][],
): any[][] {
  return eachCell(
    args,
    [room, release, air_changes, limit, mixing, altitude],
    (given) =>
      minutesOf(
        given.room,
        given.release * growth(given.altitude),
        effectiveAirChanges(given.air_changes, given.mixing),
        given.limit,
      ) ??
      noAnswer(
        "the room as a whole stays under the limit; near the leak and the floor it is passed all the same: no all-clear, measure there",
      ),
  );
}

const { limit, mixing } = { limit: defaults.limit.value, mixing: defaults.mixing.value };
/** The rule by hand for 36 m³, 30 L/min and 1200 L/min of air. */
const aired = (factor: number): number => {
  const air = 1200 / factor;
  const longRun = (0.21 * air + 30) / (air + 30);
  return (-36000 / (air + 30)) * Math.log(1 - (limit - 0.21) / (longRun - 0.21));
};

export const about: About = {
  gives: "minutes",
  rule: "−room / (air + gas) × ln(1 − (limit − 0.21) / (C − 0.21)), C = (air × 0.21 + gas) / (air + gas), air = air changes × room / 60 / mixing, gas = release × 101.325 kPa / air pressure",
  range: `Room above 0, limit above 0.21 and under 1, mixing 1 or more; a mean that never gets past the limit is #N/A, which is no all-clear: don't turn it into "safe". Mixing does nothing in a sealed room, yet near the leak the limit comes sooner there too. Starts from fresh air. ${altitudeOfRoom} ${blankAsZero}`,
  source: `Dilution balance and mixing factor of industrial ventilation texts (from memory); limit: ${defaults.limit.source}; air pressure: ISO 2533:1975`,
  examples: [
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(36,9)",
      result: 4000 * Math.log(0.79 / (1 - limit)),
      note: "Closed room",
      source: `36 000 / 9 × ln(0.79 / (1 − ${limit}))`,
    },
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(36,30,2)",
      result: aired(mixing),
      note: "Two changes of air an hour that reach the leak only in part",
      source: `By the rule with 1200 / ${mixing} L/min of air`,
    },
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(36,30,2,0.25,2,3000)",
      result: 77.9,
      tolerance: 0.1,
      source:
        "By hand: 43.36 L/min (ISO 2533:1975) into 600 L/min of air, C = 0.26324, 36 000 / 643.4 × −ln(1 − 0.04 / 0.05324) = 77.9",
    },
    {
      formula: "=OXYGEN.MINUTES_TO_LIMIT(36,30,2,0.235,1)",
      result: { error: "#N/A", words: "stays under the limit" },
      note: "Perfectly mixed, fresh air keeps up",
      source: "Long run (0.21 × 1200 + 30) / 1230 = 0.2293",
    },
  ],
  seeAlso: ["ROOM_OXYGEN", "RELEASE_LIMIT", "VENTILATION_NEEDED", "AIRING_MINUTES"],
  caution:
    "Not time to spare: leave at the first sign of a leak, cut ignition sources if that is safe, air the room, and go back only with an oxygen meter and as local rules say.",
};
