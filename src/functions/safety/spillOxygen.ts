import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { cubicMetres, litres } from "../../arguments/quantity";
import { spillOxygen as oxygenOf } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  liquid: litres,
});

/**
 * Mean oxygen in a closed room after spilled liquid has become gas and pushed out as much air. Well mixed is optimistic: the
 * cold vapour pools low, and near the floor the air is far richer.
 *
 * @customfunction SPILL_OXYGEN
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param liquid Liquid spilled [L]
 * @returns Oxygen in the room's air, a fraction
 */
export function spillOxygen(room: any[][], liquid: any[][]): any[][] {
  return eachCell(args, [room, liquid], (given) => oxygenOf(given.room, given.liquid));
}

export const about: About = {
  rule: "min(1, 0.21 + 0.79 × liquid × gas from a litre of liquid / room)",
  range:
    "Room above 0. A mean of the whole room once all is warm: well mixed is optimistic, since cold vapour pools low and near the floor it is far richer, up to pure oxygen. What is pushed out is taken as fresh air (cautious).",
  source: "Displacement balance of industrial-hygiene texts (from memory); expansion ratio: Schmidt & Wagner 1985",
  examples: [
    {
      formula: "=OXYGEN.SPILL_OXYGEN(30,1)",
      result: 0.23266,
      tolerance: 0.0001,
      note: "A litre on the floor of a small room nearly makes it an enriched atmosphere",
      source: "0.21 + 0.79 × 0.8605/30",
    },
    { formula: "=OXYGEN.SPILL_OXYGEN(30,50)", result: 1, note: "At most pure oxygen" },
  ],
  seeAlso: ["ROOM_OXYGEN", "GAS_FROM_LIQUID", "CAUTIONS"],
  caution:
    "After a spill keep out and keep everyone away until the fog has gone and a meter says so; clothes soaked in oxygen burn at a spark, so air them in the open. Local codes and the maker's manual lead.",
};
