import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planTable, wholePlan } from "../../arguments/planTable";
import { planTotals as totals } from "../../models/stockPlan";

export const args = tableArguments({ plan: planTable });

/**
 * Sums of a stock plan, with the balance that shows whether the table is whole.
 *
 * @customfunction PLAN_TOTALS
 * @param plan The table of STOCK_PLAN, with or without its header row
 * @returns One row: opening of the first day, made, received, drawn, boil-off, vented, closing of the last day, short, balance [L]
 */
export function planTotals(plan: any[][]): any[][] {
  return wholeTable(args, [plan], (given) => {
    const gap = wholePlan(given.plan);
    if (gap) return gap;
    const sums = totals(given.plan.map(({ boil_off, ...row }) => ({ ...row, boilOff: boil_off })));
    return [
      ["opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "balance"],
      [
        sums.opening,
        sums.made,
        sums.received,
        sums.drawn,
        sums.boilOff,
        sums.vented,
        sums.closing,
        sums.short,
        sums.balance,
      ],
    ];
  });
}

export const about: About = {
  rule: "balance = opening + made + received − drawn − boil-off − vented − closing; 0 for a whole table",
  range:
    "The eleven columns of STOCK_PLAN, consecutive days; filtered or sorted rows are #VALUE!. A balance other than 0 means that a cell was overtyped.",
  source: "Mass balance; plain arithmetic",
  examples: [
    {
      formula:
        '=OXYGEN.PLAN_TOTALS({"2026-03-01",37.5,0,0,12.5,0,0,25,0,0,50;"2026-03-02",25,30,0,12.5,0,0,42.5,0,0,50;"2026-03-03",42.5,20,0,12.5,0,0,50,0,10,50})',
      result: [
        ["opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "balance"],
        [37.5, 50, 0, 37.5, 0, 0, 50, 0, 0],
      ],
    },
    {
      formula:
        '=OXYGEN.PLAN_TOTALS(OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02"},{40;40},{20;0},{0;24},{2,"2026-02-01",24,1.25,50},90,1.25,8,6))',
      result: [
        ["opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "balance"],
        [90, 45, 20, 97.5, 12.5, 0, 45, 2.5, 0],
      ],
      note: "The table of STOCK_PLAN goes straight in",
    },
  ],
  seeAlso: ["STOCK_PLAN", "BOOK_BALANCE", "DAY_REPORT"],
};
