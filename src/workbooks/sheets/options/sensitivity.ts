import {
  block,
  formats,
  input,
  label,
  link,
  note,
  output,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  unit,
  type SheetDescription,
} from "../../writer";
import { plants } from "../../scenario/velmar";
import { numberInput } from "../numberInput";
import { kindRows } from "./inputs";

const altitudes = [0, 500, 1000, 1500, 2000, 2500, 3000];
const temperatures = [15, 20, 25, 30, 35, 40, 45];
const letters = ["B", "C", "D", "E", "F", "G", "H"];
const firstRow = 12;
const lastRow = firstRow + altitudes.length - 1;

export const sensitivitySheet: SheetDescription = {
  name: "Heat and height",
  columns: [30, 11, 11, 11, 11, 11, 11, 11],
  tab: tabColours.result,
  freezeAt: `B${firstRow}`,
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("Plants needed where it is hot or high"),
    A2: text("One formula fills the table: each altitude with each temperature of the plant room. Darker needs more.", {
      across: 8,
    }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      [
        label("Kind of plant"),
        input(plants.large.name, {
          name: "KindHere",
          across: 2,
          validation: {
            rule: { kind: "listFrom", range: `Inputs!A${kindRows.first}:A${kindRows.last}` },
            blankPasses: false,
            prompt: { title: "Kind of plant", words: "Choose one of the kinds on the sheet Inputs." },
            refusal: { title: "Kind of plant", words: "Choose a kind from the list." },
          },
        }),
      ],
      [
        label("Its rated make"),
        output(
          `=INDEX(Inputs!B${kindRows.first}:B${kindRows.last},MATCH(KindHere,Inputs!A${kindRows.first}:A${kindRows.last},0))`,
          { name: "RatedHere", format: formats.twoDecimals },
        ),
        unit("L/h"),
      ],
      [
        label("Its share of time"),
        output(
          `=INDEX(Inputs!J${kindRows.first}:J${kindRows.last},MATCH(KindHere,Inputs!A${kindRows.first}:A${kindRows.last},0))`,
          { name: "WorksHere", format: formats.percent },
        ),
      ],
      [
        label("Spare plants"),
        numberInput(
          1,
          "Spare plants",
          { words: "Plants beyond those needed, counted in the table.", least: 0, most: 20, whole: true },
          { name: "SparePlants", format: formats.whole },
        ),
        unit("plants"),
      ],
    ]),
    A10: note("altitude m, downwards"),
    B10: note("temperature of the plant room, °C, across", { across: 7 }),
    A11: tableHeader("plants, spare ones included"),
    ...Object.fromEntries(
      letters.map((letter, at) => [
        `${letter}11`,
        numberInput(
          temperatures[at]!,
          "Temperature",
          { words: "Temperature of the plant room, in °C.", least: -40, most: 60, unit: "°C" },
          { inTable: true, format: formats.whole, align: "center" },
        ),
      ]),
    ),
    ...Object.fromEntries(
      altitudes.map((altitude, at) => [
        `A${firstRow + at}`,
        numberInput(
          altitude,
          "Altitude",
          { words: "Altitude of the site, in m.", least: -400, most: 8000, unit: "m" },
          { inTable: true, format: formats.whole, align: "center" },
        ),
      ]),
    ),
    [`B${firstRow}`]: tableCell(
      `=OXYGEN.PLANTS_NEEDED(DailyGas,OXYGEN.DERATED_RATE(RatedHere,A${firstRow}:A${lastRow},B11:H11,LossPerDegree),SparePlants,WorksHere,DrawRatio)`,
      { align: "center", spill: { formats: [formats.whole], room: altitudes.length } },
    ),
    [`A${lastRow + 2}`]: note(
      "For the mean need of the sheet Inputs. The estimate takes air pressure and heat as two factors and never passes the rated make; a maker's own table goes before it (RATE_FROM_TABLE). Mean need: stock must carry the peak.",
      { across: 8 },
    ),
  },
  conditional: [{ range: `B${firstRow}:H${lastRow}`, shade: "lowToHigh" }],
  charts: [
    {
      kind: "line",
      title: "Plants needed, one line an altitude [m]",
      from: "J5",
      to: "R22",
      categories: "Heat and height!B11:H11",
      series: [
        { name: `=Heat and height!A${firstRow}`, values: `Heat and height!B${firstRow}:H${firstRow}` },
        { name: `=Heat and height!A${firstRow + 3}`, values: `Heat and height!B${firstRow + 3}:H${firstRow + 3}` },
        { name: `=Heat and height!A${lastRow}`, values: `Heat and height!B${lastRow}:H${lastRow}` },
      ],
      x: { title: "temperature [°C]" },
      y: { title: "plants", least: 0 },
      altText: "Lines of the plants needed over the temperature, at the first, the fourth and the last altitude.",
    },
  ],
};
