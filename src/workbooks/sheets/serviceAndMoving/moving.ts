import {
  answer,
  block,
  caution,
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
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { gatedFigure } from "../../checks";
import { generator, plants, portableVessel } from "../../scenario/velmar";
import { dateInput } from "../dateInput";
import { numberInput, numberRule } from "../numberInput";

const drainFirst = 10;
const vessels: readonly [
  name: string,
  capacity: number,
  level: number,
  drainRate: number,
  warmDays: number,
  container: number,
][] = [
  [`${plants.small.name}, no. 3`, plants.small.capacity, 22, 4, 2, 80],
  [`${plants.large.name}, no. 1`, plants.large.capacity, 61, 6, 3, 160],
  [`${portableVessel.name} 11`, portableVessel.capacity, 12, 3, 1, 25],
  [`${portableVessel.name} 14`, portableVessel.capacity, 20, 3, 1, 40],
];
const drainLast = drainFirst + vessels.length - 1;

const loadFirst = 24;
const pieces: readonly [name: string, count: number, mass: number, floor: number, length: number][] = [
  [plants.small.name, 2, plants.small.mass, plants.small.floor, plants.small.length],
  [plants.large.name, 1, plants.large.mass, plants.large.floor, plants.large.length],
  [generator.name, 2, generator.mass, generator.floor, 1.2],
  [portableVessel.name, 6, portableVessel.mass, portableVessel.floor, 0.5],
  ["Spares and tools crate", 1, 140, 0.8, 1.2],
];
const loadRoom = 8;
const loadLast = loadFirst + loadRoom - 1;
const whole = (letter: string): string => `$${letter}$${loadFirst}:$${letter}$${loadLast}`;
const filled = (letter: string): string =>
  `FILTER($${letter}$${loadFirst}:$${letter}$${loadLast},$B$${loadFirst}:$B$${loadLast}<>"")`;

export const drainTable = {
  sheet: "Drain and ship",
  first: drainFirst,
  last: drainLast,
  columns: [..."ABCDEF"],
  what: "Drain plan",
};
export const loadTable = {
  sheet: "Drain and ship",
  first: loadFirst,
  last: loadLast,
  columns: [..."ABCDE"],
  what: "Load",
};

const rule = (words: string): CellDescription[] => headingRow(words, 9);

/** Drain, warm, weigh, strap: the plan of a move. */
export const movingSheet: SheetDescription = {
  name: "Drain and ship",
  columns: [32, 14, 14, 14, 14, 16, 14, 16, 40],
  tab: tabColours.result,
  freezeAt: "A4",
  print: { orientation: "landscape", pagesHigh: 1 },
  cells: {
    A1: title("Drain, warm, weigh, strap"),
    A2: text("What travels as empty is drained, warmed and without pressure, and its papers say so.", { across: 9 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("Drain plan"),
      [
        label("It leaves on"),
        dateInput(46101, "It leaves on", "Day on which the lorry or boat leaves.", { name: "ShipDay" }),
        unit("date"),
      ],
      [
        caution(
          "Caution: drain outdoors, downwind, over clean concrete, into a clean open vessel made for it, away from people, engines, drains and asphalt. Face shield, gloves, long sleeves. The maker's manual, local fire and environmental rules decide how and where.",
          { across: 9 },
        ),
      ],
      [],
      [
        "vessel",
        "full L",
        "in it now L",
        "drains L/h",
        "warms up, days",
        "open container L",
        "hours to drain",
        "begin by",
        "container",
      ].map((words) => tableHeader(words)),
      ...vessels.map(([name, capacity, level, drainRate, warmDays, container], at) => {
        const number = (value: number): CellDescription => tableInput(value, { format: "General" });
        const range = (letter: string): string => `${letter}${drainFirst}:${letter}${drainLast}`;
        return [
          tableInput(name),
          number(capacity),
          number(level),
          number(drainRate),
          number(warmDays),
          number(container),
          ...(at === 0
            ? [
                tableCell(`=OXYGEN.DRAIN_HOURS(${range("C")},${range("D")})`, {
                  spill: { room: vessels.length, formats: [formats.oneDecimal] },
                }),
                tableCell(`=OXYGEN.DRAIN_BY(ShipDay,${range("C")},${range("D")},${range("E")})`, {
                  spill: { room: vessels.length, formats: [formats.date] },
                }),
                tableCell(`=OXYGEN.DRAIN_CHECK(${range("B")},${range("F")})`, {
                  wrap: true,
                  spill: { room: vessels.length },
                }),
              ]
            : []),
        ];
      }),
    ]),
    A15: label("Begin with the first of them by"),
    B15: answer(gatedFigure(`=IF(SUM(--ISNUMBER(H${drainFirst}#))=ROWS(H${drainFirst}#),MIN(H${drainFirst}#),NA())`), {
      format: formats.date,
      across: 2,
      name: "HeadlineDrainBy",
    }),
    D15: note("Whole days, the safe way; drained in the daylight of one crew, add days where that is not enough.", {
      across: 6,
    }),
    ...block("A17", [
      rule("The load"),
      [
        label("Packing, share of the goods' mass"),
        numberInput(
          0.08,
          "Packing",
          { words: "Mass of crates and pallets as a share of the goods, 0 to 100 %.", least: 0, most: 1 },
          { name: "Packing", format: formats.percent },
        ),
        unit("share"),
        null,
        label("Pallet carries", { across: 2 }),
        null,
        numberInput(
          1000,
          "Pallet carries",
          { words: "Mass that one pallet carries, in kg.", least: 1, most: 10000, unit: "kg" },
          { name: "PalletMass", format: withUnit(0, "kg") },
        ),
        numberInput(
          1.2,
          "Pallet's floor",
          { words: "Floor of one pallet, in m².", least: 0.1, most: 20, unit: "m²" },
          { name: "PalletFloor", format: withUnit(2, "m²") },
        ),
        note("1.2 m × 1.0 m flat pallet, ISO 6780."),
      ],
      [
        label("Lorry carries"),
        numberInput(
          3500,
          "Lorry carries",
          { words: "Load the lorry may carry on a trip, in kg.", least: 1, most: 100000, unit: "kg" },
          { name: "LorryLoad", format: withUnit(0, "kg") },
        ),
        unit("kg"),
        null,
        label("of which planned with", { across: 2 }),
        null,
        numberInput(
          0.8,
          "Planned share",
          { words: "Share of that load which is planned with: rough roads, uneven loading.", least: 0.1, most: 1 },
          { name: "LoadShare", format: formats.percent },
        ),
      ],
      [
        label("One strap's working load"),
        numberInput(
          800,
          "Working load",
          {
            words:
              "Working load limit of one strap across the cargo, in kg; half of it for one that ends on the cargo.",
            least: 1,
            most: 50000,
            unit: "kg",
          },
          { name: "StrapLoad", format: withUnit(0, "kg") },
        ),
        unit("kg"),
        null,
        note("On the strap's label. A strap that ends on the cargo counts half: enter half.", { across: 5 }),
      ],
    ]),
    ...block("A22", [
      [note("Up to eight kinds; leave a row's cells empty where there is none, at the end only.", { across: 9 })],
      ["piece", "count", "mass each kg", "floor each m²", "length each m", "straps each", "straps in all"].map(
        (words) => tableHeader(words),
      ),
      ...Array.from({ length: loadRoom }, (_, at) => {
        const [name, count, mass, floor, length] = pieces[at] ?? [];
        return [
          tableInput(name),
          tableInput(count, { format: formats.whole }),
          tableInput(mass, { format: formats.whole }),
          tableInput(floor, { format: formats.twoDecimals }),
          tableInput(length, { format: formats.twoDecimals }),
        ];
      }),
    ]),
    [`F${loadFirst}`]: tableCell(
      `=IF(${whole("B")}="","",OXYGEN.TIE_DOWNS_NEEDED(IF(${whole("B")}="",1,${whole("C")})*(1+Packing),IF(${whole("B")}="",1,${whole("E")}),StrapLoad))`,
      {
        spill: { room: loadRoom, formats: [formats.whole] },
      },
    ),
    [`G${loadFirst}`]: tableCell(`=IF(${whole("B")}="","",${whole("B")}*F${loadFirst}#)`, {
      spill: { room: loadRoom, formats: [formats.whole] },
    }),
    ...block("A33", [
      [
        label("Mass with packing"),
        output(`=OXYGEN.SHIPPED_MASS(${filled("B")},${filled("C")},Packing)`, {
          name: "LoadMass",
          format: formats.kilograms,
          across: 2,
        }),
      ],
      [
        label("Pallets"),
        answer(
          gatedFigure(
            `=OXYGEN.PALLETS_NEEDED(${filled("B")},${filled("C")}*(1+Packing),${filled("D")},PalletMass,PalletFloor)`,
          ),
          { format: formats.whole, across: 2, name: "HeadlinePallets" },
        ),
      ],
      [
        label("Trips of the lorry"),
        answer(gatedFigure("=OXYGEN.TRIPS_NEEDED(LoadMass,LorryLoad,LoadShare)"), {
          format: formats.whole,
          across: 2,
          name: "HeadlineTrips",
        }),
      ],
      [
        label("Straps, if each piece is strapped alone"),
        answer(gatedFigure(`=SUM(G${loadFirst}#)`), { format: formats.whole, across: 2, name: "HeadlineStraps" }),
      ],
    ]),
    D33: note("Goods and their crates and pallets; fuel and liquid drained.", { across: 6 }),
    D34: note("Whole units, on the tighter of mass and floor; nothing is stacked.", { across: 6 }),
    D35: note("By mass alone: check that the pallets fit its floor.", { across: 6 }),
    D36: note(
      "United States road rule 49 CFR 393.106 and 393.110: working loads together at least half the mass, and the least number by length, without a headboard. Local rules and the carrier decide.",
      { across: 6 },
    ),
    A38: caution(
      "Caution: liquid oxygen travels only as dangerous goods, with the papers, marks and carrier that the rules ask. Upright, ventilated, relief valves free, never in a closed cab or cabin with people.",
      { across: 9 },
    ),
  },
  validations: [
    {
      range: `A${drainFirst}:A${drainLast}`,
      rule: { kind: "textLength", most: 30 },
      prompt: { title: "Vessel", words: "Name or number of the vessel." },
      refusal: { title: "Vessel", words: "Enter a name of up to 30 letters." },
    },
    {
      range: `B${drainFirst}:B${drainLast}`,
      ...numberRule("Full", { words: "Liquid it holds when full, in L.", least: 1, most: 100000, unit: "L" }),
    },
    {
      range: `C${drainFirst}:C${drainLast}`,
      ...numberRule("In it now", {
        words: "Liquid in it now, in L, by weight or gauge.",
        least: 0,
        most: 100000,
        unit: "L",
      }),
    },
    {
      range: `D${drainFirst}:D${drainLast}`,
      ...numberRule("Drains", {
        words: "Liquid that drains in an hour, in L, from the maker's manual or your own watch.",
        least: 0.01,
        most: 10000,
        unit: "L/h",
      }),
    },
    {
      range: `E${drainFirst}:E${drainLast}`,
      ...numberRule("Warms up", {
        words: "Days it must stand empty to warm up, from the maker's manual.",
        least: 0,
        most: 60,
        unit: "days",
      }),
    },
    {
      range: `F${drainFirst}:F${drainLast}`,
      ...numberRule("Container", {
        words: "Liquid the open drain container holds, in L: more than the vessel holds.",
        least: 0.1,
        most: 100000,
        unit: "L",
      }),
    },
    {
      range: `A${loadFirst}:A${loadLast}`,
      rule: { kind: "textLength", most: 30 },
      prompt: { title: "Piece", words: "What it is." },
      refusal: { title: "Piece", words: "Enter a name of up to 30 letters." },
    },
    {
      range: `B${loadFirst}:B${loadLast}`,
      ...numberRule("Count", { words: "How many of this kind.", least: 0, most: 500, whole: true }),
      blankPasses: true,
    },
    {
      range: `C${loadFirst}:C${loadLast}`,
      ...numberRule("Mass", { words: "Mass of one without packing, in kg.", least: 0.1, most: 10000, unit: "kg" }),
      blankPasses: true,
    },
    {
      range: `D${loadFirst}:D${loadLast}`,
      ...numberRule("Floor", { words: "Floor of one, in m².", least: 0.01, most: 20, unit: "m²" }),
      blankPasses: true,
    },
    {
      range: `E${loadFirst}:E${loadLast}`,
      ...numberRule("Length", { words: "Length of one along the vehicle, in m.", least: 0.05, most: 20, unit: "m" }),
      blankPasses: true,
    },
  ],
  conditional: [
    { range: "B15:C15", when: "CheckTotal>0", mark: "danger" },
    { range: `I${drainFirst}:I${drainLast}`, when: `AND(I${drainFirst}<>"",I${drainFirst}<>"ok")`, mark: "danger" },
  ],
};
