import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { number } from "../../arguments/quantity";
import { mostMean, turnedAwayShare as erlangLoss } from "../../models/counts";

export const args = cellArguments({
  mean: number.aboveTo(0, mostMean).as("mean patients"),
  places: number.between(0, mostMean).whole().as("patients"),
});

/**
 * Share of arriving patients who find every place taken and are turned away.
 *
 * @customfunction TURNED_AWAY_SHARE
 * @param mean Patients who would be there at once, on average, with room for all
 * @param places Places there are
 * @returns Share turned away
 */
export function turnedAwayShare(mean: any[][], places: any[][]): any[][] {
  return eachCell(args, [mean, places], (given) => erlangLoss(given.mean, given.places));
}

export const about: About = {
  gives: "fraction",
  rule: "Erlang's loss formula: B(0) = 1, B(k) = mean × B(k − 1) / (k + mean × B(k − 1))",
  range:
    "Mean above 0 and whole places, both up to a million. Arrivals are independent, stays of any length; who is turned away goes elsewhere and does not wait or come back.",
  source:
    "Erlang 1917 (from memory); that it holds at any length of stay: Feeney & Sherbrooke, Management Science 12(5) (1966) 391, lost sales case (abstract read); mean = arrivals × stay as AVERAGE_CENSUS gives it",
  examples: [
    { formula: "=OXYGEN.TURNED_AWAY_SHARE(1,1)", result: 0.5, source: "1 × 1 / (1 + 1 × 1)" },
    { formula: "=OXYGEN.TURNED_AWAY_SHARE(2,2)", result: 0.4, source: "(2²/2) / (1 + 2 + 2²/2)" },
    {
      formula: "=OXYGEN.TURNED_AWAY_SHARE(25,30)",
      result: 0.05,
      tolerance: 0.005,
      source: "25 erlang on 30 lines lose about 0.05: documentation of a mathematics program",
    },
  ],
  seeAlso: ["AVERAGE_CENSUS", "CENSUS_OVER_CHANCE", "CENSUS_AT_LEVEL"],
  caution: "Behind this share are patients without a place: plan where they go.",
};
