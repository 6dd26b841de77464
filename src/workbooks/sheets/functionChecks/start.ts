import { newComputer } from "../newComputer";
import { catalogue } from "../../../catalogue/catalogue";
import { groups } from "../../../catalogue/groups";
import {
  answer,
  block,
  caution,
  formats,
  heading,
  link,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  total,
  type SheetDescription,
} from "../../writer";
import { byRule, checks, columnOf } from "./checks";

const used = groups.filter(({ name }) => catalogue.some((record) => record.group === name));
const firstGroup = 15;
const lastGroup = firstGroup + used.length - 1;

export const startSheet: SheetDescription = {
  name: "Start",
  columns: [44, 12, 12, 12, 16, 14, 14],
  tab: tabColours.start,
  print: { orientation: "portrait", pagesHigh: 1 },
  rowHeights: { 3: 54 },
  cells: {
    A1: title("Does every function still give the right answer?"),
    A2: subtitle(
      `Each of the ${checks.length} worked examples in the functions' help, recomputed here and compared with a value from a source (a standard, a handbook, a worked case) or, where none is named, with the stated rule worked out by hand. The table counts both.`,
      { across: 7 },
    ),
    A3: answer("=Verdict", { across: 7 }),
    A5: heading("How to use it"),
    ...Object.fromEntries(["B", "C", "D", "E", "F", "G"].map((letter) => [`${letter}5`, heading()])),
    A6: text(
      "Open it on a computer with the add-in, after an update of Excel or of the add-in, and press Ctrl+Alt+F9 to recalculate. The box above must say All ok.",
      { across: 7 },
    ),
    A7: text(
      `Without the add-in it opens with the values of the day it was made; those prove nothing about your computer. If it says that the add-in is not loaded, load it and recalculate. ${newComputer}`,
      { across: 7 },
    ),
    A8: text("Nothing here is to be changed; there are no input cells. The figures in the examples are made up.", {
      across: 7,
    }),
    A9: caution(
      "Caution: All ok shows that the arithmetic is right, not that your inputs are or that a plan is safe. The local code, the maker's manual and licensed staff decide.",
      { across: 7 },
    ),
    A11: link("Checks!B2", "To the checks, one row each"),
    A12: link("Tables!B1", "To results that fill several cells"),
    A13: link("Word tables!B1", "To results with long words"),
    ...block("A14", [
      [
        tableHeader("group"),
        tableHeader("functions"),
        tableHeader("checks"),
        tableHeader("ok"),
        tableHeader("state"),
        tableHeader("from a source"),
        tableHeader("by the stated rule"),
      ],
      ...used.map(({ name, title: words }, at) => {
        const row = firstGroup + at;
        return [
          tableCell(words),
          tableCell(`=ROWS(UNIQUE(FILTER(${columnOf("C")},${columnOf("B")}="${name}")))`, { format: formats.whole }),
          tableCell(`=COUNTIF(${columnOf("B")},"${name}")`, { format: formats.whole }),
          tableCell(`=COUNTIFS(${columnOf("B")},"${name}",${columnOf("H")},"ok")`, { format: formats.whole }),
          tableCell(`=IF(D${row}=C${row},"all ok",C${row}-D${row}&" NOT ok")`, { align: "center" }),
          tableCell(`=C${row}-G${row}`, { format: formats.whole }),
          tableCell(`=COUNTIFS(${columnOf("B")},"${name}",${columnOf("J")},"${byRule}*")`, { format: formats.whole }),
        ];
      }),
      [
        total("All groups"),
        total(`=SUM(B${firstGroup}:B${lastGroup})`, { format: formats.whole }),
        total(`=SUM(C${firstGroup}:C${lastGroup})`, { format: formats.whole }),
        total(`=SUM(D${firstGroup}:D${lastGroup})`, { format: formats.whole }),
        total(`=IF(D${lastGroup + 1}=C${lastGroup + 1},"all ok",C${lastGroup + 1}-D${lastGroup + 1}&" NOT ok")`, {
          align: "center",
        }),
        total(`=SUM(F${firstGroup}:F${lastGroup})`, { format: formats.whole }),
        total(`=SUM(G${firstGroup}:G${lastGroup})`, { format: formats.whole }),
      ],
    ]),
  },
  conditional: [
    { range: "A3:G3", when: 'LEFT($A$3,6)<>"All ok"', mark: "danger" },
    { range: `E${firstGroup}:E${lastGroup + 1}`, when: `E${firstGroup}<>"all ok"`, mark: "danger" },
  ],
};
