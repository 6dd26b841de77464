import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { absoluteFromGauge, flashFraction } from "../../models/oxygen";

export const args = cellArguments({
  from_pressure: liquidGauge,
  to_pressure: liquidGauge.default(defaults.to_pressure),
});

/**
 * Share of liquid that turns into gas when it is let down from one pressure to a lower one.
 *
 * @customfunction FLASH_LOSS
 * @param from_pressure Pressure at which the liquid boiled in the store, gauge [bar]
 * @param [to_pressure] Pressure into which it flows, gauge [bar]
 * @returns Fraction by mass that flashes off
 */
export function flashLoss(from_pressure: any[][], to_pressure?: any[][]): any[][] {
  return eachCell(args, [from_pressure, to_pressure], (given) =>
    exceeds(given.to_pressure, given.from_pressure)
      ? invalid(
          `to_pressure of ${formatNumber(given.to_pressure)} bar is above from_pressure of ${formatNumber(given.from_pressure)} bar; liquid flashes when it is let down to a lower pressure: check which is which`,
        )
      : // Rounding of two equal enthalpies may fall below 0.
        Math.max(0, flashFraction(absoluteFromGauge(given.from_pressure), absoluteFromGauge(given.to_pressure))),
  );
}

export const about: About = {
  gives: "fraction",
  rule: "(enthalpy of the liquid at the start − at the end) / heat of vaporisation at the end; 0 when both are equal",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!, as is an end pressure above the start. Liquid that has stood at the pressure long enough to boil at it: freshly pressurised cold liquid flashes less. ${gaugeAtAltitude} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Throttling at constant enthalpy; properties: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175",
  examples: [
    {
      formula: '=OXYGEN.FLASH_LOSS("22 psi")',
      result: 0.07902271,
      tolerance: 0.00001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: '=OXYGEN.FLASH_LOSS("35 psi","10 psi")',
      result: 0.0692761,
      tolerance: 0.00001,
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.FLASH_LOSS(1.2,1.2)",
      result: 0,
      note: "Nothing flashes at one pressure",
      source: "By the rule: no difference of enthalpy",
    },
    {
      formula: "=OXYGEN.FLASH_LOSS(0,1.5)",
      result: { error: "#VALUE!", words: "to_pressure of 1.5 bar is above from_pressure of 0 bar" },
      source: "By the rule: nothing flashes into a higher pressure",
    },
  ],
  seeAlso: ["ESTIMATED_DRAW", "COOL_DOWN_LOSS", "SATURATION_PRESSURE"],
};
