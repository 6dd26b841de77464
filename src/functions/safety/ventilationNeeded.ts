import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, litresPerMinute, number } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom, blankAsZero } from "../../arguments/whereCautionEnds";
import { growth, oxygenInAir, ventilationNeeded as airOf } from "../../models/roomOxygen";

export const args = cellArguments({
  release: litresPerMinute,
  limit: fraction.inside(oxygenInAir, 1).default(defaults.limit),
  mixing: number.atLeast(1).default(defaults.mixing),
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Fresh air that keeps a steady release of pure oxygen under the limit, with a factor for poor mixing: cold vapour pools low.
 *
 * @customfunction VENTILATION_NEEDED
 * @param release Pure oxygen released into the room [L/min]
 * @param [limit] Oxygen not to be passed, as a fraction
 * @param [mixing] Dilution factor for poor mixing: 1 only for perfect mixing, up to 10 in real rooms
 * @param [altitude] Altitude of the room [m]
 * @returns Fresh air [m³/h]
 */
export function ventilationNeeded(release: any[][], limit?: any[][], mixing?: any[][], altitude?: any[][]): any[][] {
  return eachCell(args, [release, limit, mixing, altitude], (given) =>
    airOf(given.release * growth(given.altitude), given.limit, given.mixing),
  );
}

const { limit, mixing } = { limit: defaults.limit.value, mixing: defaults.mixing.value };

export const about: About = {
  gives: "air flow",
  rule: "mixing × release × 60 / 1000 × 101.325 kPa / air pressure × (1 − limit) / (limit − 0.21)",
  range: `Limit above 0.21 and under 1, mixing 1 or more. Well mixed (mixing 1) is optimistic: cold vapour pools low, so inlets and outlets near the floor count most. A steady release only, not a spill. Volume at the altitude given. ${altitudeOfRoom} ${blankAsZero}`,
  source: `Dilution balance and mixing factor of industrial ventilation texts (from memory); limit: ${defaults.limit.source}; air pressure: ISO 2533:1975`,
  examples: [
    {
      formula: "=OXYGEN.VENTILATION_NEEDED(12)",
      result: (mixing * 0.72 * (1 - limit)) / (limit - 0.21),
      source: `${mixing} × 0.72 m³/h × (1 − ${limit}) / (${limit} − 0.21)`,
    },
    {
      formula: "=OXYGEN.VENTILATION_NEEDED(12,0.25,1)",
      result: 13.5,
      note: "Well mixed, up to 25 %",
      source: "0.72 m³/h × 0.75 / 0.04",
    },
    {
      formula: "=OXYGEN.VENTILATION_NEEDED(12,0.25,1,3000)",
      result: 19.511,
      tolerance: 0.001,
      note: "At 3000 m",
      source: "13.5 × 101.325 / 70.109 (ISO 2533:1975)",
    },
  ],
  seeAlso: ["RELEASE_LIMIT", "ROOM_OXYGEN", "PLANT_ROOM_OXYGEN", "SITE_CHECK"],
  caution:
    "A first figure for whoever designs the ventilation. Local codes and the maker's manual may ask for more, for low openings and for an oxygen alarm.",
};
