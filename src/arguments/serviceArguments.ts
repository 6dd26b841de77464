import { defaults } from "../models/defaults";
import { CellError, invalid } from "../cells/cellValues";
import { formatNumber } from "./argument";
import { date, isoDay } from "./date";
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

/** A share of the interval that harsh conditions leave. */
export const harsh = fraction.aboveTo(0, 1).default(defaults.harsh);

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
  readonly hours_per_day: number | undefined;
  readonly part: string | undefined;
  readonly quantity: number | undefined;
}

/** The tasks as the model takes them, or words on the first that can't be counted. */
export function readTasks(tasks: readonly GivenTask[], from: number, to: number) {
  if (to < from) return invalid(`to_date ${isoDay(to)} is before from_date ${isoDay(from)}; check which is which`);
  for (const { task, months: interval, last_hours, interval_hours, hours_per_day, part, quantity } of tasks) {
    const fault = (words: string): CellError => invalid(`tasks: "${task}" ${words}`);
    if (interval === undefined && interval_hours === undefined)
      return fault("has neither months nor interval hours; enter at least one of them");
    if (interval_hours !== undefined && hours_per_day === undefined)
      return fault("has interval hours but hours per day is blank; enter how long it runs a day");
    if (interval_hours === undefined && hours_per_day !== undefined)
      return fault("has hours per day but interval hours is blank; enter the interval, or clear both");
    if (interval_hours === undefined && last_hours !== undefined)
      return fault("has last hours but interval hours is blank; enter the interval, or clear both");
    if (part !== undefined && quantity === undefined)
      return fault(`has the part "${part}" but quantity is blank; enter how many`);
    if (part === undefined && quantity !== undefined)
      return fault("has a quantity but part is blank; enter the part, or clear both");
  }
  return tasks.map(({ task, last_date, months: interval, interval_hours, hours_per_day }) => ({
    task,
    lastDate: last_date,
    months: interval,
    byHours: interval_hours === undefined ? undefined : { interval: interval_hours, perDay: hours_per_day! },
  }));
}

export const tooManyServices = (): CellError =>
  invalid(`from_date to to_date holds more than ${mostServices} services; take a shorter time or fewer tasks`);
