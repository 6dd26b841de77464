import { costs, firstDay, generator, plants, sites, usedPlant, wards } from "../../scenario/velmar";
import {
  block,
  formats,
  headingRow,
  input,
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
  type Validation,
} from "../../writer";
import type { BookCheck } from "../../checks";
import { dateLimits } from "../dateInput";
import { numberInput } from "../numberInput";

const { currency } = costs;

interface InputRow {
  words: string;
  value: number;
  name: string;
  unit: string;
  format: string;
  least: number;
  most: number;
  note: string;
  /** Functions alone read it, so text with a unit passes. */
  units?: boolean;
}

const row = ({
  words,
  value,
  name,
  unit: symbol,
  format,
  least,
  most,
  note: why,
  units = false,
}: InputRow): CellDescription[] => [
  label(words),
  numberInput(
    value,
    words.slice(0, 32),
    { words: `${words}, in ${symbol}.`, least, most, unit: symbol, units },
    { name, format },
  ),
  unit(symbol),
  note(why, { across: 7 }),
];

const share = (words: string, value: number, name: string, why: string, least = 0): CellDescription[] =>
  row({ words, value, name, unit: "share", format: formats.percent, least, most: 1, note: why });

const rule = (words: string): CellDescription[] => headingRow(words, 10);

const wardRows = { first: 8, last: 7 + wards.length };
const kinds = [plants.small, plants.large, usedPlant];
const kindCosts = [costs.small, costs.large, costs.used];
const availabilities = [0.92, 0.92, 0.8];
/** Rows of the table of kinds; the generator follows the plants. */
export const kindRows = { first: 41, last: 40 + kinds.length, generator: 41 + kinds.length };
export const kindColumn = (letter: string, withGenerator = false): string =>
  `Inputs!$${letter}$${kindRows.first}:$${letter}$${withGenerator ? kindRows.generator : kindRows.last}`;

const options: readonly [name: string, counts: readonly number[]][] = [
  ["Many small", [8, 0, 0]],
  ["Few large", [0, 4, 0]],
  ["Mixed", [2, 3, 0]],
  ["Used plants", [0, 0, 9]],
];
const typedRows = { first: 55, last: 54 + options.length };
/** The best mix follows the typed options as one more. */
export const optionRows = { first: typedRows.first, last: typedRows.last + 1 };
export const optionCount = options.length + 1;
/** TRUE while no mix fits the limits; the row then repeats the first option, so that the comparison goes on. */
const noMix = "ISERROR('Mix and money'!$B$18)";
/** Rows that the sheet Units keeps for the plants of one option. */
export const mostUnits = 16;

const countFormula = (row: number, letter: string): string =>
  `=AND(ISNUMBER(${letter}${row}),${letter}${row}>=0,${letter}${row}=INT(${letter}${row}),SUM($B${row}:$D${row})>=1,SUM($B${row}:$D${row})<=${mostUnits})`;

/** Whole, none below 0, and a number of plants that the sheet Units can hold. */
const countRule = (at: number, column: number): Validation => ({
  rule: {
    kind: "formula",
    formula: countFormula(typedRows.first + at, ["B", "C", "D"][column]!),
  },
  blankPasses: false,
  prompt: {
    title: "Plants",
    words: `How many of this kind: 0 or more; 1 to ${mostUnits} plants in all in one option.`,
  },
  refusal: {
    title: "Plants",
    words: `Enter a whole number from 0; an option holds 1 to ${mostUnits} plants in all.`,
  },
});

const kindRow = (at: number): CellDescription[] => {
  const kind = kinds[at]!;
  const price = kindCosts[at]!;
  const address = kindRows.first + at;
  const cell = (value: number, words: string, symbol: string, least: number, most: number): CellDescription =>
    numberInput(
      value,
      `${kind.name}: ${words}`.slice(0, 32),
      {
        words: `${kind.name}: ${words}${symbol ? `, in ${symbol}` : ""}. From the maker's sheet.`,
        least,
        most,
        unit: symbol,
      },
      { inTable: true },
    );
  return [
    tableCell(kind.name),
    { ...cell(kind.ratedRate, "rated make", "L/h", 0.01, 1000), format: formats.twoDecimals },
    { ...cell(kind.capacity, "liquid when full", "L", 1, 100000), format: formats.whole },
    { ...cell(kind.startUp, "hours to first liquid", "h", 0, 240), format: formats.oneDecimal },
    { ...cell(kind.makeWatts, "load while making", "W", 1, 1000000), format: formats.whole },
    { ...cell(kind.mass, "mass of one", "kg", 1, 1000), format: formats.whole },
    { ...cell(kind.floor, "floor of one", "m²", 0.01, 1.2), format: formats.twoDecimals },
    { ...cell(price.price, "price", currency, 0, 100000000), format: formats.whole },
    { ...cell(price.serviceADay, "service a day", `${currency}/day`, 0, 100000), format: formats.whole },
    { ...cell(availabilities[at]!, "share of time it works", "", 0.01, 1), format: formats.percent },
    ...(at === 0
      ? [
          tableCell(`=OXYGEN.DERATED_RATE(B${address}:B${kindRows.last},Altitude,Hottest,LossPerDegree)`, {
            format: formats.twoDecimals,
            spill: { formats: [formats.twoDecimals], room: kinds.length },
          }),
        ]
      : []),
  ];
};

