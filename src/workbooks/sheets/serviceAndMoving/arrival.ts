import {
  block,
  caution,
  formats,
  headingRow,
  label,
  link,
  note,
  output,
  tabColours,
  table,
  text,
  title,
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { plants, sites } from "../../scenario/velmar";
import { surfaces } from "../../../models/site";
import { choiceInput, yesOrNo } from "../choiceInput";
import { numberInput } from "../numberInput";

const rule = (words: string): CellDescription[] => headingRow(words, 3);

/** Receipt of a crate, then the place it is to stand. */
export const arrivalSheet: SheetDescription = {
  name: "Receive and site",
  columns: [36, 20, 90],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("Receive it, and find it a place"),
    A2: text("Look before you sign. One crate at a time: print the sheet for each.", { across: 3 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("The crate as it stands on the lorry"),
      [label("Shock indicator has tripped"), yesOrNo(false, "Shock indicator", "yes if it has tripped, on any side.")],
      [label("Tilt indicator has tripped"), yesOrNo(true, "Tilt indicator", "yes if it has tripped, on any side.")],
      [label("Crate is damaged"), yesOrNo(false, "Crate", "yes if it is broken, wet, crushed or opened.")],
      [
        label("Written on the bill of lading"),
        yesOrNo(false, "Bill of lading", "yes once what you found stands on the bill, before you sign."),
      ],
    ]),
    A11: table("=OXYGEN.RECEIPT_CHECK(B6,B7,B9,B8)", { wrap: true, spill: { room: 5 } }),
    ...block("A18", [
      rule(`The place: ${sites.hillClinic.name}`),
      [
        label("Least clear distance around it"),
        numberInput(
          2,
          "Clear distance",
          { words: "Smallest clear distance on any side, in m.", least: 0, most: 100, unit: "m", units: true },
          { name: "Clear", format: withUnit(2, "m") },
        ),
        note("Common practice, no source: at least 1.8 m (6 ft)."),
      ],
      [
        label("Floor: rise from end to end"),
        numberInput(
          0.09,
          "Rise",
          { words: "Height difference between two ends of a straight board, in m.", least: 0, most: 10, unit: "m" },
          { name: "Rise", format: withUnit(3, "m") },
        ),
      ],
      [
        label("Floor: length of the board"),
        numberInput(
          1.5,
          "Length of the board",
          { words: "Level distance between the two ends, in m.", least: 0.01, most: 100, unit: "m" },
          { name: "Run", format: withUnit(2, "m") },
        ),
      ],
      [
        label("Tilt"),
        output("=OXYGEN.TILT_ANGLE(Rise,Run)", { name: "Tilt", format: withUnit(1, "°") }),
        note("Common practice, no source: within 5°."),
      ],
      [label("Floor"), choiceInput("concrete", "Floor", surfaces, "What the plant stands on.")],
      [
        label("Fresh air keeps moving"),
        yesOrNo(true, "Fresh air", "yes outdoors, or in a room where fresh air keeps moving."),
      ],
    ]),
    A26: table("=OXYGEN.SITE_CHECK(Clear,Tilt,B23,B24)", { wrap: true, spill: { room: 5 } }),
    ...block("A32", [
      rule("Floor to mark out"),
      [
        label("Plants side by side"),
        numberInput(
          2,
          "Plants",
          { words: "How many stand side by side.", least: 1, most: 50, whole: true },
          { format: formats.whole },
        ),
      ],
      [
        label("Length of one"),
        numberInput(
          plants.small.length,
          "Length",
          { words: "Length of one plant, in m.", least: 0.1, most: 20, unit: "m", units: true },
          { format: withUnit(2, "m") },
        ),
      ],
      [
        label("Width of one"),
        numberInput(
          plants.small.width,
          "Width",
          { words: "Width of one plant, in m; they stand side by side across it.", least: 0.1, most: 20, unit: "m" },
          { format: withUnit(2, "m") },
        ),
        note("The side along which they stand in a row."),
      ],
      [
        label("Floor with clearance all round"),
        output("=OXYGEN.SITE_AREA(B34,B35,Clear,B33)", { format: withUnit(1, "m²") }),
        note("With the clear distance above, also between plants."),
      ],
    ]),
    A38: caution(
      "Caution: a plant vents oxygen. Never an unventilated room, a cellar or a place over asphalt; no fuel, smoking or open flame nearby. Local codes and the maker's manual decide where it may stand; a licensed electrician connects it.",
      { across: 3 },
    ),
  },
  conditional: [
    { range: "A12:C15", when: 'OR($B12="tripped",$B12="damaged",$B12="not noted")', mark: "attention" },
    { range: "A27:C30", when: '$B27="not ok"', mark: "danger" },
    { range: "A27:C30", when: '$B27="check"', mark: "attention" },
  ],
};
