import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, kilograms } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { roundUpThings } from "../../models/wholeNumbers";

export const args = cellArguments({
  mass: kilograms,
  capacity: kilograms.positive(),
  load_share: fraction.aboveTo(0, 1).default(defaults.load_share),
});

/**
 * Trips of a vehicle, boat or aircraft to move a mass.
 *
 * @customfunction TRIPS_NEEDED
 * @param mass Mass to move [kg]
 * @param capacity Load it may carry on a trip [kg]
 * @param [load_share] Share of that load which is planned with
 * @returns Trips, rounded up
 */
export function tripsNeeded(mass: any[][], capacity: any[][], load_share?: any[][]): any[][] {
  return eachCell(args, [mass, capacity, load_share], (given) =>
    roundUpThings(given.mass / (given.capacity * given.load_share)),
  );
}

export const about: About = {
  gives: "count",
  rule: "mass / (capacity × load share), rounded up",
  range: `Capacity above 0, load share above 0 to 1. By mass alone: units that can't be parted may need more (PALLETS_NEEDED shows how they pack). The default load_share is the whole load: soft roads, heat and altitude leave less. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.TRIPS_NEEDED(2600,1000)",
      result: Math.ceil(2.6 / defaults.load_share.value),
      source: `2600 / (1000 × ${defaults.load_share.value}), rounded up`,
    },
    {
      formula: "=OXYGEN.TRIPS_NEEDED(2400,1000,0.6)",
      result: 4,
      note: "Exactly four at six tenths",
      source: "2400 / 600",
    },
  ],
  seeAlso: ["SHIPPED_MASS", "PALLETS_NEEDED", "TIE_DOWNS_NEEDED"],
  caution:
    "Never above the load plate; on soft roads, ferries and aircraft less. Oxygen is dangerous goods (UN 1073 refrigerated liquid, UN 1072 compressed): the carrier and the competent authority decide what travels together and how much.",
};
