import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, hours as time, minutes } from "../../arguments/quantity";
import { cylindersFilled } from "../../models/cylinderUse";

export const args = cellArguments({
  hours: time.between(0, 24),
  fill_minutes: minutes.positive(),
  change_minutes: minutes.default(defaults.change_minutes),
  boosters: count.default(defaults.boosters),
});

/**
 * Whole cylinders that boosters fill in the filling hours of a day, each with its change.
 *
 * @customfunction CYLINDERS_PER_DAY
 * @param hours Hours of filling in the day [h]
 * @param fill_minutes Minutes to fill one cylinder [min]
 * @param [change_minutes] Minutes to change from one cylinder to the next [min]
 * @param [boosters] Boosters filling at the same time
 * @returns Cylinders a day
 */
export function cylindersPerDay(
  hours: any[][],
  fill_minutes: any[][],
  change_minutes?: any[][],
  boosters?: any[][],
): any[][] {
  return eachCell(args, [hours, fill_minutes, change_minutes, boosters], (given) =>
    cylindersFilled(given.hours, given.fill_minutes, given.change_minutes, given.boosters),
  );
}

export const about: About = {
  gives: "count",
  rule: "hours × 60 / (fill minutes + change minutes), cut down to whole cylinders, × boosters",
  range:
    "0 to 24 hours, fill minutes above 0. Each booster counts its own whole cylinders. Whether the plant supplies that many boosters at once is for CYLINDER_FILL_MINUTES.",
  source: "Plain arithmetic; 5 minutes for a change are an own planning default",
  examples: [
    {
      formula: "=OXYGEN.CYLINDERS_PER_DAY(8,60)",
      result: Math.floor(480 / (60 + defaults.change_minutes.value)),
      source: "480/(60 + change minutes), cut down",
    },
    { formula: "=OXYGEN.CYLINDERS_PER_DAY(10,46,4)", result: 12, source: "600/50" },
    {
      formula: "=OXYGEN.CYLINDERS_PER_DAY(8,60,5,2)",
      result: 14,
      note: "Two boosters of 7, not 14.8",
      source: "2 × (480/65, cut down)",
    },
  ],
  seeAlso: ["CYLINDER_FILL_MINUTES", "CYLINDERS_NEEDED"],
  caution:
    "No haste at the manifold: checks of cylinder, valve and date take their time, as the maker's manual and local rules ask.",
};
