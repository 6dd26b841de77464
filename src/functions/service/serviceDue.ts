import type { About } from "../../arguments/about";
import { date, isoDay } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours, months as monthsQuantity } from "../../arguments/quantity";
import { dateResult } from "../../arguments/resultDate";
import { harsh as harshShare, hoursPerDay, meterRunsBack } from "../../arguments/serviceArguments";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { dateByMeter, dateByMonths } from "../../models/servicePlan";

export const args = cellArguments({
  as_of: date,
  last_date: date,
  months: monthsQuantity.atLeast(1).whole(),
  last_hours: hours,
  interval_hours: hours.positive(),
  hours_now: hours,
  hours_per_day: hoursPerDay,
  harsh: harshShare,
});

/**
 * Date of the next service by calendar or running hours, whichever comes first.
 *
 * @customfunction SERVICE_DUE
 * @param as_of Day of the meter reading hours_now [date]
 * @param last_date Day of the last service [date]
 * @param months Interval between services, in whole months [months]
 * @param last_hours Meter reading at the last service [h]
 * @param interval_hours Running hours between services [h]
 * @param hours_now Meter reading on the day as_of [h]
 * @param hours_per_day Average running time, above 0 to 24 [h/day]
 * @param [harsh] Share of both intervals that harsh conditions leave, above 0 to 1
 * @returns Day of the next service [date]
 */
export function serviceDue(
  as_of: any[][],
  last_date: any[][],
  months: any[][],
  last_hours: any[][],
  interval_hours: any[][],
  hours_now: any[][],
  hours_per_day: any[][],
  harsh?: any[][],
): any[][] {
  return eachCell(
    args,
    [as_of, last_date, months, last_hours, interval_hours, hours_now, hours_per_day, harsh],
    (given) => {
      if (given.last_date > given.as_of)
        return invalid(
          `last_date ${isoDay(given.last_date)} is after as_of ${isoDay(given.as_of)}; check the year and which is which`,
        );
      return (
        meterRunsBack("last_hours", given.last_hours, "hours_now", given.hours_now) ??
        dateResult(
          Math.min(
            dateByMonths(given.last_date, given.months, 1, given.harsh),
            dateByMeter(
              given.as_of,
              given.last_hours,
              given.interval_hours,
              given.hours_now,
              given.hours_per_day,
              given.harsh,
            ),
          ),
          "the next service",
        )
      );
    },
  );
}

export const about: About = {
  gives: "date",
  rule: "the earlier of NEXT_SERVICE_DATE(last date, months, harsh) and NEXT_SERVICE_BY_HOURS(as of, last hours, interval hours, hours now, hours per day, harsh)",
  range: `As of those two. A past date when it is overdue; a last date after as of is #VALUE!. ${blankAsZero}`,
  source:
    "Month-end rule of Excel's EDATE (Microsoft, EDATE function; ECMA-376 Part 4, EDATE); whichever first: common practice, no source; the harsh share is an own planning figure",
  examples: [
    {
      formula: '=OXYGEN.SERVICE_DUE("2026-03-01","2026-01-31",3,1000,500,1300,20)',
      result: 46092,
      note: "By hours on 11 March, by months on 30 April",
      source: "1 March + 200 / 20 days; EDATE of 31 January and 3",
    },
    {
      formula: '=OXYGEN.SERVICE_DUE("2026-03-01","2026-01-31",1,1000,500,1010,2)',
      result: 46081,
      note: "By months on 28 February, by hours in 245 days",
      source: "EDATE of 31 January and 1; (1500 − 1010) / 2",
    },
    {
      formula: '=OXYGEN.SERVICE_DUE("2026-03-01","2026-01-31",3,1000,500,1300,20,0.7)',
      result: 46084,
      note: "Harsh conditions leave seven tenths: by hours on 3 March",
      source: "1 March (serial 46082) + (1000 + 350 − 1300) / 20, part days cut off",
    },
  ],
  seeAlso: ["NEXT_SERVICE_DATE", "NEXT_SERVICE_BY_HOURS", "SERVICE_STATUS", "SERVICE_LIST"],
  caution: "The maker's manual sets the intervals and what counts as harsh; this only counts days and hours.",
};
