import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { DailyAmountsArgument } from "../../arguments/column";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { consecutiveRows } from "../../arguments/planArguments";
import { sameUnit } from "../../arguments/quantity";
import { noAnswer } from "../../cells/cellValues";
import { daysCovered as cover } from "../../models/coverage";

export const args = cellArguments({
  stock: sameUnit,
  needs: new DailyAmountsArgument(sameUnit),
  daily_loss: sameUnit,
});

/**
 * Days a stock lasts down a list of daily needs, the last day in part. All amounts in one unit.
 *
 * @customfunction DAYS_COVERED
 * @param stock Stock at hand, in the unit of the needs
 * @param needs What is drawn each day, the first day first; two columns give dates or day numbers, one after the other, and needs
 * @param daily_loss Loss each day, in the same unit: liquid boils off (DAILY_LOSS), 0 for cylinders
 * @returns Days the stock lasts [days]
 */
export function daysCovered(stock: any[][], needs: any[][], daily_loss: any[][]): any[][] {
  return eachCell(args, [stock, needs, daily_loss], (given) => {
    const gap = consecutiveRows(given.needs, "needs");
    if (gap) return gap;
    const amounts = given.needs.map(({ amount }) => amount);
    const covered = cover(given.stock, amounts, given.daily_loss);
    return covered ?? noAnswer(`longer than the list of ${amounts.length} day${amounts.length === 1 ? "" : "s"}`);
  });
}

export const about: About = {
  gives: "days",
  rule: "whole days while stock covers need + loss, then the part of the next day that is left stock/(need + loss)",
  range: `Needs and loss 0 or more, a blank is refused; dates beside the needs must be consecutive days. For a stock of liquid enter what is drawn from it, need × draw ratio (GROSS_DRAW), and what boils off: without both the answer flatters (DAYS_UNTIL_EMPTY has them in it). Stock left after the last day is #N/A "longer than the list"; a stock that ends with the list lasts as long as the list. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DAYS_COVERED(90,{26;38;52},0)",
      result: 2.5,
      note: "26 and 38 leave 26 of the third day's 52",
    },
    {
      formula: "=OXYGEN.DAYS_COVERED(90,{26;38;52},8)",
      result: 2 + 10 / 60,
      note: "34 and 46 leave 10 of 60",
    },
    {
      formula: '=OXYGEN.DAYS_COVERED(45,{"2026-03-01",30;"2026-03-02",20},5)',
      result: 1.4,
      note: "35 on the first day, then 10 of 25",
    },
    {
      formula: '=OXYGEN.DAYS_COVERED(45,{"2026-03-01",30;"2026-03-04",20},5)',
      result: { error: "#VALUE!", words: "with a gap of 2 days" },
    },
    { formula: "=OXYGEN.DAYS_COVERED(90,{26;38},0)", result: { error: "#N/A", words: "longer than the list" } },
  ],
  seeAlso: ["GROSS_DRAW", "DAILY_LOSS", "DAYS_UNTIL_EMPTY", "DAYS_OF_SUPPLY", "DELIVERY_DATES", "FIRST_SHORT_DATE"],
  caution: "A planning figure: keep a reserve beyond it for surges and late deliveries.",
};
