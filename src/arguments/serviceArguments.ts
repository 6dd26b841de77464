import { defaults } from "../models/defaults";
import { type ServiceTask, occurrenceDate } from "../models/servicePlan";
import { CellError, invalid } from "../cells/cellValues";
import { formatNumber, quoteCell } from "./argument";
import { date, isoDay } from "./date";
import { firstSerial } from "../models/calendar";
import { fraction, hours, months, sameUnit, measured } from "./quantity";
import { table } from "./range";
import { text } from "./text";

/** The most rows a list of services may have. */
export const mostServices = 2000;

const timesByPeriod = new Map<string, { factor: number }>();
for (const [time, hours] of [["h", 1] as const, ["hr", 1] as const, ["hours", 1] as const, ["min", 1 / 60] as const])
  for (const [period, days] of [["d", 1] as const, ["day", 1] as const, ["week", 7] as const])
    timesByPeriod.set(`${time}/${period}`, { factor: hours / days });

/** Average running time [h/day]: above 0, and a day has 24 hours. */
export const hoursPerDay = measured({
  kind: "hours a day",
  name: "a running time a day",
  unit: "h/day",
  offer: "h/day or h/week",
  units: timesByPeriod,
}).aboveTo(0, 24);

/** A share of the interval that harsh conditions leave. A little above 1 is most likely a factor of wear, not a percent. */
export const harsh = fraction
  .aboveTo(0, 1)
  .doubted({
    from: 0,
    to: 1,
    words: (value) =>
      value > 1 && value < 10
        ? `would lengthen the interval; harsh conditions shorten it: enter the share that is left, such as 0.8`
        : undefined,
  })
  .default(defaults.harsh);

/** An hour meter only counts up. */
export const meterRunsBack = (
  earlierName: string,
  earlier: number,
  laterName: string,
  later: number,
): CellError | undefined =>
  later < earlier
    ? invalid(
        `${laterName} ${formatNumber(later)} h is below ${earlierName} ${formatNumber(earlier)} h; check the readings, and whether the meter was changed`,
      )
    : undefined;

/** The arguments of the lists of services, in order. */
export const listArguments = {
  tasks: table({
    task: text,
    last_date: date,
    months: months.atLeast(1).whole().orBlank(),
    last_hours: hours.orBlank(),
    interval_hours: hours.positive().orBlank(),
    hours_now: hours.orBlank(),
    hours_per_day: hoursPerDay.orBlank(),
    part: text.orBlank(),
    quantity: sameUnit.orBlank(),
  }).orWidth(3),
  from_date: date,
  to_date: date,
  harsh,
};

interface GivenTask {
  readonly task: string;
  readonly last_date: number;
  readonly months: number | undefined;
  readonly last_hours: number | undefined;
  readonly interval_hours: number | undefined;
  readonly hours_now: number | undefined;
  readonly hours_per_day: number | undefined;
  readonly part: string | undefined;
  readonly quantity: number | undefined;
}

/** The columns that only count together with an interval of hours. */
const hoursColumns = ["last_hours", "hours_now", "hours_per_day"] as const;

/** What keeps one task from being counted, in words that follow its name. */
function faultOf(given: GivenTask, from: number, to: number): string | undefined {
  const { last_date, months: interval, last_hours, interval_hours, hours_now, hours_per_day, part, quantity } = given;
  if (last_date > to) return `was last done on ${isoDay(last_date)}, after to_date ${isoDay(to)}; check the year`;
  if (interval === undefined && interval_hours === undefined)
    return "has neither months nor interval hours; enter at least one of them";
  if (interval_hours !== undefined && hours_per_day === undefined)
    return "has interval hours but hours per day is blank; enter how long it runs a day";
  if (interval_hours === undefined) {
    const alone = hoursColumns.filter((name) => given[name] !== undefined)[0];
    if (alone !== undefined)
      return `has ${alone.replace(/_/g, " ")} but interval hours is blank; enter the interval, or clear both`;
  }
  if (hours_now !== undefined) {
    if (last_hours === undefined)
      return "has hours now but last hours is blank; enter the meter at the last service, or clear both";
    const back = meterRunsBack("last hours", last_hours, "hours now", hours_now);
    if (back) return `can't be counted: ${back.message}`;
    if (last_date > from)
      return `was last done on ${isoDay(last_date)}, after from_date ${isoDay(from)}, the day of hours now; check both`;
  }
  if (part !== undefined && quantity === undefined)
    return `has the part "${part}" but quantity is blank; enter how many`;
  if (part === undefined && quantity !== undefined)
    return "has a quantity but part is blank; enter the part, or clear both";
  return undefined;
}

/** The tasks as the model takes them, or words on the first that can't be counted. */
export function readTasks(
  tasks: readonly GivenTask[],
  from: number,
  to: number,
  harshShare: number,
): ServiceTask[] | CellError {
  if (to < from) return invalid(`to_date ${isoDay(to)} is before from_date ${isoDay(from)}; check which is which`);
  const read: ServiceTask[] = [];
  for (const given of tasks) {
    const { task, last_date, last_hours, interval_hours, hours_now, hours_per_day } = given;
    const fault = faultOf(given, from, to);
    if (fault !== undefined) return invalid(`tasks: ${quoteCell(task)} ${fault}`);
    const meter =
      hours_now === undefined || last_hours === undefined
        ? undefined
        : { last: last_hours, now: hours_now, asOf: from };
    const counted: ServiceTask = {
      task,
      lastDate: last_date,
      months: given.months,
      byHours: interval_hours === undefined ? undefined : { interval: interval_hours, perDay: hours_per_day!, meter },
    };
    if (occurrenceDate(counted, 1, harshShare) < firstSerial)
      return invalid(
        `tasks: ${quoteCell(task)} would have been due before 1900-03-01; check its hours and hours per day`,
      );
    read.push(counted);
  }
  return read;
}

export const tooManyServices = (): CellError =>
  invalid(`from_date to to_date holds more than ${mostServices} services; take a shorter time or fewer tasks`);
