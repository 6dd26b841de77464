import type { About } from "../../arguments/about";
import { formatNumber } from "../../arguments/argument";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { litres } from "../../arguments/quantity";

export const args = cellArguments({
  capacity: litres.positive(),
  container: litres.positive(),
});

/**
 * Whether a container is large enough to drain a vessel of liquid into.
 *
 * @customfunction DRAIN_CHECK
 * @param capacity Liquid the vessel holds when full [L]
 * @param container Liquid the open drain container holds [L]
 * @returns "ok", or what is wrong
 */
export function drainCheck(capacity: any[][], container: any[][]): any[][] {
  return eachCell(args, [capacity, container], (given) =>
    given.container > given.capacity
      ? "ok"
      : `too small: the container holds ${formatNumber(given.container)} L and must hold more than the vessel's ${formatNumber(given.capacity)} L`,
  );
}

export const about: About = {
  gives: "text",
  rule: "container > capacity of the vessel",
  range:
    "Both above 0. Equal sizes are too small, since liquid splashes and boils. The vessel's whole capacity counts, not what is thought to be in it.",
  source: "common practice, no source",
  examples: [
    { formula: "=OXYGEN.DRAIN_CHECK(60,80)", result: "ok", source: "80 > 60" },
    {
      formula: "=OXYGEN.DRAIN_CHECK(60,60)",
      result: "too small: the container holds 60 L and must hold more than the vessel's 60 L",
      source: "60 is not above 60",
    },
  ],
  seeAlso: ["DRAIN_BY", "DRAIN_HOURS"],
  caution:
    "Drain outdoors, away from drains, pits, asphalt, oil, grease and anything that burns, into metal made for cryogenic liquid, with nobody near who isn't needed. Cold liquid burns skin and eyes: face shield, loose dry gloves. Follow the maker's manual.",
};
