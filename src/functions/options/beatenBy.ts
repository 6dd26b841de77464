import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { better as betterWords, wordForEachMeasure } from "../../arguments/better";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { numberBlock } from "../../arguments/numberBlock";
import { beatenBy as firstThatBeats } from "../../models/options";

export const args = tableArguments({
  measures: numberBlock,
  better: betterWords,
});

/**
 * Which options another one beats: at least as good in every measure and better in one.
 *
 * @customfunction BEATEN_BY
 * @param measures Numbers, one row an option and one column a measure, with or without a header row
 * @param better For each measure the word less or more, whichever is better
 * @returns Row that beats it, counted without the header; empty where none does
 */
export function beatenBy(measures: any[][], better: any[][]): any[][] {
  return wholeTable(args, [measures, better], (given) => {
    const width = given.measures[0]!.length;
    const unequal = wordForEachMeasure(width, given.better);
    if (unequal) return unequal;
    return [
      ["row that beats it"],
      ...firstThatBeats(given.measures, given.better).map((row) => [row < 0 ? "" : row + 1]),
    ];
  });
}

export const about: About = {
  gives: ["count"],
  rule: "row a beats row b when a is at least as good in every measure and better in one; the first such row in list order",
  range: `Rows that are alike don't beat each other. A blank row between filled ones is refused. Numbers of one column need one unit. ${blankAsZero}`,
  source: "Pareto dominance, a rule of decision theory in common use",
  examples: [
    {
      formula: '=OXYGEN.BEATEN_BY({900,40,5;1200,42,4;1000,30,6},{"less","less","more"})',
      result: [["row that beats it"], [""], [1], [""]],
      note: "Row 2 is heavier, dearer and gives less than row 1",
      source: "The rule stated: 1200 > 900, 42 > 40, 4 < 5; rows 1 and 3 are each better in something",
    },
  ],
  seeAlso: ["OPTION_TABLE", "OPTION_SCORE"],
};
