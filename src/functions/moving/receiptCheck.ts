import { defaults } from "../../models/defaults";
import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { flag } from "../../arguments/text";

export const args = tableArguments({
  shock: flag,
  tilt: flag,
  noted: flag,
  crate_damaged: flag.default(defaults.crate_damaged),
});

const inspect = "photograph it, open and inspect with care, and use nothing inside until it is found sound";
const keep = "nothing to do; keep the indicator in view until unpacked";

/**
 * What to do with a crate that has just arrived: indicators, crate and bill of lading.
 *
 * @customfunction RECEIPT_CHECK
 * @param shock Whether a shock indicator on the crate has tripped
 * @param tilt Whether a tilt indicator on the crate has tripped
 * @param noted Whether what was found is written on the bill of lading
 * @param [crate_damaged] Whether the crate itself is damaged
 * @returns Item, state and what to do, one row an item
 */
export function receiptCheck(shock: any[][], tilt: any[][], noted: any[][], crate_damaged?: any[][]): any[][] {
  return wholeTable(args, [shock, tilt, noted, crate_damaged], (given) => {
    const found = given.shock || given.tilt || given.crate_damaged;
    const bill = (): [string, string] => {
      if (!found) return ["nothing to note", "sign as received"];
      return given.noted
        ? ["noted", "keep a copy signed by the driver; report to carrier and sender today"]
        : [
            "not noted",
            "write on the bill of lading what was found before signing; keep a copy signed by the driver; report to carrier and sender today",
          ];
    };
    return [
      ["item", "state", "action"],
      ["shock indicator", given.shock ? "tripped" : "not tripped", given.shock ? inspect : keep],
      ["tilt indicator", given.tilt ? "tripped" : "not tripped", given.tilt ? `stand it upright; ${inspect}` : keep],
      ["crate", given.crate_damaged ? "damaged" : "sound", given.crate_damaged ? inspect : "nothing to do"],
      ["bill of lading", ...bill()],
    ];
  });
}

export const about: About = {
  gives: "text",
  rule: "a tripped indicator or a damaged crate goes on the bill of lading before it is signed, and the goods are inspected before use",
  range:
    "TRUE or FALSE each. A tripped indicator is a warning, not proof of damage, and no reason by itself to refuse the crate; an indicator that has not tripped is no proof of soundness.",
  source: "common practice, no source: instructions on shock and tilt indicators and of freight carriers agree on it",
  examples: [
    {
      formula: "=OXYGEN.RECEIPT_CHECK(FALSE,FALSE,FALSE)",
      result: [
        ["item", "state", "action"],
        ["shock indicator", "not tripped", "nothing to do; keep the indicator in view until unpacked"],
        ["tilt indicator", "not tripped", "nothing to do; keep the indicator in view until unpacked"],
        ["crate", "sound", "nothing to do"],
        ["bill of lading", "nothing to note", "sign as received"],
      ],
      note: "Nothing found",
      source: "The rule stated",
    },
    {
      formula: "=OXYGEN.RECEIPT_CHECK(FALSE,FALSE,TRUE,TRUE)",
      result: [
        ["item", "state", "action"],
        ["shock indicator", "not tripped", "nothing to do; keep the indicator in view until unpacked"],
        ["tilt indicator", "not tripped", "nothing to do; keep the indicator in view until unpacked"],
        [
          "crate",
          "damaged",
          "photograph it, open and inspect with care, and use nothing inside until it is found sound",
        ],
        ["bill of lading", "noted", "keep a copy signed by the driver; report to carrier and sender today"],
      ],
      note: "A broken crate, already written down",
      source: "The rule stated",
    },
  ],
  seeAlso: ["SITE_CHECK", "CAUTIONS"],
  caution:
    "A vessel or plant that was knocked or tipped can have lost its vacuum or cracked inside and look whole. Don't fill or start it until someone trained by its maker has passed it. Lift crates with gear and people rated for their mass.",
};
