import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { minutesOrLongRun } from "../../arguments/longRun";
import { cubicMetres, fraction, litresPerMinute, number } from "../../arguments/quantity";
import { siteAltitude } from "../../arguments/siteAir";
import { altitudeOfRoom, blankAsZero } from "../../arguments/whereCautionEnds";
import { growth, oxygenInAir, plantRoomOxygenAfter, plantRoomOxygenLongRun } from "../../models/roomOxygen";

export const args = cellArguments({
  room: cubicMetres,
  product_flow: litresPerMinute,
  air_changes: number.atLeast(0).default(defaults.air_changes),
  minutes: minutesOrLongRun,
  purity: fraction.aboveTo(oxygenInAir, 1).default(defaults.purity),
  altitude: siteAltitude.default(defaults.altitude),
});

/**
 * Oxygen left in a room in which a plant takes its air, sends its product elsewhere and gives the nitrogen back, after some
 * minutes or in the long run. People in it may faint without warning.
 *
 * @customfunction PLANT_ROOM_OXYGEN
 * @param room Air in the room, furniture and machines taken off [m³]
 * @param product_flow Oxygen product that leaves the room, as gas [L/min]
 * @param [air_changes] Changes of air an hour blown out of the room, fresh air coming in
 * @param [minutes] Minutes since the plant began, or the words long run; the long run if left out [min]
 * @param [purity] Oxygen in the product, as a fraction
 * @param [altitude] Altitude of the room [m]
 * @returns Oxygen left in the room's air, a fraction
 */
export function plantRoomOxygen(
  room: any[][],
  product_flow: any[][],
  air_changes?: any[][],
  minutes?: any[][],
  purity?: any[][],
  altitude?: any[][],
): any[][] {
  return eachCell(args, [room, product_flow, air_changes, minutes, purity, altitude], (given) => {
    const product = given.product_flow * growth(given.altitude);
    return given.minutes === undefined
      ? plantRoomOxygenLongRun(given.room, product, given.air_changes, given.purity)
      : plantRoomOxygenAfter(given.room, product, given.air_changes, given.minutes, given.purity);
  });
}

const purity = defaults.purity.value;

export const about: About = {
  gives: "fraction",
  rule: "long run 0.21 − (purity − 0.21) × gas / air; after t minutes 0.21 − (purity − 0.21) × gas / air × (1 − exp(−air × t / room)), without air 0.21 − (purity − 0.21) × gas × t / room; never below 0; air = air changes × room / 60, gas = product flow × 101.325 kPa / air pressure",
  range: `A mean, well mixed, of a plant that draws its air from the room and blows the nitrogen back into it; ducted outdoors it takes nothing. Near the vent it is far poorer. Room above 0; purity above 0.21 and at most 1: the purer the product, the poorer the room. Starts from fresh air; what people and engines use up comes on top. ${altitudeOfRoom} ${blankAsZero}`,
  source:
    "Dilution balance of industrial-hygiene texts (from memory); below 0.195 counts as short of oxygen: OSHA 29 CFR 1910.134; air pressure: ISO 2533:1975",
  examples: [
    {
      formula: "=OXYGEN.PLANT_ROOM_OXYGEN(60,25,1)",
      result: 0.21 - (purity - 0.21) * 0.025,
      note: "One change of air an hour is not enough: below 0.195",
      source: `0.21 − (${purity} − 0.21) × 25 / 1000`,
    },
    {
      formula: "=OXYGEN.PLANT_ROOM_OXYGEN(60,25,{0,1},60,0.95)",
      result: [[0.1915, 0.21 - 0.0185 * (1 - Math.exp(-1))]],
      note: "After an hour, closed and aired",
      source: "0.21 − 0.74 × 25 × 60 / 60 000; 0.21 − 0.74 × 0.025 × (1 − exp(−1)) = 0.1983",
    },
    {
      formula: '=OXYGEN.PLANT_ROOM_OXYGEN(60,25,2,"long run",0.95,2000)',
      result: 0.19821,
      tolerance: 0.000005,
      note: "Two changes, at 2000 m",
      source: "79.495 kPa (ISO 2533:1975): 0.21 − 0.74 × 25 × 101.325 / 79.495 / 2000",
    },
    {
      formula: "=OXYGEN.PLANT_ROOM_OXYGEN(60,25)",
      result: 0,
      note: "A closed room has none left in the end",
      source: "By the rule: without air it falls to 0",
    },
  ],
  seeAlso: ["VENTILATION_NEEDED", "ROOM_OXYGEN", "SITE_CHECK", "DELIVERED_FLOW"],
  caution:
    "Below 0.195 people are in danger, lower down they collapse without feeling it. Take the plant's air from outdoors and blow its waste out, fix an oxygen alarm in the room, and let nobody in alone; local codes and the maker's manual rule.",
};
