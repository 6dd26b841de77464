import type { About } from "../../arguments/about";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { planArguments, readPlanThatFits, tooLarge } from "../../arguments/planArguments";
import { CellError, dateCell, noAnswer } from "../../cells/cellValues";
import { firstShortDate as firstShort, stockPlan } from "../../models/stockPlan";

export const args = cellArguments(planArguments);

/**
 * First day on which a stock plan runs short, by the rules of STOCK_PLAN.
 *
 * @customfunction FIRST_SHORT_DATE
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
      const plan = readPlanThatFits(given);
      if (plan instanceof CellError) return plan;
      const rows = stockPlan(plan);
      if (!rows) return tooLarge();
      const day = firstShort(rows);
      return day === undefined ? noAnswer("no shortfall in these dates") : dateCell(day);
    },
  );
}

export const about: About = {
  gives: "date",
  rule: "the first date of STOCK_PLAN whose drawn liquid is less than need × draw ratio",
  range: `As STOCK_PLAN. A plan without shortfall is #N/A "no shortfall in these dates": it says nothing of the days after, and nothing of chance (PLAN_CHANCE). ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source:
    "Mass balance; boil-off, draw ratio and restart: common practice, no source; the order inside a day is an own planning default",
  examples: [
    {
      formula:
        '=OXYGEN.FIRST_SHORT_DATE({"2026-03-01";"2026-03-02";"2026-03-03"},{40;72.4;60},{0;0;0},{18;24;24},{2,"2026-02-01",24,1.2,50},80,1.5,10,4,TRUE)',
      result: 46084,
      note: "51.1 L after the first day and 57.6 made carry the second day's 108.6 L and leave 0.1 for the third",
    },
    {
      formula:
        '=OXYGEN.FIRST_SHORT_DATE({"2026-03-01";"2026-03-02"},{12;12},{0;0},{24;24},{2,"2026-02-01",24,1.2,50},70)',
      result: { error: "#N/A", words: "no shortfall in these dates" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "PLAN_CHANCE", "DELIVERIES_NEEDED", "PLANTS_FOR_PLAN", "STOCK_OUT_ON"],
  caution: "A planning figure: breakdowns and surges come on top. Order and move patients well before this date.",
};
