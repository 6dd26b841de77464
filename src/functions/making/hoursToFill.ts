import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours, litres, litresPerHour } from "../../arguments/quantity";
import { levelAboveCapacity } from "../../arguments/vesselLevel";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { hoursToFill as fillTime } from "../../models/making";

export const args = cellArguments({
  capacity: litres.positive(),
  rate: litresPerHour.positive(),
  level: litres.default(defaults.level),
  start_delay: hours.default(defaults.start_delay),
});

/**
 * Hours until a vessel is full, counted from switching the plant on.
 *
 * @customfunction HOURS_TO_FILL
 * @param capacity Liquid the vessel holds when full [L]
 * @param rate Liquid the plant makes, net of standing loss [L/h]
 * @param [level] Liquid in the vessel now [L]
 * @param [start_delay] Hours from switching on until liquid accumulates [h]
 * @returns Hours to full [h]
 */
export function hoursToFill(capacity: any[][], rate: any[][], level?: any[][], start_delay?: any[][]): any[][] {
  return eachCell(
    args,
    [capacity, rate, level, start_delay],
    (given) =>
      levelAboveCapacity(given.level, given.capacity) ??
      fillTime(given.capacity, given.rate, given.level, given.start_delay),
  );
}

const delay = defaults.start_delay.value;

export const about: About = {
  gives: "hours",
  rule: "start delay + (capacity − level) / rate",
  range: `Capacity and rate above 0; a level above the capacity is #VALUE!. A full vessel still answers the start delay. ${blankAsZero}`,
  source: `Plain arithmetic; start delay: ${defaults.start_delay.source}`,
  examples: [
    {
      formula: "=OXYGEN.HOURS_TO_FILL(66,1.5)",
      result: delay + 44,
      note: "An empty vessel of 66 L",
      source: `${delay} + 66 / 1.5`,
    },
    {
      formula: "=OXYGEN.HOURS_TO_FILL({66;90},1.5,30,2)",
      result: [[26], [42]],
      note: "30 L are in it, and liquid comes after two hours",
      source: "2 + 36 / 1.5 and 2 + 60 / 1.5",
    },
    {
      formula: '=OXYGEN.HOURS_TO_FILL("20 gal",2,0,0)',
      result: 37.85411784,
      note: "Twenty US gallons, plant already cold",
      source: "NIST SP 811: 1 US gal = 3.785 411 784 L; 75.708 235 68 / 2",
    },
  ],
  seeAlso: ["FULL_AT", "LEVEL_AFTER", "SWITCH_ON_BY"],
};
