import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litresPerHour, perDegree } from "../../arguments/quantity";
import { airCelsius, siteAltitude } from "../../arguments/siteAir";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { deratedRate as rateAt } from "../../models/derating";

export const args = cellArguments({
  rated_rate: litresPerHour.positive(),
  altitude: siteAltitude,
  temperature: airCelsius,
  loss_per_degree: perDegree.between(0, 1).default(defaults.loss_per_degree),
  rated_temperature: airCelsius.default(defaults.rated_temperature),
});

/**
 * Estimate of what a plant makes in a site's heat and thin air, from its rated figure. The maker's own table
 * (RATE_FROM_TABLE) or the site's own runs (FIT_DERATING) are better.
 *
 * @customfunction DERATED_RATE
 * @param rated_rate Liquid the plant makes as rated, at sea level [L/h]
 * @param altitude Altitude above sea level, geopotential [m]
 * @param temperature Air temperature at the plant, at its warmest [°C]
 * @param [loss_per_degree] Share lost for each degree above the rated temperature [1/°C]
 * @param [rated_temperature] Temperature of the rated figure [°C]
 * @returns Estimated make rate [L/h]
 */
export function deratedRate(
  rated_rate: any[][],
  altitude: any[][],
  temperature: any[][],
  loss_per_degree?: any[][],
  rated_temperature?: any[][],
): any[][] {
  return eachCell(args, [rated_rate, altitude, temperature, loss_per_degree, rated_temperature], (given) =>
    rateAt(given.rated_rate, given.altitude, given.temperature, given.loss_per_degree, given.rated_temperature),
  );
}

export const about: About = {
  gives: "make rate",
  rule: "rated rate × (air pressure / 101.325) × (1 − loss per degree × max(0, temperature − rated temperature)), at least 0 and at most the rated rate",
  range: `An estimate, not a maker's curve: real plants may fall off faster, or stop, in heat. −500 to 11 000 m and −90 to 60 °C; outside is #VALUE!. Never above the rated rate, so cold or low ground earns nothing. ${blankAsZero}`,
  source: "Own planning default: air pressure of ISO 2533:1975 and a straight loss with heat; no published curve",
  examples: [
    {
      formula: "=OXYGEN.DERATED_RATE(2,0,35)",
      result: 2 * (1 - defaults.loss_per_degree.value * (35 - defaults.rated_temperature.value)),
      note: "Warm air alone",
      source: "2 × (1 − loss × (35 − rated temperature))",
    },
    {
      formula: "=OXYGEN.DERATED_RATE(1,5000,-17.5)",
      result: 0.533135,
      tolerance: 0.00001,
      note: "Thin air alone",
      source: "ISO 2533:1975, table 5: 540.199/1013.25",
    },
    {
      formula: "=OXYGEN.DERATED_RATE(1.6,5000,38,1.5%,28)",
      result: 0.725067,
      tolerance: 0.00001,
      note: "Thin and warm: a plant that its maker rates at 28 °C",
      source: "ISO 2533:1975, table 5: 1.6 × 540.199/1013.25 × (1 − 0.015 × 10)",
    },
    {
      formula: "=OXYGEN.DERATED_RATE(2,-400,10)",
      result: 2,
      note: "Never above the rated rate",
      source: "The rule stated",
    },
  ],
  seeAlso: ["RATE_FROM_TABLE", "FIT_DERATING", "AIR_PRESSURE", "HOURS_TO_FILL"],
  caution:
    "An estimate for planning. Ask the maker for the table of the machine and measure on site before patients depend on it.",
};
