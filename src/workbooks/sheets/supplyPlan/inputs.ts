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
import { choiceEntry, dateEntry, mayStayEmpty, numberEntry, quantityEntry, wholeEntry, wordsEntry } from "../entries";

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

const deliveries: readonly (readonly [string, number, number, number])[] = [
  ["Ferry A", firstDay + 21, 300, 0],
  ["Ferry B", firstDay + 23, 250, 3],
  ["Ferry C", firstDay + 44, 150, 0],
];

/** First and last day, hours of mains power on each. */
const outages: readonly (readonly [number, number, number])[] = [
  [firstDay + 19, firstDay + 19, 14],
  [firstDay + 20, firstDay + 21, 0],
  [firstDay + 22, firstDay + 22, 12],
];

const fuelDeliveries: readonly (readonly [number, number])[] = [[firstDay + 44, 600]];

export const plantRows = { first: 36, last: 41 };
export const deliveryRows = { first: 46, last: 60 };
export const outageRows = { first: 65, last: 74 };
export const fuelRows = { first: 79, last: 84 };

const countOf = ({ first, last }: { first: number; last: number }): number => last - first + 1;
const rowsOf = (rows: { first: number; last: number }, line: (index: number) => Line): Line[] =>
  Array.from({ length: countOf(rows) }, (_, index) => line(index));

const plantRow = (index: number): Line => {
  const kind = kinds[index];
  return [
    tableInput(kind?.name, { validation: wordsEntry("Kind of plant", "What you call it.") }),
    tableInput(counts[index], {
      validation: mayStayEmpty(wholeEntry("Count", "Plants of this kind on site.", 0, 50)),
    }),
    tableInput(kind ? firstDay - 60 : undefined, {
      format: formats.date,
      validation: dateEntry("Switched on", "From this day the plant counts, room included.", true),
    }),
    tableInput(kind?.startUp, {
      format: formats.oneDecimal,
      validation: mayStayEmpty(numberEntry("Start-up", "Hours from switching on until liquid accumulates.", 0, 72)),
    }),
    tableInput(kind?.ratedRate, {
      format: formats.twoDecimals,
      validation: mayStayEmpty(
        numberEntry(
          "Rated make",
          "Litres of liquid an hour at 21.1 °C and sea level, from the maker's plate.",
          0.05,
          100,
        ),
      ),
    }),
    tableInput(kind?.capacity, {
      format: formats.whole,
      validation: mayStayEmpty(numberEntry("Capacity", "Liquid the vessel holds when full, in litres.", 5, 5000)),
    }),
    tableInput(kind?.makeWatts, {
      format: formats.whole,
      validation: mayStayEmpty(numberEntry("Making", "Electrical load while making, in watts.", 200, 500000)),
    }),
    tableInput(kind?.standbyWatts, {
      format: formats.whole,
      validation: mayStayEmpty(numberEntry("Standby", "Electrical load while standing by full, in watts.", 0, 500000)),
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
        numberEntry("Amount", "Liquid offered, in litres. What does not fit is vented.", 1, 20000),
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
      `=IF(B${row}="","",IF(AND(MIN(B${row},E${row})>=FirstDay,MAX(B${row},E${row})<=LastDay),"in the plan","OUTSIDE"))`,
      { across: 2 },
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
      validation: dateEntry("First day", "First day with fewer than 24 hours of mains power.", true),
    }),
    tableInput(to, {
      format: formats.date,
      validation: dateEntry("Last day", "Last such day; the same day for one day.", true),
    }),
    tableInput(hours, {
      format: formats.oneDecimal,
      validation: mayStayEmpty(numberEntry("Hours with mains", "Hours with mains power on each of these days.", 0, 24)),
    }),
    tableCell(
      `=IF(COUNTA(A${row}:C${row})=0,"",IF(COUNT(A${row}:C${row})<3,"INCOMPLETE",IF(B${row}<A${row},"ENDS BEFORE IT BEGINS",IF(AND(A${row}>=FirstDay,B${row}<=LastDay),"counted","OUTSIDE"))))`,
      { across: 2 },
    ),
  ];
};

