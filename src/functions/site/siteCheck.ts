import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { degrees, metres } from "../../arguments/quantity";
import { choice, flag } from "../../arguments/text";
import { type Surface, siteFindings, surfaces } from "../../models/site";

export const args = tableArguments({
  clearance: metres,
  tilt: degrees,
  surface: choice<Surface>(surfaces, {
    cement: "concrete",
    brick: "stone",
    rock: "stone",
    steel: "metal",
    aluminium: "metal",
    aluminum: "metal",
    sand: "gravel",
    earth: "soil",
    dirt: "soil",
    grass: "soil",
    timber: "wood",
    plywood: "wood",
    vinyl: "plastic",
    rubber: "plastic",
    carpet: "plastic",
    tiles: "tile",
    tar: "asphalt",
    tarmac: "asphalt",
    bitumen: "asphalt",
  }),
  ventilated: flag,
});

/**
 * Whether a spot is fit for a plant that makes liquid oxygen: clearance, level, floor and fresh air.
 *
 * @customfunction SITE_CHECK
 * @param clearance Smallest clear distance around the plant [m]
 * @param tilt Steepest tilt of the floor [°]
 * @param surface Floor: concrete, stone, metal, gravel, soil, wood, plastic, tile or asphalt
 * @param ventilated TRUE outdoors or in a room with fresh air that keeps moving
 * @returns Table of four rows: item, state (ok, check or not ok), what to do
 */
export function siteCheck(clearance: any[][], tilt: any[][], surface: any[][], ventilated: any[][]): any[][] {
  return wholeTable(args, [clearance, tilt, surface, ventilated], (given) => [
    ["item", "state", "what to do"],
    ...siteFindings(given.clearance, given.tilt, given.surface, given.ventilated).map(({ item, state, action }) => [
      item,
      state,
      action,
    ]),
  ]);
}

export const about: About = {
  gives: ["text", "text", "text"],
  rule: "clearance at least 1.8 m (6 ft); tilt at most 5°; floor never asphalt or tile, nor anything that burns; never a room without ventilation",
  range:
    "Looks at these four things only: ignition sources, drains, traffic, load of the floor and power are for the people on the spot.",
  source:
    "Clearance, tilt and tile: common practice, no source; noncombustible surfacing where liquid oxygen may leak: 29 CFR 1910.104(b)(2)(iii) (second hand), and that asphalt counts as combustible there (from memory); wood and plastic: the same ground",
  examples: [
    {
      formula: '=OXYGEN.SITE_CHECK(2,1,"concrete",TRUE)',
      result: [
        ["item", "state", "what to do"],
        ["clearance", "ok", "keep 1.8 m (6 ft) free on every side, of people's belongings too"],
        ["tilt", "ok", "keep it level; measure again when the ground has settled"],
        ["surface", "ok", "keep it free of oil, grease and litter"],
        ["ventilation", "ok", "keep doors and vents open; cold vapour pools low, so low openings count most"],
      ],
      source: "The rule's own words",
    },
  ],
  seeAlso: ["TILT_ANGLE", "SITE_AREA", "ROOM_OXYGEN", "CAUTIONS"],
  caution:
    "A first look, not an approval. Liquid oxygen on asphalt, oil or anything organic can explode when stepped on; local fire codes, the maker's manual and a licensed inspection decide.",
};
