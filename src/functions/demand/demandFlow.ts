import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { fraction, litresPerMinute, sameUnit } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { demandFlow as flowTogether } from "../../models/demand";

export const args = cellArguments({
  counts: list(sameUnit),
  flows: list(litresPerMinute),
  use_share: fraction.default(defaults.use_share),
});

/**
 * Gas flow that patients or beds of several kinds take together.
 *
 * @customfunction DEMAND_FLOW
 * @param counts How many there are of each kind; an average may have decimals
 * @param flows Flow of one of each kind, in the same order [L/min]
 * @param [use_share] Share of them in use at once
 * @returns Flow together [L/min]
 */
export function demandFlow(counts: any[][], flows: any[][], use_share?: any[][]): any[][] {
  return eachCell(
    args,
    [counts, flows, use_share],
    (given) =>
      sameLength({ counts: given.counts, flows: given.flows }) ??
      flowTogether(given.counts, given.flows, given.use_share),
  );
}

export const about: About = {
  gives: "gas flow",
  rule: "Σ (count × flow) × use share",
  range: `Counts and flows 0 or more, one flow for each count. It is an average where the counts are averages: at many times more is wanted; see FLOW_AT_LEVEL. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DEMAND_FLOW({75;25},{10;30})",
      result: 1500,
      note: "75 severe and 25 critical: 90 m³/h",
      source: "75 × 10 + 25 × 30",
    },
    {
      formula: '=OXYGEN.DEMAND_FLOW({10,4},{"0.3 m3/h",15},50%)',
      result: 55,
      note: "Half of them at once; 0.3 m³/h is 5 L/min",
      source: "(10 × 5 + 4 × 15) × 0.5",
    },
  ],
  seeAlso: ["DAILY_DEMAND", "DEMAND_TABLE", "FLOW_AT_LEVEL", "PLANNED_FLOW"],
  caution: "A planning figure; the clinician decides what each patient gets.",
};
