import {
  block,
  heading,
  note,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  title,
  type SheetDescription,
} from "../../writer";
import { groups } from "./groups";

const functions = [
  ...new Set(
    groups.flatMap(({ questions }) =>
      questions.flatMap(({ formula }) => [...formula.matchAll(/OXYGEN\.(\w+)/g)].map(([, id]) => id!)),
    ),
  ),
];

/** Where each rule comes from. */
export const notes: SheetDescription = {
  name: "Notes",
  columns: [28, 104],
  tab: tabColours.reference,
  freezeAt: "A6",
  print: { orientation: "landscape", titleRows: "5:5" },
  cells: {
    A1: title("Notes"),
    A2: subtitle(
      "Where the rule of each answer comes from. Arguments left out take their defaults; =OXYGEN.CONSTANTS() in an empty sheet lists these.",
      { across: 2 },
    ),
    ...block("A4", [
      [heading("Sources"), heading()],
      [tableHeader("Function"), tableHeader("Source of its rule")],
      ...functions.map((name) => [tableCell(name)]),
    ]),
    B6: { ...tableCell(`=OXYGEN.SOURCE_OF(A6:A${5 + functions.length})`, { wrap: true }), spill: {} },
    [`A${7 + functions.length}`]: note(
      "Gross litres leave the plant, net litres arrive. Gas litres at 21.1 °C and 101.325 kPa. Pressures are gauge.",
      { across: 2 },
    ),
  },
};
