import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { better as betterWords, wordForEachMeasure } from "../../arguments/better";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { numberBlock } from "../../arguments/numberBlock";
import { sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { invalid } from "../../cells/cellValues";
import { scores } from "../../models/options";

export const args = tableArguments({
  measures: numberBlock,
  better: betterWords,
  weights: list(sameUnit),
});

/**
 * Weighted score of options, 0 worst to 1 best, within this list alone: it shifts when an option is added or taken away.
 *
 * @customfunction OPTION_SCORE
 * @param measures Numbers, one row an option and one column a measure, with or without a header row
 * @param better For each measure the word less or more, whichever is better
 * @param weights For each measure its weight, in any scale
 * @returns Score, one row an option
 */
export function optionScore(measures: any[][], better: any[][], weights: any[][]): any[][] {
  return wholeTable(args, [measures, better, weights], (given) => {
    const width = given.measures[0]!.length;
    const unequal = wordForEachMeasure(width, given.better);
    if (unequal) return unequal;
    if (given.weights.length !== width) {
      return invalid(
        `measures has ${width} columns and weights has ${given.weights.length} numbers; enter a weight for each column`,
      );
    }
    if (given.weights.every((weight) => weight === 0))
      return invalid("weights are all 0; at least one must be more than 0");
    return [["score"], ...scores(given.measures, given.better, given.weights).map((score) => [score])];
  });
}

export const about: About = {
  gives: ["fraction"],
  rule: "Σ weight × (value − worst) / (best − worst) / Σ weight, worst and best of each measure within the list",
  range: `Compare dominance first: strike out what BEATEN_BY shows. A measure that is the same for all counts 1. The score shifts when an option is added or left out, since the worst and best of a measure may change with it, and even the order of the others may turn: it ranks this list and says nothing by itself. Weights of 0 or more. ${blankAsZero}`,
  source:
    "Additive weighting with min–max scaling, a common method without one source; its rank reversal is well known",
  examples: [
    {
      formula: '=OXYGEN.OPTION_SCORE({900,40;1200,30;1000,45},{"less","more"},{1,1})',
      result: [["score"], [0.8333333333333334], [0], [0.8333333333333334]],
      source: "(1 + 10/15)/2; (0 + 0)/2; (200/300 + 1)/2",
    },
    {
      formula: '=OXYGEN.OPTION_SCORE({900,40;1200,30;1000,45;300,30},{"less","more"},{1,1})',
      result: [["score"], [0.5], [0], [0.6111111111111112], [0.5]],
      note: "A fourth option shifts the scores of the first three and parts two that were level",
      source: "(300/900 + 10/15)/2; 0; (200/900 + 1)/2; (1 + 0)/2",
    },
  ],
  seeAlso: ["BEATEN_BY", "OPTION_TABLE"],
  caution:
    "The weights decide the answer: agree on them with clinicians and engineers before looking at scores, and try others.",
};
