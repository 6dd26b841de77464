import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { emptyDays, litres } from "../../arguments/quantity";
import { emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { dailyLoss as lossOf } from "../../models/holding";

export const args = cellArguments({
  capacity: litres.positive(),
  empty_days: emptyDays.default(defaults.empty_days),
});

/**
 * Liquid that a vessel loses a day while it stands.
 *
 * @customfunction DAILY_LOSS
 * @param capacity Liquid the vessel holds when full [L]
 * @param [empty_days] Days in which a full vessel is emptied by its standing loss alone [days]
 * @returns Standing loss [L/day]
 */
export function dailyLoss(capacity: any[][], empty_days?: any[][]): any[][] {
  return eachCell(args, [capacity, empty_days], (given) => lossOf(given.capacity, given.empty_days));
}

export const about: About = {
  gives: "liquid a day",
  rule: "capacity / empty days",
  range: `Both above 0. Taken as constant at all levels. ${emptyDaysOfOthers}`,
  source: `Plain arithmetic; empty days: ${defaults.empty_days.source}`,
  examples: [
    {
      formula: "=OXYGEN.DAILY_LOSS(110)",
      result: 110 / defaults.empty_days.value,
      source: `110 / ${defaults.empty_days.value}`,
    },
    { formula: "=OXYGEN.DAILY_LOSS({50;75},10)", result: [[5], [7.5]], source: "50 / 10 and 75 / 10" },
    { formula: '=OXYGEN.DAILY_LOSS(42,"2 weeks")', result: 3, source: "Empty in 14 days: 42 / 14" },
    {
      formula: '=OXYGEN.DAILY_LOSS(170,"1.5 %/day")',
      result: 2.55,
      note: "The loss as a plate states it",
      source: "170 × 0.015",
    },
  ],
  seeAlso: ["LOSS_FROM_PLATE", "DAYS_UNTIL_EMPTY", "LOSS_FROM_READINGS", "HEAT_LEAK"],
};
