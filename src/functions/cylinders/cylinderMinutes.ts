import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, gasLitres, litresPerMinute } from "../../arguments/quantity";
import { cylinderMinutes as minutesOf } from "../../models/cylinderUse";

export const args = cellArguments({
  content: gasLitres,
  flow: litresPerMinute.positive(),
  keep_share: fraction.fromToBelow(0, 1).default(defaults.keep_share),
});

/**
 * Minutes that a cylinder lasts at a flow, with a share kept in reserve.
 *
 * @customfunction CYLINDER_MINUTES
 * @param content Gas in the cylinder [L]
 * @param flow Gas flow [L/min]
 * @param [keep_share] Share that stays in the cylinder
 * @returns Minutes until the reserve is reached [min]
 */
export function cylinderMinutes(content: any[][], flow: any[][], keep_share?: any[][]): any[][] {
  return eachCell(args, [content, flow, keep_share], (given) => minutesOf(given.content, given.flow, given.keep_share));
}

export const about: About = {
  gives: "minutes",
  rule: "content × (1 − keep share) / flow",
  range:
    "Flow above 0; keep share from 0 to under 1. A content of CONTENT_BY_FACTOR has its reserve taken off: give keep share 0. A content of CYLINDER_CONTENT counts what can't leave the cylinder, about one water volume: never give keep share 0 with it. MINUTES_ON_CYLINDER goes by the pressure that is kept.",
  source: "Plain arithmetic; the reserve of a tenth is an own planning default",
  examples: [
    {
      formula: "=OXYGEN.CYLINDER_MINUTES(680,10)",
      result: (680 * (1 - defaults.keep_share.value)) / 10,
      source: "680 × (1 − keep share)/10",
    },
    {
      formula: "=OXYGEN.CYLINDER_MINUTES(OXYGEN.CONTENT_BY_FACTOR(2000,0.16),0.5,0)",
      result: 576,
      source: "Worked example of emergency-medical teaching texts: size D, 2000 psi, 0.5 L/min",
    },
  ],
  seeAlso: ["MINUTES_ON_CYLINDER", "CONTENT_BY_FACTOR", "CYLINDER_CONTENT", "CYLINDERS_NEEDED", "JOURNEY_GAS"],
  caution: "A planning figure: watch the gauge, and change early. The clinician sets the flow.",
};
