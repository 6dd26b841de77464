import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { holdingArguments, readHolding } from "../../arguments/holdingArguments";
import { dateResult } from "../../arguments/resultDate";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
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
  gives: "date",
  rule: "as of + whole days of level / (daily draw + capacity / empty days − daily made)",
  range: `Part days are cut off, so that the answer is never late; a time of day in as of is cut off too. A level above the capacity is #VALUE!; a vessel that gains or holds is #N/A "does not run empty". Draw is what leaves the vessel: GROSS_DRAW of what is filled. ${emptyDaysOfOthers} ${blankAsZero}`,
  source: `Plain arithmetic; empty days: ${defaults.empty_days.source}`,
  examples: [
    {
      formula: '=OXYGEN.EMPTY_ON("2026-09-14",110,110)',
      result: 46279 + Math.floor(defaults.empty_days.value),
      note: "A full vessel left to stand",
      source: `Serial 46279 is 14 September 2026, plus ${defaults.empty_days.value} days`,
    },
    {
      formula: '=OXYGEN.EMPTY_ON("2026-09-14",70,90,9,10)',
      result: 46282,
      source: "70 / (9 + 9) = 3.9 days, cut to 3: 17 September",
    },
    {
      formula: '=OXYGEN.EMPTY_ON("2026-09-14",70,90,20,10,15)',
      result: 46284,
      note: "A plant makes 15 L/day",
      source: "70 / (20 + 9 − 15) = 5 days",
    },
    {
      formula: '=OXYGEN.EMPTY_ON("2026-09-14",70,90,5,10,24)',
      result: { error: "#N/A", words: "does not run empty" },
      source: "24 L/day made cover 5 + 9 L/day",
    },
  ],
  seeAlso: ["DAYS_UNTIL_EMPTY", "LEVEL_LEFT", "STOCK_OUT_ON"],
  caution: "A planning figure: gauge or weigh the vessel, and have the next supply there well before this day.",
};
