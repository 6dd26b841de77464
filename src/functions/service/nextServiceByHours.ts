import type { About } from "../../arguments/about";
import { date } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours } from "../../arguments/quantity";
import { dateResult } from "../../arguments/resultDate";
import { harsh as harshShare, hoursPerDay, meterRunsBack } from "../../arguments/serviceArguments";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { dateByMeter } from "../../models/servicePlan";

export const args = cellArguments({
  as_of: date,
  last_hours: hours,
  interval_hours: hours.positive(),
  hours_now: hours,
  hours_per_day: hoursPerDay,
  harsh: harshShare,
});

/**
 * Date on which the hour meter reaches the next service, at the average running time; a past date when it is overdue.
 *
 * @customfunction NEXT_SERVICE_BY_HOURS
 * @param as_of Day of the meter reading hours_now [date]
 * @param last_hours Meter reading at the last service [h]
 * @param interval_hours Running hours between services [h]
 * @param hours_now Meter reading on the day as_of [h]
 * @param hours_per_day Average running time, above 0 to 24 [h/day]
 * @param [harsh] Share of the interval that harsh conditions leave, above 0 to 1
 * @returns Day of the next service [date]
 */
export function nextServiceByHours(
  as_of: any[][],
  last_hours: any[][],
  interval_hours: any[][],
  hours_now: any[][],
  hours_per_day: any[][],
  harsh?: any[][],
): any[][] {
  return eachCell(
    args,
    [as_of, last_hours, interval_hours, hours_now, hours_per_day, harsh],
    (given) =>
      meterRunsBack("last_hours", given.last_hours, "hours_now", given.hours_now) ??
      dateResult(
        dateByMeter(
          given.as_of,
          given.last_hours,
          given.interval_hours,
          given.hours_now,
          given.hours_per_day,
          given.harsh,
        ),
        "the next service",
      ),
  );
}

export const about: About = {
  gives: "date",
  rule: "as of + INT((last hours + harsh × interval hours − hours now) / hours per day)",
  range: `Hours per day above 0 to 24. A reading below the one at the last service is #VALUE! (has the meter been changed?). Part days are cut off. Overdue gives the past day on which the meter would have reached it at this average. ${blankAsZero}`,
  source: "Plain arithmetic; what harsh conditions leave is the maker's, the harsh share is an own planning figure",
  examples: [
    {
      formula: '=OXYGEN.NEXT_SERVICE_BY_HOURS("2026-03-01",1000,500,1300,20)',
      result: 46092,
      note: "Ten days: 11 March 2026",
      source: "1 March (serial 46082) + (1000 + 500 − 1300) / 20",
    },
    {
      formula: '=OXYGEN.NEXT_SERVICE_BY_HOURS("2026-03-01",1000,500,1600,20)',
      result: 46077,
      note: "Overdue since 24 February",
      source: "46082 + (1000 + 500 − 1600) / 20",
    },
    {
      formula: '=OXYGEN.NEXT_SERVICE_BY_HOURS("2026-03-01",1000,500,1300,20,0.8)',
      result: 46087,
      note: "Harsh conditions leave four fifths",
      source: "46082 + (1000 + 0.8 × 500 − 1300) / 20",
    },
  ],
  seeAlso: ["HOURS_PER_DAY", "SERVICE_DUE", "NEXT_SERVICE_DATE", "SERVICE_STATUS"],
  caution: "The maker's manual sets the intervals and what counts as harsh; this only counts the hours.",
};
