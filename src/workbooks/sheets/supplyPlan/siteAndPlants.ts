import { sites } from "../../scenario/velmar";
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
  unit,
  withUnit,
  type SheetDescription,
} from "../../writer";
import { choiceEntry, numberEntry } from "../entries";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
/** What altitude and heat leave of the rated make, month by month, and the plants as the plan takes them. */
export const siteAndPlants: SheetDescription = {
  name: "Site and plants",
  columns: [30, 16, 14, 14, 16, 16],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { pagesHigh: 1 },
  cells: {
    A1: title("Site and plants"),
    A2: subtitle(
      "What the place leaves of the rated make. The estimate is rough: a maker's table or the site's own runs are better.",
      { across: 6 },
    ),
    ...block("A4", [
      headingRow("Site", 6),
      [
        label("Altitude"),
        input(sites.hospital.altitude, {
          name: "Altitude",
          format: formats.whole,
          validation: numberEntry("Altitude", "Metres above the sea.", -500, 11000),
        }),
        unit("m"),
      ],
      [
        label("Share lost a degree above 21.1 °C"),
        input(0.01, {
          name: "LossPerDegree",
          format: "0.000",
          validation: numberEntry("Loss a degree", "Share of the make lost for each °C above 21.1.", 0, 0.2),
        }),
        unit("per °C"),
        note("1 % is a rule of thumb; FIT_DERATING gets it from your own runs.", { across: 3 }),
      ],
      [label("Air pressure"), output("=OXYGEN.AIR_PRESSURE(Altitude)", { format: formats.oneDecimal }), unit("kPa")],
    ]),
    ...block("A9", [
      headingRow("Make by month", 6),
      [
        tableHeader("Month"),
        tableHeader("Hottest in the plant room [°C]"),
        tableHeader('=Inputs!A27&" [L/h]"'),
        tableHeader('=Inputs!A28&" [L/h]"'),
        tableHeader("All plants [L/day]"),
        tableHeader("Share of rated"),
      ],
      [
        note("rated"),
        null,
        tableCell("=Inputs!E27", { format: formats.twoDecimals }),
        tableCell("=Inputs!E28", { format: formats.twoDecimals }),
        tableCell("=24*SUMPRODUCT(PlantCounts,Inputs!E27:E28)", { format: formats.whole }),
        null,
      ],
      ...months.map((month, index) => [
        tableCell(month),
        tableInput(sites.hospital.monthlyHigh[index]!, {
          format: formats.whole,
          validation: numberEntry(
            "Temperature",
            `Hottest usual temperature in the plant room in ${month}, in °C.`,
            -40,
            60,
          ),
        }),
      ]),
    ]),
    C12: {
      ...tableCell("=OXYGEN.DERATED_RATE(C11:D11,Altitude,B12:B23,LossPerDegree)"),
      spill: { formats: [formats.twoDecimals], room: 12 },
    },
    E12: { ...tableCell("=24*(Inputs!B27*C12:C23+Inputs!B28*D12:D23)"), spill: { formats: [formats.whole], room: 12 } },
    F12: { ...tableCell("=E12:E23/E11"), spill: { formats: [formats.percent], room: 12 } },
    A24: note(
      "One formula in C12 fills all twelve months of both kinds. Liquid, net of the plant's own standing loss, before transfer loss.",
      { across: 6 },
    ),
    ...block("A26", [
      headingRow("Plants as the plan takes them", 6),
      ["Kind", "Count", "Switched on", "Start-up [h]", "Make here [L/h] each", "Capacity [L] each"].map((words) =>
        tableHeader(words),
      ),
      ...[27, 28].map((row, index) => {
        const column = ["C", "D"][index]!;
        const at = (days: number): string => `INDEX(${column}12:${column}23,MONTH(FirstDay+${days}))`;
        return [
          tableCell(`=Inputs!A${row}`),
          tableCell(`=Inputs!B${row}`, { format: formats.whole }),
          tableCell(`=Inputs!C${row}`, { format: formats.date }),
          tableCell(`=Inputs!D${row}`, { format: formats.oneDecimal }),
          tableCell(`=MIN(${at(0)},${at(30)},${at(59)})`, { format: formats.twoDecimals }),
          tableCell(`=Inputs!F${row}`, { format: formats.whole }),
        ];
      }),
      [
        label("All together"),
        output("=SUM(B28:B29)", { format: formats.whole }),
        null,
        null,
        output("=24*SUMPRODUCT(B28:B29,E28:E29)", { name: "MakePerDay", format: formats.litresPerDay }),
        output("=SUMPRODUCT(B28:B29,F28:F29)", { name: "Room", format: formats.litres }),
      ],
    ]),
    A31: note(
      "The plan takes the lowest make of the months it touches. The room is that of all plants together; two half-full vessels are not one full one.",
      { across: 6 },
    ),
    ...block("A33", [
      headingRow("Where they stand", 6),
      [
        label("Clear on every side"),
        input(2, {
          name: "Clearance",
          format: formats.oneDecimal,
          validation: numberEntry("Clearance", "Least free distance round a plant, in metres.", 0, 50),
        }),
        unit("m"),
      ],
      [
        label("Tilt of the floor"),
        input(1.5, {
          name: "Tilt",
          format: formats.oneDecimal,
          validation: numberEntry("Tilt", "Steepest slope under a plant, in degrees.", 0, 90),
        }),
        unit("degrees"),
      ],
      [
        label("Surface"),
        input("concrete", {
          name: "Surface",
          validation: choiceEntry("Surface", "What the plants stand on and spills run over.", [
            "concrete",
            "stone",
            "metal",
            "gravel",
            "soil",
            "wood",
            "plastic",
            "tile",
            "asphalt",
          ]),
        }),
      ],
      [
        label("Ventilated"),
        input("yes", {
          name: "Ventilated",
          validation: choiceEntry("Ventilated", "Open to fresh air whenever a plant runs or vents.", ["yes", "no"]),
        }),
      ],
      [
        label("Floor for all plants"),
        output("=OXYGEN.SITE_AREA(1.6,1.1,Clearance,SUM(PlantCounts))", { format: withUnit(0, "m²") }),
        null,
        note("Side by side, each taken as 1.6 m × 1.1 m, sharing one gap.", { across: 3 }),
      ],
    ]),
    A40: { ...table("=OXYGEN.SITE_CHECK(Clearance,Tilt,Surface,Ventilated)", { wrap: false }), role: "text" },
    A47: caution(
      "Caution: placing, wiring and venting follow local codes, the maker's manual and a licensed inspector. An enriched room burns fast; keep fuel, oil, tar and flames away.",
      { across: 6 },
    ),
  },
  charts: [
    {
      kind: "column",
      title: "Make by month, one plant of each kind",
      from: "A49",
      to: "F66",
      categories: "Site and plants!A12:A23",
      series: [
        { name: "='Site and plants'!C10", values: "Site and plants!C12:C23" },
        { name: "='Site and plants'!D10", values: "Site and plants!D12:D23" },
      ],
      x: { title: "month" },
      y: { title: "liquid [L/h]", least: 0, format: "0.0" },
      altText: "Columns of the make of each kind of plant by month; lowest in the hottest months.",
    },
  ],
};

export const siteNames = { PlanPlants: "Site and plants!B28:F29" };
