import { defaults } from "../models/defaults";
import type { PlannedDelivery } from "../models/planChance";
import { exceeds } from "../models/exceeds";
import { type StockPlanInput, roomOn } from "../models/stockPlan";
import { CellError, invalid } from "../cells/cellValues";
import { formatNumber } from "./argument";
import { type DailyAmount, DailyAmountsArgument, column } from "./column";
import { date, dateTime, isDayNumber, isoDay } from "./date";
import { count, emptyDays, hours, litres, litresPerHour, number } from "./quantity";
import { table } from "./range";
import { flag } from "./text";

/** The most days one plan takes. */
const mostPlanDays = 2000;

const dates = column(date);
const need = new DailyAmountsArgument(litres.as("net liquid"));
const power_hours = column(hours.between(0, 24));
const plants = table({
  count,
  switch_on_date: dateTime,
  start_up_hours: hours,
  rate: litresPerHour.positive(),
  capacity_each: litres.positive(),
});
const settings = {
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
  empty_days: emptyDays.default(defaults.empty_days),
  restart_hours: hours.mayBeOmitted(),
  same_day: flag.default(defaults.same_day),
};

/** The arguments the plan functions share, in order. */
export const planArguments = {
  dates,
  need,
  received: new DailyAmountsArgument(litres, true),
  power_hours,
  plants,
  opening: litres,
  ...settings,
};

/** The same where deliveries are looked for, in batches of one size and with a level to keep. */
export const deliveryPlanArguments = {
  dates,
  need,
  power_hours,
  plants,
  opening: litres,
  batch: litres.positive(),
  keep: litres,
  ...settings,
};

/** A day as words name it: its date, or "day 3" where days are numbered. */
const nameOf = (day: number): string => (isDayNumber(day) ? `day ${day}` : isoDay(day));

/** Days must follow one another without a gap, 1 to 2,000 of them. */
export function consecutiveDays(dates: readonly number[], label: string): CellError | undefined {
  if (dates.length > mostPlanDays)
    return invalid(`${label} has ${dates.length} days; at most ${mostPlanDays} are taken: split them`);
  const at = dates.findIndex((day, index) => index > 0 && day !== dates[index - 1]! + 1);
  if (at < 0) return undefined;
  const [before, day] = [dates[at - 1]!, dates[at]!];
  const found = `${label}: ${nameOf(day)} follows ${nameOf(before)}`;
  if (day === before) return invalid(`${label}: ${nameOf(day)} stands there twice; enter one row a day`);
  if (day < before) return invalid(`${found}, which is out of order; enter consecutive days`);
  return invalid(
    `${found}, with a gap of ${day - before - 1} day${day - before === 2 ? "" : "s"}; enter consecutive days, 0 where nothing happens`,
  );
}

/** The same of amounts that may have days beside them. */
export const consecutiveRows = (rows: readonly DailyAmount[], label: string): CellError | undefined =>
  rows[0]?.day === undefined
    ? undefined
    : consecutiveDays(
        rows.map(({ day }) => day!),
        label,
      );

const unequal = (label: string, found: number, days: number): CellError =>
  invalid(`dates has ${days} and ${label} has ${found} cells; they must go together one by one`);

/** One amount a day: as many as dates, and where they carry dates of their own, the same ones. */
export function amountEachDay(
  rows: readonly DailyAmount[],
  dates: readonly number[],
  label: string,
): readonly number[] | CellError {
  if (rows.length !== dates.length) return unequal(label, rows.length, dates.length);
  const start = rows[0]!.day;
  if (start !== undefined) {
    const expected = isDayNumber(start) ? start : dates[0]!;
    const at = rows.findIndex(({ day }, index) => day !== expected + index);
    if (at >= 0) {
      const day = rows[at]!.day!;
      return invalid(
        `${label}: ${nameOf(day)} stands beside ${isoDay(dates[at]!)} of dates; they must be the same days`,
      );
    }
  }
  return rows.map(({ amount }) => amount);
}

