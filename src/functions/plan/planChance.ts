import type { About } from "../../arguments/about";
import { blankAsZero, drawRatioOfPortables, emptyDaysOfOthers } from "../../arguments/whereCautionEnds";
import { formatNumber } from "../../arguments/argument";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planArguments, readPlanThatFits, tooLarge } from "../../arguments/planArguments";
import { count, days, fraction, share } from "../../arguments/quantity";
import { CellError, dateCell, invalid } from "../../cells/cellValues";
import { defaults } from "../../models/defaults";
import { downChance, mostPlants, mostRuns, planChance as runPlans } from "../../models/planChance";
import { mostSeed } from "../../models/randomNumbers";

export const args = tableArguments({
  ...planArguments,
  need_spread: share.between(0, 2).default(defaults.need_spread),
  availability: fraction.aboveTo(0, 1).default(defaults.availability),
  repair_days: days.between(1, 365).default(defaults.repair_days),
  late_days: days.between(0, 365).default(defaults.late_days),
  runs: count.between(1, 100_000).default(defaults.runs),
  seed: count.between(0, mostSeed).default(defaults.seed),
});

/**
 * Chance that a stock plan runs short, day by day: STOCK_PLAN run many times with needs that swing, plants that break
 * down and deliveries that come late.
 *
 * @customfunction PLAN_CHANCE
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
 * @param [need_spread] Standard deviation of a day's need as a share of it, 0 to 2
 * @param [availability] Share of days on which a plant works, above 0
 * @param [repair_days] Mean days until a plant that is down works again, 1 or more [days]
 * @param [late_days] Mean days by which a delivery is late [days]
 * @param [runs] Times the plan is run, 1 to 100,000; four times as many halve the error
 * @param [seed] Whole number that begins the chance: the same one gives the same answer
 * @returns One row a day: date, chance short that day, chance short by then, and the 5th, 50th and 95th percentile of closing [L]
 */
export function planChance(
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
  need_spread?: any[][],
  availability?: any[][],
  repair_days?: any[][],
  late_days?: any[][],
  runs?: any[][],
  seed?: any[][],
): any[][] {
  return wholeTable(
    args,
    [
      dates,
      need,
      received,
      power_hours,
      plants,
      opening,
      draw_ratio,
      empty_days,
      restart_hours,
      same_day,
      need_spread,
      availability,
      repair_days,
      late_days,
      runs,
      seed,
    ],
    (given) => {
      const plan = readPlanThatFits(given);
      if (plan instanceof CellError) return plan;
      const downs = downChance(given.availability, given.repair_days);
      if (downs > 1) {
        return invalid(
          `availability ${formatNumber(given.availability)} with repair_days ${formatNumber(given.repair_days)} would need a working plant to break down ${formatNumber(downs)} times a day; enter a higher availability or more repair_days`,
        );
      }
      const each = plan.plants.reduce((sum, kind) => sum + kind.count, 0);
      if (each > mostPlants) {
        return invalid(`plants has ${each} plants; at most ${mostPlants} are run one by one`);
      }
      const most = mostRuns(given.dates.length, each, plan.deliveries.length);
      if (given.runs > most) {
        return invalid(
          `runs is ${given.runs}; at most ${most} are run at a time with ${given.dates.length} days and ${each} plants: enter fewer`,
        );
      }
      const rows = runPlans(plan, {
        deliveries: plan.deliveries,
        needSpread: given.need_spread,
        availability: given.availability,
        repairDays: given.repair_days,
        lateDays: given.late_days,
        runs: given.runs,
        seed: given.seed,
      });
      if (!rows) return tooLarge();
      return [
        ["date", "chance short that day", "chance short by then", "closing low", "closing middle", "closing high"],
        ...rows.map((row) => [dateCell(row.date), row.short, row.shortBy, row.low, row.middle, row.high]),
      ];
    },
  );
}

