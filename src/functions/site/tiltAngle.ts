import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { metres } from "../../arguments/quantity";
import { tiltAngle as angleOf } from "../../models/site";

export const args = cellArguments({
  rise: metres,
  run: metres.positive(),
});

/**
 * Tilt of a floor from how much it rises over a level distance.
 *
 * @customfunction TILT_ANGLE
 * @param rise Height difference between the two ends [m]
 * @param run Level distance between them [m]
 * @returns Tilt from level [°]
 */
export function tiltAngle(rise: any[][], run: any[][]): any[][] {
  return eachCell(args, [rise, run], (given) => angleOf(given.rise, given.run));
}

export const about: About = {
  gives: "angle",
  rule: "arctangent(rise / run)",
  range: "Rise 0 or more, run above 0; 0 to under 90°. Measure both ways across the floor and take the steeper.",
  source: "Plain trigonometry",
  examples: [
    { formula: "=OXYGEN.TILT_ANGLE(1,1)", result: 45, source: "A right angle halved" },
    {
      formula: '=OXYGEN.TILT_ANGLE("2 in","2 ft")',
      result: 4.7636,
      tolerance: 0.0001,
      source: "arctan(1/12) of trigonometric tables: 4° 45′ 49″",
    },
  ],
  seeAlso: ["SITE_CHECK"],
};
