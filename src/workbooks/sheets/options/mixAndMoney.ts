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
  table,
  tableCell,
  tableHeader,
  text,
  title,
  unit,
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { costs, generator } from "../../scenario/velmar";
import { numberInput } from "../numberInput";
import { optionNames, priceRange, runningRange } from "./workings";
import { gated } from "../../checks";
import { kindRows, optionCount } from "./inputs";
import { feasibleRange } from "./comparison";

const { currency } = costs;
const rule = (words: string): CellDescription[] => headingRow(words, 7);

/** Litres of fuel for each kWh at 75 % load, from the maker's points. */
const fuelPerKwh =
  "OXYGEN.FUEL_RATE(0.75*GeneratorPower,GeneratorPower,Inputs!$B$46:$E$46,Inputs!$B$47:$E$47)/(0.75*GeneratorPower)";

const itemRow = (row: number): CellDescription[] => [
  tableCell(`=Inputs!A${row}`),
  tableCell(
    `=OXYGEN.COST_PER_DAY(Inputs!H${row},LifeDays,Inputs!I${row}+Inputs!E${row}/1000*24*${fuelPerKwh}*FuelPrice)`,
    {
      format: formats.oneDecimal,
    },
  ),
  numberInput(
    20,
    "Most",
    { words: "Most of this kind that can be had.", least: 0, most: 100, whole: true },
    { inTable: true, format: formats.whole },
  ),
  tableCell(`=24*Inputs!K${row}*Inputs!J${row}`, { format: formats.oneDecimal }),
  tableCell(`=-Inputs!E${row}/1000`, { format: formats.oneDecimal }),
  tableCell(`=-Inputs!F${row}`, { format: formats.whole }),
];

const limits = [6000, 6400, 6800, 7200, 7600, 8000];

