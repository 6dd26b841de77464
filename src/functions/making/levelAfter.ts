import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours as time, litres, litresPerHour } from "../../arguments/quantity";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { levelAfter as levelOf } from "../../models/making";

export const args = cellArguments({
  hours: time,
  capacity: litres.positive(),
  rate: litresPerHour.positive(),
  level: litres.default(defaults.level),
  start_delay: time.default(defaults.start_delay),
});

/**
 * Level in a plant's vessel some hours after switching on; the plant stops when the vessel is full.
 *
 * @customfunction LEVEL_AFTER
 * @param hours Hours since switching on [h]
 * @param capacity Liquid the vessel holds when full [L]
 * @param rate Liquid the plant makes, net of standing loss [L/h]
 * @param [level] Liquid in the vessel when switched on [L]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @returns Liquid in the vessel then [L]
 */
export function levelAfter(
  hours: any[][],
  capacity: any[][],
  rate: any[][],
  level?: any[][],
  start_delay?: any[][],
): any[][] {
  return eachCell(
    args,
    [hours, capacity, rate, level, start_delay],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      levelOf(given.hours, given.capacity, given.rate, given.level, given.start_delay),
  );
}

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "liquid",
  rule: "min(capacity, level + max(0, hours − start delay) × rate)",
  range: `Capacity and rate above 0; a level above the capacity is #VALUE!. Assumes that nothing is drawn; losses during the start delay are left out. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: "=OXYGEN.LEVEL_AFTER(20,66,1.5)",
      result: (20 - delay) * 1.5,
      source: `(20 − ${delay}) × 1.5`,
    },
    {
      formula: "=OXYGEN.LEVEL_AFTER({2;12;90},66,1.5,24,2)",
      result: [[24], [39], [66]],
      note: "On top of 24 L: nothing in the first two hours; it stops at the capacity",
      source: "24 + (12 − 2) × 1.5",
    },
  ],
  seeAlso: ["HOURS_TO_FILL", "LIQUID_MADE", "LEVEL_LEFT"],
};
