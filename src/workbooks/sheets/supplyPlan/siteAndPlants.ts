import { plants, sites } from "../../scenario/velmar";
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
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { choiceEntry, numberEntry, quantityEntry } from "../entries";
import { plantRows } from "./inputs";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const kindColumns = ["C", "D", "E", "F", "G", "H"];

const plantHeadings = ["Kind", "Count", "Switched on", "Start-up [h]", "Make here [L/h] each", "Capacity [L] each"].map(
  (words) => tableHeader(words),
);

/** Months that the plan touches, counted from that of its first day. */
const monthsTouched =
  "SEQUENCE((YEAR(LastDay)-YEAR(FirstDay))*12+MONTH(LastDay)-MONTH(FirstDay)+1,1,MONTH(FirstDay)-1)";

/** A kind of plant here; `fewer` takes one away from the kind with the largest make. */
const plantLine = (index: number, fewer: boolean): CellDescription[] => {
  const row = plantRows.first + index;
  const letter = kindColumns[index]!;
  const filled = (formula: string, format?: string): CellDescription =>
    tableCell(`=IF(Inputs!A${row}="","",${formula})`, format ? { format } : {});
  const makes = `IF((PlantKinds="")+(PlantCounts=0)>0,0,PlantRates)`;
  return [
    filled(`Inputs!A${row}`),
    filled(
      fewer ? `Inputs!B${row}-IF(MATCH(MAX(${makes}),${makes},0)=${index + 1},1,0)` : `Inputs!B${row}`,
      formats.whole,
    ),
    filled(`Inputs!C${row}`, formats.date),
    filled(`Inputs!D${row}`, formats.oneDecimal),
    filled(
      fewer ? `E${28 + index}` : `MIN(INDEX(${letter}12:${letter}23,MOD(${monthsTouched},12)+1))`,
      formats.twoDecimals,
    ),
    filled(`Inputs!F${row}`, formats.whole),
  ];
};

