import { defaults } from "../models/defaults";
import { emptyDays, litres, litresPerDay } from "./quantity";

/** What the functions of a standing vessel share, in order. */
export const holdingArguments = {
  level: litres,
  capacity: litres.positive(),
  daily_draw: litresPerDay.default(defaults.daily_draw),
  empty_days: emptyDays.default(defaults.empty_days),
  daily_made: litresPerDay.default(defaults.daily_made),
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
