import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litresPerMinute } from "../../arguments/quantity";
import { cannulaFraction } from "../../models/bedside";

export const args = cellArguments({
  flow: litresPerMinute.between(1, 6),
});

/**
 * Oxygen fraction that an adult breathes from a nasal cannula: a rough estimate only.
 *
 * @customfunction CANNULA_FIO2
 * @param flow Flow of oxygen through the cannula, 1 to 6 [L/min]
 * @returns Oxygen fraction, estimated
 */
export function cannulaFio2(flow: any[][]): any[][] {
  return eachCell(args, [flow], (given) => cannulaFraction(given.flow));
}

export const about: About = {
  gives: "fraction",
  rule: "0.20 + 0.04 × flow",
  range:
    "1 to 6 L/min of pure oxygen, adults at quiet breathing; outside it is #VALUE!. The true fraction varies widely: faster or deeper breathing lowers it, and measured rises were 2.5 to 3.8 % per L/min. A source of 0.93 gives a little less.",
  source:
    "Teaching rule of respiratory-care texts: 24, 28, 32, 36, 40 and 44 % at 1 to 6 L/min (read on several teaching pages)",
  examples: [
    { formula: "=OXYGEN.CANNULA_FIO2(3)", result: 0.32, source: "teaching tables: 3 L/min is 32 %" },
    { formula: "=OXYGEN.CANNULA_FIO2({1;6})", result: [[0.24], [0.44]], source: "teaching tables: 24 and 44 %" },
  ],
  seeAlso: ["MIXED_FIO2", "PLANNED_FLOW", "FIO2_TO_SET"],
  caution: "An estimate for planning, never for treating: the clinician decides by the patient's saturation.",
};
