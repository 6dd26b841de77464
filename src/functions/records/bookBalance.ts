import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { sameUnit } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { bookBalance as unexplained } from "../../models/bookBalance";

export const args = cellArguments({
  opening: sameUnit,
  made: sameUnit,
  received: sameUnit,
  drawn: sameUnit,
  lost: sameUnit,
  closing: sameUnit,
});

/**
 * What the book doesn't explain: the closing stock less what it should be. Negative is missing. All amounts in one unit.
 *
 * @customfunction BOOK_BALANCE
 * @param opening Stock at the start
 * @param made Made in the time
 * @param received Received in the time
 * @param drawn Drawn in the time
 * @param lost Known losses in the time: boiled off, vented, spilled
 * @param closing Stock at the end, as measured
 * @returns Difference in the unit of the amounts, negative if missing
 */
export function bookBalance(
  opening: any[][],
  made: any[][],
  received: any[][],
  drawn: any[][],
  lost: any[][],
  closing: any[][],
): any[][] {
  return eachCell(args, [opening, made, received, drawn, lost, closing], (given) =>
    unexplained(given.opening, given.made, given.received, given.drawn, given.lost, given.closing),
  );
}

export const about: About = {
  gives: "amount",
  rule: "closing − (opening + made + received − drawn − lost)",
  range: `All 0 or more, a blank is refused: enter 0 where nothing happened. A difference of floating noise is 0. ${blankAsZero}`,
  source: "Mass balance; plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.BOOK_BALANCE(50,30,0,25,2,50)",
      result: -3,
      note: "Three are missing",
      source: "50 − (50 + 30 + 0 − 25 − 2)",
    },
    {
      formula: "=OXYGEN.BOOK_BALANCE(0.1,0.2,0,0,0,0.3)",
      result: 0,
      note: "Decimal noise is no difference",
      source: "0.3 − (0.1 + 0.2)",
    },
  ],
  seeAlso: ["PLAN_TOTALS", "LOG_FAULTS", "DAILY_LOSS", "LOSS_FROM_READINGS"],
  caution:
    "A stock that goes missing may be leaking: oxygen in a closed room feeds fire. Look for the leak before the book.",
};
