import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { fraction } from "../../arguments/quantity";
import { purityClasses } from "../../models/purity";

export const args = cellArguments({ purity: fraction });

/**
 * Classes of medicinal oxygen whose content of oxygen a purity meets, all that apply.
 *
 * @customfunction PURITY_CLASS
 * @param purity Share of oxygen by volume, such as 0.93
 * @returns Names of the classes, or "outside every class"
 */
export function purityClass(purity: any[][]): any[][] {
  return eachCell(args, [purity], (given) => purityClasses(given.purity).join("; ") || "outside every class");
}

export const about: About = {
  gives: "text",
  rule: "0.995 or more: oxygen of the Ph. Eur.; 0.99 or more: oxygen of the USP; 0.90 to 0.96, ends included: oxygen 93 of both",
  range:
    "Purity 0 to 1, or a percent such as 93%. It looks at the content of oxygen alone: the monographs also limit water, carbon monoxide, carbon dioxide and others. From above 0.96 to under 0.99 none of these applies; the later oxygen 98 of the Ph. Eur. is not looked at.",
  source:
    "Monographs Oxygen and Oxygen 93 per cent of the European Pharmacopoeia and the United States Pharmacopeia; 99.5, 99.0 and 90 to 96 % read in transcriptions and notices of them, 90 to 96 % of the USP from memory",
  examples: [
    {
      formula: "=OXYGEN.PURITY_CLASS(0.93)",
      result: "oxygen 93 (Ph. Eur., USP)",
      source: "0.90 to 0.96 of the monographs",
    },
    {
      formula: '=OXYGEN.PURITY_CLASS("99.5%")',
      result: "oxygen (Ph. Eur.); oxygen (USP)",
      source: "99.5 and 99.0 % of the monographs",
    },
    {
      formula: "=OXYGEN.PURITY_CLASS({0.99;0.97;0.89})",
      result: [["oxygen (USP)"], ["outside every class"], ["outside every class"]],
      source: "The limits of the monographs",
    },
  ],
  seeAlso: ["BLENDED_PURITY", "PURE_OXYGEN", "SOURCE_FLOW", "CAUTIONS"],
  caution:
    "No release test: whether a gas may be given to patients is for the pharmacist and the local authority to say, and the clinician decides on its use.",
};
