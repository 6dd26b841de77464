import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { phases, refuseTwoPhases } from "../../arguments/phases";
import { amperes, celsius, metres, squareMillimetres, volts } from "../../arguments/quantity";
import { formatNumber } from "../../arguments/argument";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { invalid } from "../../cells/cellValues";
import { cableDrop as dropOf } from "../../models/electricity";

export const args = cellArguments({
  current: amperes,
  length: metres,
  area_mm2: squareMillimetres,
  voltage: volts,
  temperature: celsius.between(-40, 150).default(defaults.conductor_temperature),
  phases,
});

/**
 * Share of the supply voltage that is lost along a copper cable.
 *
 * @customfunction CABLE_DROP
 * @param current Current in the cable [A]
 * @param length Length of the cable, one way [m]
 * @param area_mm2 Copper area of one conductor [mm²]
 * @param voltage Supply voltage, from line to line with three phases [V]
 * @param [temperature] Conductor temperature [°C]
 * @param [phases] Phases of the supply, 1 or 3
 * @returns Voltage lost over supply voltage
 */
export function cableDrop(
  current: any[][],
  length: any[][],
  area_mm2: any[][],
  voltage: any[][],
  temperature?: any[][],
  phases?: any[][],
): any[][] {
  return eachCell(args, [current, length, area_mm2, voltage, temperature, phases], (given) => {
    const refused = refuseTwoPhases(given.phases);
    if (refused) return refused;
    const lost = dropOf(given.current, given.length, given.area_mm2, given.temperature, given.phases);
    return lost < given.voltage
      ? lost / given.voltage
      : invalid(
          `current of ${formatNumber(given.current)} A can't flow: it would lose ${formatNumber(lost)} V of the ${formatNumber(given.voltage)} V supply in the cable; check the length, the area_mm2 and the current`,
        );
  });
}

export const about: About = {
  gives: "fraction",
  rule: "2 × I × length × R / V (√3 in place of 2 with three phases), R = 0.017241 / area × (234.5 + T) / 254.5 Ω/m",
  range: `Plain copper from −40 to 150 °C. Resistance alone, at power factor 1: reactance adds in thick cables. Printed tables of stranded cable run up to 6 % higher. A drop of the whole voltage is #VALUE!. ${blankAsZero}`,
  source:
    "IEC 60028 (0.017241 Ω·mm²/m at 20 °C, read second hand; −234.5 °C, from memory); 75 °C is the conductor temperature of NEC (NFPA 70) chapter 9, table 8",
  examples: [
    {
      formula: "=OXYGEN.CABLE_DROP(24,50,6,240,70)",
      result: 0.0343804,
      tolerance: 1e-7,
      note: "Over the 3 % that NEC 210.19(A) advises for a branch (from memory)",
      source: "by hand: 2 × 24 × 50 × 0.017241/6 × 304.5/254.5 = 8.25129 V, over 240 V",
    },
    {
      formula: "=OXYGEN.CABLE_DROP(10,29,2.5,200,20)",
      result: 0.0199996,
      tolerance: 1e-6,
      note: "At 20 °C, where the resistivity is stated",
      source: "by hand: 2 × 10 × 29 × 0.017241 / 2.5 = 3.99991 V, over 200 V",
    },
    {
      formula: "=OXYGEN.CABLE_DROP(32,45,10,400)",
      result: (2 * 32 * 45 * (0.017241 / 10) * (234.5 + defaults.conductor_temperature.value)) / 254.5 / 400,
      note: "One phase, a conductor as warm as the code's table takes it",
      source: `by hand: 2 × 32 × 45 × 0.017241/10 × (234.5 + ${defaults.conductor_temperature.value})/254.5 V, over 400 V`,
    },
    {
      formula: "=OXYGEN.CABLE_DROP(32,45,10,400,60,3)",
      result: 0.0124401,
      tolerance: 1e-7,
      note: "Three phases and a cooler conductor",
      source: "by hand: 1.7320508 × 32 × 45 × 0.017241/10 × 294.5/254.5 = 4.97603 V, over 400 V",
    },
  ],
  seeAlso: ["LINE_CURRENT", "CIRCUIT_NEEDED"],
  caution:
    "Voltage drop is one test of a cable; heating, fault protection and the way it is laid are others and often decide. A licensed electrician chooses and lays the cable, and the local electrical code decides.",
};
