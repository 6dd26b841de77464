import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litresPerMinute, minutes as minuteCount, number } from "../../arguments/quantity";

export const args = cellArguments({
  flow: litresPerMinute,
  minutes: minuteCount,
  safety: number.atLeast(1).default(defaults.safety),
});

/**
 * Oxygen to take on a journey with a patient.
 *
 * @customfunction JOURNEY_GAS
 * @param flow Flow that the patient draws from the source [L/min]
 * @param minutes Planned time from leaving one supply to reaching the next [min]
 * @param [safety] How many times the planned gas to take, 1 or more
 * @returns Gas to take [L]
 */
export function journeyGas(flow: any[][], minutes: any[][], safety?: any[][]): any[][] {
  return eachCell(args, [flow, minutes, safety], (given) => given.flow * given.minutes * given.safety);
}

export const about: About = {
  gives: "gas",
  rule: "flow × minutes × safety",
  range: `Flow and minutes 0 or more, safety 1 or more. The time counts from bed to bed, with loading and handing over. ${blankAsZero}`,
  source:
    "Twice the gas of the planned transfer: teaching of emergency medicine (2 × flow × minutes, read on an examination course's page)",
  examples: [
    { formula: "=OXYGEN.JOURNEY_GAS(10,16)", result: 320, source: "emergency-medicine course: 2 × 10 × 16" },
    { formula: '=OXYGEN.JOURNEY_GAS(15,"1.5 h")', result: 15 * 90 * defaults.safety.value, source: "15 × 90 × safety" },
    {
      formula: "=OXYGEN.JOURNEY_GAS(6,200,3)",
      result: 3600,
      note: "Three times the gas for a bad road",
      source: "6 × 200 × 3",
    },
  ],
  seeAlso: ["CYLINDERS_NEEDED", "CYLINDER_MINUTES", "VENTILATOR_FLOW"],
  caution:
    "A planning figure; the clinician decides. Secure cylinders in the vehicle, carry a means to ventilate by hand, and check contents before leaving.",
};
