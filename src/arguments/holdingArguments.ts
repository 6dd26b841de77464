import { days, litres, litresPerDay } from "./quantity";

/** What the functions of a standing vessel share, in order. */
export const holdingArguments = {
  level: litres,
  capacity: litres.positive(),
  daily_draw: litresPerDay.default(0),
  empty_days: days.positive().default(8),
  daily_made: litresPerDay.default(0),
};

/** The same as the model takes it. */
export const readHolding = (given: {
  level: number;
  capacity: number;
  daily_draw: number;
  empty_days: number;
  daily_made: number;
}) => ({
  level: given.level,
  capacity: given.capacity,
  dailyDraw: given.daily_draw,
  emptyDays: given.empty_days,
  dailyMade: given.daily_made,
});
