import { district, firstDay, plants, sites } from "../../scenario/velmar";
import {
  block,
  formats,
  headingRow,
  input,
  label,
  note,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  tableInput,
  title,
  unit,
  type CellDescription,
  type Scalar,
  type SheetDescription,
  type Validation,
} from "../../writer";
import { choiceEntry, dateEntry, mayStayEmpty, numberEntry, wholeEntry, wordsEntry } from "../entries";

type Line = readonly (CellDescription | null)[];

const section = (words: string): Line => headingRow(words, 8);

const single = (
  words: string,
  name: string,
  value: Scalar,
  units: string,
  validation: Validation,
  format: string | undefined,
  why: string,
): Line => [
  label(words),
  input(value, { name, validation, ...(format ? { format } : {}), align: "right" }),
  unit(units),
  note(why, { across: 5 }),
];

const kinds = [plants.large, plants.small];
const counts = [2, 2];

const deliveries: readonly [string, number, number, number][] = [
  ["Ferry A", firstDay + 21, 300, 0],
  ["Ferry B", firstDay + 23, 250, 3],
  ["Ferry C", firstDay + 44, 150, 0],
];

const outages: readonly [number, number, number][] = [
  [firstDay + 19, firstDay + 19, 14],
  [firstDay + 20, firstDay + 21, 0],
  [firstDay + 22, firstDay + 22, 12],
];

export const deliveryRows = { first: 33, last: 38 };
export const outageRows = { first: 43, last: 46 };

const plantRow = (index: number): Line => {
  const kind = kinds[index]!;
  const row = 27 + index;
  return [
    tableInput(kind.name, { validation: wordsEntry("Kind of plant", "What you call it.") }),
    tableInput(counts[index]!, { validation: wholeEntry("Count", "Plants of this kind on site.", 0, 200) }),
    tableInput(firstDay - 60, {
      format: formats.date,
      validation: dateEntry("Switched on", "From this day the plant counts, room included."),
    }),
    tableInput(kind.startUp, {
      format: formats.oneDecimal,
      validation: numberEntry("Start-up", `Hours from switching on until liquid accumulates, row ${row}.`, 0, 200),
    }),
    tableInput(kind.ratedRate, {
      format: formats.twoDecimals,
      validation: numberEntry(
        "Rated make",
        "Litres of liquid an hour at 21.1 °C and sea level, from the maker's plate.",
        0.01,
        10000,
      ),
    }),
    tableInput(kind.capacity, {
      format: formats.whole,
      validation: numberEntry("Capacity", "Liquid the vessel holds when full, in litres.", 1, 100000),
    }),
    tableInput(kind.makeWatts, {
      format: formats.whole,
      validation: numberEntry("Making", "Electrical load while making, in watts.", 1, 2000000),
    }),
    tableInput(kind.standbyWatts, {
      format: formats.whole,
      validation: numberEntry("Standby", "Electrical load while standing by full, in watts.", 0, 2000000),
    }),
  ];
};

const deliveryRow = (index: number): Line => {
  const row = deliveryRows.first + index;
  const [name, day, amount, earlier] = deliveries[index] ?? [];
  return [
    tableInput(name, { validation: wordsEntry("Delivery", "What you call it.") }),
    tableInput(day, {
      format: formats.date,
      validation: dateEntry("Date as ordered", "The day it is booked for.", true),
    }),
    tableInput(amount, {
      format: formats.whole,
      validation: mayStayEmpty(
        numberEntry("Amount", "Liquid offered, in litres. What does not fit is vented.", 0, 100000),
      ),
    }),
    tableInput(earlier, {
      format: formats.whole,
      validation: mayStayEmpty(
        wholeEntry("Days earlier", "Days to bring it forward; 0 leaves it, a minus puts it off.", -60, 60),
      ),
    }),
    tableCell(`=IF(B${row}="","",B${row}-D${row})`, { format: formats.date, align: "right" }),
    tableCell(
      `=IF(B${row}="","",IF(AND(MIN(B${row},E${row})>=FirstDay,MAX(B${row},E${row})<=FirstDay+59),"in the plan","OUTSIDE"))`,
    ),
  ];
};

