import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { cellArguments, eachCell, sameLength } from "../../arguments/eachCell";
import { count, fraction, watts as wattsEach } from "../../arguments/quantity";
import { list } from "../../arguments/range";
import { blankAsZero } from "../../arguments/whereCautionEnds";
import { powerLoad as loadOf } from "../../models/electricity";

export const args = cellArguments({
  counts: list(count),
  watts: list(wattsEach),
  use_share: fraction.default(defaults.use_share),
});

/**
 * Electric load of a list of equipment: how many of each, and the power of one.
 *
 * @customfunction POWER_LOAD
 * @param counts How many of each kind, one cell a kind
 * @param watts Power of one of each kind while it runs [W], in the same order
 * @param [use_share] Share of the whole that runs at once
 * @returns Load [kW]
 */
export function powerLoad(counts: any[][], watts: any[][], use_share?: any[][]): any[][] {
  return eachCell(
    args,
    [counts, watts, use_share],
    (given) =>
      sameLength({ counts: given.counts, watts: given.watts }) ?? loadOf(given.counts, given.watts, given.use_share),
  );
}

export const about: About = {
  gives: "power",
  rule: "Σ count × watts × share in use / 1000",
  range: `Counts are whole; both ranges have as many cells, a first row of headings is passed over, and a blank among them is #VALUE!. Running power only: a motor draws several times as much while it starts (START_KVA). ${blankAsZero}`,
  source: `Plain arithmetic; use share: ${defaults.use_share.source}`,
  examples: [
    {
      formula: "=OXYGEN.POWER_LOAD({2;1;10},{5000;600;15})",
      result: 10.75 * defaults.use_share.value,
      note: "Two plants, a pump and ten lamps",
      source: `(2 × 5000 + 600 + 10 × 15) / 1000 × ${defaults.use_share.value}`,
    },
    {
      formula: '=OXYGEN.POWER_LOAD({4},{"1.5 kW"},0.5)',
      result: 3,
      note: "Half of four heaters at once",
      source: "4 × 1.5 × 0.5",
    },
  ],
  seeAlso: ["LINE_CURRENT", "GENERATORS_NEEDED", "START_KVA"],
  caution: "Use the power on the rating plates. A licensed electrician checks the load before anything is connected.",
};
