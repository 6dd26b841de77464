import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { celsius, fraction, kilowatts, metresHigh } from "../../arguments/quantity";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { generatorDerated as deratedPower } from "../../models/electricity";

export const args = cellArguments({
  rated_power: kilowatts.positive(),
  altitude: metresHigh.between(-500, 11000),
  temperature: celsius.between(-60, 80),
  loss_per_300m: fraction,
  loss_per_5c: fraction,
  from_altitude: metresHigh.between(-500, 11000).default(defaults.from_altitude),
  from_temperature: celsius.between(-60, 80).default(defaults.from_temperature),
});

/**
 * Power a generator still gives at an altitude and an air temperature, by its maker's loss figures.
 *
 * @customfunction GENERATOR_DERATED
 * @param rated_power Power on the rating plate [kW]
 * @param altitude Altitude of the site [m]
 * @param temperature Temperature of the intake air [°C]
 * @param loss_per_300m Share lost for each 300 m above the first altitude
 * @param loss_per_5c Share lost for each 5 °C above the first temperature
 * @param [from_altitude] Altitude above which power is lost [m]
 * @param [from_temperature] Temperature above which power is lost [°C]
 * @returns Power at the site [kW]
 */
export function generatorDerated(
  rated_power: any[][],
  altitude: any[][],
  temperature: any[][],
  loss_per_300m: any[][],
  loss_per_5c: any[][],
  from_altitude?: any[][],
  from_temperature?: any[][],
): any[][] {
  return eachCell(
    args,
    [rated_power, altitude, temperature, loss_per_300m, loss_per_5c, from_altitude, from_temperature],
    (given) =>
      deratedPower(
        given.rated_power,
        given.altitude,
        given.temperature,
        given.loss_per_300m,
        given.loss_per_5c,
        given.from_altitude,
        given.from_temperature,
      ),
  );
}

export const about: About = {
  gives: "power",
  rule: "rated × (1 − loss per 300 m × metres above / 300) × (1 − loss per 5 °C × degrees above / 5)",
  range: `−500 to 11 000 m, −60 to 80 °C; losses from 0 to 1. Below both first values nothing is lost and nothing gained. Losses run on in part steps; makers who count whole steps may state less. Never below 0. ${blankAsZero}`,
  source: `Form of makers' derating rules, common practice, no source; the loss figures are the maker's. First altitude: ${defaults.from_altitude.source}; first temperature: ${defaults.from_temperature.source}`,
  examples: [
    {
      formula: "=OXYGEN.GENERATOR_DERATED(20,1500,35,0.035,0.02)",
      result:
        20 *
        (1 - (0.035 * (1500 - defaults.from_altitude.value)) / 300) *
        (1 - (0.02 * (35 - defaults.from_temperature.value)) / 5),
      source: `20 × (1 − 0.035 × (1500 − ${defaults.from_altitude.value}) / 300) × (1 − 0.02 × (35 − ${defaults.from_temperature.value}) / 5)`,
    },
    {
      formula: '=OXYGEN.GENERATOR_DERATED(20,"1000 ft",77,0.035,0.02,300,77)',
      result: 19.9888,
      note: "4.8 m above the first altitude, and no hotter than the first temperature",
      source: "1000 ft = 304.8 m (NIST SP 811): 20 × (1 − 0.035 × 4.8 / 300)",
    },
    {
      formula: "=OXYGEN.GENERATOR_DERATED(20,1500,35,0.035,0.02,{150;900},40)",
      result: [[16.85], [18.6]],
      note: "Two makers' first altitudes, and both bear 40 °C",
      source: "20 × (1 − 0.035 × 4.5) and 20 × (1 − 0.035 × 2)",
    },
  ],
  seeAlso: ["GENERATORS_NEEDED", "FUEL_RATE", "AIR_PRESSURE"],
  caution:
    "Use the loss figures of the generator's own maker: they differ widely between engines. Keep its exhaust away from people and from the plant's air intake.",
};
