import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { DailyAmountsArgument } from "../../arguments/column";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { noAnswer } from "../../cells/cellValues";
import { daysCovered as cover } from "../../models/coverage";

export const args = cellArguments({
  stock: sameUnit,
  needs: new DailyAmountsArgument(sameUnit),
  daily_loss: sameUnit.default(defaults.daily_loss),
});

/**
 * Days a stock lasts down a list of daily needs, the last day in part. All amounts in one unit.
 *
 * @customfunction DAYS_COVERED
 * @param stock Stock at hand, in the unit of the needs
 * @param needs Need of each day, the first day first; two columns may give date or day number and need
 * @param [daily_loss] Loss each day, in the same unit
 * @returns Days the stock lasts [days]
 */
export function daysCovered(stock: any[][], needs: any[][], daily_loss?: any[][]): any[][] {
  return eachCell(
    args,
    [stock, needs, daily_loss],
    (given) =>
      cover(
        given.stock,
        given.needs.map(({ amount }) => amount),
        given.daily_loss,
      ) ?? noAnswer(`longer than the list of ${given.needs.length} day${given.needs.length === 1 ? "" : "s"}`),
  );
}

export const about: About = {
  rule: "whole days while stock covers need + loss, then the part of the next day that is left stock/(need + loss)",
  range:
    'Needs and loss 0 or more, a blank is refused. For a stock of liquid enter what is drawn from it: need × draw ratio (GROSS_DRAW). Stock left after the last day is #N/A "longer than the list"; a stock that ends with the list lasts as long as the list.',
  source: "Plain arithmetic",
  examples: [
    { formula: "=OXYGEN.DAYS_COVERED(100,{30;40;60})", result: 2.5, note: "30 and 40 leave 30 of the third day's 60" },
    { formula: "=OXYGEN.DAYS_COVERED(100,{30;40;60},10)", result: 2 + 10 / 70, note: "40 and 50 leave 10 of 70" },
    { formula: "=OXYGEN.DAYS_COVERED(100,{30;40})", result: { error: "#N/A", words: "longer than the list" } },
  ],
  seeAlso: ["GROSS_DRAW", "DAYS_OF_SUPPLY", "DELIVERY_DATES", "FIRST_SHORT_DATE"],
  caution: "A planning figure: keep a reserve beyond it for surges and late deliveries.",
};
