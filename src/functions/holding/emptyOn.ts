import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { dateResult } from "../../arguments/resultDate";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { noAnswer } from "../../cells/cellValues";
import { daysUntilEmpty } from "../../models/holding";
import { cutDownThings } from "../../models/wholeNumbers";

export const args = cellArguments({ as_of: date, ...holdingArguments });

/**
 * Day on which a vessel is empty from what is drawn and what boils off.
 *
 * @customfunction EMPTY_ON
 * @param as_of Day of the reading [date]
 * @param level Liquid in the vessel on that day [L]
 * @param capacity Liquid the vessel holds when full [L]
 * @param [daily_draw] Liquid drawn a day [L/day]
 * @param [empty_days] Days in which a full vessel is emptied by its standing loss alone [days]
 * @param [daily_made] Liquid made or received a day, before the standing loss [L/day]
 * @returns Day on which it is empty [date]
 */
export function emptyOn(
  as_of: any[][],
  level: any[][],
  capacity: any[][],
  daily_draw?: any[][],
  empty_days?: any[][],
  daily_made?: any[][],
): any[][] {
  return eachCell(args, [as_of, level, capacity, daily_draw, empty_days, daily_made], (given) => {
    const wrong = levelAboveCapacity(given.level, given.capacity);
    if (wrong) return wrong;
    const days = daysUntilEmpty(readHolding(given));
    if (days === undefined) return noAnswer("does not run empty: what is made covers the draw and the standing loss");
    return dateResult(given.as_of + cutDownThings(days), "the day on which it is empty");
  });
}

export const about: About = {
  rule: "as of + whole days of level / (daily draw + capacity / empty days − daily made)",
  range:
    'Part days are cut off, so that the answer is never late; a time of day in as of is cut off too. A level above the capacity is #VALUE!; a vessel that gains or holds is #N/A "does not run empty".',
  source: "Plain arithmetic; an unpowered full plant vessel is empty in 8 to 10 days: common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.EMPTY_ON("2026-03-02",40,40)',
      result: 46091,
      note: "8 days on, 10 March 2026",
      source: "Serial 46083 is 2 March 2026",
    },
    { formula: '=OXYGEN.EMPTY_ON("2026-03-02",30,40,6,10)', result: 46086, note: "30 / (6 + 4) = 3 days" },
    { formula: '=OXYGEN.EMPTY_ON("2026-03-02",39,40,6,10)', result: 46086, note: "3.9 days are cut to 3" },
    { formula: '=OXYGEN.EMPTY_ON("2026-03-02",30,40,5,8,24)', result: { error: "#N/A", words: "does not run empty" } },
  ],
  seeAlso: ["DAYS_UNTIL_EMPTY", "LEVEL_LEFT", "STOCK_OUT_ON"],
  caution: "A planning figure: gauge or weigh the vessel, and have the next supply there well before this day.",
};
