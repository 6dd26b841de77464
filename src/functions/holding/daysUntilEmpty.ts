import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
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
  rule: "level / (daily draw + capacity / empty days − daily made)",
  range:
    'The standing loss counts always and at every level, also while a plant runs: the cautious side. A level above the capacity is #VALUE!; a vessel that gains or holds is #N/A "does not run empty".',
  source: "Plain arithmetic; an unpowered full plant vessel is empty in 8 to 10 days: common practice, no source",
  examples: [
    { formula: "=OXYGEN.DAYS_UNTIL_EMPTY(40,40)", result: 8, note: "A full 40 L vessel left to stand" },
    { formula: "=OXYGEN.DAYS_UNTIL_EMPTY(40,40,6,10)", result: 4, note: "6 L/day drawn on top of 4 L/day lost" },
    { formula: "=OXYGEN.DAYS_UNTIL_EMPTY(30,40,20,8,10)", result: 2, note: "10 L/day made: 20 + 5 − 10 = 15 L/day go" },
    { formula: "=OXYGEN.DAYS_UNTIL_EMPTY(30,40,5,8,24)", result: { error: "#N/A", words: "does not run empty" } },
  ],
  seeAlso: ["EMPTY_ON", "LEVEL_LEFT", "DAILY_LOSS", "LOSS_FROM_READINGS"],
  caution:
    "A planning figure: gauge or weigh the vessel. Boil-off enriches the air around it; keep the place ventilated and free of ignition sources, as the maker's manual and local code ask.",
};
