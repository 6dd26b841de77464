import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, fraction, number } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom } from "../../arguments/whereCautionEnds";
import { effectiveAirChanges, growth, oxygenInAir, releaseLimit as limitOf } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  air_changes: number.atLeast(0),
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
  mixing: number.atLeast(1).default(defaults.mixing),
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Steady release of pure oxygen that brings a room to the limit in the long run, with a factor for poor mixing: cold vapour
 * pools low. VENTILATION_NEEDED of it is the fresh air the room has.
 *
 * @customfunction RELEASE_LIMIT
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param air_changes Changes of fresh air an hour
 * @param [limit] Oxygen not to be passed, as a fraction
 * @param [mixing] Dilution factor for poor mixing: 1 only for perfect mixing, up to 10 in real rooms
 * @param [altitude] Altitude of the room [m]
 * @returns Release that reaches the limit [L/min]
 */
export function releaseLimit(
  room: any[][],
  air_changes: any[][],
  limit?: any[][],
  mixing?: any[][],
  altitude?: any[][],
): any[][] {
  return eachCell(
    args,
    [room, air_changes, limit, mixing, altitude],
    (given) =>
      limitOf(given.room, effectiveAirChanges(given.air_changes, given.mixing), given.limit) / growth(given.altitude),
  );
}

const { limit, mixing } = { limit: defaults.limit.value, mixing: defaults.mixing.value };

export const about: About = {
  gives: "gas flow",
  rule: "air changes × room × 1000 / 60 / mixing × (limit − 0.21) / (1 − limit) × air pressure / 101.325 kPa",
  range: `Room above 0, limit above 0.21 and under 1, mixing 1 or more. Without fresh air any release gets there: 0. Mixing 1 is a well-mixed room, which is optimistic: cold vapour pools low. Of gas at 21.1 °C and 101.325 kPa. ${altitudeOfRoom}`,
  source: `Dilution balance and mixing factor of industrial ventilation texts (from memory); limit: ${defaults.limit.source}; air pressure: ISO 2533:1975`,
  examples: [
    {
      formula: "=OXYGEN.RELEASE_LIMIT(54,2)",
      result: (1800 / mixing) * ((limit - 0.21) / (1 - limit)),
      source: `1800 L/min of fresh air / ${mixing} × (${limit} − 0.21) / (1 − ${limit})`,
    },
    {
      formula: "=OXYGEN.RELEASE_LIMIT(54,2,0.25,1)",
      result: 96,
      note: "Well mixed, up to 25 %",
      source: "1800 × 0.04 / 0.75",
    },
    {
      formula: "=OXYGEN.RELEASE_LIMIT(54,2,0.25,1,3000)",
      result: 66.424,
      tolerance: 0.005,
      note: "At 3000 m the same gas takes more room",
      source: "96 × 70.109 / 101.325 (ISO 2533:1975)",
    },
    {
      formula: "=OXYGEN.RELEASE_LIMIT(54,0)",
      result: 0,
      note: "A closed room stands no release for ever",
      source: "By the rule: no air, no release",
    },
  ],
  seeAlso: ["VENTILATION_NEEDED", "ROOM_OXYGEN", "MINUTES_TO_LIMIT"],
  caution:
    "A ceiling of arithmetic, not an allowance: find and stop leaks, measure low down, and follow local codes and the maker's manual.",
};
