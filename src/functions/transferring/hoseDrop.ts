import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { gasGauge } from "../../arguments/oxygenState";
import { litresPerMinute, metres, millimetres } from "../../arguments/quantity";
import { blankAsZero, gaugeAtAltitude } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { exceeds } from "../../models/exceeds";
import { inletDropShare, isothermalDrop } from "../../models/hoseDrop";

/** Largest drop for which density and speed at the inlet stand for the whole hose, as a share of the absolute pressure. */
const mostShare = 0.1;
/** Roughest wall for which the friction law is known, as a share of the bore. */
const roughest = 0.05;

export const args = cellArguments({
  flow: litresPerMinute,
  length: metres,
  bore_mm: millimetres.positive(),
  pressure: gasGauge.default(defaults.hose_pressure),
  roughness_mm: millimetres.default(defaults.roughness_mm),
});

/**
 * Pressure that oxygen gas loses in a straight hose or pipe at a flow.
 *
 * @customfunction HOSE_DROP
 * @param flow Gas flow, counted at 21.1 °C and 101.325 kPa [L/min]
 * @param length Length of the hose [m]
 * @param bore_mm Inner diameter [mm]
 * @param [pressure] Pressure where the gas enters, gauge [bar]
 * @param [roughness_mm] Roughness of the inner wall [mm]
 * @returns Pressure lost on the way [bar]
 */
export function hoseDrop(
  flow: any[][],
  length: any[][],
  bore_mm: any[][],
  pressure?: any[][],
  roughness_mm?: any[][],
): any[][] {
  return eachCell(args, [flow, length, bore_mm, pressure, roughness_mm], (given) => {
    if (exceeds(given.roughness_mm, roughest * given.bore_mm)) {
      return invalid(
        `roughness_mm of ${formatNumber(given.roughness_mm)} mm is more than a twentieth of bore_mm of ${formatNumber(given.bore_mm)} mm, where the friction law is not known to hold; check which is which`,
      );
    }
    if (given.flow === 0) return 0;
    const share = inletDropShare(given.flow, given.length, given.bore_mm, given.pressure, given.roughness_mm);
    if (exceeds(share, mostShare)) {
      return invalid(
        `bore_mm of ${formatNumber(given.bore_mm)} mm is too narrow for this flow and length: more than a tenth of the absolute pressure would be lost, where the rule ends; take a wider or shorter hose, or less flow`,
      );
    }
    return isothermalDrop(share, given.pressure);
  });
}

export const about: About = {
  gives: "pressure difference",
  rule: "p × (1 − √(1 − 2 × x)), x = friction factor × length / bore × density × speed² / 2 / p, p the absolute pressure, density and speed at the inlet at 21.1 °C; friction factor 64 / Re below Re 2300, from there by Colebrook and White",
  range: `Gas at room temperature, −0.51325 to 300.31175 bar gauge; bore above 0, roughness at most a twentieth of it. A drop above a tenth of the absolute pressure is #VALUE!. Couplings, valves, flowmeters, bends and kinks are not in it and often cost more than the hose: measure at the outlet while the flow runs. Not for liquid. ${gaugeAtAltitude} ${blankAsZero}`,
  source:
    "Darcy and Weisbach with Colebrook 1939, J. Inst. Civil Eng. 11:133; density: Schmidt & Wagner 1985; viscosity: Lemmon & Jacobsen 2004, Int. J. Thermophys. 25:21",
  examples: [
    {
      formula: "=OXYGEN.HOSE_DROP(60,15,6)",
      result: 0.122115,
      tolerance: 0.0006,
      note: "60 L/min through 15 m of 6 mm hose",
      source:
        "Properties and friction factor from two general libraries, evaluated independently: Re 13 781, x 0.02406",
    },
    {
      formula: '=OXYGEN.HOSE_DROP(60,"15 m","0.25 in",3.5)',
      result: 0.103477,
      tolerance: 0.0006,
      note: "A quarter-inch hose at 3.5 bar",
      source: "As above",
    },
    {
      formula: "=OXYGEN.HOSE_DROP(600,30,15,4,0.05)",
      result: 0.255345,
      tolerance: 0.0013,
      note: "A pipe of 15 mm with a rough wall",
      source: "As above: Re 55 126, friction factor 0.02907",
    },
    {
      formula: "=OXYGEN.HOSE_DROP(200,50,8)",
      result: { error: "#VALUE!", words: "bore_mm of 8 mm is too narrow" },
      source: "As above: x is 0.171",
    },
  ],
  seeAlso: ["VAPORISER_DUTY", "DESIGN_FLOW", "DEMAND_FLOW"],
  caution:
    "Only hoses and fittings made and cleaned for oxygen at that pressure. A ventilator may stop below the inlet pressure its maker asks for: a licensed fitter measures at the last outlet under full flow before a patient depends on it; local medical-gas codes rule.",
};
