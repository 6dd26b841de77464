import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { days as daysArgument } from "../../arguments/quantity";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
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
  gives: "liquid",
  rule: "level − days × (daily draw + capacity / empty days − daily made), from 0 to the capacity",
  range: `The standing loss is taken as constant, at all levels. Never below 0, never above the capacity; a level above the capacity is #VALUE!. Draw is what leaves the vessel: GROSS_DRAW of what is filled. ${emptyDaysOfOthers} ${blankAsZero}`,
  source: `Plain arithmetic; empty days: ${defaults.empty_days.source}`,
  examples: [
    { formula: "=OXYGEN.LEVEL_LEFT(3,75,90,6,10)", result: 30, source: "75 − 3 × (6 + 90 / 10)" },
    {
      formula: "=OXYGEN.LEVEL_LEFT({1;2;60},110,110)",
      result: [[110 - 110 / defaults.empty_days.value], [110 - 220 / defaults.empty_days.value], [0]],
      note: "Left to stand, in the end empty",
      source: `110 less 110 / ${defaults.empty_days.value} a day`,
    },
    {
      formula: "=OXYGEN.LEVEL_LEFT({1,4},75,90,6,10,20)",
      result: [[80, 90]],
      note: "A plant makes 20 L/day; full after three days",
      source: "75 + (20 − 6 − 9), and no more than 90",
    },
  ],
  seeAlso: ["DAYS_UNTIL_EMPTY", "EMPTY_ON", "LEVEL_AFTER"],
  caution: "A planning figure: gauge or weigh the vessel.",
};
