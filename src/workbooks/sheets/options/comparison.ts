import {
  answer,
  block,
  caution,
  formats,
  headingRow,
  label,
  link,
  note,
  tabColours,
  table,
  tableCell,
  tableHeader,
  tableInput,
  text,
  title,
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { costs } from "../../scenario/velmar";
import { numberInput } from "../numberInput";
import { optionCount } from "./inputs";
import { firstShort } from "./outage";
import { supplyChance } from "./units";
import { figuresRange } from "./workings";

const { currency } = costs;
const first = 7;
const last = first + optionCount - 1;
const letters = ["A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L"];
const rule = (words: string): CellDescription[] => headingRow(words, letters.length);

const better = ["less", "less", "less", "less", "more", "more", "more", "less"];
const weights = [1, 1, 0.5, 1, 3, 2, 3, 2];

export const optionsSheet: SheetDescription = {
  name: "Options",
  columns: [24, 12, 12, 16, 14, 14, 14, 14, 14, 16, 14, 16],
  tab: tabColours.result,
  freezeAt: "B4",
  print: { orientation: "landscape", pagesHigh: 1, titleRows: "1:1" },
  cells: {
    A1: title("Four options side by side"),
    A2: text(
      "Need and supply in drawn litres of liquid, with filling losses. Supply with every plant working; days of stock with every plant full and nothing made, less boil-off.",
      { across: 12 },
    ),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [rule("Side by side")]),
    A6: table(`=OXYGEN.OPTION_TABLE(${figuresRange},DrawnNeed)`, {
      wrap: true,
      spill: {
        room: optionCount + 1,
        formats: [
          undefined,
          formats.kilograms,
          formats.whole,
          formats.kilowatts,
          withUnit(0, "L"),
          formats.percent,
          formats.days,
          formats.percent,
          withUnit(0, currency),
          undefined,
        ],
      },
    }),
    K6: tableHeader("chance of enough"),
    L6: tableHeader("first short day in the outage"),
    ...Object.fromEntries(
      Array.from({ length: optionCount }, (_, option) => [
        [
          `K${first + option}`,
          tableCell(`=${supplyChance(option)}`, { format: formats.percentOneDecimal, align: "right" }),
        ],
        [`L${first + option}`, tableCell(`=${firstShort(option)}`, { format: formats.date, align: "right" })],
      ]).flat() as [string, CellDescription][],
    ),
    A12: label("Not beaten by another"),
    B12: answer(
      `=IF(ISERROR($A$6),"no answer: see the first table of Options",TEXTJOIN(", ",TRUE,IF($J$${first}:$J$${last}="",$A$${first}:$A$${last},"")))`,
      {
        across: 5,
        name: "NotBeaten",
      },
    ),
    G12: note(
      "Beaten by: that option is at least as good in all eight measures and better in one. Strike it out first.",
      { across: 6 },
    ),
    A13: note(
      "An option whose one-down share is under 100 % can't carry the mean need while its largest plant is out: it lives on its stock.",
      { across: 12 },
    ),
    ...block("A15", [rule("Score")]),
    A16: caution(
      "Caution: a score ranks this list and says nothing by itself. It shifts when an option is added or left out, and even the order of the others may turn. Agree on the weights before you look at it, and never let it outvote a short day.",
      { across: 12 },
    ),
    ...block("A17", [
      [
        tableHeader("measure"),
        ...["mass", "pallets", "kW", "fuel/day", "supply share", "days of stock", "one-down share", "cost/day"].map(
          (words) => tableHeader(words),
        ),
      ],
      [
        label("Better is"),
        ...better.map((word) =>
          tableInput(word, {
            align: "center",
            validation: {
              rule: { kind: "list", values: ["less", "more"] },
              blankPasses: false,
              prompt: { title: "Better is", words: "less or more: which is better for this measure." },
              refusal: { title: "Better is", words: "Choose less or more." },
            },
          }),
        ),
      ],
      [
        label("Weight"),
        ...weights.map((weight) =>
          numberInput(
            weight,
            "Weight",
            {
              words: "How much this measure counts beside the others; any scale, 0 leaves it out.",
              least: 0,
              most: 1000,
            },
            { inTable: true, align: "center", format: "0.0" },
          ),
        ),
      ],
    ]),
    ...block("A21", [[tableHeader("all options"), null, null, tableHeader("beaten left out")]]),
    A22: tableCell(`=A${first}:A${last}`, { spill: { room: optionCount } }),
    B21: tableCell(`=OXYGEN.OPTION_SCORE(B${first}:I${last},B18:I18,B19:I19)`, {
      spill: { header: true, formats: [formats.twoDecimals], room: optionCount + 1 },
    }),
    D22: tableCell(`=FILTER(A${first}:A${last},J${first}:J${last}="")`, { spill: { room: optionCount } }),
    E21: tableCell(`=OXYGEN.OPTION_SCORE(FILTER(B${first}:I${last},J${first}:J${last}=""),B18:I18,B19:I19)`, {
      spill: { header: true, formats: [formats.twoDecimals], room: optionCount + 1 },
    }),
    G21: note(
      "0 is worst in every measure of the list, 1 best in every one. Compare the two columns: the same options, another score, and at times another order.",
      { across: 6 },
    ),
  },
  conditional: [
    { range: `A${first}:L${last}`, when: `$J${first}<>""`, mark: "muted" },
    { range: `F${first}:F${last}`, when: `AND(ISNUMBER(F${first}),F${first}<1)`, mark: "attention" },
    { range: `H${first}:H${last}`, when: `AND(ISNUMBER(H${first}),H${first}<1)`, mark: "attention" },
    { range: `K${first}:K${last}`, when: `AND(ISNUMBER(K${first}),K${first}<0.95)`, mark: "attention" },
    { range: `L${first}:L${last}`, when: `ISNUMBER(L${first})`, mark: "attention" },
  ],
  charts: [
    {
      kind: "column",
      title: `Cost a day [${currency}]`,
      from: "A28",
      to: "E46",
      categories: `Options!A${first}:A${last}`,
      series: [{ name: `cost ${currency}/day`, values: `Options!I${first}:I${last}` }],
      x: { title: "option" },
      y: { title: `${currency}/day`, least: 0 },
      altText: "Columns of the cost a day of each option.",
    },
    {
      kind: "column",
      title: "Supply as a share of the need",
      from: "F28",
      to: "L46",
      categories: `Options!A${first}:A${last}`,
      series: [
        { name: "every plant working", values: `Options!F${first}:F${last}` },
        { name: "largest plant down", values: `Options!H${first}:H${last}` },
      ],
      x: { title: "option" },
      y: { title: "share of the need", format: "0%", least: 0 },
      altText: "Columns of each option's supply over the need, with every plant working and with the largest one down.",
    },
  ],
};
