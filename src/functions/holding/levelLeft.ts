import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { days as daysArgument } from "../../arguments/quantity";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { levelLeft as levelAfterDays } from "../../models/holding";

export const args = cellArguments({ days: daysArgument, ...holdingArguments });

/**
 * Liquid left in a vessel after some days of draw and boil-off.
 *
 * @customfunction LEVEL_LEFT
 * @param days Days that pass [days]
 * @param level Liquid in the vessel at the start [L]
 * @param capacity Liquid the vessel holds when full [L]
 * @param [daily_draw] Liquid drawn a day [L/day]
 * @param [empty_days] Days in which a full vessel is emptied by its standing loss alone [days]
 * @param [daily_made] Liquid made or received a day, before the standing loss [L/day]
 * @returns Liquid left, 0 to the capacity [L]
 */
export function levelLeft(
  days: any[][],
  level: any[][],
  capacity: any[][],
  daily_draw?: any[][],
  empty_days?: any[][],
  daily_made?: any[][],
): any[][] {
  return eachCell(
    args,
    [days, level, capacity, daily_draw, empty_days, daily_made],
    (given) => levelAboveCapacity(given.level, given.capacity) ?? levelAfterDays(given.days, readHolding(given)),
  );
}

export const about: About = {
  rule: "level − days × (daily draw + capacity / empty days − daily made), from 0 to the capacity",
  range:
    "The standing loss is taken as constant, at all levels. Never below 0, never above the capacity; a level above the capacity is #VALUE!.",
  source: "Plain arithmetic; an unpowered full plant vessel is empty in 8 to 10 days: common practice, no source",
  examples: [
    { formula: "=OXYGEN.LEVEL_LEFT(3,40,40,0,10)", result: 28, note: "4 L/day lost for 3 days" },
    {
      formula: "=OXYGEN.LEVEL_LEFT({1;2;9},40,40)",
      result: [[35], [30], [0]],
      note: "Left to stand; empty after 8 days",
    },
    { formula: "=OXYGEN.LEVEL_LEFT(2,30,40,5,8,24)", result: 40, note: "Gains 14 L/day and stops at its capacity" },
  ],
  seeAlso: ["DAYS_UNTIL_EMPTY", "EMPTY_ON", "LEVEL_AFTER"],
  caution: "A planning figure: gauge or weigh the vessel.",
};
