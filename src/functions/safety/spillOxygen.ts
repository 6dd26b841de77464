import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, litres } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom, blankAsZero } from "../../arguments/whereCautionEnds";
import { growth, oxygenInAir, spillOxygen as oxygenOf } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  liquid: litres,
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Mean oxygen in a closed room after spilled liquid has become gas and pushed out as much air. Well mixed is optimistic: the
 * cold vapour pools low, and near the floor the air is far richer.
 *
 * @customfunction SPILL_OXYGEN
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param liquid Liquid spilled [L]
 * @param [altitude] Altitude of the room [m]
 * @returns Oxygen in the room's air, a fraction
 */
export function spillOxygen(room: any[][], liquid: any[][], altitude?: any[][]): any[][] {
  return eachCell(args, [room, liquid, altitude], (given) =>
    oxygenOf(given.room, given.liquid, oxygenInAir, growth(given.altitude)),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "min(1, 0.21 + 0.79 × liquid × gas from a litre of liquid × 101.325 kPa / air pressure / room)",
  range: `Room above 0. A mean of the whole room once all is warm: well mixed is optimistic, since cold vapour pools low and near the floor it is far richer, up to pure oxygen. What is pushed out is taken as fresh air (cautious). ${altitudeOfRoom} ${blankAsZero}`,
  source:
    "Displacement balance of industrial-hygiene texts (from memory); expansion ratio: Schmidt & Wagner 1985; air pressure: ISO 2533:1975",
  examples: [
    {
      formula: "=OXYGEN.SPILL_OXYGEN(45,2)",
      result: 0.24021,
      tolerance: 0.00002,
      note: "Two litres on the floor of a small room make it an enriched atmosphere",
      source: "0.21 + 0.79 × 2 × 0.8605 / 45",
    },
    {
      formula: "=OXYGEN.SPILL_OXYGEN(45,2,3000)",
      result: 0.25367,
      tolerance: 0.00003,
      note: "The same spill at 3000 m",
      source: "0.21 + 0.79 × 2 × 0.8605 × 101.325 / 70.109 / 45 (ISO 2533:1975)",
    },
    {
      formula: "=OXYGEN.SPILL_OXYGEN(45,90)",
      result: 1,
      note: "At most pure oxygen",
      source: "By the rule: 1.57 is over 1",
    },
  ],
  seeAlso: ["ROOM_OXYGEN", "AIRING_MINUTES", "GAS_FROM_LIQUID", "CAUTIONS"],
  caution:
    "After a spill keep out and keep everyone away until the fog has gone and a meter says so; clothes soaked in oxygen burn at a spark, so air them in the open. Local codes and the maker's manual lead.",
};
