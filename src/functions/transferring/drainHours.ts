import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres, drainedPerHour } from "../../arguments/quantity";

export const args = cellArguments({
  level: litres,
  drain_rate: drainedPerHour.positive(),
});

/**
 * Hours it takes to drain a vessel of its liquid.
 *
 * @customfunction DRAIN_HOURS
 * @param level Liquid in the vessel [L]
 * @param drain_rate Liquid that drains an hour [L/h]
 * @returns Hours to empty [h]
 */
export function drainHours(level: any[][], drain_rate: any[][]): any[][] {
  return eachCell(args, [level, drain_rate], (given) => given.level / given.drain_rate);
}

export const about: About = {
  gives: "hours",
  rule: "level / drain rate",
  range: "Drain rate above 0 and even to the end. Warming up afterwards takes days: see DRAIN_BY.",
  source: "Plain arithmetic",
  examples: [
    { formula: "=OXYGEN.DRAIN_HOURS(54,12)", result: 4.5, source: "54 / 12" },
    { formula: '=OXYGEN.DRAIN_HOURS({30;60},"0.5 L/min")', result: [[1], [2]], source: "0.5 L/min are 30 L/h" },
  ],
  seeAlso: ["DRAIN_BY", "DRAIN_CHECK", "SPILL_OXYGEN"],
  caution:
    "Drain outdoors into what the maker's manual names, over clean concrete or bare ground, never over asphalt, tar, oil or wood, with nobody downwind and nothing that can spark; local codes and licensed practice rule.",
};