/** What altitude and heat leave of the rated make, month by month, and the plants as the plan takes them. */
export const siteAndPlants: SheetDescription = {
  name: "Site and plants",
  columns: [30, 13, 12, 12, 12, 12, 12, 12, 13, 11],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { titleRows: "1:1", breaksBefore: [26, 47] },
  cells: {
    A1: title("Site and plants"),
    A2: subtitle(
      "What the place leaves of the rated make. The estimate is rough: a maker's table or the site's own runs are better.",
      { across: 6 },
    ),
    ...block("A4", [
      headingRow("Site", 10),
      [
        label("Altitude"),
        output("=Altitude", { format: formats.whole, align: "right" }),
        unit("m"),
        note("From Inputs.", { across: 3 }),
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
      headingRow("Make by month, one plant of each kind", 10),
      [
        tableHeader("Month"),
        tableHeader("Hottest in the plant room [°C]"),
        ...kindColumns.map((_, index) =>
          tableHeader(`=IF(Inputs!A${plantRows.first + index}="","",Inputs!A${plantRows.first + index}&" [L/h]")`),
        ),
        tableHeader("All plants [L/day]"),
        tableHeader("Share of rated"),
      ],
      [
        note("rated"),
        null,
        ...kindColumns.map((_, index) =>
          tableCell(`=IF(Inputs!A${plantRows.first + index}="","",Inputs!E${plantRows.first + index})`, {
            format: formats.twoDecimals,
          }),
        ),
        tableCell("=24*SUMPRODUCT(PlantCounts,PlantRates)", { format: formats.whole }),
        null,
      ],
      ...months.map((month, index) => [
        tableCell(month),
        tableInput(sites.hospital.monthlyHigh[index]!, {
          format: formats.whole,
          validation: quantityEntry(
            "Temperature",
            `Hottest usual temperature in the plant room in ${month}, in °C, or text such as 85 °F.`,
            -40,
            60,
          ),
        }),
        ...kindColumns.map(() => null),
        tableCell(
          `=24*SUM(IF(PlantKinds="",0,PlantCounts*TRANSPOSE(IF(C${12 + index}:H${12 + index}="",0,C${12 + index}:H${12 + index}))))`,
          { format: formats.whole },
        ),
        tableCell(`=I${12 + index}/I11`, { format: formats.percent }),
      ]),
    ]),
    ...Object.fromEntries(
      kindColumns.map((letter, index) => [
        `${letter}12`,
        {
          ...tableCell(
            `=IF(Inputs!A${plantRows.first + index}="",IF(SEQUENCE(12)>0,""),OXYGEN.DERATED_RATE(Inputs!E${plantRows.first + index},Altitude,B12:B23,LossPerDegree))`,
          ),
          spill: { formats: [formats.twoDecimals], room: 12 },
        },
      ]),
    ),
    A24: note(
      "One formula fills the twelve months of a kind. Liquid, net of the plant's own standing loss, before transfer loss.",
      { across: 10 },
    ),
    ...block("A26", [
      headingRow("Plants as the plan takes them", 6),
      plantHeadings,
      ...kindColumns.map((_, index) => plantLine(index, false)),
      [
        label("All together"),
        output("=SUM(B28:B33)", { format: formats.whole }),
        null,
        null,
        output('=24*SUMPRODUCT(PlantCounts,IF(E28:E33="",0,E28:E33))', {
          name: "MakePerDay",
          format: formats.litresPerDay,
        }),
        output("=SUMPRODUCT(PlantCounts,Inputs!F36:F41)", { name: "Room", format: formats.litres }),
      ],
      [
        note(
          "The plan takes the lowest make of all months it touches. The room is that of all plants together; two half-full vessels are not one full one.",
          { across: 10 },
        ),
      ],
      [],
      headingRow("The same with one plant fewer: that of the largest make fails on the first day", 6),
      plantHeadings,
      ...kindColumns.map((_, index) => plantLine(index, true)),
      [
        label("Room left"),
        null,
        null,
        null,
        null,
        output("=SUMPRODUCT(B38:B43,F38:F43)", {
          name: "RoomFewer",
          format: formats.litres,
        }),
      ],
      [note("Its liquid counts as lost as far as the others can't hold it.", { across: 10 })],
    ]),
    ...block("A47", [
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
        label("Length of the largest"),
        input(plants.large.length, {
          name: "PlantLength",
          format: formats.twoDecimals,
          validation: quantityEntry("Length", "Length of the largest plant, in metres.", 0.2, 15),
        }),
        unit("m"),
      ],
      [
        label("Width of the largest"),
        input(plants.large.width, {
          name: "PlantWidth",
          format: formats.twoDecimals,
          validation: quantityEntry("Width", "Width of the largest plant, in metres.", 0.2, 15),
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
        output("=OXYGEN.SITE_AREA(PlantLength,PlantWidth,Clearance,SUM(PlantCounts))", { format: withUnit(0, "m²") }),
        null,
        note("Side by side across their width, each taken as the largest, sharing one gap.", { across: 7 }),
      ],
    ]),
    A56: table("=OXYGEN.SITE_CHECK(Clearance,Tilt,Surface,Ventilated)", { wrap: true, spill: { room: 6 } }),
    A63: caution(
      "Caution: placing, wiring and venting follow local codes, the maker's manual and a licensed inspector. An enriched room burns fast; keep fuel, oil, tar and flames away.",
      { across: 10 },
    ),
  },
  conditional: [{ range: "A57:J61", when: '=AND($B57<>"",$B57<>"ok")', mark: "danger" }],
  charts: [
    {
      kind: "column",
      title: "Make by month, one plant of each kind",
      from: "A65",
      to: "J82",
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

export const siteNames = {
  PlanPlants: "Site and plants!B28:F33",
  PlanPlantsFewer: "Site and plants!B38:F43",
};
