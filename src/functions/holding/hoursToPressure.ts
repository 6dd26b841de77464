import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { fraction, litres, watts } from "../../arguments/quantity";
import { levelAboveBrim } from "../../arguments/vesselLevel";
import { gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid, noAnswer } from "../../cells/cellValues";
import { warmClosedVessel } from "../../models/closedVessel";

export const args = cellArguments({
  brim_volume: litres.positive(),
  level: litres,
  from_pressure: liquidGauge,
  to_pressure: liquidGauge,
  heat_leak: watts.positive(),
  mixed_share: fraction.aboveTo(0, 1).default(defaults.mixed_share),
});

/** Three decimals, cut down: a level or pressure that must not be passed. */
const atMost = (value: number): string => formatNumber(Math.floor(value * 1000) / 1000);

/**
 * Hours until the pressure in a closed vessel has climbed to an end pressure, such as that of its relief valve.
 *
 * @customfunction HOURS_TO_PRESSURE
 * @param brim_volume Volume of the vessel to the brim, vapour space included [L]
 * @param level Liquid in it when it is closed [L]
 * @param from_pressure Pressure when it is closed, gauge [bar]
 * @param to_pressure End pressure, gauge [bar]
 * @param heat_leak Heat that leaks in [W]
 * @param [mixed_share] Share of the time of a fully mixed vessel that a standing one takes
 * @returns Hours to the end pressure [h]
 */
export function hoursToPressure(
  brim_volume: any[][],
  level: any[][],
  from_pressure: any[][],
  to_pressure: any[][],
  heat_leak: any[][],
  mixed_share?: any[][],
): any[][] {
  return eachCell(args, [brim_volume, level, from_pressure, to_pressure, heat_leak, mixed_share], (given) => {
    const wrong = levelAboveBrim(given.level, given.brim_volume);
    if (wrong) return wrong;
    const { from_pressure: from, to_pressure: to } = given;
    if (to <= from) {
      return invalid(
        `to_pressure of ${formatNumber(to)} bar is not above from_pressure of ${formatNumber(from)} bar; a closed vessel only gains pressure`,
      );
    }
    const warming = warmClosedVessel(given.brim_volume, given.level, from, to, given.heat_leak);
    if (warming.kind === "reaches") return warming.hours * given.mixed_share;
    if (warming.kind === "liquid-full") {
      return noAnswer(
        `liquid-full at ${atMost(warming.pressure)} bar, before ${formatNumber(to)} bar: at most ${atMost(warming.mostLevel)} L when it is closed leaves vapour space to the end; a liquid-full vessel can burst, so vent or draw it down by the maker's manual`,
      );
    }
    if (given.level === 0) return noAnswer("there is no liquid in it; the rule holds only while liquid is left");
    return noAnswer(
      `the last liquid is gone at ${formatNumber(Math.round(warming.pressure * 1000) / 1000)} bar, before ${formatNumber(to)} bar; the rule holds only while liquid is left`,
    );
  });
}

export const about: About = {
  gives: "hours",
  rule: "mixed_share × (internal energy at the end − at the start) / heat leak, liquid and vapour saturated at both",
  range: `Both pressures 0.5 to 25 bar absolute, entered as bar gauge; an end that is not above the start and a level above the brim volume are #VALUE!. Liquid swells as it warms: a vessel that becomes liquid-full before the end, or runs out of liquid, is #N/A with the level or pressure. The metal's heat is left out. Mixing 1 is a stirred vessel, the longest time; a standing one has a warm top layer and gets there several times sooner. ${gaugeAtAltitude}`,
  source: `First law for a closed vessel; properties of pure oxygen: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175; mixed share: ${defaults.mixed_share.source}`,
  examples: [
    {
      formula: '=OXYGEN.HOURS_TO_PRESSURE(40,38,0,"22 psi",12,1)',
      result: 16.73162,
      tolerance: 0.002,
      note: "Fully mixed",
      source: "Schmidt & Wagner 1985, energy balance evaluated independently",
    },
    {
      formula: '=OXYGEN.HOURS_TO_PRESSURE(40,38,0,"22 psi",12)',
      result: 16.73162 * defaults.mixed_share.value,
      tolerance: 0.0005,
      note: "Standing",
      source: `${defaults.mixed_share.value} × 16.73162 h of the mixed vessel`,
    },
    {
      formula: '=OXYGEN.HOURS_TO_PRESSURE(40,38,0,"35 psi",12)',
      result: { error: "#N/A", words: "liquid-full at 1.799 bar" },
      note: "95 % full is too full for a 35 psi valve",
      source: "Schmidt & Wagner 1985: 38 L of cold liquid are 40 L of liquid alone below 35 psi",
    },
  ],
  seeAlso: ["MOST_COLD_FILL", "HEAT_LEAK", "SATURATION_PRESSURE"],
  caution:
    "An estimate for planning, never a permit to leave a vessel closed. Relief valves stay as the maker set them and are kept free of ice; local pressure codes and the maker's manual rule.",
};
