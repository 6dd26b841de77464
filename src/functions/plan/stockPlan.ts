import type { About } from "../../arguments/about";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planArguments, readPlanThatFits, tooLarge } from "../../arguments/planArguments";
import { planKinds, tableOfPlan } from "../../arguments/planTable";
import { CellError } from "../../cells/cellValues";
import { stockPlan as runPlan } from "../../models/stockPlan";

export const args = tableArguments(planArguments);

/**
 * Stock of liquid day by day: what the plants make, what is delivered, drawn, boiled off and vented, and where it runs
 * short. The vessels of all plants are pooled into one room.
 *
 * @customfunction STOCK_PLAN
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
 * @returns One row a day: date, opening, made, received, drawn, boil-off, vented, closing, short, held back, room [L]
 */
export function stockPlan(
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
  return wholeTable(
    args,
    [dates, need, received, power_hours, plants, opening, draw_ratio, empty_days, restart_hours, same_day],
    (given) => {
      const plan = readPlanThatFits(given);
      if (plan instanceof CellError) return plan;
      const days = runPlan(plan);
      return days ? tableOfPlan(days) : tooLarge();
    },
  );
}

export const about: About = {
  gives: planKinds,
  rule: "each day in this order: boil-off = room/empty days × (1 − power hours/24); drawn = need × draw ratio as far as there is liquid, the rest is short; of a delivery what does not fit the room is vented; made = rate × hours after start-up, outage and restart, as far as there is room, the rest is held back. With same_day the delivery comes before the drawing, which may also use what is made. opening + made + received = drawn + boil-off + vented + closing",
  range: `1 to 2,000 consecutive days; a gap, a day twice, a blank or an opening above the room is #VALUE!, and so is a day with less than 24 h of power without restart_hours. Any day with less than 24 h of power counts as one outage followed by a restart, unless start-up has not begun; restart hours the day is too short for carry into the next, and a new outage sets them anew. Start-up hours count only while there is power, and run from the time of day of the switch-on; the room counts that whole day. Pooling the vessels is an approximation: two half-full vessels are not one full one. Dated deliveries outside the days are left out. Received is what was offered, vented part included; vented liquid is lost or must be refused. ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source:
    "Mass balance; boil-off, draw ratio and restart: common practice, no source; the order inside a day is an own planning default",
  examples: [
    {
      formula:
        '=OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02";"2026-03-03"},{12;12;12},{"2026-03-03",20},{24;24;24},{1,"2026-03-01 06:00",12,1.5,60},30)',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 30, 9, 0, 15, 0, 0, 24, 0, 0, 60],
        [46083, 24, 36, 0, 15, 0, 0, 45, 0, 0, 60],
        [46084, 45, 10, 20, 15, 0, 0, 60, 0, 26, 60],
      ],
      note: "Switched on at six: 18 h of the first day less 12 of start-up make 9 L; on the third day the plant fills and waits",
    },
    {
      formula:
        '=OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02"},{40;90},{30;0},{18;24},{2,"2026-02-01",24,1.2,50},80,1.5,10,4,TRUE)',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 80, 33.6, 30, 60, 2.5, 7.5, 73.6, 0, 0, 100],
        [46083, 73.6, 57.6, 0, 131.2, 0, 0, 0, 3.8, 0, 100],
      ],
      note: "Six hours without power boil off 2.5 L, and 4 h of restart leave 14 h of making; the second day is 3.8 L short",
    },
  ],
  seeAlso: ["FIRST_SHORT_DATE", "PLAN_TOTALS", "PLAN_CHANCE", "DELIVERIES_NEEDED", "DAY_REPORT", "PLANTS_FOR_PLAN"],
  caution:
    "A planning figure: it knows nothing of breakdowns, leaks or a surge not in the need column; PLAN_CHANCE shows what some of them do. Keep a reserve and a second source that needs no power. Vented oxygen enriches the air: only outdoors, away from flames, fuel, grease and people.",
};
