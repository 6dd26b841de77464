import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { hours } from "../../arguments/quantity";
import { airCelsius } from "../../arguments/siteAir";
import { startDelay as delayAt } from "../../models/derating";

export const args = cellArguments({
  temperature: airCelsius,
  warm_start_hours: hours.default(defaults.warm_start_hours),
  cold_extra_hours: hours.default(defaults.cold_extra_hours),
  cold_below: airCelsius.default(defaults.cold_below),
});

/**
 * Hours from switching a plant on until liquid accumulates; longer when the machine starts in the cold.
 *
 * @customfunction START_DELAY
 * @param temperature Air temperature at the plant [°C]
 * @param [warm_start_hours] Hours when it is not cold [h]
 * @param [cold_extra_hours] Hours more when it is cold [h]
 * @param [cold_below] Temperature under which it counts as cold [°C]
 * @returns Hours before liquid accumulates [h]
 */
export function startDelay(
  temperature: any[][],
  warm_start_hours?: any[][],
  cold_extra_hours?: any[][],
  cold_below?: any[][],
): any[][] {
  return eachCell(args, [temperature, warm_start_hours, cold_extra_hours, cold_below], (given) =>
    delayAt(given.temperature, given.warm_start_hours, given.cold_extra_hours, given.cold_below),
  );
}

export const about: About = {
  gives: "hours",
  rule: "warm start hours, and cold extra hours when the temperature is under cold below",
  range: "−90 to 60 °C; outside is #VALUE!. A rule of thumb: the machine's manual and the site's own log are better.",
  source:
    "Common practice, no source: liquid appears 2 to 3 h after a warm start; the cold limit is an own planning default",
  examples: [
    {
      formula: "=OXYGEN.START_DELAY(25)",
      result: defaults.warm_start_hours.value,
      note: "A warm start",
      source: "The default of warm_start_hours",
    },
    {
      formula: "=OXYGEN.START_DELAY({25;5;4.9},2.5,1.5,5)",
      result: [[2.5], [2.5], [4]],
      note: "The limit itself is not cold",
      source: "2.5, and 2.5 + 1.5 under the limit",
    },
    { formula: '=OXYGEN.START_DELAY("40 °F",2,1.5)', result: 3.5, note: "4.4 °C", source: "2 + 1.5" },
  ],
  seeAlso: ["HOURS_TO_FILL", "LIQUID_MADE", "SWITCH_ON_BY"],
};
