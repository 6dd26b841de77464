import type { About } from "../../arguments/about";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { formatNumber } from "../../arguments/argument";
import { isoDay } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { deliveryPlanArguments, readPlanThatFits, tooLarge } from "../../arguments/planArguments";
import { CellError, dateCell, invalid, noAnswer } from "../../cells/cellValues";
import { deliveriesNeeded as findDeliveries } from "../../models/deliveriesNeeded";

export const args = tableArguments(deliveryPlanArguments);

/**
 * Latest dates on which whole batches of liquid must come beside what the plants make, so that no day is short or closes
 * below what is to be kept, by the rules of STOCK_PLAN.
 *
 * @customfunction DELIVERIES_NEEDED
 * @param dates Consecutive days of the plan, 1 to 2,000 of them [date]
 * @param need Net liquid needed each day, before the draw ratio; two columns may give date or day number and amount [L]
 * @param power_hours Hours with power each day, 0 to 24 [h]
 * @param plants One row a kind of plant: count, switch-on date or date-time, start-up hours, rate L/h each, capacity L each
 * @param opening Liquid in the plants on the first morning [L]
 * @param batch Liquid that one delivery brings [L]
 * @param keep Least liquid at the close of any day [L]
 * @param [draw_ratio] Liquid drawn for each litre needed
 * @param [empty_days] Days in which full plants without power boil empty [days]
 * @param [restart_hours] Hours after the power is back until liquid accumulates again; needed as soon as a day has less than 24 h of power [h]
 * @param [same_day] TRUE if liquid can be drawn on the day it arrives or is made
 * @returns One row a day with a delivery: date, amount; the header alone when none is needed
 */
export function deliveriesNeeded(
  dates: any[][],
  need: any[][],
  power_hours: any[][],
  plants: any[][],
  opening: any[][],
  batch: any[][],
  keep: any[][],
  draw_ratio?: any[][],
  empty_days?: any[][],
  restart_hours?: any[][],
  same_day?: any[][],
): any[][] {
  return wholeTable(
    args,
    [dates, need, power_hours, plants, opening, batch, keep, draw_ratio, empty_days, restart_hours, same_day],
    (given) => {
      const plan = readPlanThatFits(given);
      if (plan instanceof CellError) return plan;
      const found = findDeliveries(plan, given.batch, given.keep);
      if (found === "too large") return tooLarge();
      if (found === "too long") {
        return invalid("these are more deliveries than can be searched in time; enter a larger batch or fewer days");
      }
      if (!Array.isArray(found)) {
        const lacks =
          found.short > 0
            ? `is ${formatNumber(found.short)} L short`
            : `closes ${formatNumber(found.below)} L below keep`;
        return noAnswer(
          `${isoDay(found.date)} ${lacks} whatever is delivered by then; more stock, more room or less need helps`,
        );
      }
      return [
        ["date", "amount"],
        ...found.map(({ day, batches }) => [dateCell(plan.firstDate + day), batches * given.batch]),
      ];
    },
  );
}

export const about: About = {
  gives: ["date", "liquid"],
  rule: "STOCK_PLAN without deliveries; the first day that is short or closes below keep gets the fewest whole batches that make it whole, on the latest day up to it on which nothing more is vented over the plan; where no day does both, a batch at a time on the latest day that helps and vents least; again until no day is short or below",
  range: `As STOCK_PLAN; batch above 0. A delivery is drawn from the next day on unless same_day is TRUE, so that a first day that is short can't be helped: #N/A names the day. No delivery needed is the header alone, which STOCK_PLAN takes as none. The table goes into STOCK_PLAN as received, as it is: look there at what is vented. ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source: "Search over STOCK_PLAN; common practice, no source",
  examples: [
    {
      formula:
        '=OXYGEN.DELIVERIES_NEEDED({"2026-03-01";"2026-03-02";"2026-03-03";"2026-03-04";"2026-03-05";"2026-03-06"},{40;40;40;40;40;40},{24;24;24;24;24;24},{1,"2026-02-01",12,1.5,200},60,45,20)',
      result: [
        ["date", "amount"],
        [46082, 45],
        [46085, 45],
      ],
      note: "50 L drawn and 36 made a day: 46 L are left for the second day, and 49 for the fifth after the first batch",
    },
    {
      formula:
        '=OXYGEN.DELIVERIES_NEEDED({"2026-03-01";"2026-03-02";"2026-03-03"},{40;40;79.5},{24;12;24},{2,"2026-02-01",24,1.2,50},80,30,0,1.5,10,4,TRUE)',
      result: [
        ["date", "amount"],
        [46084, 30],
      ],
      note: "31.8 L after the outage and 57.6 made against 119.25 drawn: 29.85 are missing on the third day",
    },
    {
      formula:
        '=OXYGEN.DELIVERIES_NEEDED({"2026-03-01";"2026-03-02"},{72;12},{24;24},{1,"2026-02-01",12,1.5,90},70,45,0)',
      result: { error: "#N/A", words: "2026-03-01 is 20 L short whatever is delivered by then" },
    },
  ],
  seeAlso: ["STOCK_PLAN", "DELIVERY_DATES", "PLAN_CHANCE", "PLANTS_FOR_PLAN", "GROSS_DRAW"],
  caution:
    "These are the latest dates, with no day to spare for a late lorry, a breakdown or a surge: keep a reserve, order earlier, and see with PLAN_CHANCE what a late day does. Vented oxygen enriches the air: only outdoors, away from flames, fuel, grease and people.",
};
