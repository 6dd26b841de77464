import { subtitle, tabColours, table, title, type SheetDescription } from "../../writer";

/** Every constant and default of the functions, as they list them themselves. */
export const defaults: SheetDescription = {
  name: "Defaults",
  columns: [46, 14, 16, 92],
  tab: tabColours.reference,
  freezeAt: "A5",
  print: { orientation: "landscape", titleRows: "4:4" },
  cells: {
    A1: title("Constants and defaults"),
    A2: subtitle(
      "What a function takes where an argument is left out, and the constants it reckons with. Own planning defaults are marked so: put your site's figures in their place.",
      { across: 4 },
    ),
    A4: table("=OXYGEN.CONSTANTS()", { wrap: true, spill: { room: 110 } }),
  },
};
