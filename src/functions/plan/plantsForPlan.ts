import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { aboveRoom, planArguments, readPlan, tooLarge } from "../../arguments/planArguments";
import { isoDay } from "../../arguments/date";
import { count } from "../../arguments/quantity";
import { CellError, noAnswer } from "../../cells/cellValues";
import { fewestPlants, firstShortDate, isAbove, roomOn, stockPlan } from "../../models/stockPlan";

export const args = cellArguments({ ...planArguments, most: count.between(0, 1000).default(defaults.most) });

/**
 * Fewest plants of the first kind with which a stock plan has no shortfall, by the rules of STOCK_PLAN. The count in
 * the first row of plants is what is looked for; the other kinds stay as they are.
 *
 * @customfunction PLANTS_FOR_PLAN
 * @param dates Consecutive days of the plan, 1 to 2,000 of them [date]
 * @param need Liquid needed in the vessels of the patients each day; two columns may give date or day number and amount [L]
 * @param received Liquid a delivery offers each day, 0 where none; two columns may give the dates of the deliveries and their amounts [L]
 * @param power_hours Hours with power each day, 0 to 24 [h]
 * @param plants One row a kind of plant: count, switch-on date, start-up hours, rate L/h each, capacity L each
 * @param opening Liquid in the plants on the first morning [L]
 * @param [draw_ratio] Liquid drawn for each litre needed
 * @param [empty_days] Days in which full plants without power boil empty [days]
 * @param [restart_hours] Hours after an outage until liquid accumulates again [h]; each kind's start-up hours if omitted
 * @param [same_day] TRUE if liquid can be drawn on the day it is made
 * @param [most] Most plants of the first kind to try
 * @returns Plants of the first kind
 */
export function plantsForPlan(
  dates: any[][],
  need: any[][],
  received: any[][],
  power_hours: any[][],
  plants: any[][],
  opening: any[][],
  draw_ratio?: any[][],
  empty_days?: any[][],
  restart_hours?: any[][],
  same_day?: any[][],
  most?: any[][],
): any[][] {
  return eachCell(
    args,
    [dates, need, received, power_hours, plants, opening, draw_ratio, empty_days, restart_hours, same_day, most],
    (given) => {
      const plan = readPlan(given);
      if (plan instanceof CellError) return plan;
      const room = roomOn([{ ...plan.plants[0]!, count: given.most }, ...plan.plants.slice(1)], plan.firstDate);
      if (isAbove(plan.opening, room)) return aboveRoom(plan.opening, room, plan.firstDate);
      const fewest = fewestPlants(plan, given.most);
      if (fewest === "too large") return tooLarge();
      if (fewest !== undefined) return fewest;
      const plants = [{ ...plan.plants[0]!, count: given.most }, ...plan.plants.slice(1)];
      const day = firstShortDate(stockPlan({ ...plan, plants })!)!;
      return noAnswer(
        `no number of plants from 0 to ${given.most} avoids a shortfall; with ${given.most} the first is on ${isoDay(day)}. Where more plants come too late, only stock and deliveries help`,
      );
    },
  );
}

export const about: About = {
  rule: "the smallest count of the first kind, from 0 to most, whose STOCK_PLAN has no shortfall",
  range:
    "As STOCK_PLAN; most from 0 to 1,000. Counts whose room can't hold the opening are passed over. Every count is tried: a larger room also boils off more in an outage.",
  source: "Search over STOCK_PLAN; common practice, no source",
  examples: [
    {
      formula:
        '=OXYGEN.PLANTS_FOR_PLAN({"2026-03-01";"2026-03-02";"2026-03-03"},{48;48;48},{0;0;0},{24;24;24},{1,"2026-02-01",24,1.25,50},60)',
      result: 2,
      note: "60 L a day drawn; one plant holds 50 L, two make 60 L a day",
    },
    {
      formula:
        '=OXYGEN.PLANTS_FOR_PLAN({"2026-03-01";"2026-03-02"},{80;48},{0;0},{24;24},{1,"2026-02-01",24,1.25,50},60)',
      result: { error: "#N/A", words: "no number of plants from 0 to 20" },
      note: "100 L drawn on the first day from 60 L: no plant helps in time",
    },
  ],
  seeAlso: ["STOCK_PLAN", "FIRST_SHORT_DATE", "PLANTS_NEEDED", "ENOUGH_UNITS_CHANCE"],
  caution: "A planning figure without a spare plant: add at least one, and a reserve that needs no power.",
};
