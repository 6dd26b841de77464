import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { emptyDays, litres, litresPerMinute } from "../../arguments/quantity";
import { flag } from "../../arguments/text";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { vesselHours as hoursOf } from "../../models/holding";

export const args = cellArguments({
  level: litres,
  flow: litresPerMinute,
  capacity: litres.positive(),
  empty_days: emptyDays,
  keep: litres.default(defaults.keep),
  economiser: flag.default(defaults.economiser),
});

/**
 * Hours for which a portable vessel of liquid feeds a patient.
 *
 * @customfunction VESSEL_HOURS
 * @param level Liquid in the vessel now [L]
 * @param flow Flow to the patient [L/min]
 * @param capacity Liquid the vessel holds when full [L]
 * @param empty_days Days in which it empties by its standing loss alone, the maker's figure [days]
 * @param [keep] Liquid that is not counted on [L]
 * @param [economiser] TRUE if the boil-off goes to the patient
 * @returns Hours until only the kept amount is left [h]
 */
export function vesselHours(
  level: any[][],
  flow: any[][],
  capacity: any[][],
  empty_days: any[][],
  keep?: any[][],
  economiser?: any[][],
): any[][] {
  return eachCell(
    args,
    [level, flow, capacity, empty_days, keep, economiser],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      hoursOf(Math.max(0, given.level - given.keep), given.flow, given.capacity, given.empty_days, given.economiser),
  );
}

export const about: About = {
  rule: "(level − keep) / (flow × 60 / gas from a litre of liquid + capacity / (24 × empty days)); with an economiser the larger of the two terms in place of the sum",
  range:
    "0 when the level is not above what is kept; a level above the capacity is #VALUE!. The loss has no default: portable vessels empty in one day to over a week. Flow in L at 21.1 °C, 101.325 kPa, liquid as it boils at 1 atm; at 1.5 bar gauge a litre holds 4 % less. Properties are those of pure oxygen.",
  source:
    "Plain arithmetic; gas from a litre of liquid: Schmidt & Wagner 1985; common practice, no source for the economiser",
  examples: [
    {
      formula: "=OXYGEN.VESSEL_HOURS(20,11,40,10)",
      result: 21.4,
      tolerance: 0.05,
      source:
        "11 L/min take 0.7670 L/h (Schmidt & Wagner 1985, evaluated independently) and 40/240 L/h are lost: 20/0.9336",
    },
    {
      formula: "=OXYGEN.VESSEL_HOURS(20,11,40,10,0,TRUE)",
      result: 26.08,
      tolerance: 0.02,
      note: "With an economiser: 20/0.7670",
    },
    { formula: "=OXYGEN.VESSEL_HOURS(20,0,40,10)", result: 120, note: "No patient: half of ten days" },
  ],
  seeAlso: ["JOURNEY_GAS", "DAYS_UNTIL_EMPTY", "FILL_ORDER", "CYLINDER_MINUTES"],
  caution:
    "A planning figure; the clinician decides. Never plan to the last hour: keep a reserve and a second source at the patient.",
};
