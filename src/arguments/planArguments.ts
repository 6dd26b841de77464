import { defaults } from "../models/defaults";
import { CellError, invalid } from "../cells/cellValues";
import { formatNumber } from "./argument";
import { type DailyAmount, DailyAmountsArgument, column } from "./column";
import { date, isoDay } from "./date";
import { count, emptyDays, hours, litres, litresPerHour, number } from "./quantity";
import { table } from "./range";
import { flag } from "./text";

/** The most days one plan takes. */
const mostPlanDays = 2000;

/** Serials from 61 on are dates; smaller whole numbers in a day column count days. */
const firstDate = 61;

/** The arguments the plan functions share, in order. */
export const planArguments = {
  dates: column(date),
  need: new DailyAmountsArgument(litres),
  received: new DailyAmountsArgument(litres, true),
  power_hours: column(hours.between(0, 24)),
  plants: table({
    count,
    switch_on_date: date,
    start_up_hours: hours,
    rate: litresPerHour.positive(),
    capacity_each: litres.positive(),
  }),
  opening: litres,
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
  empty_days: emptyDays.default(defaults.empty_days),
  restart_hours: hours.mayBeOmitted(),
  same_day: flag.default(defaults.same_day),
};

/** Days must follow one another without a gap, 1 to 2,000 of them. */
export function consecutiveDays(dates: readonly number[], label: string): CellError | undefined {
  if (dates.length > mostPlanDays)
    return invalid(`${label} has ${dates.length} days; at most ${mostPlanDays} are taken: split them`);
  const at = dates.findIndex((day, index) => index > 0 && day !== dates[index - 1]! + 1);
  if (at < 0) return undefined;
  const [before, day] = [dates[at - 1]!, dates[at]!];
  const found = `${label}: ${isoDay(day)} follows ${isoDay(before)}`;
  if (day === before) return invalid(`${label}: ${isoDay(day)} stands there twice; enter one row a day`);
  if (day < before) return invalid(`${found}, which is out of order; enter consecutive days`);
  return invalid(
    `${found}, with a gap of ${day - before - 1} day${day - before === 2 ? "" : "s"}; enter consecutive days, 0 where nothing happens`,
  );
}

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
    const expected = start >= firstDate ? dates[0]! : start;
    const at = rows.findIndex(({ day }, index) => day !== expected + index);
    if (at >= 0) {
      const day = rows[at]!.day!;
      return invalid(
        `${label}: ${day >= firstDate ? isoDay(day) : `day ${formatNumber(day)}`} stands beside ${isoDay(dates[at]!)} of dates; they must be the same days`,
      );
    }
  }
  return rows.map(({ amount }) => amount);
}

/** Amounts that carry dates are put on their days, 0 on the others; amounts without go one by one. */
function amountOnItsDay(
  rows: readonly DailyAmount[],
  dates: readonly number[],
  label: string,
): readonly number[] | CellError {
  if ((rows[0]?.day ?? 0) < firstDate) return amountEachDay(rows, dates, label);
  const amounts = dates.map(() => 0);
  for (const { day, amount } of rows) {
    const index = day! - dates[0]!;
    if (index < 0 || index >= dates.length) {
      return invalid(
        `${label}: ${isoDay(day!)} is outside the dates ${isoDay(dates[0]!)} to ${isoDay(dates[dates.length - 1]!)}`,
      );
    }
    amounts[index]! += amount;
  }
  return amounts;
}

interface GivenPlan {
  readonly dates: readonly number[];
  readonly need: readonly DailyAmount[];
  readonly received: readonly DailyAmount[];
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

/** The plan as the model takes it, or words on what doesn't go together. */
export function readPlan(given: GivenPlan) {
  const { dates, plants } = given;
  const gap = consecutiveDays(dates, "dates");
  if (gap) return gap;
  const need = amountEachDay(given.need, dates, "need");
  if (need instanceof CellError) return need;
  const received = amountOnItsDay(given.received, dates, "received");
  if (received instanceof CellError) return received;
  if (given.power_hours.length !== dates.length) return unequal("power_hours", given.power_hours.length, dates.length);
  return {
    firstDate: dates[0]!,
    need,
    received,
    powerHours: given.power_hours,
    plants: plants.map((kind) => ({
      count: kind.count,
      switchOn: kind.switch_on_date,
      startHours: kind.start_up_hours,
      rate: kind.rate,
      capacity: kind.capacity_each,
    })),
    opening: given.opening,
    drawRatio: given.draw_ratio,
    emptyDays: given.empty_days,
    restartHours: given.restart_hours,
    sameDay: given.same_day,
  };
}

export const tooLarge = (): CellError =>
  invalid("need, received, rate, capacity or opening is too large to add up; check their units");

export const aboveRoom = (opening: number, room: number, day: number): CellError =>
  invalid(
    `opening ${formatNumber(opening)} L is above the room of ${formatNumber(room)} L in the plants switched on by ${isoDay(day)}; check opening, capacity and switch-on dates`,
  );
