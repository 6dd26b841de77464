import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { planOfTable, planTable } from "../../arguments/planTable";
import { CellError } from "../../cells/cellValues";
import { planTotals as totals } from "../../models/planTables";

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
    const days = planOfTable(given.plan, "plan");
    if (days instanceof CellError) return days;
    const sums = totals(days);
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
  gives: ["liquid", "liquid", "liquid", "gross liquid", "liquid", "liquid", "liquid", "gross liquid", "liquid"],
  rule: "balance = Σ over the rows of |opening + made + received − drawn − boil-off − vented − closing| and of |opening − closing of the row before|; 0 only for a whole table",
  range:
    "The eleven columns of STOCK_PLAN, consecutive days; filtered or sorted rows are #VALUE!. A balance other than 0 means that a cell was overtyped; it does not see short, held back and room. Under 1e-9 L it is 0.",
  source: "Mass balance; plain arithmetic",
  examples: [
    {
      formula:
        '=OXYGEN.PLAN_TOTALS({"2026-03-01",30,9,0,15,0,0,24,0,0,60;"2026-03-02",24,36,0,15,0,0,45,0,0,60;"2026-03-03",45,10,20,15,0,0,60,0,26,60})',
      result: [
        ["opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "balance"],
        [30, 55, 20, 45, 0, 0, 60, 0, 0],
      ],
      source: "9 + 36 + 10 made, 20 received, 3 × 15 drawn; 30 + 55 + 20 = 45 + 60",
    },
    {
      formula:
        '=OXYGEN.PLAN_TOTALS({"2026-03-01",30,9,0,15,0,0,34,0,0,60;"2026-03-02",24,36,0,15,0,0,45,0,0,60;"2026-03-03",45,10,20,15,0,0,60,0,26,60})',
      result: [
        ["opening", "made", "received", "drawn", "boil-off", "vented", "closing", "short", "balance"],
        [30, 55, 20, 45, 0, 0, 60, 0, 20],
      ],
      note: "The first closing was overtyped with 34: its row is out by 10, and so is the step to the next opening",
    },
  ],
  seeAlso: ["STOCK_PLAN", "PLANS_TOGETHER", "BOOK_BALANCE", "DAY_REPORT"],
};
