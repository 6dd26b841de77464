import { defaults } from "../models/defaults";
import { type Values } from "./eachCell";
import { emptyDays, litres, litresPerDay } from "./quantity";

/** What the functions of a standing vessel share, in order. */
export const holdingArguments = {
  level: litres,
  capacity: litres.positive(),
  daily_draw: litresPerDay.as("gross liquid a day").default(defaults.daily_draw),
  empty_days: emptyDays.default(defaults.empty_days),
  daily_made: litresPerDay.default(defaults.daily_made),
};

/** The same as the model takes it. */
export const readHolding = (given: Values<typeof holdingArguments>) => ({
  level: given.level,
  capacity: given.capacity,
  dailyDraw: given.daily_draw,
  emptyDays: given.empty_days,
  dailyMade: given.daily_made,
});
