import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, hours, kilowatts } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { dailyEnergy as energyOfDay } from "../../models/electricity";

export const args = cellArguments({
  make_power: kilowatts,
  make_hours: hours.between(0, 24),
  standby_power: kilowatts,
  standby_share: fraction,
});

/**
 * Electric energy of a plant's day: making liquid for some hours, holding its vessel full for the rest.
 *
 * @customfunction DAILY_ENERGY
 * @param make_power Power while it makes liquid [kW]
 * @param make_hours Hours a day it makes liquid [h]
 * @param standby_power Power while it runs on standby [kW]
 * @param standby_share Share of the standby hours in which it runs
 * @returns Energy a day [kWh]
 */
export function dailyEnergy(
  make_power: any[][],
  make_hours: any[][],
  standby_power: any[][],
  standby_share: any[][],
): any[][] {
  return eachCell(args, [make_power, make_hours, standby_power, standby_share], (given) =>
    energyOfDay(given.make_power, given.make_hours, given.standby_power, given.standby_share),
  );
}

export const about: About = {
  gives: "energy",
  rule: "make power × make hours + standby power × standby share × (24 − make hours)",
  range: `Make hours from 0 to 24; share from 0 to 1. The hours in which it does not make liquid are all standby; the start-up hours count as making. ${blankAsZero}`,
  source: "Plain arithmetic",
  examples: [
    {
      formula: "=OXYGEN.DAILY_ENERGY(5,18,5,0.2)",
      result: 96,
      note: "Making and holding",
      source: "5 × 18 + 5 × 0.2 × 6",
    },
    { formula: "=OXYGEN.DAILY_ENERGY(5,24,5,0.2)", result: 120, note: "Making round the clock", source: "5 × 24" },
  ],
  seeAlso: ["STANDBY_SHARE", "ENERGY_PER_LITRE", "SOLAR_POWER", "BATTERY_HOURS"],
};