const outageRow = (index: number): Line => {
  const [from, to, hours] = outages[index] ?? [];
  const row = outageRows.first + index;
  return [
    tableInput(from, {
      format: formats.date,
      align: "right",
      validation: dateEntry("First day", "First day with fewer than 24 hours of power.", true),
    }),
    tableInput(to, {
      format: formats.date,
      validation: dateEntry("Last day", "Last such day; the same day for one day.", true),
    }),
    tableInput(hours, {
      format: formats.oneDecimal,
      validation: mayStayEmpty(numberEntry("Hours with power", "Hours with power on each of these days.", 0, 24)),
    }),
    tableCell(
      `=IF(COUNT(A${row}:C${row})=0,"",IF(COUNT(A${row}:C${row})<3,"INCOMPLETE",IF(B${row}<A${row},"ENDS BEFORE IT BEGINS","counted")))`,
      { across: 2 },
    ),
  ];
};

const choices = ["as ordered", "as moved"];

/** Single figures, plants, deliveries and outages: all that the other sheets share. */
export const inputs: SheetDescription = {
  name: "Inputs",
  columns: [31, 14, 13, 13, 13, 13, 13, 13],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { pagesHigh: 1 },
  cells: {
    A1: title("Inputs"),
    A2: subtitle(`Change the yellow cells. ${district}: all figures are made up.`, { across: 8 }),
    ...block("A4", [
      section("Plan"),
      [
        label("Site"),
        input(sites.hospital.name, {
          name: "SiteName",
          across: 4,
          validation: wordsEntry("Site", "Name of the site, as it stands on the summary."),
        }),
      ],
      single(
        "Plan begins",
        "FirstDay",
        firstDay,
        "date",
        dateEntry("Plan begins", "First of the 60 days."),
        formats.date,
        "60 days follow. Deliveries and outages outside them are not counted.",
      ),
      single(
        "Figures as of",
        "AsOf",
        firstDay,
        "date",
        dateEntry("As of", "The day the stocks were read."),
        formats.date,
        "Nothing here reads the clock: set it when you read the gauges.",
      ),
      single(
        "Liquid in the plants",
        "Opening",
        330,
        "L",
        numberEntry("Liquid in the plants", "Sum of the levels on the first morning, in litres.", 0, 100000),
        formats.whole,
        "First morning, all plants together. Not above the room of the plants.",
      ),
      single(
        "Draw ratio",
        "DrawRatio",
        1.25,
        "L per L",
        numberEntry(
          "Draw ratio",
          "Litres drawn from the plant for each litre that arrives in the vessel filled.",
          1,
          5,
        ),
        formats.twoDecimals,
        "Gross over net. 25 L drawn for a 20 L fill; use your own weights if you have them.",
      ),
      single(
        "Days to boil empty",
        "EmptyDays",
        8,
        "days",
        numberEntry("Days to boil empty", "Days in which full plants without power are empty.", 0.1, 1000),
        formats.oneDecimal,
        "Full plants without power; 8 to 10 days is usual, 8 the cautious end.",
      ),
      single(
        "Restart after an outage",
        "RestartHours",
        4,
        "h",
        numberEntry("Restart", "Hours with power after an outage until liquid accumulates again.", 0, 200),
        formats.oneDecimal,
        "Any day with less than 24 h of power counts as one outage and one restart.",
      ),
      single(
        "Draw what comes in that day",
        "SameDay",
        "no",
        "",
        choiceEntry("Same day", "yes only if fills can wait until evening.", ["no", "yes"]),
        undefined,
        "no is the cautious setting: a morning fill cannot use the afternoon's liquid.",
      ),
      single(
        "Reserve",
        "ReserveDays",
        1.25,
        "days",
        numberEntry("Reserve", "Days of mean gross draw that should stay in the plants.", 0, 60),
        formats.twoDecimals,
        "Days of mean gross draw at the close. Under 1 the next day runs short unless the line above says yes.",
      ),
      single(
        "Margin on mean demand",
        "Margin",
        0.05,
        "share",
        numberEntry("Margin", "Share added to the mean demand before planning, 5% or 0.05.", 0, 3),
        formats.percent,
        "Covers what the ward list misses. Not a surge.",
      ),
      single(
        "Deliveries in the plan shown",
        "DeliveryCase",
        "as moved",
        "",
        choiceEntry("Deliveries", "Which dates the day-by-day table and the charts use.", choices),
        undefined,
        "The summary always states both; this chooses what the tables and charts show.",
      ),
    ]),
    ...block("A17", [
      section("Surge (1.00 is no surge)"),
      single(
        "Starts on day",
        "SurgeStart",
        38,
        "day",
        wholeEntry("Surge starts", "Day of the plan, counting from 1.", -1000, 1000),
        formats.whole,
        "Day of the plan on which demand is first above the mean.",
      ),
      single(
        "Height",
        "SurgeFactor",
        1.2,
        "× mean",
        numberEntry("Height", "Demand at the height, as a multiple of the mean.", 0, 100),
        formats.twoDecimals,
        "Try a higher one before you trust a stock to it.",
      ),
      single(
        "Days of rise",
        "SurgeRise",
        4,
        "days",
        wholeEntry("Rise", "Days until the full height.", 0, 365),
        formats.whole,
        "Straight line up.",
      ),
      single(
        "Days at the height",
        "SurgeHold",
        8,
        "days",
        wholeEntry("Hold", "Days at the full height.", 0, 365),
        formats.whole,
        "",
      ),
      single(
        "Days of fall",
        "SurgeFall",
        4,
        "days",
        wholeEntry("Fall", "Days until demand is back at the mean.", 0, 365),
        formats.whole,
        "Straight line down.",
      ),
    ]),
    ...block("A24", [
      section("Plants"),
      [
        note(
          "Rated figures. What the site leaves of them is on Site and plants. PLANTS_FOR_PLAN varies the count of the first kind.",
          { across: 8 },
        ),
      ],
      [
        "Kind",
        "Count",
        "Switched on",
        "Start-up [h]",
        "Rated make [L/h] each",
        "Capacity [L] each",
        "Making [W] each",
        "Standby [W] each",
      ].map((words) => tableHeader(words)),
      plantRow(0),
      plantRow(1),
    ]),
    ...block("A30", [
      section("Deliveries of liquid"),
      [
        note(
          "Litres offered at the plants. What does not fit in the room is vented: lost, and it must go outdoors. OUTSIDE: a date that the plan does not see.",
          { across: 8 },
        ),
      ],
      ["Delivery", "Date as ordered", "Offered [L]", "Days earlier", "Date as moved", "State"].map((words) =>
        tableHeader(words),
      ),
      ...Array.from({ length: 6 }, (_, index) => deliveryRow(index)),
    ]),
    ...block("A40", [
      section("Days with less than 24 h of power"),
      [note("Days not listed have 24 h. Where two lines overlap, the fewer hours count.", { across: 8 })],
      [
        ...["First day", "Last day", "Hours with power"].map((words) => tableHeader(words)),
        tableHeader("State", { across: 2 }),
      ],
      ...Array.from({ length: 4 }, (_, index) => outageRow(index)),
    ]),
    F43: note("Here: the island's feeder is out for work.", { across: 3 }),
  },
  conditional: [
    {
      range: `F${deliveryRows.first}:F${deliveryRows.last}`,
      when: `=F${deliveryRows.first}="OUTSIDE"`,
      mark: "danger",
    },
    {
      range: `D${outageRows.first}:E${outageRows.last}`,
      when: `=AND($D${outageRows.first}<>"",$D${outageRows.first}<>"counted")`,
      mark: "danger",
    },
  ],
};

export const inputNames = {
  PlantKinds: "Inputs!A27:A28",
  PlantCounts: "Inputs!B27:B28",
  PlantWatts: "Inputs!G27:G28",
  StandbyWatts: "Inputs!H27:H28",
  OrderedDates: `Inputs!B${deliveryRows.first}:B${deliveryRows.last}`,
  MovedDates: `Inputs!E${deliveryRows.first}:E${deliveryRows.last}`,
  DeliveryAmounts: `Inputs!C${deliveryRows.first}:C${deliveryRows.last}`,
  OutageFrom: `Inputs!A${outageRows.first}:A${outageRows.last}`,
  OutageTo: `Inputs!B${outageRows.first}:B${outageRows.last}`,
  OutageHours: `Inputs!C${outageRows.first}:C${outageRows.last}`,
};
