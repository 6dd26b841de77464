import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { emptyDays, litres, litresPerMinute } from "../../arguments/quantity";
import { flag } from "../../arguments/text";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { vesselHours as hoursOf } from "../../models/holding";

export const args = cellArguments({
  level: litres,
  flow: litresPerMinute,
  capacity: litres.positive(),
  empty_days: emptyDays,
  keep: litres.default(defaults.keep),
  economiser: flag.default(defaults.economiser),
  pressure: liquidGauge.default(defaults.pressure),
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
 * @param [pressure] Pressure at which the vessel stands, gauge [bar]
 * @returns Hours until only the kept amount is left [h]
 */
export function vesselHours(
  level: any[][],
  flow: any[][],
  capacity: any[][],
  empty_days: any[][],
  keep?: any[][],
  economiser?: any[][],
  pressure?: any[][],
): any[][] {
  return eachCell(
    args,
    [level, flow, capacity, empty_days, keep, economiser, pressure],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      hoursOf(
        Math.max(0, given.level - given.keep),
        given.flow,
        given.capacity,
        given.empty_days,
        given.economiser,
        given.pressure,
      ),
  );
}

export const about: About = {
  gives: "hours",
  rule: "(level − keep) / (flow × 60 / gas + capacity / (24 × empty days)), gas = (density of the liquid − of the vapour) / density of the gas at 21.1 °C, 101.325 kPa; with an economiser the larger of the two terms in place of the sum",
  range: `0 when the level is not above what is kept; a level above the capacity is #VALUE!. The loss has no default: portable vessels empty in one day to over a week. Liquid and vapour boil at the pressure given, 0.5 to 25 bar absolute, outside is #VALUE!. A litre gives a little less gas than by GAS_FROM_LIQUID, since its vapour stays in the vessel, and 5 % less again at 1.5 bar gauge. ${gaugeAtAltitude} Properties are those of pure oxygen. ${blankAsZero}`,
  source:
    "Mass balance of a vessel whose level falls; properties: Schmidt & Wagner 1985; common practice, no source for the economiser",
  examples: [
    {
      formula: "=OXYGEN.VESSEL_HOURS(24,9,31,6)",
      result: 28.393,
      tolerance: 0.01,
      source:
        "A litre gives 857.12 L (Schmidt & Wagner 1985, evaluated independently): 24 / (540 / 857.12 + 31 / 144) = 28.39",
    },
    {
      formula: "=OXYGEN.VESSEL_HOURS(24,9,31,6,0,TRUE)",
      result: 38.094,
      tolerance: 0.01,
      note: "With an economiser",
      source: "24 / (540 / 857.12)",
    },
    {
      formula: '=OXYGEN.VESSEL_HOURS(24,9,31,"16 %/day",4,FALSE,1.4)',
      result: 23.06,
      tolerance: 0.01,
      note: "4 L kept, vessel at 1.4 bar, loss as on its plate",
      source:
        "817.50 L a litre (Schmidt & Wagner 1985, evaluated independently): 20 / (540 / 817.50 + 31 × 0.16 / 24) = 23.06",
    },
    {
      formula: "=OXYGEN.VESSEL_HOURS(21,0,31,6)",
      result: (21 / 31) * 144,
      note: "No patient",
      source: "21/31 of six days",
    },
  ],
  seeAlso: ["JOURNEY_GAS", "DAYS_UNTIL_EMPTY", "FILL_ORDER", "CYLINDER_MINUTES"],
  caution:
    "A planning figure; the clinician decides. Never plan to the last hour: keep a reserve and a second source at the patient.",
};
