import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, hours, kilowattHours } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { solarPower as powerOf } from "../../models/electricity";

export const args = cellArguments({
  daily_energy: kilowattHours,
  sun_hours: hours.aboveTo(0, 24),
  kept_share: fraction.aboveTo(0, 1).default(defaults.kept_share),
});

/**
 * Rated power of solar panels that give the energy of a day in the worst month.
 *
 * @customfunction SOLAR_POWER
 * @param daily_energy Energy used a day, as DAILY_ENERGY gives it [kWh]
 * @param sun_hours Hours of full sun a day on the panels in the worst month: kWh on a square metre, not hours of daylight [h]
 * @param [kept_share] Share of the panels' rating that reaches the load, above 0 to 1
 * @returns Rated power of the panels [kW]
 */
export function solarPower(daily_energy: any[][], sun_hours: any[][], kept_share?: any[][]): any[][] {
  return eachCell(args, [daily_energy, sun_hours, kept_share], (given) =>
    powerOf(given.daily_energy, given.sun_hours, given.kept_share),
  );
}

const kept = defaults.kept_share.value;

export const about: About = {
  gives: "power",
  rule: "daily energy / (sun hours × kept share)",
  range: `Sun hours above 0 to 24, as an irradiation table gives them for the panels' tilt: about 1 to 7; the hours of daylight are twice to ten times as many and flatter. An average of the month: a run of dull days needs a battery or a generator beside it (BATTERY_HOURS). Shade, dust and heat take more than the default kept_share allows. ${blankAsZero}`,
  source: `Energy balance of the worst month, as solar sizing guides give it (read second hand); kept share: ${defaults.kept_share.source}`,
  examples: [
    {
      formula: "=OXYGEN.SOLAR_POWER(63,4.5)",
      result: 14 / kept,
      source: `63 / (4.5 × ${kept})`,
    },
    {
      formula: "=OXYGEN.SOLAR_POWER(63,{4.5;3.5},0.6)",
      result: [[63 / 2.7], [30]],
      note: "Dusty and hot, and a month with less sun",
      source: "63 / (4.5 × 0.6) and 63 / (3.5 × 0.6)",
    },
  ],
  seeAlso: ["DAILY_ENERGY", "BATTERY_HOURS", "POWER_LOAD"],
  caution:
    "Panels alone carry nothing at night or under cloud: plan the night, and a week of dull days, before patients depend on them. A licensed electrician designs and connects them, and the local electrical code decides.",
};
