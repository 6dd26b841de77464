import type { About } from "../../arguments/about";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { isoDay } from "../../arguments/date";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { aboveRoom, planArguments, readPlan, tooLarge } from "../../arguments/planArguments";
import { count } from "../../arguments/quantity";
import { CellError, noAnswer } from "../../cells/cellValues";
import { defaults } from "../../models/defaults";
import { fewestPlants, withCount } from "../../models/fewestPlants";
import { exceeds } from "../../models/exceeds";
import { firstShortDate, roomOn, stockPlan } from "../../models/stockPlan";

export const args = cellArguments({ ...planArguments, most: count.between(0, 1000).default(defaults.most) });

/**
 * Fewest plants of the first kind with which a stock plan has no shortfall, by the rules of STOCK_PLAN. The count in
 * the first row of plants is what is looked for; the other kinds stay as they are.
 *
 * @customfunction PLANTS_FOR_PLAN
 * @param dates Consecutive days of the plan, 1 to 2,000 of them [date]
 * @param need Net liquid needed each day, before the draw ratio; two columns may give date or day number and amount [L]
 * @param received Liquid a delivery offers each day, 0 where none; a range two wide gives dates and amounts [L]
 * @param power_hours Hours with power each day, 0 to 24 [h]
 * @param plants One row a kind of plant: count, switch-on date or date-time, start-up hours, rate L/h each, capacity L each
 * @param opening Liquid in the plants on the first morning [L]
 * @param [draw_ratio] Liquid drawn for each litre needed
 * @param [empty_days] Days in which full plants without power boil empty [days]
 * @param [restart_hours] Hours after the power is back until liquid accumulates again; needed as soon as a day has less than 24 h of power [h]
 * @param [same_day] TRUE if liquid can be drawn on the day it arrives or is made
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
      const mostPlan = withCount(plan, given.most);
      const room = roomOn(mostPlan.plants, plan.firstDate);
      if (exceeds(plan.opening, room)) return aboveRoom(plan.opening, room, plan.firstDate);
      const fewest = fewestPlants(plan, given.most);
      if (fewest === "too large") return tooLarge();
      if (fewest !== undefined) return fewest;
      const day = firstShortDate(stockPlan(mostPlan)!)!;
      return noAnswer(
        `no number of plants from 0 to ${given.most} avoids a shortfall; with ${given.most} the first is on ${isoDay(day)}. Where more plants come too late, only stock and deliveries help`,
      );
    },
  );
}

export const about: About = {
  gives: "count",
  rule: "the smallest count of the first kind, from 0 to most, whose STOCK_PLAN has no shortfall",
  range: `As STOCK_PLAN; most from 0 to 1,000. Counts whose room can't hold the opening are passed over. Every count is tried: a larger room also boils off more in an outage. ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source: "Search over STOCK_PLAN; common practice, no source",
  examples: [
    {
      formula:
        '=OXYGEN.PLANTS_FOR_PLAN({"2026-03-01";"2026-03-02";"2026-03-03"},{40;85;40},{0;0;0},{18;24;24},{2,"2026-02-01",24,1.2,50},80,1.7,10,4,TRUE)',
      result: 3,
      note: "Three leave 58.65 L after the first day; with 86.4 made they carry the second day's 144.5 L, two don't",
    },
    {
      formula:
        '=OXYGEN.PLANTS_FOR_PLAN({"2026-03-01";"2026-03-02"},{0;500},{0;0},{24;24},{1,"2026-02-01",24,1.2,50},0,,,,,30)',
      result: 22,
      note: "625 L drawn on the second day, 28.8 L made by each plant on the first",
    },
    {
      formula:
        '=OXYGEN.PLANTS_FOR_PLAN({"2026-03-01";"2026-03-02"},{72;12},{0;0},{24;24},{1,"2026-02-01",24,1.2,50},70)',
      result: { error: "#N/A", words: "no number of plants from 0 to 20" },
      note: "90 L drawn on the first day from 70 L: no plant helps in time",
    },
  ],
  seeAlso: ["STOCK_PLAN", "FIRST_SHORT_DATE", "PLAN_CHANCE", "PLANTS_NEEDED", "DELIVERIES_NEEDED"],
  caution:
    "A planning figure without a spare plant. Enter a spare plant into STOCK_PLAN and look again before you count on it: its room boils off too in an outage, so that one more can even bring a shortfall. Keep a reserve that needs no power.",
};
