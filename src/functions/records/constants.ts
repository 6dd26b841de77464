import type { About } from "../../arguments/about";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { constantRows } from "../../models/constants";

export const args = tableArguments({});

/**
 * Every constant and every default of an argument that the functions use, with unit and source.
 *
 * @customfunction CONSTANTS
 * @returns One row a constant or default: name, value, unit, source
 */
export function constants(): any[][] {
  return wholeTable(args, [], () => [
    ["name", "value", "unit", "source"],
    ...constantRows.map(({ name, value, unit, source }) => [name, value, unit, source]),
  ]);
}

export const about: About = {
  gives: ["text", "value", "text", "text"],
  rule: 'a list: constants first, then the defaults of omitted arguments; "argument (FUNCTION)" where one function differs',
  range:
    "No arguments. Figures that belong to one machine (rate, capacity, loss of a portable vessel, fuel) have no default and are not listed.",
  source: 'Each row names its own; "common practice, no source" and "own planning default" say that there is none',
  examples: [
    {
      formula: "=OXYGEN.CONSTANTS()",
      result: [
        ["name", "value", "unit", "source"],
        ...constantRows.map(({ name, value, unit, source }) => [name, value, unit, source]),
      ],
      note: "The whole list; the published values in it are compared with their sources in the tests",
      source: "Each row names its own",
    },
  ],
  seeAlso: ["SOURCE_OF"],
  caution:
    "Defaults are rules of thumb at the cautious end: weigh, time and log your own machines and enter your own figures.",
};
