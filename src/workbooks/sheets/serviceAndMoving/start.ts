import { newComputer } from "../newComputer";
import {
  answer,
  block,
  caution,
  formats,
  headingRow,
  label,
  link,
  subtitle,
  tabColours,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { bookRecord, makeItYours } from "../bookRecord";
import { checkLine, checkLineMark, gatedFigure } from "../../checks";
import { district, firstDay } from "../../scenario/velmar";
import { siteServices } from "./tasks";

const rule = (words: string): CellDescription[] => headingRow(words, 3);
const [one, other] = siteServices;

export const startSheet: SheetDescription = {
  name: "Start",
  columns: [32, 30, 34],
  tab: tabColours.start,
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("Service and moving"),
    A2: subtitle(`A technician's workbook: from the lorry to the lorry. Scenario: ${district}.`, { across: 3 }),
    A3: checkLine(3),
    ...block("A4", [
      rule("First of all"),
      [
        label("Services overdue today"),
        answer(gatedFigure("=HeadlineOverdue"), { format: formats.whole, name: "HeadlineOverdueNow" }),
        label("  at both sites"),
      ],
      [
        label("Begin to drain by"),
        answer(gatedFigure("=HeadlineDrainBy"), { format: formats.date, name: "HeadlineDrain" }),
        label("  for the load that leaves next"),
      ],
    ]),
    ...block("A8", [
      rule("How to use it"),
      [
        text(
          "Change the yellow cells; everything else follows. Type today's date on Quarter: the workbook doesn't read the clock.",
          { across: 3 },
        ),
      ],
      [
        text(
          `The add-in is needed to recalculate. Without it the sheets show the values they were saved with: don't change inputs then. ${newComputer}`,
          { across: 3 },
        ),
      ],
    ]),
    ...block("A12", [
      rule("Sheets"),
      [
        link("Receive and site!A1", "Receive and site"),
        text("crate and indicators; place, tilt, floor", { across: 2 }),
      ],
      [link("Quarter!A1", "Quarter"), text("days, visits, one order of parts", { across: 2 })],
      [link(`${one.sheet}!A1`, one.sheet), text("tasks, what is due, parts; harsh conditions", { across: 2 })],
      [link(`${other.sheet}!A1`, other.sheet), text("the same for the second site", { across: 2 })],
      [link("Log!A1", "Log"), text("slips in the log; standing loss from readings", { across: 2 })],
      [link("Drain and ship!A1", "Drain and ship"), text("drain plan, mass, pallets, trips, straps", { across: 2 })],
      [link("Checks!A1", "Checks"), text("every entry against its rule", { across: 2 })],
      [link("Cautions!A1", "Cautions"), text("what to read before each step", { across: 2 })],
    ]),
    ...block("A22", [
      rule("What is invented, and what to mind"),
      [
        text("Places, plants, tasks, intervals and readings are invented. The maker's manual has the real ones.", {
          across: 3,
        }),
      ],
      [
        caution(
          "Caution: liquid oxygen burns skin with cold and makes fire of what is near it. Work on it is for trained people, licensed where that is asked, as local codes and the maker's manual say. Read the sheet Cautions before you begin.",
          { across: 3 },
        ),
      ],
    ]),
    ...block(
      "A26",
      makeItYours(3, [
        "On the service sheets, enter your plants' tasks and intervals from the makers' manuals, and read the hour meters.",
        "On Quarter, enter today, the quarter, the visits and your stock of parts.",
        "On Drain and ship, enter your vessels, your load, the lorry and the label of the strap.",
        "Have a second person read every yellow cell, then fill in the lines below.",
      ]),
    ),
    ...block("A32", bookRecord(3, firstDay)),
  },
  conditional: [checkLineMark("A3:C3"), { range: "B5:B6", when: "CheckTotal>0", mark: "danger" }],
};
