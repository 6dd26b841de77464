import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { formatNumber } from "../../arguments/argument";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { sameUnit } from "../../arguments/quantity";
import { noAnswer } from "../../cells/cellValues";
import { breakEvenDays as dayOfEqualCost } from "../../models/options";

export const args = cellArguments({
  fixed_a: sameUnit,
  daily_a: sameUnit,
  fixed_b: sameUnit,
  daily_b: sameUnit,
});

/**
 * Days after which an option A, dearer to buy and cheaper to run, has cost no more than B.
 *
 * @customfunction BREAK_EVEN_DAYS
 * @param fixed_a What A costs at once
 * @param daily_a What A costs a day
 * @param fixed_b What B costs at once
 * @param daily_b What B costs a day
 * @returns Days after which A has cost no more [days]
 */
export function breakEvenDays(fixed_a: any[][], daily_a: any[][], fixed_b: any[][], daily_b: any[][]): any[][] {
  return eachCell(args, [fixed_a, daily_a, fixed_b, daily_b], (given) => {
    const equal = dayOfEqualCost(given.fixed_a, given.daily_a, given.fixed_b, given.daily_b);
    switch (equal.kind) {
      case "pays":
        return equal.days;
      case "cheaper first":
        return noAnswer(
          `A is cheaper only for the first ${formatNumber(equal.days)} days: it costs less than B at once and more a day`,
        );
      case "never":
        return noAnswer("A never pays back: it costs no less than B at once and no less a day");
    }
  });
}

export const about: About = {
  gives: "days",
  rule: "(fixed A − fixed B) / (daily B − daily A)",
  range: `0 when A is nowhere dearer; #N/A when A is nowhere cheaper (never pays back), and when A is cheaper at once and dearer a day: the words then say for how many days A is cheaper. One currency; no interest. ${blankAsZero}`,
  source: "Plain arithmetic (break-even point)",
  examples: [
    {
      formula: "=OXYGEN.BREAK_EVEN_DAYS(60000,40,6000,190)",
      result: 360,
      note: "54 000 more at once, 150 less a day",
      source: "54000 / 150",
    },
    {
      formula: "=OXYGEN.BREAK_EVEN_DAYS(5000,40,6000,190)",
      result: 0,
      note: "Cheaper in both",
      source: "5000 < 6000 and 40 < 190",
    },
    { formula: "=OXYGEN.BREAK_EVEN_DAYS(60000,200,6000,190)", result: { error: "#N/A", words: "never pays back" } },
    {
      formula: "=OXYGEN.BREAK_EVEN_DAYS(6000,190,60000,40)",
      result: { error: "#N/A", words: "A is cheaper only for the first 360 days" },
      note: "The same two, A and B changed about",
    },
  ],
  seeAlso: ["COST_PER_DAY", "OPTION_TABLE"],
};