const generatorCell = (value: number, words: string, symbol: string, least: number, most: number): CellDescription =>
  numberInput(
    value,
    `Generator: ${words}`.slice(0, 32),
    { words: `Generator: ${words}, in ${symbol}. From the maker's sheet.`, least, most, unit: symbol },
    { inTable: true, format: symbol === "m²" ? formats.twoDecimals : formats.whole },
  );

export const inputsSheet: SheetDescription = {
  name: "Inputs",
  columns: [38, 15, 13, 13, 13, 13, 13, 13, 15, 14, 14],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { orientation: "portrait", pagesHigh: 1 },
  cells: {
    A1: title("Inputs"),
    A2: text("Change the yellow cells only. Everything else follows. All figures are invented.", { across: 10 }),
    A3: link("Start!A1", "Back to the start"),
    ...block("A5", [
      rule("Need: patients on oxygen, on average"),
      [text("Mean number and mean flow, not the peak: stock and the spare plant carry the peak.", { across: 10 })],
      [tableHeader("ward"), tableHeader("patients"), tableHeader("L/min each")],
      ...wards.map((ward) => [
        tableInput(ward.name, {
          validation: {
            rule: { kind: "textLength", most: 40 },
            prompt: { title: "Ward", words: "Name of the ward, up to 40 letters." },
            refusal: { title: "Ward", words: "Enter a name of up to 40 letters." },
          },
        }),
        numberInput(
          ward.meanPatients,
          "Patients",
          { words: "Mean number of patients on oxygen at once.", least: 0, most: 1000 },
          { inTable: true, format: formats.oneDecimal },
        ),
        numberInput(
          ward.flow,
          "Flow each",
          { words: "Mean gas flow of one patient, in L/min.", least: 0, most: 120, unit: "L/min", units: true },
          { inTable: true, format: formats.oneDecimal },
        ),
      ]),
    ]),
    ...block("A14", [
      [
        label("Gas at the patients, a day"),
        output("=OXYGEN.DAILY_DEMAND(Patients,PatientFlows)", {
          name: "DailyGas",
          format: formats.whole,
        }),
        unit("L gas/day"),
        note("Gas at 21.1 °C and 101.325 kPa, 24 h a day.", { across: 7 }),
      ],
      [
        label("Liquid in the patients' vessels, a day"),
        output("=OXYGEN.LIQUID_FROM_GAS(OXYGEN.DAILY_DEMAND(Patients,PatientFlows))", {
          name: "NetLiquid",
          format: formats.oneDecimal,
        }),
        unit("L/day"),
        note("Net: what must end up in the vessels after filling losses.", { across: 7 }),
      ],
      [
        label("Liquid drawn from the plants, a day"),
        output("=NetLiquid*DrawRatio", { name: "DrawnNeed", format: formats.oneDecimal }),
        unit("L/day"),
        note("Gross: with filling losses. Options are compared on this figure.", { across: 7 }),
      ],
      row({
        words: "Liquid drawn for each litre filled",
        value: 1.25,
        name: "DrawRatio",
        unit: "L/L",
        format: formats.twoDecimals,
        least: 1,
        most: 5,
        note: "Common practice, no source: about 25 L drawn for a 20 L fill. Weigh your own fills.",
      }),
    ]),
    ...block("A18", [
      rule(`Site: ${sites.hospital.name}`),
      row({
        words: "Altitude",
        value: sites.hospital.altitude,
        name: "Altitude",
        unit: "m",
        format: formats.whole,
        least: -400,
        most: 5000,
        note: "Invented site.",
        units: true,
      }),
      row({
        words: "Hottest usual plant room",
        value: Math.max(...sites.hospital.monthlyHigh),
        name: "Hottest",
        unit: "°C",
        format: formats.whole,
        least: -40,
        most: 60,
        units: true,
        note: "The room, not the forecast: plants heat it. The hottest month decides.",
      }),
      row({
        words: "Make lost for each °C above 21.1",
        value: 0.01,
        name: "LossPerDegree",
        unit: "1/°C",
        format: "0.000",
        least: 0,
        most: 0.05,
        note: "Own planning default; an estimate. Fit your own runs with FIT_DERATING or use the maker's table.",
      }),
      row({
        words: "Days a full plant without power lasts",
        value: 8,
        name: "EmptyDays",
        unit: "days",
        format: formats.oneDecimal,
        least: 0.5,
        most: 100,
        note: "Common practice, no source: 8 to 10 days; the cautious end.",
      }),
    ]),
    ...block("A24", [
      rule("Plan and outage"),
      [
        label("First day of the plan"),
        input(firstDay, {
          name: "FirstDay",
          format: formats.date,
          validation: {
            rule: { kind: "date", ...dateLimits },
            blankPasses: false,
            prompt: { title: "First day", words: "First day of the 30-day plan on the sheet Outage." },
            refusal: { title: "First day", words: "Enter a date from 2000-01-01 to 2099-12-31." },
          },
        }),
        unit("date"),
        note("Hours with power for each day stand on the sheet Outage.", { across: 7 }),
      ],
      share("Stock on the first morning, of full", 0.8, "OpeningShare", "All options begin equally full."),
    ]),
    ...block("A28", [
      rule("Generators and money"),
      row({
        words: "Generator power on the plate",
        value: generator.power,
        name: "GeneratorPower",
        unit: "kW",
        format: formats.oneDecimal,
        least: 1,
        most: 5000,
        note: "Invented set.",
      }),
      row({
        words: "Generators beyond those needed",
        value: 1,
        name: "SpareGenerators",
        unit: "sets",
        format: formats.whole,
        least: 0,
        most: 5,
        note: "Common practice, no source: one more than needed.",
      }),
      share(
        "Largest load on a generator",
        0.8,
        "MostLoad",
        "Common practice, no source: 80 % of its power at the site.",
        0.3,
      ),
      row({
        words: "Price of diesel",
        value: costs.fuel,
        name: "FuelPrice",
        unit: `${currency}/L`,
        format: formats.twoDecimals,
        least: 0,
        most: 1000,
        note: `${currency} are crowns, an invented currency.`,
      }),
      row({
        words: "Days in service",
        value: 3650,
        name: "LifeDays",
        unit: "days",
        format: formats.whole,
        least: 30,
        most: 20000,
        note: "The price is spread over these days, without interest.",
      }),
      row({
        words: "Pay of the crew",
        value: 240,
        name: "CrewPay",
        unit: `${currency}/day`,
        format: formats.whole,
        least: 0,
        most: 1000000,
        note: "The same for every option here.",
      }),
      row({
        words: "Mass that can be shipped",
        value: 7200,
        name: "MassLimit",
        unit: "kg",
        format: formats.whole,
        least: 100,
        most: 1000000,
        note: "Plants and generators, without packing. An option above it can't be recommended.",
      }),
      share(
        "Least chance that supply is enough",
        0.95,
        "LeastChance",
        "Own planning default, no source. An option below it can't be recommended.",
        0.5,
      ),
    ]),
    ...block("A38", [
      rule("Kinds of plant, and the generator"),
      [
        text("Rated figures come from the maker's sheet. One unit must fit one pallet: 1,000 kg and 1.2 m².", {
          across: 10,
        }),
      ],
      [
        "kind",
        "rated make L/h",
        "full L",
        "start-up h",
        "load W",
        "mass kg",
        "floor m²",
        `price ${currency}`,
        `service ${currency}/day`,
        "share of time it works",
        "make at this site L/h",
      ].map((words) => tableHeader(words)),
      ...kinds.map((_, at) => kindRow(at)),
      [
        tableCell(generator.name),
        tableCell("–", { align: "center" }),
        tableCell("–", { align: "center" }),
        tableCell("–", { align: "center" }),
        tableCell("–", { align: "center" }),
        generatorCell(generator.mass, "mass of one", "kg", 1, 1000),
        generatorCell(generator.floor, "floor of one", "m²", 0.01, 1.2),
        generatorCell(costs.generator.price, "price", currency, 0, 100000000),
        generatorCell(costs.generator.serviceADay, "service a day", `${currency}/day`, 0, 100000),
        tableCell("–", { align: "center" }),
        tableCell("–", { align: "center" }),
      ],
    ]),
    ...block("A46", [
      [
        tableHeader("generator load, of plate power"),
        ...generator.loadPoints.map((point) =>
          numberInput(
            point,
            "Load point",
            { words: "Share of the power on the plate, rising to 100 %.", least: 0, most: 1 },
            { inTable: true, format: formats.percent },
          ),
        ),
      ],
      [
        tableHeader("fuel at that load, L/h"),
        ...generator.fuelPoints.map((point) =>
          numberInput(
            point,
            "Fuel point",
            {
              words: "Fuel one generator burns at that load, in L/h. From the maker's sheet.",
              least: 0.01,
              most: 10000,
              unit: "L/h",
            },
            { inTable: true, format: formats.oneDecimal },
          ),
        ),
      ],
      row({
        words: "Power lost for each 300 m over 300 m",
        value: generator.lossPer300m,
        name: "LossPer300m",
        unit: "share",
        format: formats.percentOneDecimal,
        least: 0,
        most: 0.2,
        note: "The maker's figure; invented here.",
      }),
      row({
        words: "Power lost for each 5 °C over 25 °C",
        value: generator.lossPer5c,
        name: "LossPer5c",
        unit: "share",
        format: formats.percentOneDecimal,
        least: 0,
        most: 0.2,
        note: "The maker's figure; invented here.",
      }),
      [
        label("Generator power at this site"),
        output("=OXYGEN.GENERATOR_DERATED(GeneratorPower,Altitude,Hottest,LossPer300m,LossPer5c)", {
          name: "GeneratorHere",
          format: formats.oneDecimal,
        }),
        unit("kW"),
        note("Before the limit of its load.", { across: 7 }),
      ],
    ]),
    ...block("A52", [
      rule("The options"),
      [
        text(
          `How many of each kind. Up to ${mostUnits} plants in one option; generators follow from the load. The last one follows from the sheet Mix and money.`,
          {
            across: 10,
          },
        ),
      ],
      [tableHeader("option"), ...kinds.map((kind) => tableHeader(kind.name))],
      ...options.map(([name, counts], at) => [
        tableInput(name, {
          validation: {
            rule: { kind: "textLength", most: 24 },
            blankPasses: false,
            prompt: { title: "Option", words: "A short name, up to 24 letters; each option its own." },
            refusal: { title: "Option", words: "Enter a name of up to 24 letters." },
          },
        }),
        ...counts.map((count, column) =>
          tableInput(count, { format: formats.whole, validation: countRule(at, column) }),
        ),
      ]),
      [
        tableCell(`=IF(${noMix},"no mix fits","Best mix")`),
        ...["'Mix and money'!$B$18", "'Mix and money'!$B$19", "0"].map((count, at) =>
          tableCell(`=IF(${noMix},${["B", "C", "D"][at]!}${typedRows.first},${count})`, { format: formats.whole }),
        ),
        note("The cheapest mix within the mass, run through the same tests.", { across: 6 }),
      ],
    ]),
  },
};

