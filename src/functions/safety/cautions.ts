import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { choice } from "../../arguments/text";
import { type CautionStep, cautionRows, cautionSteps } from "../../models/cautions";

export const args = tableArguments({
  step: choice<CautionStep>(cautionSteps).mayBeOmitted(),
});

/**
 * The usual cautions for a step of the work with liquid and compressed oxygen, to print beside a plan. They remind; local
 * codes, the maker's manual and licensed practice rule.
 *
 * @customfunction CAUTIONS
 * @param [step] transfer, gas supply, cylinder filling, drain, ship, receive, site or every result; all of them if left out
 * @returns Table: step, caution
 */
export function cautions(step?: any[][]): any[][] {
  return wholeTable(args, [step], (given) => [
    ["step", "caution"],
    ...cautionRows
      .filter((row) => given.step === undefined || row.step === given.step)
      .map((row) => [row.step, row.caution]),
  ]);
}

export const about: About = {
  gives: ["text", "text"],
  rule: "a list in our own words, by step",
  range: "Reminders, not instructions and not complete. Another step is #VALUE! with the steps known.",
  source: "Common practice, no source; enriched above 23.5 % oxygen: OSHA 29 CFR 1910.146",
  examples: [
    {
      formula: '=OXYGEN.CAUTIONS("every result")',
      result: [
        ["step", "caution"],
        [
          "every result",
          "A planning figure, no better than what was entered: check inputs and units, and have a second person read them.",
        ],
        [
          "every result",
          "Estimates of heat, altitude, mixing and loss can be well off: measure on site and keep a reserve.",
        ],
        [
          "every result",
          "The clinician decides for the patient; local codes, the maker's manual and licensed people decide for the work.",
        ],
      ],
      note: "What every result of this workbook carries with it",
      source: "The list's own words",
    },
  ],
  seeAlso: ["SITE_CHECK", "RECEIPT_CHECK", "DRAIN_CHECK", "ROOM_OXYGEN"],
  caution:
    "Reading a list trains nobody: transfers, filling and shipping are for trained people under local codes, the maker's manual and licences.",
};
