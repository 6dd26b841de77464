import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { amperes } from "../../arguments/quantity";
import { flag } from "../../arguments/text";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { noAnswer } from "../../cells/cellValues";
import { circuitFor, standardCircuits } from "../../models/electricity";

export const args = cellArguments({
  current: amperes,
  continuous: flag.default(defaults.continuous),
});

/**
 * Smallest standard circuit (breaker or fuse) for a current, by the sizes of the United States code.
 *
 * @customfunction CIRCUIT_NEEDED
 * @param current Current the load draws while it runs [A]
 * @param [continuous] Whether it runs for 3 hours or more at a time
 * @returns Standard circuit size [A]
 */
export function circuitNeeded(current: any[][], continuous?: any[][]): any[][] {
  return eachCell(
    args,
    [current, continuous],
    (given) =>
      circuitFor(given.current, given.continuous) ??
      noAnswer(
        `above the largest standard circuit of ${standardCircuits[standardCircuits.length - 1]} A; split the load over several circuits`,
      ),
  );
}

export const about: About = {
  gives: "current",
  rule: "next standard size ≥ 1.25 × continuous current; ≥ the current itself if it is not continuous",
  range: `Standard sizes from 15 to 6000 A, without the sizes that exist for fuses alone; more is #N/A. Motor circuits follow rules of their own (NEC article 430). ${blankAsZero}`,
  source:
    "NEC (NFPA 70) 240.6(A), standard sizes; 210.20(A), 125 % of a continuous load; article 100, continuous = 3 hours or more",
  examples: [
    {
      formula: "=OXYGEN.CIRCUIT_NEEDED(24)",
      result: 30,
      source: "NEC 210.20(A): a 30 A circuit carries 24 A continuously",
    },
    {
      formula: "=OXYGEN.CIRCUIT_NEEDED(24,FALSE)",
      result: 25,
      note: "Runs for less than 3 hours",
      source: "NEC 240.6(A): 25 A is the next size",
    },
    {
      formula: "=OXYGEN.CIRCUIT_NEEDED(24.1)",
      result: 35,
      source: "1.25 × 24.1 = 30.125; NEC 240.6(A): 35 A is the next size",
    },
    {
      formula: "=OXYGEN.CIRCUIT_NEEDED(6001,FALSE)",
      result: { error: "#N/A", words: "above the largest standard circuit of 6000 A" },
      source: "NEC 240.6(A) ends at 6000 A",
    },
  ],
  seeAlso: ["LINE_CURRENT", "CABLE_DROP"],
  caution:
    "Names a size to plan with, not a design: conductors, plugs, earthing, fault protection and the surroundings count too. A licensed electrician sizes and installs the circuit, and the local electrical code decides.",
};
