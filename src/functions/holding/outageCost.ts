import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, emptyDays, hours, litres, litresPerHour } from "../../arguments/quantity";
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
  rule: "plants × ((outage + restart) × rate + the smaller of capacity × outage / (24 × empty days) and capacity)",
  range:
    "Rate, capacity and empty days above 0. Boil-off counts while the power is out, as in STOCK_PLAN, and from vessels that hold liquid throughout; it never passes the capacity. A plant that would have stood by full loses less.",
  source: "Plain arithmetic; an unpowered full plant vessel is empty in 8 to 10 days: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.OUTAGE_COST(24,6,1.25,50,2)",
      result: 87.5,
      note: "30 h × 2.5 L/h not made, 100 L / 8 boiled off",
    },
    {
      formula: "=OXYGEN.OUTAGE_COST(0.5,3,2,60)",
      result: 7.15625,
      note: "Half an hour: 7 L not made and 0.16 L boiled off; the restart costs most",
    },
    { formula: "=OXYGEN.OUTAGE_COST(240,0,1,40)", result: 280, note: "Ten days: 240 L not made and all of the 40 L" },
  ],
  seeAlso: ["STOCK_PLAN", "DAILY_LOSS", "START_DELAY", "GENERATORS_NEEDED"],
  caution: "A planning figure. Boil-off in a closed room enriches its air: ventilate before going in.",
};
