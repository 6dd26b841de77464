import { newComputer } from "../newComputer";
import { district, sites } from "../../scenario/velmar";
import {
  answer,
  block,
  caution,
  heading,
  label,
  link,
  subtitle,
  tabColours,
  text,
  title,
  type SheetDescription,
} from "../../writer";

export const startSheet: SheetDescription = {
  name: "Start",
  columns: [32, 30, 30],
  tab: tabColours.start,
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("Which plants to send?"),
    A2: subtitle(
      `Four ways to supply ${sites.hospital.name}, ${district}, compared in one measure each and under one outage.`,
      { across: 3 },
    ),
    ...block("A4", [[heading("What comes out"), heading(), heading()]]),
    A5: label("Options not beaten by another"),
    B5: answer("=NotBeaten", { across: 2 }),
    ...block("A7", [[heading("How to use it"), heading(), heading()]]),
    A8: text(
      "1. On Inputs, change the yellow cells: the need, the site, the kinds of plant, and how many of each an option has.",
      { across: 3 },
    ),
    A9: text(
      "2. On Outage, enter the hours with power for each day. On Options, strike out what is beaten, then weigh the rest.",
      { across: 3 },
    ),
    A10: text(
      "3. On Mix and money, see the cheapest mix within the mass you can ship, and when plants pay against brought liquid.",
      { across: 3 },
    ),
    A11: text("4. On Heat and height, see how many plants the same need takes at another site.", { across: 3 }),
    A12: text(
      `The add-in is needed to recalculate. Without it the sheets show the values they were saved with: don't change inputs then. ${newComputer}`,
      { across: 3 },
    ),
    ...block("A14", [
      [heading("Sheets"), heading(), heading()],
      [link("Inputs!A1", "Inputs"), text("everything that can be changed", { across: 2 })],
      [link("Options!A1", "Options"), text("side by side, and a score", { across: 2 })],
      [link("Outage!A1", "Outage"), text("30 days with an outage, first short day, chart", { across: 2 })],
      [link("Units!A1", "Units"), text("chance that enough plants work", { across: 2 })],
      [link("Mix and money!A1", "Mix and money"), text("best mix under a mass limit, break-even", { across: 2 })],
      [link("Heat and height!A1", "Heat and height"), text("plants needed by temperature and altitude", { across: 2 })],
      [link("Workings!A1", "Workings"), text("how each option's figures come about", { across: 2 })],
    ]),
    ...block("A23", [[heading("What is invented, and what to mind"), heading(), heading()]]),
    A24: text(
      "Places, plants, prices and patients are invented. Replace all of them by your own before you decide anything.",
      { across: 3 },
    ),
    A25: text(
      "Need is a mean. Supply is net of standing loss while a plant runs; draws are gross, with filling losses.",
      { across: 3 },
    ),
    A26: caution(
      "Caution: patients die when oxygen stops. No option here is safe without cylinders ready at the bedside, a person who can switch over, and a plan for the largest plant and the power failing together. Clinicians, engineers, the local code and the makers' manuals decide.",
      { across: 3 },
    ),
  },
};
