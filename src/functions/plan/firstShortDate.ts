import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { aboveRoom, planArguments, readPlan, tooLarge } from "../../arguments/planArguments";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";
import { firstShortDate as firstShort, isAbove, roomOn, stockPlan } from "../../models/stockPlan";

export const args = cellArguments(planArguments);

/**
 * First day on which a stock plan runs short, by the rules of STOCK_PLAN.
 *
 * @customfunction FIRST_SHORT_DATE
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
 * @returns First day with a shortfall [date]
 */
export function firstShortDate(
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
): any[][] {
  return eachCell(
    args,
    [dates, need, received, power_hours, plants, opening, draw_ratio, empty_days, restart_hours, same_day],
    (given) => {
      const plan = readPlan(given);
      if (plan instanceof CellError) return plan;
      const room = roomOn(plan.plants, plan.firstDate);
      if (isAbove(plan.opening, room)) return aboveRoom(plan.opening, room, plan.firstDate);
      const rows = stockPlan(plan);
      if (!rows) return tooLarge();
      const day = firstShort(rows);
      return day === undefined ? noAnswer("no shortfall in these dates") : dateCell(day);
    },
  );
}

export const about: About = {
  rule: "the first date of STOCK_PLAN whose drawn liquid is less than need × draw ratio",
  range: 'As STOCK_PLAN. A plan without shortfall is #N/A "no shortfall in these dates".',
  source:
    "Mass balance; boil-off, draw ratio and restart: common practice, no source; the order inside a day is an own planning default",
  examples: [
    {
      formula:
        '=OXYGEN.FIRST_SHORT_DATE({"2026-03-01";"2026-03-02"},{40;40},{20;0},{0;24},{2,"2026-02-01",24,1.25,50},90,1.25,8,6)',
      result: 46083,
      note: "90 + 20 − 12.5 − 50 leaves 47.5 L for the 50 L of the second day",
    },
    {
      formula:
        '=OXYGEN.FIRST_SHORT_DATE({"2026-03-01";"2026-03-02"},{10;10},{0;0},{24;24},{2,"2026-02-01",24,1.25,50},90)',
      result: { error: "#N/A", words: "no shortfall in these dates" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "PLANTS_FOR_PLAN", "STOCK_OUT_ON", "DELIVERY_DATES"],
  caution: "A planning figure: breakdowns and surges come on top. Order and move patients well before this date.",
};
