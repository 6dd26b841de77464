import { newComputer } from "../newComputer";
import { tryIt } from "../tryIt";
import {
  block,
  caution,
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

const section = (words: string): CellDescription[] => headingRow(words, 3);

const sheets: readonly [sheet: string, words: string][] = [
  ["Summary", "One page to print: first short date, days of supply, orders, fuel, service, charts."],
  ["Inputs", "Site, plants, deliveries, outages, surge. Start here."],
  ["Site and plants", "What altitude and heat leave of the make, month by month; where the plants stand."],
  ["Demand", "Wards, mean and busy moment."],
  ["Stock plan", "Sixty days of liquid, day by day."],
  ["Reorder", "Cylinder log, levels, what to order; days of supply."],
  ["Power and fuel", "Load, feeders, generators, fuel."],
  ["Service calendar", "What is due, and parts for it."],
  ["Notes", "Rules, sources, cautions."],
  ["Defaults", "What the functions take where an argument is left out, with sources."],
];

/** What the workbook is and how to use it. */
export const start: SheetDescription = {
  name: "Start",
  columns: [24, 22, 70],
  tab: tabColours.start,
  print: { pagesHigh: 1 },
  cells: {
    A1: title("Supply plan for one site"),
    A2: subtitle(
      "Will the liquid last the next 60 days, what to order when, and what power, fuel and service it takes.",
      { across: 3 },
    ),
    ...block("A4", [
      section("Use it"),
      [
        text("1. Change yellow cells only; each says what it wants. The other cells are locked without a password.", {
          across: 3,
        }),
      ],
      [
        text(
          "2. Read Summary. If it says SHORT, move or add a delivery on Inputs, cut the outage, or add a plant, and look again.",
          { across: 3 },
        ),
      ],
      [
        text(
          "3. A red #VALUE! or #N/A: click the cell, then the warning sign beside it; the words say which entry is wrong.",
          { across: 3 },
        ),
      ],
      [
        text(
          `4. The saved figures show on any PC. To calculate anew, Excel needs the add-in Oxygen Supply Functions; without it a changed cell shows #NAME?: undo, and get the add-in loaded. ${newComputer}`,
          { across: 3 },
        ),
      ],
      [
        label("Is the add-in loaded?"),
        input(tryIt.litres, {
          validation: numberEntry("Try it", tryIt.prompt, 1, 10000),
        }),
        output(tryIt.formula("B9")),
      ],
    ]),
    ...block("A11", [
      section("Sheets"),
      ...sheets.map(([sheet, words]) => [link(`${sheet}!A1`, sheet), text(words, { across: 2 })]),
    ]),
    ...block("A23", [
      section("What is invented"),
      [
        text(
          "All of it: the island district of Velmar, its field hospital at Karrow Point, the wards, plants S and L, ferries, outage, tasks and every figure. No real site, maker or product is meant.",
          { across: 3 },
        ),
      ],
      [
        text(
          "The story: the plants just carry the mean day. From 20 to 23 March the island's feeder is out. With the ferries as ordered the plants run dry; ferry B three days earlier carries them over. Inputs let you try both.",
          { across: 3 },
        ),
      ],
    ]),
    ...block("A27", [
      section("What the cells mean"),
      [input("yellow, blue figures", { unlocked: false }), null, note("Yours to change.")],
      [output("pale blue, bold"), null, note("A result.")],
    ]),
    A31: caution(
      "Caution: a planning aid. It decides nothing for a patient and replaces no gauge, no manual and no code. Liquid oxygen burns the skin, feeds fire and, shut in, bursts pipes: trained people only. Keep a second supply that needs no power.",
      { across: 3 },
    ),
  },
};
