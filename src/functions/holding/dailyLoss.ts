import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { emptyDays, litres } from "../../arguments/quantity";
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
  rule: "capacity / empty days",
  range:
    "Both above 0. Taken as constant at all levels. A portable vessel's loss is its maker's figure, or LOSS_FROM_READINGS.",
  source: "Plain arithmetic; an unpowered full plant vessel is empty in 8 to 10 days: common practice, no source",
  examples: [
    { formula: "=OXYGEN.DAILY_LOSS(40)", result: 5 },
    { formula: "=OXYGEN.DAILY_LOSS({40;60},10)", result: [[4], [6]] },
    { formula: '=OXYGEN.DAILY_LOSS(42,"2 weeks")', result: 3, note: "empty in 14 days" },
  ],
  seeAlso: ["DAYS_UNTIL_EMPTY", "LOSS_FROM_READINGS", "HEAT_LEAK"],
};
