import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fraction, kilowatts } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { roundUpThings } from "../../models/wholeNumbers";

export const args = cellArguments({
  load: kilowatts,
  unit_power: kilowatts.positive(),
  most_load: fraction.aboveTo(0, 1).default(defaults.most_load),
  spare: count.default(defaults.spare),
});

/**
 * Generators to bring for a load, none of them loaded above a share of its power, with spares.
 *
 * @customfunction GENERATORS_NEEDED
 * @param load Load to carry [kW]
 * @param unit_power Power of one generator at the site [kW]
 * @param [most_load] Largest share of its power that one may carry
 * @param [spare] Generators more than needed
 * @returns Generators, rounded up, spares included
 */
export function generatorsNeeded(load: any[][], unit_power: any[][], most_load?: any[][], spare?: any[][]): any[][] {
  return eachCell(
    args,
    [load, unit_power, most_load, spare],
    (given) => roundUpThings(given.load / (given.unit_power * given.most_load)) + given.spare,
  );
}

export const about: About = {
  gives: "count",
  rule: "load / (unit power × most load), rounded up, + spare",
  range: `Unit power above 0, most load above 0 to 1. The load is taken as shared evenly; a motor that starts may need more (START_KVA, MOTOR_DIP). ${blankAsZero}`,
  source: `Plain arithmetic; most load: ${defaults.most_load.source}; spare: ${defaults.spare.source}`,
  examples: [
    {
      formula: "=OXYGEN.GENERATORS_NEEDED(30,20)",
      result: Math.ceil(30 / (20 * defaults.most_load.value)) + defaults.spare.value,
      source: `30 / (20 × ${defaults.most_load.value}), rounded up, + ${defaults.spare.value}`,
    },
    {
      formula: "=OXYGEN.GENERATORS_NEEDED(24,10,0.8,0)",
      result: 3,
      note: "Exactly three at four fifths of their power",
      source: "24 / 8",
    },
    {
      formula: "=OXYGEN.GENERATORS_NEEDED(24,10,0.6,2)",
      result: 6,
      note: "Loaded to six tenths, and two spare",
      source: "24 / 6 + 2",
    },
  ],
  seeAlso: ["GENERATOR_DERATED", "POWER_LOAD", "START_KVA", "MOTOR_DIP", "FUEL_RATE"],
  caution:
    "Generators must not be joined to one supply, or to a mains supply, without equipment made for it: that can kill line workers and wreck the sets. A licensed electrician connects them, and the local electrical code decides.",
};
