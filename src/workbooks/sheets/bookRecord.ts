import { headingRow, input, label, text, type CellDescription } from "../writer";
import { dateEntry, wordsEntry } from "./entries";

type Line = readonly (CellDescription | null)[];

const entry = (words: string, prompt: string, value: string, across: number): Line => [
  label(words),
  input(value, { across, validation: wordsEntry(words, prompt) }),
];

/** Who made this copy of a book, who checked it and what changed: six rows. */
export const bookRecord = (columns: number, day: number): readonly Line[] => [
  headingRow("This copy", columns),
  entry("Version", "Count it up with every change that others see.", "1", columns - 1),
  [
    label("Date"),
    input(day, {
      across: columns - 1,
      align: "left",
      format: "yyyy-mm-dd",
      validation: dateEntry("Date", "The day of this version.", true),
    }),
  ],
  entry("Author", "Who filled it in.", "", columns - 1),
  entry("Checked by", "Who read every entry a second time.", "", columns - 1),
  entry("Changes", "What is new in this version.", "Invented scenario, as delivered", columns - 1),
];

/** What to change for another site: a heading and one row each. */
export const makeItYours = (columns: number, steps: readonly string[]): readonly Line[] => [
  headingRow("Make it yours", columns),
  ...steps.map((words, index) => [text(`${index + 1}. ${words}`, { across: columns })]),
];