const typed = `Inputs!B${typedRows.first}:D${typedRows.last}`;

export const inputChecks: readonly BookCheck[] = [
  {
    at: `Inputs!B${typedRows.first}`,
    what: "Plants of each option",
    formula: `=LET(x,${typed},bad,IF(ISNUMBER(x),IF((x<0)+(INT(x)<>x)>0,1,0),1),IF(SUM(bad)=0,"ok","Inputs!B${typedRows.first} begins counts of plants that are blank, below 0 or not whole"))`,
  },
  {
    at: `Inputs!B${optionRows.first}`,
    what: "Plants in one option",
    formula: `=LET(x,Inputs!B${optionRows.first}:B${optionRows.last}+Inputs!C${optionRows.first}:C${optionRows.last}+Inputs!D${optionRows.first}:D${optionRows.last},bad,IF((x<1)+(x>${mostUnits})>0,1,0),IF(SUM(bad)=0,"ok","Inputs!B"&(IFERROR(MATCH(1,bad,0),1)+${optionRows.first - 1})&" begins an option with no plant or more than ${mostUnits}"))`,
  },
];

export const wardTable = { sheet: "Inputs", ...wardRows, columns: ["A", "B", "C"], what: "Wards" };
export const optionTable = { sheet: "Inputs", ...typedRows, columns: ["A", "B", "C", "D"], what: "Options" };

export const inputNames = {
  Patients: `Inputs!B${wardRows.first}:B${wardRows.last}`,
  PatientFlows: `Inputs!C${wardRows.first}:C${wardRows.last}`,
};
