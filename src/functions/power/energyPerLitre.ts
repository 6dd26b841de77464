import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { kilowatts, litresPerHour } from "../../arguments/quantity";
import { invalid } from "../../cells/cellValues";
import { idealLiquefactionWork } from "../../models/constants";

export const args = cellArguments({
  power: kilowatts.positive(),
  rate: litresPerHour.positive(),
});

/**
 * Electric energy a plant takes for each litre of liquid.
 *
 * @customfunction ENERGY_PER_LITRE
 * @param power Power the plant draws while it makes liquid [kW]
 * @param rate Liquid it makes [L/h]
 * @returns Energy for a litre of liquid [kWh/L]
 */
export function energyPerLitre(power: any[][], rate: any[][]): any[][] {
  return eachCell(args, [power, rate], (given) => {
    const energy = given.power / given.rate;
    return energy < idealLiquefactionWork
      ? invalid(
          `power of ${formatNumber(given.power)} kW for a rate of ${formatNumber(given.rate)} L/h is ${formatNumber(energy)} kWh/L, below the ${formatNumber(idealLiquefactionWork)} kWh/L that physics asks for; check both`,
        )
      : energy;
  });
}

export const about: About = {
  gives: "energy a litre",
  rule: "power / rate",
  range:
    "Power and rate above 0. Less than the ideal work of liquefaction, 0.2014 kWh/L from gas at 300 K, is #VALUE!: no plant can reach it, and small ones need 15 to 30 times as much.",
  source:
    "Plain arithmetic; the limit is T₀Δs − Δh from gas at 300 K and 1 atm to saturated liquid, equation of state of Schmidt & Wagner 1985",
  examples: [
    { formula: "=OXYGEN.ENERGY_PER_LITRE(6.6,1.5)", result: 4.4, source: "6.6 / 1.5" },
    {
      formula: "=OXYGEN.ENERGY_PER_LITRE(5,30)",
      result: { error: "#VALUE!", words: "below the 0.2013592 kWh/L" },
      note: "30 L a day typed as 30 L/h",
      source: "5 / 30 = 0.167, below the limit",
    },
  ],
  seeAlso: ["DAILY_ENERGY", "POWER_LOAD"],
};
