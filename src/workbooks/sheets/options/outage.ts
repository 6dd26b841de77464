import {
  caution,
  formats,
  heading,
  link,
  note,
  output,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  type SheetDescription,
} from "../../writer";
import { numberInput } from "../numberInput";
import { kindColumn, optionCount, optionRows } from "./inputs";
import { fullStock, plantsOf } from "./workings";

const days = 30;
const firstRow = 10;
const lastRow = firstRow + days - 1;
/** One day dark, then a part day: the rest has power. */
const powerHours = Array.from({ length: days }, (_, day) => (day === 9 ? 0 : day === 10 ? 14 : 24));

const optionLetters = ["E", "F", "G", "H", "I"].slice(0, optionCount);
const nameOf = (at: number): string => `Inputs!$A$${optionRows.first + at}`;

const column = (letter: string): string => `$${letter}$${firstRow}:$${letter}$${lastRow}`;
const plan = (at: number): string =>
  `${column("A")},${column("C")},${column("D")},${column("B")},${plantsOf(at)},OpeningShare*${fullStock(at)},DrawRatio,EmptyDays,MAX(${kindColumn("D")})`;

/** The first short day of each option, as the sheet Options shows it too. */
export const firstShort = (at: number): string => `Outage!$${optionLetters[at]}$7`;

export const outageSheet: SheetDescription = {
  name: "Outage",
  columns: [16, 13, 15, 13, 15, 15, 15, 15, 15, 2, 12, 12, 12, 12, 12, 12, 12],
  tab: tabColours.result,
  freezeAt: `B${firstRow}`,
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("An outage, day by day"),
    A2: text(
      "Liquid left in the plants at the close of each day. Change the hours with power; 24 is a day without an outage.",
      { across: 9 },
    ),
    A3: caution(
      "Caution: no cylinders are counted here. Whoever depends on oxygen needs cylinders behind every option that shows a short day.",
      { across: 9 },
    ),
    A4: link("Start!A1", "Back to the start"),
    A5: heading("First short day"),
    ...Object.fromEntries(["B", "C", "D", "E", "F", "G", "H", "I"].map((letter) => [`${letter}5`, heading()] as const)),
    A6: note("option", { across: 4 }),
    A7: note("first day on which less is drawn than needed", { across: 4 }),
    ...Object.fromEntries(
      optionLetters.flatMap((letter, at) => [
        [`${letter}6`, tableHeader(`=${nameOf(at)}`)] as const,
        [
          `${letter}7`,
          output(
            `=IF(ISNUMBER(${letter}${firstRow}),IFNA(OXYGEN.FIRST_SHORT_DATE(${plan(at)}),"none"),${letter}${firstRow})`,
            { format: formats.date, align: "center" },
          ),
        ] as const,
        [`${letter}9`, tableHeader(`=${nameOf(at)}&" L"`)] as const,
        [
          `${letter}${firstRow}`,
          tableCell(`=INDEX(OXYGEN.STOCK_PLAN(${plan(at)}),SEQUENCE(${days},1,2),8)`, {
            spill: { formats: [formats.whole], room: days },
          }),
        ] as const,
      ]),
    ),
    A9: tableHeader("day"),
    B9: tableHeader("power h"),
    C9: tableHeader("need L, net"),
    D9: tableHeader("received L"),
    [`A${firstRow}`]: tableCell(`=SEQUENCE(${days},1,FirstDay)`, {
      spill: { formats: [formats.date], room: days },
    }),
    [`C${firstRow}`]: tableCell(`=IF(${column("A")}>0,NetLiquid,0)`, {
      spill: { formats: [formats.oneDecimal], room: days },
    }),
    ...Object.fromEntries(
      powerHours.flatMap((hours, day) => [
        [
          `B${firstRow + day}`,
          numberInput(
            hours,
            "Hours with power",
            { words: "Hours with power on this day, 0 to 24.", least: 0, most: 24, unit: "h" },
            { inTable: true, format: formats.oneDecimal },
          ),
        ],
        [
          `D${firstRow + day}`,
          numberInput(
            0,
            "Liquid received",
            {
              words: "Liquid that a delivery offers on this day, in litres; 0 where none.",
              least: 0,
              most: 100000,
              unit: "L",
            },
            { inTable: true, format: formats.whole },
          ),
        ],
      ]),
    ),
    A42: note(
      "The plan draws gross, with the draw ratio of the sheet Inputs. What arrives or is made today is drawn tomorrow at the soonest. Without power a full plant boils off in the days given on the sheet Inputs, and after it the longest start-up of the kinds runs again in all of them.",
      { across: 9 },
    ),
  },
  conditional: [
    { range: "E7:I7", when: "ISNUMBER(E7)", mark: "attention" },
    { range: `B${firstRow}:B${lastRow}`, when: `B${firstRow}<24`, mark: "strong" },
    {
      range: `E${firstRow}:I${lastRow}`,
      when: `AND(ISNUMBER(E${firstRow}),E${firstRow}<$C${firstRow}*DrawRatio)`,
      mark: "attention",
    },
  ],
  charts: [
    {
      kind: "line",
      title: "Liquid left at the close of each day",
      from: "K6",
      to: "Q32",
      categories: `Outage!A${firstRow}:A${lastRow}`,
      dates: true,
      series: [
        { name: "=Outage!E6", values: `Outage!E${firstRow}:E${lastRow}` },
        ...optionLetters
          .slice(1)
          .map((letter) => ({ name: `=Outage!${letter}6`, values: `Outage!${letter}${firstRow}:${letter}${lastRow}` })),
      ],
      x: { title: "day" },
      y: { title: "liquid [L]", least: 0 },
      altText:
        "Lines of the liquid left in the plants of the options over 30 days. All fall while there is no power and rise after it.",
    },
  ],
};
