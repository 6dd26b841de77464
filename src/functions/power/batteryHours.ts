import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction, kilowattHours, kilowatts } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { batteryHours as hoursOf } from "../../models/electricity";

export const args = cellArguments({
  energy_kwh: kilowattHours,
  load: kilowatts.positive(),
  usable_share: fraction.aboveTo(0, 1).default(defaults.usable_share),
  inverter_share: fraction.aboveTo(0, 1).default(defaults.inverter_share),
});

/**
 * Hours that a full battery carries a load through an inverter.
 *
 * @customfunction BATTERY_HOURS
 * @param energy_kwh Energy of the full battery by its rating, amp-hours × volts / 1000 [kWh]
 * @param load Load on the inverter, as POWER_LOAD gives it [kW]
 * @param [usable_share] Share of the rating that may be drawn, above 0 to 1
 * @param [inverter_share] Share that comes out of the inverter, above 0 to 1
 * @returns Hours [h]
 */
export function batteryHours(
  energy_kwh: any[][],
  load: any[][],
  usable_share?: any[][],
  inverter_share?: any[][],
): any[][] {
  return eachCell(args, [energy_kwh, load, usable_share, inverter_share], (given) =>
    hoursOf(given.energy_kwh, given.load, given.usable_share, given.inverter_share),
  );
}

const { usable, inverter } = { usable: defaults.usable_share.value, inverter: defaults.inverter_share.value };

export const about: About = {
  gives: "hours",
  rule: "energy × usable share × inverter share / load",
  range: `Load above 0, shares above 0 to 1. A steady load and a full battery: enter what is in it if it isn't full. The default usable_share is that of lithium batteries; lead-acid ones stand about 0.5, and cold, old or fast-drained ones of any kind give less: take a measured run. ${blankAsZero}`,
  source: `Plain arithmetic; usable share: ${defaults.usable_share.source}; inverter share: ${defaults.inverter_share.source}`,
  examples: [
    {
      formula: "=OXYGEN.BATTERY_HOURS(9.6,1.2)",
      result: 8 * usable * inverter,
      note: "200 Ah at 48 V",
      source: `9.6 × ${usable} × ${inverter} / 1.2`,
    },
    {
      formula: '=OXYGEN.BATTERY_HOURS("9600 Wh",1.2,{0.5;0.8},0.85)',
      result: [[3.4], [5.44]],
      note: "Lead-acid and lithium of the same rating",
      source: "8 × 0.5 × 0.85 and 8 × 0.8 × 0.85",
    },
  ],
  seeAlso: ["SOLAR_POWER", "POWER_LOAD", "DAILY_ENERGY", "FUEL_DAYS"],
  caution:
    "Run it once with the real load before patients depend on it, and have oxygen that needs no power at hand. Batteries give off gas or burn: keep them away from oxygen, in air, and let a licensed electrician connect them.",
};
