import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { aboveRoom, planArguments, readPlan, tooLarge } from "../../arguments/planArguments";
import { CellError, dateCell } from "../../cells/cellValues";
import { isAbove, roomOn, stockPlan as runPlan } from "../../models/stockPlan";

export const args = tableArguments(planArguments);

/**
 * Stock of liquid day by day: what the plants make, what is delivered, drawn, boiled off and vented, and where it runs
 * short. The vessels of all plants are pooled into one room.
 *
 * @customfunction STOCK_PLAN
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
      const plan = readPlan(given);
      if (plan instanceof CellError) return plan;
      const room = roomOn(plan.plants, plan.firstDate);
      if (isAbove(plan.opening, room)) return aboveRoom(plan.opening, room, plan.firstDate);
      const rows = runPlan(plan);
      if (!rows) return tooLarge();
      return [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        ...rows.map((row) => [
          dateCell(row.date),
          row.opening,
          row.made,
          row.received,
          row.drawn,
          row.boilOff,
          row.vented,
          row.closing,
          row.short,
          row.heldBack,
          row.room,
        ]),
      ];
    },
  );
}

export const about: About = {
  rule: "each day: boil-off = room/empty days × (1 − power hours/24); what a delivery brings above the room is vented; drawn = need × draw ratio as far as there is liquid, the rest is short; made = rate × hours after start-up, outage and restart, as far as there is room, the rest is held back; opening + made + received = drawn + boil-off + vented + closing",
  range:
    "1 to 2,000 consecutive days; a gap, a day twice, a blank or an opening above the room is #VALUE!. Pooling the vessels is an approximation: two half-full vessels are not one full one. Any day with less than 24 h of power counts as one outage followed by a restart; restart hours the day is too short for carry into the next, and hours of start-up count only while there is power. Room and making begin with the switch-on date. Received is what was offered, vented part included; vented liquid is lost or must be refused.",
  source:
    "Mass balance; boil-off, draw ratio and restart: common practice, no source; the order inside a day is an own planning default",
  examples: [
    {
      formula:
        '=OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02";"2026-03-03"},{10;10;10},{0;0;0},{24;24;24},{1,"2026-03-01",24,1.25,50},37.5)',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 37.5, 0, 0, 12.5, 0, 0, 25, 0, 0, 50],
        [46083, 25, 30, 0, 12.5, 0, 0, 42.5, 0, 0, 50],
        [46084, 42.5, 20, 0, 12.5, 0, 0, 50, 0, 10, 50],
      ],
      note: "A plant of 1.25 L/h starts on the first day, fills and waits in standby",
    },
    {
      formula:
        '=OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02"},{40;40},{20;0},{0;24},{2,"2026-02-01",24,1.25,50},90,1.25,8,6)',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 90, 0, 20, 50, 12.5, 0, 47.5, 0, 0, 100],
        [46083, 47.5, 45, 0, 47.5, 0, 0, 45, 2.5, 0, 100],
      ],
      note: "A day without power, then six hours of restart: the second day is 2.5 L short",
    },
  ],
  seeAlso: ["FIRST_SHORT_DATE", "PLAN_TOTALS", "DAY_REPORT", "PLANTS_FOR_PLAN", "DEMAND_TABLE", "SURGE_DEMAND"],
  caution:
    "A planning figure: it knows nothing of breakdowns, leaks or a surge not in the need column. Keep a reserve and a second source that needs no power. Vented oxygen enriches the air: only outdoors, away from flames, fuel, grease and people.",
};
