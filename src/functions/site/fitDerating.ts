import { defaults, inWords } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { column } from "../../arguments/column";
import { tableArguments, sameLength, wholeTable } from "../../arguments/eachCell";
import { litresPerHour } from "../../arguments/quantity";
import { airCelsius, siteAltitude } from "../../arguments/siteAir";
import { fitDerating as fit } from "../../models/derating";

export const args = tableArguments({
  altitudes: column(siteAltitude),
  temperatures: column(airCelsius),
  rates: column(litresPerHour.positive()),
});

/**
 * Rated rate and loss per degree that fit the site's own runs best, for use in DERATED_RATE.
 *
 * @customfunction FIT_DERATING
 * @param altitudes Altitude of each run [m]
 * @param temperatures Air temperature of each run [°C]
 * @param rates Liquid made an hour in each run, after the start delay [L/h]
 * @returns Table of one row: rated rate in L/h, loss per degree in 1/°C, residual of ln(rate)
 */
export function fitDerating(altitudes: any[][], temperatures: any[][], rates: any[][]): any[][] {
  return wholeTable(args, [altitudes, temperatures, rates], (given) => {
    const { altitudes, temperatures, rates } = given;
    const uneven = sameLength({ altitudes, temperatures, rates });
    if (uneven) return uneven;
    const { ratedRate, lossPerDegree, residual } = fit(altitudes, temperatures, rates);
    return [
      ["rated rate", "loss per degree", "residual"],
      [ratedRate, lossPerDegree, residual],
    ];
  });
}

export const about: About = {
  gives: ["make rate", "loss a degree", "number"],
  rule: `least squares of ln(rate) = ln(rated rate) + ln(rated share of DERATED_RATE), rated at ${inWords(defaults.rated_temperature)}; residual = root mean square misfit of ln(rate)`,
  range: `Rates above 0; the loss found is 0 or more. One run, none above ${inWords(defaults.rated_temperature)}, or all equally warm keep the loss of ${inWords(defaults.loss_per_degree)}, which is then not your plant's. A residual of 0.05 means that the runs scatter by about 5 %.`,
  source: "Non-linear least squares, any textbook of statistics, on the own planning rule of DERATED_RATE",
  examples: [
    {
      formula: "=OXYGEN.FIT_DERATING({0;0;0},{20;31.1;41.1},{2;1.76;1.52})",
      result: [
        ["rated rate", "loss per degree", "residual"],
        [2, 0.012, 0],
      ],
      tolerance: 1e-9,
      note: "Exact runs give their figures back",
      source: "2 × (1 − 0.012 × 10) = 1.76; 2 × (1 − 0.012 × 20) = 1.52",
    },
    {
      formula: "=OXYGEN.FIT_DERATING({0},{15},{1.8})",
      result: [
        ["rated rate", "loss per degree", "residual"],
        [1.8, defaults.loss_per_degree.value, 0],
      ],
      tolerance: 1e-9,
      note: "One cool run can't tell the loss: the default is kept",
      source: "The rule stated",
    },
  ],
  seeAlso: ["DERATED_RATE", "RATE_FROM_TABLE"],
  caution: "A fit to a few runs is an estimate; it says nothing about heat beyond the warmest run.",
};
