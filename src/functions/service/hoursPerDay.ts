import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { date, isoDay } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours } from "../../arguments/quantity";
import { meterRunsBack } from "../../arguments/serviceArguments";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { runningTime } from "../../models/servicePlan";

export const args = cellArguments({ first_date: date, first_hours: hours, last_date: date, last_hours: hours });

/**
 * Average running time a day from two readings of an hour meter.
 *
 * @customfunction HOURS_PER_DAY
 * @param first_date Day of the first reading [date]
 * @param first_hours Meter reading on that day [h]
 * @param last_date Day of the last reading [date]
 * @param last_hours Meter reading on that day [h]
 * @returns Average running time [h/day]
 */
export function hoursPerDay(
  first_date: any[][],
  first_hours: any[][],
  last_date: any[][],
  last_hours: any[][],
): any[][] {
  return eachCell(args, [first_date, first_hours, last_date, last_hours], (given) => {
    if (given.last_date <= given.first_date) {
      return invalid(
        `last_date ${isoDay(given.last_date)} must be after first_date ${isoDay(given.first_date)}; two readings on different days are wanted`,
      );
    }
    const back = meterRunsBack("first_hours", given.first_hours, "last_hours", given.last_hours);
    if (back) return back;
    const average = runningTime(given.first_date, given.first_hours, given.last_date, given.last_hours);
    return average > 24
      ? invalid(
          `last_hours − first_hours is ${formatNumber(average)} h a day and a day has 24; check the readings, or take them further apart at the same time of day`,
        )
      : average;
  });
}

export const about: About = {
  gives: "hours a day",
  rule: "(last hours − first hours) / (last date − first date)",
  range: `Whole days; the last date after the first. A meter that runs back, or more than 24 h a day, is #VALUE!. An average of the time between: where the use grows, take late readings. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: '=OXYGEN.HOURS_PER_DAY("2026-03-01",1040,"2026-03-13",1214)',
      result: 14.5,
      note: "Twelve days apart",
      source: "(1214 − 1040) / 12",
    },
    {
      formula: '=OXYGEN.HOURS_PER_DAY("2026-03-01",1000,"2026-03-02",1030)',
      result: { error: "#VALUE!", words: "a day has 24" },
      source: "30 h in one day",
    },
  ],
  seeAlso: ["NEXT_SERVICE_BY_HOURS", "SERVICE_DUE", "SERVICE_LIST"],
};
