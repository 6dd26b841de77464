import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { liquidGauge } from "../../arguments/oxygenState";
import { litres, metres, pressureDifference } from "../../arguments/quantity";
import { flag } from "../../arguments/text";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { liquidHeight, lyingShare } from "../../models/levelFromHead";

export const args = cellArguments({
  pressure_difference: pressureDifference,
  inner_height: metres.positive(),
  brim_volume: litres.positive(),
  lying: flag.default(defaults.lying),
  pressure: liquidGauge.default(defaults.pressure),
});

/**
 * Liquid in a vessel from a differential-pressure gauge between its bottom and its top.
 *
 * @customfunction LEVEL_FROM_HEAD
 * @param pressure_difference Pressure at the bottom less that at the top, as the gauge shows it; inches of water as "20 inH2O" [mbar]
 * @param inner_height Inner height of the vessel; of a lying one its inner diameter [m]
 * @param brim_volume Volume of the vessel to the brim, vapour space included [L]
 * @param [lying] TRUE for a cylinder that lies on its side
 * @param [pressure] Pressure of the vessel, gauge [bar]
 * @returns Liquid in it [L]
 */
export function levelFromHead(
  pressure_difference: any[][],
  inner_height: any[][],
  brim_volume: any[][],
  lying?: any[][],
  pressure?: any[][],
): any[][] {
  return eachCell(args, [pressure_difference, inner_height, brim_volume, lying, pressure], (given) => {
    const height = liquidHeight(given.pressure_difference, given.pressure);
    if (exceeds(height, given.inner_height)) {
      return invalid(
        `pressure_difference of ${formatNumber(given.pressure_difference)} mbar is that of ${formatNumber(Math.round(height * 1000) / 1000)} m of liquid, above the inner_height of ${formatNumber(given.inner_height)} m; check the gauge's unit and its zero`,
      );
    }
    const share = Math.min(1, height / given.inner_height);
    return given.brim_volume * (given.lying ? lyingShare(share) : share);
  });
}

export const about: About = {
  gives: "liquid",
  rule: "height = pressure difference / ((density of the liquid − of the vapour) × 9.80665 m/s²); standing: brim volume × height / inner height; lying: brim volume × (θ − sin θ) / 2π with cos(θ/2) = 1 − 2 × height / inner height",
  range: `Bar gauge; 0.5 to 25 bar absolute, outside is #VALUE!; a height above the top is #VALUE!. Straight walls and flat ends: rounded ends hold less near the bottom and the top, so trust the maker's table first. Give the same pressure to what follows, such as GAS_FROM_LIQUID. Read the gauge with no flow. ${gaugeAtAltitude} ${blankAsZero} Properties are those of pure oxygen; 93 % product holds argon and nitrogen.`,
  source: "Hydrostatics and the segment of a circle; densities: Schmidt & Wagner 1985, Fluid Phase Equilibria 19:175",
  examples: [
    {
      formula: "=OXYGEN.LEVEL_FROM_HEAD(80,1.4,350)",
      result: 179.416,
      tolerance: 0.1,
      note: "Standing and open: 0.718 m of liquid",
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: "=OXYGEN.LEVEL_FROM_HEAD(80,1.4,350,FALSE,3)",
      result: 195.439,
      tolerance: 0.1,
      note: "The same reading at 3 bar is more liquid, and lighter",
      source: "Schmidt & Wagner 1985, evaluated independently",
    },
    {
      formula: '=OXYGEN.LEVEL_FROM_HEAD("20 inH2O",1.2,500,TRUE)',
      result: 169.671,
      tolerance: 0.1,
      note: "Lying",
      source:
        "Schmidt & Wagner 1985; segment integrated numerically, evaluated independently; inch of water: NIST SP 811",
    },
    {
      formula: "=OXYGEN.LEVEL_FROM_HEAD(160,1.4,350)",
      result: { error: "#VALUE!", words: "pressure_difference of 160 mbar is that of 1.435 m" },
      source: "Twice 0.7177 m is above the top",
    },
  ],
  seeAlso: ["LEVEL_FROM_WEIGHT", "GAS_FROM_LIQUID", "DAYS_UNTIL_EMPTY", "LIQUID_DENSITY"],
  caution:
    "A gauge that sticks or has a leaking line shows what it likes: check it against a weight or the trycock. Filling stops at the maker's mark, never by this figure.",
};