export const about: About = {
  gives: ["date", "fraction", "fraction", "liquid", "liquid", "liquid"],
  rule: "in each run every day's need is multiplied by an independent gamma number of mean 1 and standard deviation need_spread; each plant is up or down by the day: up on the first day with chance availability, from down to up with chance 1/repair_days, from up to down with chance (1 − availability)/(availability × repair_days); a plant that is down makes nothing and boils off as in an outage, and needs its restart hours after it; each delivery is n or more days late with chance (late_days/(1 + late_days))ⁿ. Chance = share of the runs; low, middle and high as PERCENTILE.INC of the closings",
  range: `As STOCK_PLAN. With need_spread 0, availability 1 and late_days 0 every run is STOCK_PLAN. A chance p of so many runs has a standard error of √(p(1 − p)/runs): a chance shown as 0 is one too rare for these runs, not none. Rows of received are deliveries of their own; one that comes after the last day is not counted. A plant that starts again is at once as before where restart_hours is left out: give them. Large plans take fewer runs, at most 1,000 plants. The same seed gives the same digits in every program. ${drawRatioOfPortables} ${emptyDaysOfOthers} ${blankAsZero}`,
  source:
    "Repeated runs by chance (Monte Carlo) over STOCK_PLAN. Numbers: xoshiro128** of Blackman & Vigna (ACM TOMS 47, 2021), checked against the outputs published for it; gamma: Marsaglia & Tsang (ACM TOMS 26, 2000); normal: polar method of Marsaglia & Bray (1964); a plant up or down is a two-state Markov chain. Papers from memory. The defaults are own planning defaults",
  examples: [
    {
      formula:
        '=OXYGEN.PLAN_CHANCE({"2026-03-01";"2026-03-02"},{40;90},{10;0},{18;24},{2,"2026-02-01",24,1.2,50},80,1.5,10,4,TRUE,0,1,2,0,20)',
      result: [
        ["date", "chance short that day", "chance short by then", "closing low", "closing middle", "closing high"],
        [46082, 0, 0, 61.1, 61.1, 61.1],
        [46083, 1, 1, 0, 0, 0],
      ],
      note: "Nothing is left to chance: every run is the plan itself, 135 L drawn from 118.7 on the second day",
    },
    {
      formula:
        '=OXYGEN.PLAN_CHANCE({"2026-03-01";"2026-03-02";"2026-03-03"},{16;16;16},{"2026-03-01",40},{24;24;24},{1,"2026-03-01",999,1,100},20,,,,,0,1,,0.5,2000,3)',
      result: [
        ["date", "chance short that day", "chance short by then", "closing low", "closing middle", "closing high"],
        [46082, 0, 0, 0, 40, 40],
        [46083, 1 / 3, 1 / 3, 0, 20, 40],
        [46084, 1 / 9, 1 / 3, 0, 0, 40],
      ],
      tolerance: 0.045,
      source: "Geometric distribution: a day or more late with chance 1/3, two or more with 1/9; four standard errors",
      note: "A delivery late by half a day on average; drawn are 20 L a day, and only it can cover the second and third day",
    },
    {
      formula:
        '=OXYGEN.PLAN_CHANCE({"2026-03-01";"2026-03-02"},{38.4;38.4},{0;0},{24;24},{1,"2026-02-01",24,2,50},0,,,,TRUE,0,0.8,4)',
      result: [
        ["date", "chance short that day", "chance short by then", "closing low", "closing middle", "closing high"],
        [46082, 0.2, 0.2, 0, 0, 0],
        [46083, 0.2, 0.25, 0, 0, 0],
      ],
      tolerance: 0.055,
      source: "Two-state Markov chain: 1 − 0.8 × (1 − 0.2/(0.8 × 4)) = 0.25 by the second day; four standard errors",
      note: "One plant that makes just what is drawn, with nothing in store: short whenever it is down",
    },
  ],
  seeAlso: ["STOCK_PLAN", "FIRST_SHORT_DATE", "STOCK_OUT_CHANCE", "SUPPLY_CHANCE", "DELIVERIES_NEEDED"],
  caution:
    "A chance of this model, not of the world: it leaves out outages not in power_hours, fuel, leaks, a surge that lasts (each day swings by itself), a cause that stops several plants at once, and deliveries that never come. Real chances are higher. Keep a reserve and a second source that needs no power.",
};
