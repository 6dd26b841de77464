import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { count, fraction, litresPerMinute } from "../../arguments/quantity";
import { designFlow as pipeFlow } from "../../models/demand";

export const args = cellArguments({
  beds: count.as("patients"),
  first_flow: litresPerMinute,
  next_flow: litresPerMinute,
  use_share: fraction,
});

/**
 * Flow that a pipeline to several beds is laid out for: the first bed in full, the others with the share in use at once.
 *
 * @customfunction DESIGN_FLOW
 * @param beds Beds on the pipe
 * @param first_flow Flow of the first bed [L/min]
 * @param next_flow Flow of each further bed [L/min]
 * @param use_share Share of the further beds in use at once
 * @returns Design flow [L/min]
 */
export function designFlow(beds: any[][], first_flow: any[][], next_flow: any[][], use_share: any[][]): any[][] {
  return eachCell(args, [beds, first_flow, next_flow, use_share], (given) =>
    pipeFlow(given.beds, given.first_flow, given.next_flow, given.use_share),
  );
}

export const about: About = {
  gives: "gas flow",
  rule: "first flow + (beds − 1) × next flow × use share; 0 without beds",
  range: `Flows 0 or more, share 0 to 1. Flows and shares are those of the code that applies where the pipe is laid. ${blankAsZero}`,
  source:
    "Form of GB 50751-2012 (medical gas design flow) and of HTM 02-01 part A, table 21: Q = 40 + (n − 1) × 40/4 for ward vacuum; HTM's oxygen ward figures 10, 6 and 1/4 are from memory",
  examples: [
    {
      formula: "=OXYGEN.DESIGN_FLOW(28,10,6,0.15)",
      result: 34.3,
      source: "form of GB 50751-2012; 10 + 27 × 6 × 0.15",
      note: "A ward of 28 beds",
    },
    {
      formula: "=OXYGEN.DESIGN_FLOW(28,10,6,25%)",
      result: 50.5,
      source: "10 + 27 × 6/4",
      note: "The same at a quarter in use",
    },
  ],
  seeAlso: ["DEMAND_FLOW", "FLOW_AT_LEVEL", "SHARED_CENSUS"],
  caution:
    "For planning only: a pipeline is designed, installed and tested by licensed people to the local code. In an epidemic most beds may draw at once; then take a share of 1.",
};
