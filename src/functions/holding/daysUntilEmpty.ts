import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { noAnswer } from "../../cells/cellValues";
import { daysUntilEmpty as daysLeft } from "../../models/holding";

export const args = cellArguments(holdingArguments);

/**
 * Days until a vessel is empty from what is drawn and what boils off.
 *
 * @customfunction DAYS_UNTIL_EMPTY
 * @param level Liquid in the vessel now [L]
 * @param capacity Liquid the vessel holds when full [L]
 * @param [daily_draw] Liquid drawn a day [L/day]
 * @param [empty_days] Days in which a full vessel is emptied by its standing loss alone [days]
 * @param [daily_made] Liquid made or received a day, before the standing loss [L/day]
 * @returns Days until empty [days]
 */
export function daysUntilEmpty(
  level: any[][],
  capacity: any[][],
  daily_draw?: any[][],
  empty_days?: any[][],
  daily_made?: any[][],
): any[][] {
  return eachCell(
    args,
    [level, capacity, daily_draw, empty_days, daily_made],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      daysLeft(readHolding(given)) ??
      noAnswer("does not run empty: what is made covers the draw and the standing loss"),
  );
}

export const about: About = {
  gives: "days",
  rule: "level / (daily draw + capacity / empty days − daily made)",
  range: `The standing loss counts always and at every level, also while a plant runs: the cautious side. A level above the capacity is #VALUE!; a vessel that gains or holds is #N/A "does not run empty". Draw is what leaves the vessel: GROSS_DRAW of what is filled. ${emptyDaysOfOthers} ${blankAsZero}`,
  source: `Plain arithmetic; empty days: ${defaults.empty_days.source}`,
  examples: [
    {
      formula: "=OXYGEN.DAYS_UNTIL_EMPTY(110,110)",
      result: defaults.empty_days.value,
      note: "A full vessel left to stand",
      source: `110 / (110 / ${defaults.empty_days.value})`,
    },
    {
      formula: "=OXYGEN.DAYS_UNTIL_EMPTY(54,90,9,10)",
      result: 3,
      source: "9 L/day drawn on top of 90 / 10 lost: 54 / 18",
    },
    {
      formula: "=OXYGEN.DAYS_UNTIL_EMPTY(54,90,20,10,11)",
      result: 3,
      note: "A plant makes 11 L/day",
      source: "54 / (20 + 90 / 10 − 11)",
    },
    {
      formula: "=OXYGEN.DAYS_UNTIL_EMPTY(54,90,5,10,24)",
      result: { error: "#N/A", words: "does not run empty" },
      source: "24 L/day made cover 5 + 9 L/day",
    },
  ],
  seeAlso: ["EMPTY_ON", "LEVEL_LEFT", "DAILY_LOSS", "LOSS_FROM_READINGS"],
  caution:
    "A planning figure: gauge or weigh the vessel. Boil-off enriches the air around it; keep the place ventilated and free of ignition sources, as the maker's manual and local code ask.",
};
