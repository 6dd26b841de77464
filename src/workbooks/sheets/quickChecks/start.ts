import { newComputer } from "../newComputer";
import { tryIt } from "../tryIt";
import {
  block,
  caution,
  formats,
  headingRow,
  input,
  label,
  link,
  note,
  output,
  subtitle,
  tabColours,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { numberEntry } from "../entries";
import { groupPlaces } from "./checks";

const section = (words: string): CellDescription[] => headingRow(words, 3);

/** What the workbook is and how to use it. */
export const start: SheetDescription = {
  name: "Start",
  columns: [28, 16, 72],
  tab: tabColours.start,
  print: { pagesHigh: 1 },
  cells: {
    A1: title("Quick checks"),
    A2: subtitle(
      "One question, one answer, for the desk and the store. Nothing is kept: change the yellow cells as often as you like.",
      { across: 3 },
    ),
    ...block("A4", [
      section("Use it"),
      [text("1. Go to the question, type your figures in the yellow cells under the small words.", { across: 3 })],
      [
        text(
          "2. A bare number is in the unit of the small words. Another unit goes with it as text: 35 psi, 85 °F, 5000 ft, 10 gal, 2 h.",
          { across: 3 },
        ),
      ],
      [
        text(
          "3. Read the answer, then Entries beside it. Anything but ok: mend that first. Reversed (white on dark) answers are no answers.",
          { across: 3 },
        ),
      ],
      [
        text(
          "4. No formula can read the words behind a #VALUE!. Click the answer, then the small sign beside it: they name the entry and say what is wanted.",
          { across: 3 },
        ),
      ],
      [text("5. ok says that an entry can be, not that it is right. Have a second person read it.", { across: 3 })],
    ]),
    ...block("A11", [
      section("Is the add-in loaded?"),
      [
        label("Change this number of litres"),
        input(tryIt.litres, {
          format: formats.whole,
          validation: numberEntry("Try it", tryIt.prompt, 1, 10000),
        }),
        output(tryIt.formula("B12")),
      ],
      [
        note(
          `The saved answers show on any PC. To calculate anew, Excel needs the add-in Oxygen Supply Functions; without it a changed cell shows #NAME?: undo, and have it loaded. ${newComputer}`,
          { across: 3 },
        ),
      ],
    ]),
    ...block("A15", [
      section("What Entries says of a slip"),
      [
        label("0.93 typed as"),
        input(93, { validation: numberEntry("A slip", "Try other slips.", -1000, 100000) }),
        output('=OXYGEN.VALUE_CHECK(B16,"fraction")', { wrap: true }),
      ],
      [
        label("85 °F typed without its unit"),
        input(85, { validation: numberEntry("A slip", "Try other slips.", -1000, 100000) }),
        output('=OXYGEN.VALUE_CHECK(B17,"temperature")', { wrap: true }),
      ],
      [
        label("2000 psi typed without its unit"),
        input(2000, { validation: numberEntry("A slip", "Try other slips.", -1000, 100000) }),
        output('=OXYGEN.VALUE_CHECK(B18,"pressure")', { wrap: true }),
      ],
    ]),
    ...block("A20", [
      section("Questions"),
      ...groupPlaces.map(({ name, row, questions }) => [
        link(`Checks!A${row}`, name),
        { ...text(questions), align: "left" as const },
        text("questions"),
      ]),
    ]),
    A29: link("Notes!A1", "Notes"),
    B29: text("Sources of the rules", { across: 2 }),
    ...block("A31", [
      section("What is invented"),
      [
        text(
          "Every figure: plants S and L, the portable vessel, the store and the dates of the island district of Velmar. No real site, maker or product is meant.",
          { across: 3 },
        ),
      ],
    ]),
    A34: caution(
      "Caution: a desk aid. It decides nothing for a patient and replaces no gauge, no manual and no code. Liquid oxygen burns the skin, feeds fire and, shut in, bursts pipes: trained people only.",
      { across: 3 },
    ),
  },
};
