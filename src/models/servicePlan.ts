/** When service is due. Dates are serials of the 1900 system, running times in hours. */
import { addMonths, lastDay } from "./calendar";
import { exactSum } from "./exactSum";
import { cutDownThings } from "./wholeNumbers";

/**
 * Day of the k-th service of an interval in months: anchor + INT(harsh × (EDATE(anchor, k × months) − anchor)). Each is
 * counted from the anchor, so that a series from the 31st comes back to the 31st. Infinity beyond 9999-12-31.
 */
export function dateByMonths(anchor: number, months: number, occurrence: number, harsh: number): number {
  const end = addMonths(anchor, occurrence * months);
  return Number.isFinite(end) ? anchor + cutDownThings(harsh * (end - anchor)) : Infinity;
}

/** Day of the k-th service of an interval in running hours, from the day of the last one; `hoursPerDay` is the average use. */
function dateByHours(
  anchor: number,
  intervalHours: number,
  hoursPerDay: number,
  occurrence: number,
  harsh: number,
): number {
  const day = anchor + cutDownThings((occurrence * harsh * intervalHours) / hoursPerDay);
  return day <= lastDay ? day : Infinity;
}

/**
 * Day on which the hour meter reaches the k-th service, by default the next; before `asOf` when it has passed it. Part
 * days are cut off.
 * @param asOf Day of the reading `hoursNow`
 */
export const dateByMeter = (
  asOf: number,
  lastHours: number,
  intervalHours: number,
  hoursNow: number,
  hoursPerDay: number,
  harsh: number,
  occurrence = 1,
): number => asOf + cutDownThings((lastHours + occurrence * harsh * intervalHours - hoursNow) / hoursPerDay);

/** Average running time between two meter readings [h/day]. */
export const runningTime = (firstDate: number, firstHours: number, lastDate: number, lastHours: number): number =>
  (lastHours - firstHours) / (lastDate - firstDate);

/** Days late beyond the grace days; 0 when not late. */
export const overdueDays = (asOf: number, dueDate: number, grace: number): number =>
  Math.max(0, asOf - dueDate - grace);

export type ServiceState = "ok" | "due soon" | "in grace" | "overdue";

/** "due soon" from `warn` days before to the day itself, "in grace" from 1 to `grace` days late. */
export function serviceState(asOf: number, dueDate: number, warn: number, grace: number): ServiceState {
  const late = asOf - dueDate;
  if (late > grace) return "overdue";
  if (late > 0) return "in grace";
  return late >= -warn ? "due soon" : "ok";
}

/** A task that comes back; at least one of the two intervals is set. */
export interface ServiceTask {
  readonly task: string;
  /** Day of the last service, from which every date is counted. */
  readonly lastDate: number;
  readonly months: number | undefined;
  readonly byHours: HoursRule | undefined;
}

interface HoursRule {
  readonly interval: number;
  readonly perDay: number;
  /** The meter at the last service and on a day after it; without them the hours are counted from the last service. */
  readonly meter: { readonly last: number; readonly now: number; readonly asOf: number } | undefined;
}

function hoursDate(
  lastDate: number,
  { interval, perDay, meter }: HoursRule,
  occurrence: number,
  harsh: number,
): number {
  if (!meter) return dateByHours(lastDate, interval, perDay, occurrence, harsh);
  const day = dateByMeter(meter.asOf, meter.last, interval, meter.now, perDay, harsh, occurrence);
  return day <= lastDay ? day : Infinity;
}

/** Day of a task's k-th service by whichever rule is first. */
export const occurrenceDate = ({ lastDate, months, byHours }: ServiceTask, occurrence: number, harsh: number): number =>
  Math.min(
    months === undefined ? Infinity : dateByMonths(lastDate, months, occurrence, harsh),
    byHours === undefined ? Infinity : hoursDate(lastDate, byHours, occurrence, harsh),
  );

/**
 * First occurrence on or after a day; undefined when it is further than 2^40, many to a day. The dates never fall, so
 * the search may double and halve.
 */
function firstOccurrenceFrom(task: ServiceTask, from: number, harsh: number): number | undefined {
  let before = 0;
  let at = 1;
  while (occurrenceDate(task, at, harsh) < from) {
    if (at >= 2 ** 40) return undefined;
    before = at;
    at *= 2;
  }
  while (at - before > 1) {
    const middle = Math.floor((before + at) / 2);
    if (occurrenceDate(task, middle, harsh) < from) before = middle;
    else at = middle;
  }
  return at;
}

export interface ServiceDay {
  readonly date: number;
  /** Place in the list of tasks, from 0. */
  readonly task: number;
  /** 1 for the first service after the last one. */
  readonly occurrence: number;
}

/**
 * Every service due from `from` to `to`, by date, then by place in the list. A task whose next service was due before
 * `from` comes once, with the date it was due. Undefined when there are more than `most`.
 */
export function serviceList(
  tasks: readonly ServiceTask[],
  from: number,
  to: number,
  harsh: number,
  most: number,
): ServiceDay[] | undefined {
  const found: ServiceDay[] = [];
  for (let task = 0; task < tasks.length; task++) {
    const due = occurrenceDate(tasks[task]!, 1, harsh);
    if (due < from) found.push({ date: due, task, occurrence: 1 });
    const first = firstOccurrenceFrom(tasks[task]!, from, harsh);
    if (first === undefined) return undefined;
    for (let occurrence = first; ; occurrence++) {
      const date = occurrenceDate(tasks[task]!, occurrence, harsh);
      if (date > to) break;
      found.push({ date, task, occurrence });
      if (found.length > most) return undefined;
    }
  }
  if (found.length > most) return undefined;
  return found.sort((a, b) => a.date - b.date || a.task - b.task || a.occurrence - b.occurrence);
}

export interface Part {
  readonly part: string;
  readonly quantity: number;
}

/** Quantities by part, in order of first appearance; upper and lower case are one. `parts` has one entry a task. */
export function partsNeeded(due: readonly ServiceDay[], parts: readonly (Part | undefined)[]): Part[] {
  const byName = new Map<string, { part: string; quantities: number[] }>();
  parts.forEach((part) => {
    if (part && !byName.has(part.part.toLowerCase()))
      byName.set(part.part.toLowerCase(), { part: part.part, quantities: [] });
  });
  for (const { task } of due) {
    const part = parts[task];
    if (part) byName.get(part.part.toLowerCase())!.quantities.push(part.quantity);
  }
  return [...byName.values()]
    .filter(({ quantities }) => quantities.length > 0)
    .map(({ part, quantities }) => ({ part, quantity: exactSum(quantities) }));
}

export interface VisitChoice {
  /** The last visit to come on or before the latest day; when that day is past, the first visit to come. */
  readonly visit: number | undefined;
  /** The first visit to come of all. */
  readonly first: number | undefined;
}

/** Visits from `asOf` on, in any order, against the latest day on which the work may be done. */
export function chooseVisit(asOf: number, latest: number, visits: readonly number[]): VisitChoice {
  let first: number | undefined;
  let inTime: number | undefined;
  for (const visit of visits) {
    if (visit < asOf) continue;
    if (first === undefined || visit < first) first = visit;
    if (visit <= latest && (inTime === undefined || visit > inTime)) inTime = visit;
  }
  return { visit: latest < asOf ? first : inTime, first };
}