export const mixSheet: SheetDescription = {
  name: "Mix and money",
  columns: [36, 15, 13, 15, 22, 15, 30],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("Best mix, and when a plant pays"),
    A2: text("The cheapest mix of whole units that meets the need within the mass that can be shipped.", { across: 7 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("What one unit gives and takes"),
      ["kind", `cost ${currency}/day`, "most", "L/day", "kW", "kg"].map((words) => tableHeader(words)),
      ...[0, 1].map((at) => itemRow(kindRows.first + at)),
      [
        tableCell(generator.name),
        tableCell(`=OXYGEN.COST_PER_DAY(Inputs!H${kindRows.generator},LifeDays,Inputs!I${kindRows.generator})`, {
          format: formats.oneDecimal,
        }),
        numberInput(
          20,
          "Most",
          { words: "Most of this kind that can be had.", least: 0, most: 100, whole: true },
          { inTable: true, format: formats.whole },
        ),
        tableCell(0, { format: formats.whole }),
        tableCell("=GeneratorHere*MostLoad", { format: formats.oneDecimal }),
        tableCell(`=-Inputs!F${kindRows.generator}`, { format: formats.whole }),
      ],
      [
        tableHeader("need"),
        tableCell(),
        tableCell(),
        tableCell("=DrawnNeed*(1+Margin)", { format: formats.oneDecimal }),
        tableCell("=SpareGenerators*E9", { format: formats.oneDecimal }),
        tableCell("=-MassLimit", { format: formats.whole }),
      ],
    ]),
    ...block("A12", [
      [
        label("Margin over the mean need"),
        numberInput(
          0.1,
          "Margin",
          { words: "Share that the mix must make above the mean need, 0 to 2.", least: 0, most: 2 },
          { name: "Margin", format: formats.percent },
        ),
        unit("share"),
      ],
      [
        label("Fuel for a kilowatt-hour"),
        output(`=${fuelPerKwh}`, { name: "FuelPerKwh", format: "0.000" }),
        unit("L/kWh"),
      ],
    ]),
    A14: note(
      "L/day: at this site, times the share of time that the plant works; gross. kW: minus takes, plus gives; the spare generator is in the need. kg: minus, so that the need is not to pass the limit. Fuel of a plant at 75 % load of the generators. The crew is left out: it is the same for every mix.",
      { across: 7 },
    ),
    ...block("A16", [rule("Best mix under the mass limit")]),
    A17: table(`=OXYGEN.BEST_MIX(A6:F9,D10:F10,"cost/day")`, {
      spill: { total: true, formats: [undefined, formats.whole, withUnit(0, currency)], room: 5 },
    }),
    E17: label("Mass of the mix"),
    F17: output('=IF(ISNUMBER(B18),SUMPRODUCT(B18:B20,-F7:F9),"no mix")', { format: formats.kilograms }),
    G17: note("Without packing."),
    E18: label("Pallets of the mix"),
    F18: output(
      `=IFERROR(OXYGEN.PALLETS_NEEDED(B18:B20,-F7:F9,CHOOSE({1;2;3},Inputs!G${kindRows.first},Inputs!G${kindRows.first + 1},Inputs!G${kindRows.generator})),"no mix")`,
      { format: formats.whole },
    ),
    E19: label("It makes, gross"),
    F19: output('=IF(ISNUMBER(B18),SUMPRODUCT(B18:B20,D7:D9),"no mix")', { format: formats.litresPerDay }),
    G19: note("With the plants' share of time."),
    ...block("A24", [
      rule("The same under other mass limits"),
      [tableHeader("mass limit kg"), tableHeader(`cost ${currency}/day`), tableHeader("units")],
      ...limits.map((limit, at) => {
        const mix = `OXYGEN.BEST_MIX($A$6:$F$9,CHOOSE({1,2,3},$D$10,$E$10,-A${26 + at}),"cost/day")`;
        return [
          numberInput(
            limit,
            "Mass limit",
            { words: "Mass that can be shipped, in kg, without packing.", least: 100, most: 1000000, unit: "kg" },
            { inTable: true, format: formats.whole },
          ),
          tableCell(`=IFNA(INDEX(${mix},5,3),"none fits")`, { format: formats.whole, align: "right" }),
          tableCell(`=IFNA(INDEX(${mix},5,2),"–")`, { format: formats.whole, align: "right" }),
        ];
      }),
    ]),
    ...block("A33", [
      rule("Break-even against liquid brought by boat"),
      [
        label("Setting up a store for brought liquid"),
        numberInput(
          40000,
          "Setting up",
          {
            words: `Price of the store tank and its setting up, in ${currency}.`,
            least: 0,
            most: 100000000,
            unit: currency,
          },
          { name: "StorePrice", format: formats.whole },
        ),
        unit(currency),
      ],
      [
        label("Price of a litre of liquid, landed"),
        numberInput(
          costs.deliveredLiquid,
          "Price of liquid",
          {
            words: `Price of a litre of liquid brought to the site, in ${currency}.`,
            least: 0,
            most: 100000,
            unit: `${currency}/L`,
          },
          { name: "LiquidPrice", format: formats.twoDecimals },
        ),
        unit(`${currency}/L`),
      ],
      [
        label("Lost between the boat and the draw"),
        numberInput(
          0.15,
          "Lost",
          { words: "Share of the brought liquid that boils off before it is drawn, 0 to 90 %.", least: 0, most: 0.9 },
          { name: "BroughtLoss", format: formats.percent },
        ),
        unit("share"),
      ],
      [
        label("Brought liquid, a day"),
        output("=DrawnNeed/(1-BroughtLoss)*LiquidPrice", { name: "BroughtCost", format: formats.whole }),
        unit(`${currency}/day`),
      ],
    ]),
    ...block("A39", [[tableHeader("option"), tableHeader("pays back after days"), tableHeader("that is years")]]),
    A40: tableCell(`=${optionNames}`, { spill: { room: optionCount } }),
    B40: tableCell(
      `=IFNA(OXYGEN.BREAK_EVEN_DAYS(${priceRange},${runningRange},StorePrice,BroughtCost),"doesn't pay back")`,
      {
        align: "right",
        spill: { formats: [formats.whole], room: optionCount },
      },
    ),
    C40: tableCell('=IF(ISNUMBER(B40#),B40#/365,"–")', {
      align: "right",
      spill: { formats: [formats.oneDecimal], room: optionCount },
    }),
    D39: tableHeader("can be recommended"),
    D40: tableCell(`=${feasibleRange}`, { align: "center", spill: { room: optionCount } }),
    ...block("A46", [
      [
        label("First to pay back, of those that can be recommended"),
        answer(
          gated(
            '=LET(days,IF((D40#="yes")*ISNUMBER(B40#),B40#,""),IF(COUNT(days)=0,"none",INDEX(A40#,MATCH(MIN(days),days,0))))',
          ),
          { across: 2, name: "HeadlinePaysBack" },
        ),
      ],
    ]),
    A47: note(
      "Days until price and running costs of the plants equal those of brought liquid, without interest; no days for one that is dearer at last. Money is not the only ground: a boat that can't land brings nothing.",
      { across: 7 },
    ),
  },
  conditional: [
    { range: "B26:B31", when: "ISTEXT(B26)", mark: "attention" },
    { range: "D40:D44", when: 'AND(D40<>"",D40<>"yes")', mark: "attention" },
    { range: "B46:C46", when: "CheckTotal>0", mark: "danger" },
  ],
};
