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
import { firstDay } from "../../scenario/velmar";
import { checkLine, checkLineMark } from "../../checks";
import { bookRecord, makeItYours } from "../bookRecord";
import { numberEntry } from "../entries";

const section = (words: string): CellDescription[] => headingRow(words, 3);

const sheets: readonly [sheet: string, words: string][] = [
  ["Summary", "One page to print: first short date, days of supply, orders, fuel, service, charts."],
  ["Inputs", "Site, plants, deliveries, outages, surge. Start here."],
  ["Site and plants", "What altitude and heat leave of the make, month by month; where the plants stand."],
  ["Demand", "Wards, mean and busy moment."],
  ["Stock plan", "Liquid day by day; as ordered, as moved, a day late, one plant fewer."],
  ["Chance", "The plan with chance: how likely it runs short, week by week."],
  ["Logs", "Cylinders issued, liquid read."],
  ["Plan and log", "What was read against what was planned."],
  ["Reorder", "Levels of cylinders, what to order; days of supply."],
  ["Power and fuel", "Load, feeders, generators, fuel."],
  ["Fuel plan", "Mains, generators and fuel day by day."],
  ["Service calendar", "What is due, and parts for it."],
  ["Notes", "Rules, sources, cautions."],
  ["Checks", "Every entry against its rule; what CHECK INPUTS means."],
  ["Defaults", "What the functions take where an argument is left out, with sources."],
];

const makeYours = [
  "Save a copy under your site's name and fill in This copy below.",
  "Inputs: site, altitude, plants from their plates, levels read, deliveries and outages. Clear the rows you don't need.",
  "Site and plants: the hottest usual temperature of each month; your own loss a degree if you have runs.",
  "Demand: your wards. Logs: your issues, at least four weeks. Reorder, Power and fuel, Service calendar: the yellow cells.",
  "Read Checks to the end, then have a second person read every yellow cell and sign under This copy.",
];

/** What the workbook is and how to use it. */
export const start: SheetDescription = {
  name: "Start",
  columns: [24, 22, 70],
  tab: tabColours.start,
  print: { titleRows: "1:1", breaksBefore: [28] },
  conditional: [checkLineMark("A3:C3")],
  rowHeights: { 3: 44 },
  cells: {
    A1: title("Supply plan for one site"),
    A2: subtitle(
      "Will the liquid last the next 30 to 120 days, what to order when, and what power, fuel and service it takes.",
      { across: 3 },
    ),
    A3: checkLine(3),
    ...block("A4", [
      section("Use it"),
      [
        text("1. Change yellow cells only; each says what it wants. The other cells are locked without a password.", {
          across: 3,
        }),
      ],
      [
        text(
          "2. Read Summary. CHECK INPUTS names a cell to look at first. If it says SHORT, move or add a delivery on Inputs, cut the outage, or add a plant, and look again.",
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
    ...block("A28", [
      section("What is invented"),
      [
        text(
          "All of it: the island district of Velmar, its field hospital at Karrow Point, the wards, plants S and L, ferries, outage, tasks and every figure. No real site, maker or product is meant.",
          { across: 3 },
        ),
      ],
      [
        text(
          "The story: the plants just carry the mean day. From 20 to 23 March the island's feeder is out, and the generators have fuel for one day. With the ferries as ordered the plants run dry; ferry B three days earlier carries them over. Inputs let you try both.",
          { across: 3 },
        ),
      ],
    ]),
    ...block("A32", [
      section("What the cells mean"),
      [input("yellow, blue figures", { unlocked: false }), null, note("Yours to change.")],
      [output("pale blue, bold"), null, note("A result.")],
    ]),
    ...block("A36", makeItYours(3, makeYours)),
    ...block("A43", bookRecord(3, firstDay)),
    A50: caution(
      "Caution: a planning aid. It decides nothing for a patient and replaces no gauge, no manual and no code. Liquid oxygen burns the skin, feeds fire and, shut in, bursts pipes: trained people only. Keep a second supply that needs no power.",
      { across: 3 },
    ),
  },
};
