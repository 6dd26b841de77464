import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { litresPerMinute, number } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { refuseLevel, serviceLevel } from "../../arguments/serviceLevel";
import { invalid } from "../../cells/cellValues";
import { mostMean } from "../../models/counts";
import { flowAtLevel as flowEnough } from "../../models/flowAtLevel";

export const args = cellArguments({
  means: list(number.between(0, mostMean).as("mean patients")),
  flows: list(litresPerMinute),
  level: serviceLevel,
});

/**
 * Flow to be ready for when the numbers of patients of several kinds vary, so that a given share of the time no more is
 * drawn.
 *
 * @customfunction FLOW_AT_LEVEL
 * @param means Patients of each kind there at once, on average
 * @param flows Flow of one patient of each kind, in the same order [L/min]
 * @param level Share of the time that the answer is enough, above 0 and under 1
 * @returns Flow, the least that is enough [L/min]
 */
export function flowAtLevel(means: any[][], flows: any[][], level: any[][]): any[][] {
  return eachCell(args, [means, flows, level], (given) => {
    const fault = sameLength({ means: given.means, flows: given.flows }) ?? refuseLevel(given.level);
    if (fault) return fault;
    return (
      flowEnough(given.means, given.flows, given.level) ??
      invalid(
        "flows have no common step coarse enough for so many patients; round them, such as to 1 L/min, or put kinds together",
      )
    );
  });
}

export const about: About = {
  gives: "gas flow",
  rule: "least flow f with P(Σ Nᵢ × flowᵢ ≤ f) ≥ level, the Nᵢ independent and Poisson",
  range: `Means 0 to a million; exact, without the normal short-cut, which comes out too low where few patients draw much. Flows that have no common step, such as 1/10 L/min, are listed combination by combination; where that is too long for a cell it is #VALUE! and the flows want rounding. Kinds that surge together are not independent: then the answer is too low. ${blankAsZero}`,
  source:
    "Sum of independent Poisson counts by Panjer, H. H., Recursive evaluation of a family of compound distributions, ASTIN Bulletin 12 (1981) 22 (from memory; the recursion read in the manual of the R package actuar)",
  examples: [
    {
      formula: "=OXYGEN.FLOW_AT_LEVEL({6;2},{10;30},95%)",
      result: 210,
      source: "double sum over both kinds",
      note: "On average 120 L/min; the normal short-cut says 201",
    },
    {
      formula: "=OXYGEN.FLOW_AT_LEVEL(4,10,95%)",
      result: 80,
      source: "cumulative Poisson tables: 8 patients",
      note: "One kind",
    },
  ],
  seeAlso: ["DEMAND_FLOW", "CENSUS_AT_LEVEL", "PLANNED_FLOW", "DESIGN_FLOW"],
  caution:
    "A planning figure; the clinician decides what each patient gets. Above the level the supply is short: know what happens then.",
};
