import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours, minutes } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";

export const args = cellArguments({
  run_minutes: minutes,
  cycle_hours: hours.positive(),
});

/**
 * Share of the time that a plant runs while it holds a full vessel: minutes of running in each cycle.
 *
 * @customfunction STANDBY_SHARE
 * @param run_minutes Minutes it runs in a cycle [min]
 * @param cycle_hours Hours from one start to the next [h]
 * @returns Share of the time running
 */
export function standbyShare(run_minutes: any[][], cycle_hours: any[][]): any[][] {
  return eachCell(args, [run_minutes, cycle_hours], (given) => {
    const runHours = given.run_minutes / 60;
    return exceeds(runHours, given.cycle_hours)
      ? invalid(
          `run_minutes ${formatNumber(given.run_minutes)} min is longer than the cycle of ${formatNumber(given.cycle_hours)} h; cycle_hours runs from one start to the next`,
        )
      : Math.min(1, runHours / given.cycle_hours);
  });
}

export const about: About = {
  gives: "fraction",
  rule: "run minutes / 60 / cycle hours",
  range: "0 to 1; a run longer than its cycle is #VALUE!. From the site's own watch or log.",
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.STANDBY_SHARE(17.5,2.5)",
      result: 7 / 60,
      note: "17.5 minutes every two and a half hours",
      source: "17.5 / 60 / 2.5",
    },
    { formula: "=OXYGEN.STANDBY_SHARE(24,1.6)", result: 0.25, source: "24 / 60 / 1.6" },
  ],
  seeAlso: ["DAILY_ENERGY", "LEVEL_AFTER"],
};
