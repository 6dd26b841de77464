import type { About } from "../../arguments/about";
import { type CellForm, cellAsItComes } from "../../arguments/cellAsItComes";
import { tableArguments, wholeTable } from "../../arguments/eachCell";
import { type CellTable, noAnswer } from "../../cells/cellValues";
import { formattedDates, program } from "../../cells/program";

export const args = tableArguments({
  blank_cell: cellAsItComes("one empty cell"),
  bad_cell: cellAsItComes("one cell that holds =NA()"),
});

type Finding = [state: string, advice: string];

const blankCells = ({ form, words }: CellForm): Finding => {
  if (form === "blank") return ["come as blank", "nothing: an input left empty is refused in words"];
  if (form === "0")
    return [
      "come as 0",
      "no empty input can be caught here: fill every input, also with 0, and look for empty ones before you believe a result; bring this program up to date",
    ];
  return [
    "can't be told",
    form === "error"
      ? "the cell given holds an error: point blank_cell at one empty cell"
      : `the cell given holds ${words}: point blank_cell at one empty cell`,
  ];
};

const errorCells = ({ form, words }: CellForm): Finding =>
  form === "error"
    ? ["come through", "nothing: a broken cell breaks the results it touches, and only those"]
    : [
        "don't come through",
        `${words} came: check that the cell given holds =NA(); if it does, a figure built on a broken cell looks like a good one here: look for errors in the sheet before you believe a result`,
      ];

const dates: Finding = formattedDates
  ? ["formatted", "nothing; a date that still shows as a number such as 46082 wants its cell formatted as a date"]
  : ["as plain numbers", "format the cells that give dates: yyyy-mm-dd, or yyyy-mm-dd hh:mm where the hour counts"];

const spokenWords = "you are reading the words of an error: errors speak here";

/** What the advice of the local engine is worth in Excel: nothing. */
const ofThisProgram = (advice: string): string =>
  program === "local engine" ? `${advice}. This is the local engine, not Excel: ask again there` : advice;

/**
 * What the program that this sheet runs in does with blank cells, errors, dates and words, and what to do about it. Ask it
 * once on each computer before a sheet is relied on.
 *
 * @customfunction THIS_EXCEL
 * @param blank_cell One empty cell
 * @param bad_cell One cell that holds =NA()
 * @returns One row an item: item, state, what to do
 */
export function thisExcel(blank_cell: any[][], bad_cell: any[][]): any[][] {
  return wholeTable(args, [blank_cell, bad_cell], (given): CellTable => {
    const row = (item: string, [state, advice]: Finding): CellTable[number] => [item, state, ofThisProgram(advice)];
    return [
      ["item", "state", "what to do"],
      row("blank cells", blankCells(given.blank_cell[0])),
      row("error cells", errorCells(given.bad_cell[0])),
      row("dates", dates),
      [
        "words",
        noAnswer(spokenWords),
        ofThisProgram(
          "select the error to the left, or point at it: if it tells you that errors speak, they do; if it shows only #N/A, the pane says the words of the selected cell",
        ),
      ],
    ];
  });
}

export const about: About = {
  gives: "text",
  rule: "a blank cell comes as blank or as 0; an error cell comes through or does not; dates as the build for this program hands them out; the last state is itself an error with words",
  range:
    "The cells must be what they are said to be: a cell that holds a space, 0 or a formula tells nothing of empty ones. If the whole answer is #N/A, this program stops error cells before the functions: broken cells break a result without words. The answer holds for this program on this computer at the time it was calculated: enter it again elsewhere, and after an update.",
  source:
    "Looks at what comes in; Microsoft, Custom functions requirement sets, for dates; blanks that arrive as 0 on older desktop Excel: reports in Microsoft's own issue list (OfficeDev/office-js 1951, 4702)",
  examples: [
    {
      formula: '=OXYGEN.THIS_EXCEL("",OXYGEN.CIRCUIT_NEEDED(9000))',
      result: [
        ["item", "state", "what to do"],
        [
          "blank cells",
          "come as blank",
          "nothing: an input left empty is refused in words. This is the local engine, not Excel: ask again there",
        ],
        [
          "error cells",
          "come through",
          "nothing: a broken cell breaks the results it touches, and only those. This is the local engine, not Excel: ask again there",
        ],
        [
          "dates",
          "formatted",
          "nothing; a date that still shows as a number such as 46082 wants its cell formatted as a date. This is the local engine, not Excel: ask again there",
        ],
        [
          "words",
          { error: "#N/A", words: "errors speak here" },
          "select the error to the left, or point at it: if it tells you that errors speak, they do; if it shows only #N/A, the pane says the words of the selected cell. This is the local engine, not Excel: ask again there",
        ],
      ],
      localOnly: true,
      note: "In the local engine, with an error in place of =NA(). In a sheet: =OXYGEN.THIS_EXCEL(A1,B1) with A1 empty and =NA() in B1",
      source: "The rule stated",
    },
  ],
  seeAlso: ["VALUE_CHECK", "LOG_FAULTS", "CONSTANTS"],
  caution:
    "Where blanks come as 0, a forgotten input can make a stock or a room look safe: ask this before the first plan on a computer, and write the answer down beside the plan.",
};
