import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { date } from "../../arguments/date";
import { days, litres, drainedPerHour } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { dateCell, invalid } from "../../cells/cellValues";
import { firstSerial } from "../../models/calendar";
import { drainBy as lastDrainDay } from "../../models/moving";

export const args = cellArguments({
  ship_date: date,
  level: litres,
  drain_rate: drainedPerHour.positive(),
  warm_days: days,
});

/**
 * Last day on which draining may begin for a vessel to be empty and warm when it is shipped.
 *
 * @customfunction DRAIN_BY
 * @param ship_date Day it is to leave [date]
 * @param level Liquid in it now [L]
 * @param drain_rate Liquid that drains an hour [L/h]
 * @param warm_days Days it must stand empty to warm up [days]
 * @returns Last day to begin [date]
 */
export function drainBy(ship_date: any[][], level: any[][], drain_rate: any[][], warm_days: any[][]): any[][] {
  return eachCell(args, [ship_date, level, drain_rate, warm_days], (given) => {
    const day = lastDrainDay(given.ship_date, given.level, given.drain_rate, given.warm_days);
    return day >= firstSerial
      ? dateCell(day)
      : invalid("level and warm_days reach back before 1900-03-01; check level, drain_rate and warm_days");
  });
}

export const about: About = {
  gives: "date",
  rule: "INT(ship date − warm days − level / drain rate / 24)",
  range: `Drain rate above 0. Part days are cut off, so that work begins a day early rather than late; the ship date counts from its first hour. ${blankAsZero}`,
  source: "Plain arithmetic; the days to warm up are the maker's",
  examples: [
    {
      formula: '=OXYGEN.DRAIN_BY("2026-03-20",60,5,3)',
      result: 46097,
      note: "Half a day of draining and three days of warming: 16 March",
      source: "20 March (serial 46101) − 3 − 60/5/24, part days cut off",
    },
    {
      formula: '=OXYGEN.DRAIN_BY("2026-03-20",0,5,3)',
      result: 46098,
      note: "Already empty: 17 March",
      source: "46101 − 3",
    },
  ],
  seeAlso: ["DRAIN_HOURS", "DRAIN_CHECK"],
  caution:
    "A vessel that still holds liquid or pressure travels as dangerous goods (UN 1073, oxygen, refrigerated liquid); the carrier and the competent authority decide what counts as empty. Drain outdoors as the maker's manual says.",
};