const fuelRow = (index: number): Line => {
  const [day, amount] = fuelDeliveries[index] ?? [];
  const row = fuelRows.first + index;
  return [
    tableInput(day, {
      format: formats.date,
      align: "right",
      validation: dateEntry("Fuel comes on", "The day it is in the tank.", true),
    }),
    tableInput(amount, {
      format: formats.whole,
      validation: mayStayEmpty(numberEntry("Fuel", "Litres of fuel.", 1, 50000)),
    }),
    tableCell(`=IF(A${row}="","",IF(AND(A${row}>=FirstDay,A${row}<=LastDay),"in the plan","OUTSIDE"))`),
  ];
};

const choices = ["as ordered", "as moved"];

/** Single figures, plants, deliveries and outages: all that the other sheets share. */
export const inputs: SheetDescription = {
  name: "Inputs",
  columns: [31, 14, 13, 13, 13, 13, 13, 13],
  tab: tabColours.input,
  freezeAt: "A4",
  print: { titleRows: "1:1", breaksBefore: [33, 62] },
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
          validation: { ...wordsEntry("Site", "Name of the site, as it stands on the summary."), blankPasses: false },
        }),
      ],
      single(
        "Altitude",
        "Altitude",
        sites.hospital.altitude,
        "m",
        quantityEntry("Altitude", "Metres above the sea, or text such as 1000 ft.", -500, 6000),
        formats.whole,
        "Thins the air for plants and generators. Text with a unit is read.",
      ),
      single(
        "Plan begins",
        "FirstDay",
        firstDay,
        "date",
        dateEntry("Plan begins", "First day of the plan."),
        formats.date,
        "Deliveries and outages outside the plan stop every headline.",
      ),
      single(
        "Days in the plan",
        "PlanDays",
        60,
        "days",
        wholeEntry("Days in the plan", "30 to 120 days.", 30, 120),
        formats.whole,
        "30 to 120.",
      ),
      single(
        "Figures as of",
        "AsOf",
        firstDay,
        "date",
        dateEntry("As of", "The day the stocks were read: the first of the plan or the day before."),
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
          3,
        ),
        formats.twoDecimals,
        "Gross over net. 25 L drawn for a 20 L fill; use your own weights if you have them.",
      ),
      single(
        "Days to boil empty",
        "EmptyDays",
        8,
        "days",
        quantityEntry(
          "Days to boil empty",
          "Days in which full plants without power are empty, or text such as 1.5 %/day.",
          0.5,
          200,
        ),
        formats.oneDecimal,
        "Full plants without power; 8 to 10 days is usual, 8 the cautious end.",
      ),
      single(
        "Restart after an outage",
        "RestartHours",
        4,
        "h",
        quantityEntry("Restart", "Hours with power after an outage until liquid accumulates again.", 0, 72),
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
        numberEntry("Reserve", "Days of mean gross draw that should stay in the plants.", 0.1, 30),
        formats.twoDecimals,
        "Days of mean gross draw at the close. Under 1 the next day runs short unless the line above says yes.",
      ),
      single(
        "Margin on mean demand",
        "Margin",
        0.05,
        "share",
        numberEntry("Margin", "Share added to the mean demand before planning, 5% or 0.05.", 0, 1),
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
    ...block("A20", [
      section("Surge (1.00 is no surge)"),
      single(
        "Starts on day",
        "SurgeStart",
        38,
        "day",
        wholeEntry("Surge starts", "Day of the plan, counting from 1.", 1, 120),
        formats.whole,
        "Day of the plan on which demand is first above the mean.",
      ),
      single(
        "Height",
        "SurgeFactor",
        1.2,
        "× mean",
        numberEntry("Height", "Demand at the height, as a multiple of the mean.", 0.2, 10),
        formats.twoDecimals,
        "Try a higher one before you trust a stock to it.",
      ),
      single(
        "Days of rise",
        "SurgeRise",
        4,
        "days",
        wholeEntry("Rise", "Days until the full height.", 0, 120),
        formats.whole,
        "Straight line up.",
      ),
      single(
        "Days at the height",
        "SurgeHold",
        8,
        "days",
        wholeEntry("Hold", "Days at the full height.", 0, 120),
        formats.whole,
        "",
      ),
      single(
        "Days of fall",
        "SurgeFall",
        4,
        "days",
        wholeEntry("Fall", "Days until demand is back at the mean.", 0, 120),
        formats.whole,
        "Straight line down.",
      ),
    ]),
    ...block("A27", [
      section("Chance"),
      single(
        "Spread of a day's need",
        "NeedSpread",
        0.1,
        "share",
        numberEntry("Spread", "Standard deviation of a day's need over its mean, 20% or 0.2.", 0, 1),
        formats.percent,
        "From your own log: sd over mean of the gross draw.",
      ),
      single(
        "Share of days a plant works",
        "Availability",
        0.98,
        "share",
        numberEntry("Availability", "Share of days on which a plant makes, 95% or 0.95.", 0.3, 1),
        formats.percent,
        "AVAILABILITY_FROM_LOG gives it from dated stops and starts.",
      ),
      single(
        "Days to repair",
        "RepairDays",
        2,
        "days",
        numberEntry("Repair", "Mean days until a plant that stopped makes again.", 1, 90),
        formats.oneDecimal,
        "",
      ),
      single(
        "Days a delivery is late",
        "LateDays",
        0.25,
        "days",
        numberEntry("Late", "Mean days that deliveries are late; 0 if never.", 0, 20),
        formats.oneDecimal,
        "Mean over all deliveries, those on time counted.",
      ),
    ]),
    ...block("A33", [
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
      ...rowsOf(plantRows, plantRow),
    ]),
    ...block("A43", [
      section("Deliveries of liquid"),
      [
        note(
          "Litres offered at the plants. What does not fit in the room is vented: lost, and it must go outdoors. OUTSIDE: a date that the plan does not see. Leave spare rows blank.",
          { across: 8 },
        ),
      ],
      [
        ...["Delivery", "Date as ordered", "Offered [L]", "Days earlier", "Date as moved"].map((words) =>
          tableHeader(words),
        ),
        tableHeader("State", { across: 2 }),
      ],
      ...rowsOf(deliveryRows, deliveryRow),
    ]),
    ...block("A62", [
      section("Days with less than 24 h of mains power"),
      [
        note(
          "Days not listed have 24 h. Where two lines overlap, the fewer hours count. Generators carry the plants through the rest while their fuel lasts: Power and fuel.",
          { across: 8 },
        ),
      ],
      [
        ...["First day", "Last day", "Hours with mains"].map((words) => tableHeader(words)),
        tableHeader("State", { across: 2 }),
      ],
      ...rowsOf(outageRows, outageRow),
    ]),
    F65: note("Here: the island's feeder is out for work.", { across: 3 }),
    ...block("A76", [
      section("Deliveries of fuel"),
      [note("For the generators. The stock and what is kept for other uses stand on Power and fuel.", { across: 8 })],
      ["Day", "Fuel [L]", "State"].map((words) => tableHeader(words)),
      ...rowsOf(fuelRows, fuelRow),
    ]),
  },
  conditional: [
    {
      range: `F${deliveryRows.first}:G${deliveryRows.last}`,
      when: `=$F${deliveryRows.first}="OUTSIDE"`,
      mark: "danger",
    },
    {
      range: `D${outageRows.first}:E${outageRows.last}`,
      when: `=AND($D${outageRows.first}<>"",$D${outageRows.first}<>"counted")`,
      mark: "danger",
    },
    { range: `C${fuelRows.first}:C${fuelRows.last}`, when: `=$C${fuelRows.first}="OUTSIDE"`, mark: "danger" },
  ],
};

const column = (letter: string, { first, last }: { first: number; last: number }): string =>
  `Inputs!${letter}${first}:${letter}${last}`;

export const inputNames = {
  PlantKinds: column("A", plantRows),
  PlantCounts: column("B", plantRows),
  PlantRates: column("E", plantRows),
  PlantWatts: column("G", plantRows),
  StandbyWatts: column("H", plantRows),
  OrderedDates: column("B", deliveryRows),
  MovedDates: column("E", deliveryRows),
  DeliveryAmounts: column("C", deliveryRows),
  OutageFrom: column("A", outageRows),
  OutageTo: column("B", outageRows),
  OutageHours: column("C", outageRows),
  FuelDates: column("A", fuelRows),
  FuelAmounts: column("B", fuelRows),
};