/** Deliveries by their place in the list of days; those before the first day or after the last are left out. */
function deliveriesOf(
  rows: readonly DailyAmount[],
  dates: readonly number[],
  label: string,
): readonly PlannedDelivery[] | CellError {
  const numbered = rows.find(({ day }) => day !== undefined && isDayNumber(day));
  if (numbered) {
    return invalid(
      `${label} is two cells wide, which is dates and amounts, and ${numbered.day!} is no date; enter dates, or one amount a day downwards`,
    );
  }
  const amounts = rows.length === 0 || rows[0]!.day !== undefined ? rows : withDates(rows, dates, label);
  if (amounts instanceof CellError) return amounts;
  return amounts
    .map(({ day, amount }) => ({ day: day! - dates[0]!, amount }))
    .filter(({ day, amount }) => day >= 0 && day < dates.length && amount > 0);
}

const withDates = (
  rows: readonly DailyAmount[],
  dates: readonly number[],
  label: string,
): readonly DailyAmount[] | CellError =>
  rows.length === dates.length
    ? rows.map(({ amount }, index) => ({ day: dates[index]!, amount }))
    : unequal(label, rows.length, dates.length);

interface GivenPlan {
  readonly dates: readonly number[];
  readonly need: readonly DailyAmount[];
  readonly received?: readonly DailyAmount[];
  readonly power_hours: readonly number[];
  readonly plants: readonly {
    count: number;
    switch_on_date: number;
    start_up_hours: number;
    rate: number;
    capacity_each: number;
  }[];
  readonly opening: number;
  readonly draw_ratio: number;
  readonly empty_days: number;
  readonly restart_hours: number | undefined;
  readonly same_day: boolean;
}

export interface ReadPlan extends StockPlanInput {
  readonly deliveries: readonly PlannedDelivery[];
}

/** The plan as the models take it, or words on what doesn't go together. Whether the opening fits is not asked. */
export function readPlan(given: GivenPlan): ReadPlan | CellError {
  const { dates, power_hours } = given;
  const gap = consecutiveDays(dates, "dates");
  if (gap) return gap;
  const need = amountEachDay(given.need, dates, "need");
  if (need instanceof CellError) return need;
  const deliveries = deliveriesOf(given.received ?? [], dates, "received");
  if (deliveries instanceof CellError) return deliveries;
  if (power_hours.length !== dates.length) return unequal("power_hours", power_hours.length, dates.length);
  const outage = power_hours.findIndex((each) => each < 24);
  if (outage >= 0 && given.restart_hours === undefined) {
    return invalid(
      `restart_hours is needed: hours after the power is back until liquid accumulates, about 3 (${isoDay(dates[outage]!)} has ${formatNumber(power_hours[outage]!)} h of power)`,
    );
  }
  const received = dates.map(() => 0);
  for (const { day, amount } of deliveries) received[day]! += amount;
  return {
    firstDate: dates[0]!,
    need,
    received,
    deliveries,
    powerHours: power_hours,
    plants: given.plants.map((kind) => ({
      count: kind.count,
      switchOn: kind.switch_on_date,
      startHours: kind.start_up_hours,
      rate: kind.rate,
      capacity: kind.capacity_each,
    })),
    opening: given.opening,
    drawRatio: given.draw_ratio,
    emptyDays: given.empty_days,
    restartHours: given.restart_hours ?? 0,
    sameDay: given.same_day,
  };
}

/** The same, with an opening that fits the plants of the first day. */
export function readPlanThatFits(given: GivenPlan): ReadPlan | CellError {
  const plan = readPlan(given);
  if (plan instanceof CellError) return plan;
  const room = roomOn(plan.plants, plan.firstDate);
  return exceeds(plan.opening, room) ? aboveRoom(plan.opening, room, plan.firstDate) : plan;
}

export const tooLarge = (): CellError =>
  invalid("need, received, rate, capacity or opening is too large to add up; check their units");

export const aboveRoom = (opening: number, room: number, day: number): CellError =>
  invalid(
    `opening ${formatNumber(opening)} L is above the room of ${formatNumber(room)} L in the plants switched on by ${isoDay(day)}; check opening, capacity and switch-on dates`,
  );
