import {
  block,
  formats,
  heading,
  link,
  note,
  tabColours,
  tableCell,
  tableHeader,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { costs } from "../../scenario/velmar";
import { kindColumn, kindRows, optionCount, optionRows } from "./inputs";

const { currency } = costs;
const counted = 6;
const countedLast = counted + optionCount - 1;
const figures = 14;
const figuresLast = figures + optionCount - 1;

const onSheet = (first: string, last: string): string => `Workings!$${first}$${counted}:$${last}$${countedLast}`;
/** Price and running costs a day of each option, for the break-even. */
export const priceRange = onSheet("H", "H");
export const runningRange = onSheet("I", "I");
export const optionNames = onSheet("A", "A");
/** The nine columns that the comparison reads. */
export const figuresRange = `Workings!$A$${figures}:$I$${figuresLast}`;

const countedRow = (at: number): (CellDescription | null)[] => {
  const row = counted + at;
  const from = optionRows.first + at;
  return [
    tableCell(`=Inputs!A${from}`),
    ...["B", "C", "D"].map((letter) => tableCell(`=Inputs!${letter}${from}`, { format: formats.whole })),
    ...(at === 0
      ? [
          tableCell(`=OXYGEN.GENERATORS_NEEDED(F${row}:F${countedLast},GeneratorHere,MostLoad,SpareGenerators)`, {
            spill: { formats: [formats.whole], room: optionCount },
          }),
        ]
      : [null]),
    tableCell(`=SUMPRODUCT(B${row}:D${row},TRANSPOSE(${kindColumn("E")}))/1000`, { format: formats.oneDecimal }),
    ...(at === 0
      ? [
          tableCell(
            `=LET(running,OXYGEN.GENERATORS_NEEDED(F${row}:F${countedLast},GeneratorHere,MostLoad,0),OXYGEN.FUEL_PER_DAY(OXYGEN.FUEL_RATE(F${row}:F${countedLast}/running,GeneratorPower,Inputs!$B$46:$E$46,Inputs!$B$47:$E$47),24,running))`,
            { spill: { formats: [formats.whole], room: optionCount } },
          ),
        ]
      : [null]),
    tableCell(`=SUMPRODUCT(B${row}:E${row},TRANSPOSE(${kindColumn("H", true)}))`, { format: formats.whole }),
    tableCell(`=G${row}*FuelPrice+SUMPRODUCT(B${row}:E${row},TRANSPOSE(${kindColumn("I", true)}))+CrewPay`, {
      format: formats.whole,
    }),
  ];
};

const figureRow = (at: number): (CellDescription | null)[] => {
  const from = counted + at;
  const counts = `B${from}:D${from}`;
  return [
    tableCell(`=A${from}`),
    tableCell(`=SUMPRODUCT(B${from}:E${from},TRANSPOSE(${kindColumn("F", true)}))`, { format: formats.whole }),
    tableCell(
      `=OXYGEN.PALLETS_NEEDED(CHOOSE({1,2,3,4},B${from},C${from},D${from},OXYGEN.GENERATORS_NEEDED(F${from},GeneratorHere,MostLoad,SpareGenerators)),${kindColumn("F", true)},${kindColumn("G", true)})`,
      {
        format: formats.whole,
      },
    ),
    tableCell(`=F${from}`, { format: formats.oneDecimal }),
    tableCell(`=G${from}`, { format: formats.whole }),
    tableCell(`=24*SUMPRODUCT(${counts},TRANSPOSE(${kindColumn("K")}))`, { format: formats.whole }),
    tableCell(`=SUMPRODUCT(${counts},TRANSPOSE(${kindColumn("C")}))`, { format: formats.whole }),
    ...(at === 0
      ? [
          tableCell(`=H${counted}:H${countedLast}/LifeDays+I${counted}:I${countedLast}`, {
            spill: { formats: [formats.whole], room: optionCount },
          }),
        ]
      : [null]),
    tableCell(`=24*MAX(IF(${counts}>0,TRANSPOSE(${kindColumn("K")}),0))`, { format: formats.oneDecimal }),
  ];
};

const kindCount = kindRows.last - kindRows.first + 1;
const plantsTop = (at: number): number => 22 + at * (kindCount + 3);
const plantRows = (at: number, letters: [string, string]): string =>
  `Workings!$${letters[0]}$${plantsTop(at) + 2}:$${letters[1]}$${plantsTop(at) + 1 + kindCount}`;

/** The plants of one option as a plan reads them, and their stock when full [L]. */
export const plantsOf = (at: number): string => plantRows(at, ["B", "F"]);
export const fullStock = (at: number): string => `Workings!$G$${figures + at}`;

const nameOf = (at: number): string => `Inputs!$A$${optionRows.first + at}`;

const plantsBlock = (at: number): CellDescription[][] => [
  [heading(`=${nameOf(at)}`), ...Array.from({ length: 5 }, () => heading())],
  ["kind", "count", "running since", "start-up h", "make L/h each", "full L each"].map((words) => tableHeader(words)),
  ...Array.from({ length: kindCount }, (_, kind): CellDescription[] => {
    const row = kindRows.first + kind;
    const letter = ["B", "C", "D"][kind]!;
    return [
      tableCell(`=Inputs!A${row}`),
      tableCell(`=Inputs!${letter}${optionRows.first + at}`, { format: formats.whole }),
      tableCell("=FirstDay-14", { format: formats.date }),
      tableCell(`=Inputs!D${row}`, { format: formats.oneDecimal }),
      tableCell(`=Inputs!K${row}`, { format: formats.twoDecimals }),
      tableCell(`=Inputs!C${row}`, { format: formats.whole }),
    ];
  }),
];

/** How each option's figures come about from the inputs. */
export const workingsSheet: SheetDescription = {
  name: "Workings",
  columns: [24, 13, 13, 13, 13, 13, 13, 13, 14],
  tab: tabColours.reference,
  freezeAt: "B4",
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("How the figures come about"),
    A3: link("Options!A1", "To the options"),
    A2: note(
      "Every plant makes at once and all generators but the spare ones share the load, day and night. Fuel is read between the maker's points; a load below the lowest is refused: take a smaller generator. Running costs are fuel, service and crew; the price is spread over the days in service.",
      { across: 9 },
    ),
    ...block("A5", [
      [
        tableHeader("option"),
        tableHeader("=Inputs!A41"),
        tableHeader("=Inputs!A42"),
        tableHeader("=Inputs!A43"),
        tableHeader("generators"),
        tableHeader("load kW"),
        tableHeader("fuel L/day"),
        tableHeader(`price ${currency}`),
        tableHeader(`running ${currency}/day`),
      ],
      ...Array.from({ length: optionCount }, (_, option) => countedRow(option)),
    ]),
    A11: note("The table that the comparison reads. Mass without packing; pallets of 1,000 kg and 1.2 m².", {
      across: 9,
    }),
    ...block("A13", [
      [
        "option",
        "mass kg",
        "pallets",
        "load kW",
        "fuel L/day",
        "make L/day",
        "full stock L",
        `cost ${currency}/day`,
        "largest unit L/day",
      ].map((words) => tableHeader(words)),
      ...Array.from({ length: optionCount }, (_, option) => figureRow(option)),
    ]),
    A20: note(
      "The plants of each option as the day-by-day plan reads them: all have been running for two weeks on the first day.",
      { across: 9 },
    ),
    ...Object.assign(
      {},
      ...Array.from({ length: optionCount }, (_, option) => block(`A${plantsTop(option)}`, plantsBlock(option))),
    ),
  },
};
