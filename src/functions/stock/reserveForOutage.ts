import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { emptyDays, fraction, hours, litres, litresPerDay, number } from "../../arguments/quantity";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { defaults } from "../../models/defaults";
import { reserveForOutage as reserveLitres } from "../../models/reserve";

export const args = cellArguments({
  daily_need: litresPerDay.as("net liquid a day"),
  mean_outage_hours: hours.positive(),
  level: fraction.fromToBelow(0, 1),
  restart_hours: hours,
  capacity: litres.positive(),
  draw_ratio: number.atLeast(1).default(defaults.draw_ratio),
  empty_days: emptyDays.default(defaults.empty_days),
});

/**
 * Liquid to keep so that an outage of the power is carried, for a chosen share of outages: what patients draw and what
 * boils away until the plant makes liquid again.
 *
 * @customfunction RESERVE_FOR_OUTAGE
 * @param daily_need Liquid needed a day in the vessels of the patients, net [L/day]
 * @param mean_outage_hours Hours an outage lasts, on average [h]
 * @param level Share of outages to be carried, from 0 to under 1
 * @param restart_hours Hours after the power is back until liquid accumulates [h]
 * @param capacity Liquid the vessels of the plants hold when full [L]
 * @param [draw_ratio] Liquid drawn for each litre needed
 * @param [empty_days] Days in which full vessels without power boil empty [days]
 * @returns Liquid to keep in reserve [L]
 */
export function reserveForOutage(
  daily_need: any[][],
  mean_outage_hours: any[][],
  level: any[][],
  restart_hours: any[][],
  capacity: any[][],
  draw_ratio?: any[][],
  empty_days?: any[][],
): any[][] {
  return eachCell(
    args,
    [daily_need, mean_outage_hours, level, restart_hours, capacity, draw_ratio, empty_days],
    (given) =>
      reserveLitres({
        dailyNeed: given.daily_need,
        meanOutageHours: given.mean_outage_hours,
        level: given.level,
        restartHours: given.restart_hours,
        capacity: given.capacity,
        drawRatio: given.draw_ratio,
        emptyDays: given.empty_days,
      }),
  );
}

const ratio = defaults.draw_ratio.value;
const days = defaults.empty_days.value;
const outage = -5 * Math.log(0.1);

export const about: About = {
  gives: "liquid",
  rule: "outage = −mean × ln(1 − level); daily need × draw ratio × (outage + restart) / 24 + capacity / empty days × outage / 24",
  range: `Mean outage and capacity above 0; level from 0 to under 1. Outages are taken as exponential: one in e lasts longer than the mean. Where long ones come more often (storms, a fuel shortage), the true reserve is larger. The answer may be above the capacity: then no full vessel carries it, and another source must. ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source:
    "Quantile of the exponential distribution (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.7); draw ratio and loss: common practice, no source",
  examples: [
    {
      formula: "=OXYGEN.RESERVE_FOR_OUTAGE(32,5,90%,6,110)",
      result: (32 * ratio * (outage + 6)) / 24 + ((110 / days) * outage) / 24,
      note: "Nine outages in ten last up to 11.5 h",
      source: "−5 × ln 0.1 = 11.51 h of outage and 6 h of restart",
    },
    {
      formula: "=OXYGEN.RESERVE_FOR_OUTAGE(32,5,90%,6,110,1.4,6)",
      result: (32 * 1.4 * (outage + 6)) / 24 + ((110 / 6) * outage) / 24,
      note: "Small portables and a weaker vacuum ask for more",
      source: "The same with 1.4 L drawn a litre and 6 days",
    },
    {
      formula: "=OXYGEN.RESERVE_FOR_OUTAGE(24,5,0,6,110,1)",
      result: 6,
      note: "Level 0 carries the restart alone",
      source: "24 × 6 / 24",
    },
  ],
  seeAlso: ["OUTAGE_COST", "STOCK_PLAN", "PLAN_CHANCE", "DAYS_UNTIL_EMPTY"],
  caution:
    "A planning figure for liquid alone: keep a source that needs no power (cylinders) for the outage that lasts longer, and try the change-over before it is needed.",
};
