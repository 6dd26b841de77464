import {
  answer,
  block,
  formats,
  headingRow,
  label,
  link,
  note,
  output,
  tabColours,
  tableCell,
  tableHeader,
  tableInput,
  text,
  title,
  unit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { gatedFigure, type BookCheck } from "../../checks";
import { firstDay } from "../../scenario/velmar";
import { dateInput } from "../dateInput";
import { numberInput } from "../numberInput";
import { isRefused, partCells, stateCells } from "./service";
import { siteServices } from "./tasks";

const rule = (words: string): CellDescription[] => headingRow(words, 7);

/** Part, on hand, on order, lot. */
const stock: readonly [string, number, number, number][] = [
  ["intake filter", 4, 0, 6],
  ["drive belt", 1, 0, 1],
  ["compressor oil, litre", 5, 0, 5],
  ["dryer cartridge", 1, 0, 1],
  ["calibration gas", 2, 2, 1],
  ["seal kit", 0, 1, 1],
];
const firstPart = 16;
const partRoom = 10;
const lastPart = firstPart + partRoom - 1;

const [one, other] = siteServices;
const needed = (part: string): string =>
  [one, other]
    .map(({ sheet }) => partCells(sheet))
    .map(({ parts, quantities }) => `SUMIF(${parts},${part},${quantities})`)
    .join("+");
const allNeeded = [one, other].map(({ sheet }) => `SUM(${partCells(sheet).quantities})`).join("+");

const refused = `OR(${[one, other].map(({ sheet }) => isRefused(sheet)).join(",")})`;
const overdue = [one, other].map(({ sheet }) => `COUNTIF(${stateCells(sheet)},"overdue")`).join("+");

const visits = [46089, 46110, 46131, 46152, 46173];

/** Days of the quarter, and one order of parts for both sites. */
export const quarterSheet: SheetDescription = {
  name: "Quarter",
  columns: [34, 15, 15, 15, 15, 15, 40],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("The quarter: days, visits, parts"),
    A2: text("These days count on both service sheets.", { across: 7 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("Days"),
      [
        label("Today"),
        dateInput(firstDay, "Today", "The day to judge from. Type it: the sheet doesn't read the clock.", {
          name: "AsOf",
        }),
      ],
      [label("From"), dateInput(firstDay, "From", "First day of the quarter.", { name: "FromDay" }), unit("first day")],
      [label("To"), dateInput(46173, "To", "Last day of the quarter.", { name: "ToDay" }), unit("last day")],
      [
        label("Warn before, allow after"),
        numberInput(
          7,
          "Warn before",
          { words: "Days before the due day on which it is due soon.", least: 0, most: 90, whole: true, unit: "days" },
          { name: "WarnDays", format: formats.whole },
        ),
        numberInput(
          3,
          "Allow after",
          { words: "Days that a service may be late.", least: 0, most: 90, whole: true, unit: "days" },
          { name: "GraceDays", format: formats.whole },
        ),
        unit("days"),
        note("What may be late at all, the manual says.", { across: 3 }),
      ],
      [
        label("Planned visits of the technician"),
        ...visits.map((visit) => dateInput(visit, "Visit", "Day of a planned visit, the same for both sites.")),
      ],
    ]),
    A11: label("Overdue today, both sites"),
    B11: answer(gatedFigure(`=IF(${refused},NA(),${overdue})`), {
      name: "HeadlineOverdue",
      format: formats.whole,
      across: 2,
    }),
    ...block("A13", [
      rule("Parts for both sites"),
      [
        text("Needed is the sum of both service sheets over the quarter. Name parts here exactly as there.", {
          across: 7,
        }),
      ],
      ["part", "needed", "on hand", "on order", "lot", "to order"].map((words) => tableHeader(words)),
      ...Array.from({ length: partRoom }, (_, at): CellDescription[] => {
        const row = firstPart + at;
        const known = stock[at];
        const number = (value: number | undefined): CellDescription => tableInput(value, { format: "General" });
        return [
          tableInput(known?.[0]),
          tableCell(`=IF(A${row}="","",${needed(`A${row}`)})`, { format: "General" }),
          number(known?.[1]),
          number(known?.[2]),
          number(known?.[3]),
          tableCell(`=IF(A${row}="","",OXYGEN.ORDER_QUANTITY(C${row},D${row},B${row},E${row}))`, {
            format: "General",
          }),
        ];
      }),
    ]),
    [`A${lastPart + 2}`]: label("All parts of the service sheets stand here"),
    [`B${lastPart + 2}`]: output(
      `=IF(${refused},"NO: a service sheet refuses an input",IF(ABS(${allNeeded}-SUM(B${firstPart}:B${lastPart}))<0.000001,"yes","NO: a part is missing or named otherwise"))`,
      { across: 4 },
    ),
    [`A${lastPart + 3}`]: note(
      "To order: what brings on hand and on order up to the need, in whole lots. Spares against breakdowns come on top (SPARES_TO_KEEP).",
      { across: 7 },
    ),
  },
  validations: [
    {
      range: `A${firstPart}:A${lastPart}`,
      rule: { kind: "textLength", most: 30 },
      prompt: { title: "Part", words: "Name of the part, as on the service sheets." },
      refusal: { title: "Part", words: "Enter a name of up to 30 letters." },
    },
    {
      range: `C${firstPart}:E${lastPart}`,
      rule: { kind: "number", least: 0, most: 100000 },
      prompt: { title: "Stock", words: "On hand, on order and the size of a lot (above 0); 0 where there is none." },
      refusal: { title: "Stock", words: "Enter a number from 0 to 100,000." },
    },
  ],
  conditional: [
    { range: `F${firstPart}:F${lastPart}`, when: `AND(ISNUMBER(F${firstPart}),F${firstPart}>0)`, mark: "attention" },
    { range: "B11:C11", when: "$B$11<>0", mark: "danger" },
    { range: `B${lastPart + 2}:E${lastPart + 2}`, when: `$B$${lastPart + 2}<>"yes"`, mark: "danger" },
  ],
};

export const partTable = {
  sheet: "Quarter",
  first: firstPart,
  last: lastPart,
  columns: ["A", "C", "D", "E"],
  what: "Parts",
};

const fault = (at: string, what: string, isWrong: string, words: string): BookCheck => ({
  at,
  what,
  formula: `=IF(${isWrong},"${at} ${words}","ok")`,
});

export const quarterChecks: readonly BookCheck[] = [
  fault("Quarter!B8", "To", "ToDay<FromDay", "is before the first day of the quarter"),
  fault("Quarter!B8", "To", "ToDay-FromDay>370", "is over a year after the first day"),
  fault(
    "Quarter!B6",
    "Today",
    "(AsOf<FromDay-31)+(AsOf>ToDay)>0",
    "is not in the quarter or the month before it: type today's date, or the days of this quarter",
  ),
  fault("Quarter!B10", "Visits", "MAX(Visits)<AsOf", "begins visits that are all over: enter the next ones"),
  fault(
    "Quarter!A16",
    "Parts of the service sheets",
    `B${lastPart + 2}<>"yes"`.replace("B", "Quarter!B"),
    "begins the parts: one of the service sheets is missing or named otherwise",
  ),
];
