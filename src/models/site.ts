import { exceeds } from "./exceeds";

/** Tilt [°] of a floor that rises [m] over a level run [m]. */
export const tiltAngle = (rise: number, run: number): number => (Math.atan2(rise, run) * 180) / Math.PI;

/**
 * Floor [m²] under plants side by side across their width, with clearance all round and one shared gap between two.
 *
 * @param length m
 * @param width m
 * @param clearance m
 */
export const siteArea = (length: number, width: number, clearance: number, units: number): number =>
  (length + 2 * clearance) * (units * width + (units + 1) * clearance);

/** m; 6 ft, common practice, no source */
export const leastClearance = 1.8;
/** °; common practice, no source */
export const mostTilt = 5;

/** Floors that SITE_CHECK knows. */
export const surfaces = ["concrete", "stone", "metal", "gravel", "soil", "wood", "plastic", "tile", "asphalt"] as const;
export type Surface = (typeof surfaces)[number];

export interface SiteFinding {
  readonly item: string;
  readonly state: "ok" | "check" | "not ok";
  readonly action: string;
}

const clean: Pick<SiteFinding, "state" | "action"> = { state: "ok", action: "keep it free of oil, grease and litter" };
const loose = (action: string): Pick<SiteFinding, "state" | "action"> => ({ state: "check", action });
const never = (why: string): Pick<SiteFinding, "state" | "action"> => ({
  state: "not ok",
  action: `move, or lay a clean floor that can't burn: ${why}`,
});

// Liquid oxygen soaks into organic matter, which can then go off at a blow or a step. OSHA counts asphalt as combustible
// under a liquid oxygen transfer (29 CFR 1910.104; from memory); tile cracks under the cold: common practice, no source.
const surfaceFindings: Record<Surface, Pick<SiteFinding, "state" | "action">> = {
  concrete: clean,
  stone: clean,
  metal: loose("see that it carries the load when cold: some steels turn brittle under spilled liquid"),
  gravel: loose("make it level and firm, and free of oil, leaves and rubbish"),
  soil: loose("make it level and firm; take away plants and anything that burns, or lay a clean slab"),
  wood: never("wood that liquid oxygen has wetted burns fiercely and may explode"),
  plastic: never("plastic and rubber that liquid oxygen has wetted burn fiercely and may explode"),
  tile: never("tile cracks under the cold and its glue is organic"),
  asphalt: never("asphalt that liquid oxygen has wetted can explode when stepped on"),
};

/**
 * Findings on a spot for a plant.
 *
 * @param clearance m
 * @param tilt °
 */
export const siteFindings = (clearance: number, tilt: number, surface: Surface, ventilated: boolean): SiteFinding[] => [
  !exceeds(leastClearance, clearance)
    ? { item: "clearance", state: "ok", action: "keep 1.8 m (6 ft) free on every side, of people's belongings too" }
    : { item: "clearance", state: "not ok", action: "clear 1.8 m (6 ft) on every side, or move" },
  !exceeds(tilt, mostTilt)
    ? { item: "tilt", state: "ok", action: "keep it level; measure again when the ground has settled" }
    : { item: "tilt", state: "not ok", action: "level the floor to within 5°, or move" },
  { item: "surface", ...surfaceFindings[surface] },
  ventilated
    ? {
        item: "ventilation",
        state: "ok",
        action: "keep doors and vents open; cold vapour pools low, so low openings count most",
      }
    : {
        item: "ventilation",
        state: "not ok",
        action:
          "don't run it here: oxygen builds up and everything burns faster; move outdoors or into moving fresh air",
      },
];
