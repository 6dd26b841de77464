import {
  answer,
  block,
  caution,
  formats,
  heading,
  input,
  label,
  link,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  tableInput,
  text,
  title,
  total,
  unit,
  withUnit,
  type CachedCell,
  type Cells,
  type WorkbookDescription,
} from "../../src/workbooks/writer";
import { calculatedFrom } from "./calculatedFrom";

const firstDay = 46082;
const days = 14;
const needs = [5, 5, 6, 6, 7, 9, 12, 14, 12, 9, 7, 6, 5, 5];

/** Stock after each day from 90 L with 3 L lost a day, worked out here by plain subtraction. */
const stocks = needs.map((_, day) => 90 - needs.slice(0, day + 1).reduce((sum, need) => sum + need + 3, 0));

const stockTable: CachedCell[][] = [
  ["day", "need", "stock"],
  ...needs.map((need, day): CachedCell[] => [firstDay + day, need, Math.max(0, stocks[day]!)]),
  ["total", 108, ""],
];

/** An input with a name, a format and a rule. */
export const capacityInput = input(60, {
  name: "Capacity",
  format: formats.litresOneDecimal,
  validation: {
    rule: { kind: "number", least: 1, most: 20000 },
    prompt: { title: "Capacity", words: "Liquid the vessel holds when full, in litres." },
    refusal: { title: "Capacity", words: "Enter litres from 1 to 20,000." },
  },
});

const start: Cells = {
  A1: title("Hours to fill one vessel"),
  A2: subtitle("A sheet to try the layout with: an invented store in the island district of Velmar.", { across: 4 }),
  ...block("A4", [
    [heading("What you have"), heading(), heading(), heading()],
    [label("Capacity"), capacityInput, unit("L"), note("Brim volume is more; take what the plate calls full.")],
    [label("Make rate"), input(1.5, { name: "MakeRate", format: formats.litresPerHour }), unit("L/h")],
    [label("Metal of the line"), input("copper", { validation: { rule: { kind: "listFrom", range: "Lists!A2:A4" } } })],
    [label("Switched on"), input(firstDay, { format: formats.date, name: "SwitchOn" })],
    [label("Covered bed"), input(true, { validation: { rule: { kind: "list", values: ["TRUE", "FALSE"] } } })],
  ]),
  ...block("A11", [
    [heading("What comes out"), heading(), heading(), heading()],
    [label("Hours to full"), answer("=OXYGEN.HOURS_TO_FILL(Capacity,MakeRate)", { format: formats.hours })],
    [label("In days"), output("=B12/24", { format: formats.days })],
    [
      label("First short day"),
      output('=IFNA(OXYGEN.FIRST_SHORT_DATE(Plan!A5:A18),"none")', { align: "right", format: formats.date }),
    ],
    [label("No answer"), output("=NA()")],
    [label("A word of errors"), text("#N/A")],
  ]),
  A18: caution(
    "Caution: oxygen feeds fire. Fill only where the maker's manual and the local code allow it, away from oil, grease and open flames, and keep the room ventilated for as long as the vessel vents.",
    { across: 4 },
  ),
  A20: link("Plan!A1", "To the plan", "The day-by-day table"),
};

const plan: Cells = {
  A1: title("Stock day by day"),
  A2: link("Start!A1", "Back"),
  A4: table('=OXYGEN.DEMO_PLAN(SwitchOn,"a & b <c>")', {
    spill: { total: true, formats: [formats.date, withUnit(1, "L"), withUnit(1, "L")], room: 18 },
  }),
  ...block("E4", [
    [tableHeader("level"), tableHeader("amount"), tableHeader("share")],
    [
      tableCell("reserve"),
      tableInput(25, { format: formats.litres, name: "Reserve" }),
      tableCell("=F5/F6", { format: formats.percent }),
    ],
    [
      total("most"),
      total("=MAX(B5:B18)", { format: formats.litres }),
      total("=SUM(B5:B18*2)", { format: formats.litres }),
    ],
  ]),
  H4: tableHeader("reserve"),
  ...Object.fromEntries(
    needs.map((_, day) => [`H${5 + day}`, tableCell("=Reserve", { format: formats.litres })] as const),
  ),
};

/** A small workbook that uses every feature of the writer once. */
export const demo: WorkbookDescription = {
  properties: { title: "Demo & trial", subject: "Layout trial", description: "Uses each feature once." },
  names: { Needs: "Plan!B5:B18" },
  sheets: [
    { name: "Start", columns: [26, 16, 8, 44], cells: start, freezeAt: "A4", tab: tabColours.start },
    {
      name: "Plan",
      columns: [13, 12, 12, 3, 12, 12, 10, 12],
      cells: plan,
      freezeAt: "B5",
      tab: tabColours.result,
      print: { orientation: "landscape", titleRows: "4:4" },
      conditional: [
        { range: "C5:C18", when: "=C5<=0", mark: "danger", last: true },
        { range: "C5:C18", when: "=C5<Reserve", mark: "attention" },
        { range: "B5:B18", shade: "lowToHigh" },
      ],
      charts: [
        {
          kind: "line",
          title: "Stock over the days",
          from: "J4",
          to: "R20",
          categories: "Plan!A5:A18",
          dates: true,
          series: [
            { name: "=Plan!C4", values: "Plan!C5:C18" },
            { name: "need", values: "Plan!B5:B18", as: "column" },
            { name: "reserve", values: "Plan!H5:H18", reserve: true },
          ],
          x: { title: "day" },
          y: { title: "liquid [L]", least: 0 },
          altText: "Line of stock falling from 82 L to nothing over 14 days, above columns of the daily need.",
        },
        {
          kind: "column",
          title: "Need & stock",
          from: "J22",
          to: "R38",
          categories: "Lists!A2:A4",
          series: [
            { name: "one", values: "Lists!B2:B4" },
            { name: "two", values: "Lists!C2:C4" },
          ],
          x: { title: "metal" },
          y: { title: "mass [kg]" },
          altText: "Columns of two invented masses for three metals.",
        },
      ],
    },
    {
      name: "Lists",
      columns: [20, 8, 8],
      tab: tabColours.reference,
      cells: block("A1", [
        [tableHeader("Metals"), tableHeader("one"), tableHeader("two")],
        ...["aluminium", "copper", "stainless"].map((metal, at) => [
          tableCell(metal),
          tableCell(at + 1),
          tableCell(2 * at + 1),
        ]),
      ]),
    },
  ],
};

/** Values of the demo's formulas, worked out by hand: 3 h + 60 L / 1.5 L/h = 43 h. */
export const demoValues = calculatedFrom({
  "Start!B12": 43,
  "Start!B13": 43 / 24,
  "Start!B14": firstDay + 10,
  "Start!B15": { error: "#N/A" },
  "Plan!A4": stockTable,
  "Plan!G5": 25 / 14,
  "Plan!F6": 14,
  "Plan!G6": 216,
  ...Object.fromEntries(Array.from({ length: days }, (_, day) => [`Plan!H${5 + day}`, 25])),
});
