import { bookRecord, makeItYours } from "../bookRecord";
import { checkLine, checkLineMark, gated } from "../../checks";
import { newComputer } from "../newComputer";
import { district, firstDay, sites } from "../../scenario/velmar";
import {
  answer,
  block,
  caution,
  headingRow,
  label,
  link,
  output,
  subtitle,
  tabColours,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";

const rule = (words: string): CellDescription[] => headingRow(words, 3);
const line = (words: string): CellDescription[] => [text(words, { across: 3 })];
const to = (sheet: string, words: string): CellDescription[] => [
  link(`${sheet}!A1`, sheet),
  text(words, { across: 2 }),
];

export const startSheet: SheetDescription = {
  name: "Start",
  columns: [34, 34, 34],
  tab: tabColours.start,
  print: { orientation: "portrait", pagesHigh: 1 },
  rowHeights: { 5: 96, 6: 62 },
  cells: {
    A1: title("Which plants to send?"),
    A2: subtitle(
      `Four ways to supply ${sites.hospital.name}, ${district}, and the cheapest mix, put to four tests and then scored.`,
      { across: 3 },
    ),
    A3: checkLine(3),
    ...block("A4", [
      rule("What comes out"),
      [label("Answer"), answer(gated("=HeadlineBest"), { across: 2, name: "HeadlineAnswer" })],
      [label("Left out"), output(gated("=HeadlineLeftOut"), { across: 2, wrap: true, name: "HeadlineFailed" })],
      [
        label("First to pay back, of those that pass"),
        output(gated("=HeadlinePaysBack"), { across: 2, name: "HeadlineFirstPaid" }),
      ],
    ]),
    ...block("A9", [
      rule("How to use it"),
      line(
        "1. On Inputs, change the yellow cells: the need, the site, the kinds of plant, and how many of each an option has.",
      ),
      line(
        "2. On Outage, enter the hours with power for each day. On Options, see which options pass the four tests, then weigh them.",
      ),
      line(
        "3. On Mix and money, see the cheapest mix within the mass you can ship, and when plants pay against brought liquid.",
      ),
      line("4. On Heat and height, see how many plants the same need takes at another site."),
      line(
        `The add-in is needed to recalculate. Without it the sheets show the values they were saved with: don't change inputs then. ${newComputer}`,
      ),
    ]),
    ...block("A16", [
      rule("Sheets"),
      to("Inputs", "everything that can be changed"),
      to("Options", "the answer, side by side, four tests, a score"),
      to("Outage", "30 days with an outage, first short day, chart"),
      to("Units", "chance that enough plants work"),
      to("Mix and money", "best mix under a mass limit, break-even"),
      to("Heat and height", "plants needed by temperature and altitude"),
      to("Workings", "how each option's figures come about"),
      to("Checks", "every entry against its rule"),
    ]),
    ...block("A26", [
      rule("What is invented, and what to mind"),
      line(
        "Places, plants, prices and patients are invented. Replace all of them by your own before you decide anything.",
      ),
      line("Need is a mean. Supply is net of standing loss while a plant runs; draws are gross, with filling losses."),
      [
        caution(
          "Caution: patients die when oxygen stops. No option here is safe without cylinders ready at the bedside, a person who can switch over, and a plan for the largest plant and the power failing together. Clinicians, engineers, the local code and the makers' manuals decide.",
          { across: 3 },
        ),
      ],
    ]),
    ...block(
      "A31",
      makeItYours(3, [
        "On Inputs, enter your wards, your site and the makers' figures of your plants and generator; fit the loss by heat to your own runs.",
        "Enter your options and the mass your carrier takes; set the least chance of enough with the clinicians.",
        "On Outage, enter the worst outage on record at the site, not the usual one.",
        "Have a second person read every yellow cell, then fill in the lines below.",
      ]),
    ),
    ...block("A37", bookRecord(3, firstDay)),
  },
  conditional: [checkLineMark("A3:C3"), { range: "B5:C7", when: "CheckTotal>0", mark: "danger" }],
};
