import type { About } from "../../arguments/about";
import { isoDay } from "../../arguments/date";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planKinds, planOfTable, planTable, tableOfPlan } from "../../arguments/planTable";
import { CellError, invalid } from "../../cells/cellValues";
import { plansTogether as addUp } from "../../models/planTables";
import type { StockPlanDay } from "../../models/stockPlan";

export const args = tableArguments({
  plan: planTable,
  plan_2: planTable,
  plan_3: planTable.mayBeOmitted(),
  plan_4: planTable.mayBeOmitted(),
});

const daysOf = (days: readonly StockPlanDay[]): string =>
  `${isoDay(days[0]!.date)} to ${isoDay(days[days.length - 1]!.date)}`;

/**
 * Stock plans of two to four sites added up day by day, as a table that PLAN_TOTALS and DAY_REPORT take.
 *
 * @customfunction PLANS_TOGETHER
 * @param plan The table of STOCK_PLAN of the first site, with or without its header row
 * @param plan_2 The same of the second site, with the same dates
 * @param [plan_3] The same of a third site
 * @param [plan_4] The same of a fourth site
 * @returns One row a day: date, opening, made, received, drawn, boil-off, vented, closing, short, held back, room [L]
 */
export function plansTogether(plan: any[][], plan_2: any[][], plan_3?: any[][], plan_4?: any[][]): any[][] {
  return wholeTable(args, [plan, plan_2, plan_3, plan_4], (given) => {
    const plans: StockPlanDay[][] = [];
    for (const name of args.names) {
      const rows = given[name];
      if (rows === undefined) continue;
      const days = planOfTable(rows, name);
      if (days instanceof CellError) return days;
      const [first] = plans;
      if (first && (days[0]!.date !== first[0]!.date || days.length !== first.length)) {
        return invalid(
          `${name} runs from ${daysOf(days)} and plan from ${daysOf(first)}; they must have the same dates`,
        );
      }
      plans.push(days);
    }
    return tableOfPlan(addUp(plans));
  });
}

export const about: About = {
  gives: planKinds,
  rule: "each column is the sum of that day over the sites",
  range:
    "Two to four tables of STOCK_PLAN with the same consecutive dates. Liquid of one site does not cover what is short at another: a day is short as soon as one site is, even while another closes full.",
  source: "Plain arithmetic",
  examples: [
    {
      formula: '=OXYGEN.PLANS_TOGETHER({"2026-03-01",30,9,0,15,0,0,24,0,0,60},{"2026-03-01",12,20,4,28,3,1,4,6,2,45})',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 42, 29, 4, 43, 3, 1, 28, 6, 2, 105],
      ],
      note: "28 L are left and 6 L were short all the same",
    },
    {
      formula:
        '=OXYGEN.PLANS_TOGETHER({"2026-03-01",30,9,0,15,0,0,24,0,0,60},{"2026-03-01",12,20,4,28,3,1,4,6,2,45},{"2026-03-01",5,0,10,8,1,0,6,0,0,20},{"2026-03-01",0,7,0,3,0,0,4,0,1,30})',
      result: [
        ["date", "opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "held back", "room"],
        [46082, 47, 36, 14, 54, 4, 1, 38, 6, 3, 155],
      ],
      note: "Four sites",
    },
    {
      formula: '=OXYGEN.PLANS_TOGETHER({"2026-03-01",30,9,0,15,0,0,24,0,0,60},{"2026-03-02",12,20,4,28,3,1,4,6,2,45})',
      result: { error: "#VALUE!", words: "they must have the same dates" },
    },
  ],
  seeAlso: ["SHARE_OUT", "STOCK_PLAN", "PLAN_TOTALS", "DELIVERIES_NEEDED", "DAY_REPORT"],
  caution: "Sums hide an empty site: look at the short column, and at each site's own plan before moving liquid.",
};
