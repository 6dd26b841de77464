import type { About } from "../../arguments/about";
import { cellArguments, eachCell } from "../../arguments/eachCell";
import { text } from "../../arguments/text";
import { noAnswer } from "../../cells/cellValues";
import { quoteCell } from "../../arguments/argument";
import sources from "../../models/generated/functionSources.json";
import { nearestName } from "../../models/nearestName";

export const args = cellArguments({ name: text });

const sourceById: Readonly<Record<string, string>> = sources;

/** "=oxygen.hours_to_fill(60,1.5)" and "hours to fill" are both HOURS_TO_FILL. */
const idOf = (name: string): string =>
  name
    .trim()
    .toUpperCase()
    .replace(/^=?\s*(OXYGEN\.)?/, "")
    .replace(/\(.*$/, "")
    .trim()
    .replace(/[\s-]+/g, "_");

/**
 * Source of a function's rule.
 *
 * @customfunction SOURCE_OF
 * @param name Name of a function, with or without the namespace, in upper or lower case
 * @returns Source of its rule
 */
export function sourceOf(name: any[][]): any[][] {
  return eachCell(args, [name], (given) => {
    const id = idOf(given.name);
    if (Object.prototype.hasOwnProperty.call(sourceById, id)) return sourceById[id]!;
    const nearest = nearestName(id, Object.keys(sourceById));
    return noAnswer(
      `there is no function ${quoteCell(given.name)}${nearest === undefined ? "" : `; did you mean ${nearest}?`}`,
    );
  });
}

export const about: About = {
  gives: "text",
  rule: "the source that the function's own file names",
  range: "Any function of the add-in. An unknown name is #N/A with the nearest one.",
  source: "Plain look-up; common practice, no source",
  examples: [
    {
      formula: '=OXYGEN.SOURCE_OF("BOOK_BALANCE")',
      result: "Mass balance; plain arithmetic",
      source: "Help of BOOK_BALANCE",
    },
    {
      formula: '=OXYGEN.SOURCE_OF("oxygen.book_balance")',
      result: "Mass balance; plain arithmetic",
      note: "Namespace and case don't matter",
      source: "Help of BOOK_BALANCE",
    },
    {
      formula: '=OXYGEN.SOURCE_OF("BOOK_BALANSE")',
      result: { error: "#N/A", words: "did you mean BOOK_BALANCE?" },
      source: "One letter apart",
    },
  ],
  seeAlso: ["CONSTANTS"],
};
