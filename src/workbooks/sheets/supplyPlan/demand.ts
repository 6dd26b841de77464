import { wards } from "../../scenario/velmar";
import {
  block,
  caution,
  formats,
  headingRow,
  input,
  label,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  tableInput,
  title,
  total,
  unit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { mayStayEmpty, numberEntry, wordsEntry } from "../entries";

export const wardRows = { first: 8, last: 19 };

const section = (words: string): CellDescription[] => headingRow(words, 8);

const tableFormats = [
  undefined,
  formats.oneDecimal,
  formats.oneDecimal,
  formats.oneDecimal,
  formats.twoDecimals,
  formats.whole,
  formats.oneDecimal,
  formats.whole,
];

/** Patients on oxygen by ward: the mean for volumes, the busy moment for flows. */
export const demand: SheetDescription = {
  name: "Demand",
  columns: [32, 13, 13, 14, 14, 14, 14, 14],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { orientation: "landscape", titleRows: "1:1", breaksBefore: [31, 48] },
  cells: {
    A1: title("Demand by ward"),
    A2: subtitle(
      "The mean sets how much goes in a day. The busy moment sets how many taps, regulators and litres a minute at once. Never plan one on the other.",
      { across: 8 },
    ),
    ...block("A4", [
      section("Patients on oxygen"),
      [
        label("Share of moments covered"),
        input(0.95, {
          name: "Level",
          format: formats.percent,
          validation: numberEntry(
            "Share covered",
            "Share of moments at which the number of patients is not passed: 95% or 0.95.",
            0.5,
            0.9999,
          ),
        }),
        unit("of moments"),
        note("Arrivals taken as random (Poisson); an outbreak is not random: use the surge.", { across: 5 }),
      ],
    ]),
    ...block("A7", [
      [
        "Ward",
        "Mean patients",
        "Flow each [L/min]",
        "Mean flow [L/min]",
        "Patients at a busy moment",
        "Flow at a busy moment [L/min]",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: wardRows.last - wardRows.first + 1 }, (_, index) => {
        const ward = wards[index];
        const row = wardRows.first + index;
        return [
          tableInput(ward?.name, { validation: wordsEntry("Ward", "Ward or kind of patient.") }),
          tableInput(ward?.meanPatients, {
            format: formats.oneDecimal,
            validation: mayStayEmpty(
              numberEntry("Mean patients", "Average number on oxygen over day and night.", 0, 500),
            ),
          }),
          tableInput(ward?.flow, {
            format: formats.oneDecimal,
            validation: mayStayEmpty(
              numberEntry("Flow each", "Flow of one patient from the source, in L/min.", 0.1, 100),
            ),
          }),
          tableCell(`=IF(A${row}="","",B${row}*C${row})`, { format: formats.oneDecimal }),
        ];
      }),
      [
        label("All wards together"),
        total("=SUM(B8:B19)", { format: formats.oneDecimal }),
        total(""),
        total("=OXYGEN.DEMAND_FLOW(B8:B19,C8:C19)", { name: "MeanFlow", format: formats.oneDecimal }),
        total("=OXYGEN.CENSUS_AT_LEVEL(SUM(B8:B19),Level)", { format: formats.whole }),
        total("=OXYGEN.FLOW_AT_LEVEL(B8:B19,C8:C19,Level)", { name: "BusyFlow", format: formats.oneDecimal }),
      ],
    ]),
    E8: {
      ...tableCell('=IF(B8:B19="","",OXYGEN.CENSUS_AT_LEVEL(B8:B19,Level))'),
      spill: { formats: [formats.whole], room: 12 },
    },
    F8: {
      ...tableCell('=IF(A8:A19="","",IF(E8#="",0,E8#)*C8:C19)'),
      spill: { formats: [formats.oneDecimal], room: 12 },
    },
    A21: note("The bottom line is less than the wards' busy moments added up: they seldom fall together.", {
      across: 8,
    }),
    ...block("A23", [
      section("What it comes to"),
      ["", "Mean", "Busy moment", "unit"].map((words) => tableHeader(words)),
      [
        label("Flow at the patients"),
        output("=MeanFlow", { format: formats.oneDecimal }),
        output("=BusyFlow", { format: formats.oneDecimal }),
        unit("L/min gas"),
      ],
      [
        label("What the plants keep up all day"),
        output(
          `=SUM(IF('Site and plants'!E28:E33="",0,OXYGEN.DELIVERED_FLOW('Site and plants'!E28:E33,'Site and plants'!B28:B33,DrawRatio)))`,
          {
            format: formats.oneDecimal,
          },
        ),
        null,
        unit("L/min gas"),
        note("From liquid made at this site, after transfer loss.", { across: 4 }),
      ],
      [
        label("Liquid needed, net"),
        output("=OXYGEN.LIQUID_FROM_GAS(OXYGEN.DAILY_DEMAND(B8:B19,C8:C19))", {
          name: "NetNeed",
          format: formats.oneDecimal,
        }),
        null,
        unit("L/day"),
        note("In the patients' vessels, before margin and transfer loss.", { across: 4 }),
      ],
      [
        label("Liquid drawn, gross"),
        output("=OXYGEN.GROSS_DRAW(NetNeed*(1+Margin),DrawRatio)", { name: "GrossNeed", format: formats.oneDecimal }),
        null,
        unit("L/day"),
        note("Out of the plants, margin and transfer loss included. The plan's mean day.", { across: 4 }),
      ],
      [
        label("Plants loaded to"),
        output("=GrossNeed/MakePerDay", { name: "Loading", format: formats.percent }),
        null,
        unit("of make"),
        note("Gross draw over what the plants make here with power all day. Over 100 %: stock falls every day.", {
          across: 4,
        }),
      ],
    ]),
    ...block("A31", [section("Mean day, by ward")]),
    A32: table("=OXYGEN.DEMAND_TABLE(A8:A19,B8:B19,C8:C19,CylinderContent)", {
      spill: { total: true, formats: tableFormats, room: 14 },
    }),
    ...block("A48", [section("If the busy moment lasted all day, by ward (an upper bound, not a plan)")]),
    A49: table("=OXYGEN.DEMAND_TABLE(A8:A19,E8:E19,C8:C19,CylinderContent)", {
      spill: { total: true, formats: tableFormats, room: 14 },
    }),
    A64: note(
      "Both tables: flow each is L/min; m3/h and L/day are gas. Liquid is net, as it stands open to the air, before transfer loss. Cylinders of the size on Reorder; rounded up in each row and in the total.",
      { across: 8 },
    ),
    A66: caution(
      "Caution: planned flows are for planning. The clinician sets and watches each patient's flow and saturation.",
      { across: 8 },
    ),
  },
};
