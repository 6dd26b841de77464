import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, emptyDays, hours, litres, litresPerHour } from "../../arguments/quantity";
import { blankAsZero, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { outageCost as costOf } from "../../models/holding";

export const args = cellArguments({
  outage_hours: hours,
  restart_hours: hours,
  rate: litresPerHour.positive(),
  capacity: litres.positive(),
  plants: count.default(defaults.plants),
  empty_days: emptyDays.default(defaults.empty_days),
});

/**
 * Liquid that a power outage costs: what is not made and what boils off.
 *
 * @customfunction OUTAGE_COST
 * @param outage_hours Hours without power [h]
 * @param restart_hours Hours from power back until liquid accumulates again [h]
 * @param rate Liquid one plant makes, net of standing loss [L/h]
 * @param capacity Liquid one plant's vessel holds when full [L]
 * @param [plants] Plants of that kind
 * @param [empty_days] Days in which full plants without power boil empty [days]
 * @returns Liquid not made plus boiled off [L]
 */
export function outageCost(
  outage_hours: any[][],
  restart_hours: any[][],
  rate: any[][],
  capacity: any[][],
  plants?: any[][],
  empty_days?: any[][],
): any[][] {
  return eachCell(args, [outage_hours, restart_hours, rate, capacity, plants, empty_days], (given) =>
    costOf(given.outage_hours, given.restart_hours, given.rate, given.capacity, given.plants, given.empty_days),
  );
}

export const about: About = {
  gives: "liquid",
  rule: "plants × ((outage + restart) × rate + the smaller of capacity × outage / (24 × empty days) and capacity)",
  range: `Rate, capacity and empty days above 0. Boil-off counts while the power is out, as in STOCK_PLAN, and from vessels that hold liquid throughout; it never passes the capacity. A plant that would have stood by full loses less. ${emptyDaysOfOthers} ${blankAsZero}`,
  source: `Plain arithmetic; empty days: ${defaults.empty_days.source}`,
  examples: [
    {
      formula: "=OXYGEN.OUTAGE_COST(12,4,2.5,110)",
      result: 40 + 55 / defaults.empty_days.value,
      source: `16 h × 2.5 L/h not made, 110 L / ${defaults.empty_days.value} × 12/24 boiled off`,
    },
    {
      formula: "=OXYGEN.OUTAGE_COST(24,6,1.25,50,2,10)",
      result: 85,
      note: "Two plants whose full vessels stand for ten days",
      source: "30 h × 2.5 L/h not made, 100 L / 10 boiled off",
    },
    {
      formula: "=OXYGEN.OUTAGE_COST(0.5,3,2,60,1,10)",
      result: 7.125,
      note: "Half an hour: the restart costs most",
      source: "3.5 h × 2 L/h not made, 60 L / 10 × 0.5/24 boiled off",
    },
    {
      formula: "=OXYGEN.OUTAGE_COST(480,0,1,36,1,12)",
      result: 516,
      note: "Twenty days: all of it has boiled off",
      source: "480 L not made and all 36 L",
    },
  ],
  seeAlso: ["STOCK_PLAN", "DAILY_LOSS", "START_DELAY", "GENERATORS_NEEDED"],
  caution: "A planning figure. Boil-off in a closed room enriches its air: ventilate before going in.",
};
