import { checkLine, checkLineMark, gated, gatedFigure } from "../../checks";
import {
  answer,
  block,
  caution,
  formats,
  headingRow,
  label,
  note,
  output,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { weekRows } from "./chance";
import { deliveryRows } from "./inputs";
import { caseFigure, cases, firstPlanRow, lastPlanRow, shownPlan } from "./stockPlan";

const section = (words: string): CellDescription[] => headingRow(words, 7);

/** Spelt by hand: the codes of TEXT for dates differ from language to language. */
const iso = (date: string): string => `YEAR(${date})&"-"&TEXT(MONTH(${date}),"00")&"-"&TEXT(DAY(${date}),"00")`;

const column = (letter: string): string => `Stock plan!${letter}${firstPlanRow}:${letter}${lastPlanRow}`;

const aside = (content: string): CellDescription => ({
  role: "unit",
  ...(content.startsWith("=") ? { formula: `=IFERROR(${content.slice(1)},"no answer")` } : { value: content }),
  across: 5,
});

const figure = (formula: string, name: string, format: string): CellDescription =>
  output(gatedFigure(formula), { name: `Headline${name}`, format, align: "right" });

const stateOf = (index: number, words: string): string =>
  `"${words}: "&IF(ISNUMBER(${caseFigure(index, 1)}),"SHORT on "&${iso(caseFigure(index, 1))}&", "&TEXT(${caseFigure(index, 2)},"0")&" L in all.","nothing short, lowest "&TEXT(${caseFigure(index, 3)},"0")&" L on "&${iso(caseFigure(index, 4))}&".")`;

const caseFormats = [formats.date, formats.whole, formats.whole, formats.date, formats.whole, formats.whole];

const deliveries = deliveryRows.last - deliveryRows.first + 1;
const firstDelivery = 32;

const morning = (row: number): string => `INDEX(${shownPlan},2+Inputs!E${row}-FirstDay,2)`;

/** One page to hand to the one who decides, and the charts. */
export const summary: SheetDescription = {
  name: "Summary",
  columns: [31, 16, 15, 15, 15, 15, 17],
  rowHeights: { 3: 44, 6: 80 },
  tab: tabColours.result,
  print: { titleRows: "1:1", breaksBefore: [30, 68] },
  cells: {
    A1: title('=SiteName&": oxygen for "&PlanDays&" days"'),
    A2: subtitle(
      `="From "&${iso("FirstDay")}&" to "&${iso("LastDay")}&", stocks as of "&${iso("AsOf")}&". Invented figures."`,
      { across: 7 },
    ),
    A3: checkLine(7),
    ...block("A5", [
      section("Does the liquid last?"),
      [
        answer(
          gated(
            `=${[
              stateOf(0, "As ordered"),
              stateOf(1, "As moved"),
              stateOf(2, "As moved, a day late"),
              stateOf(3, "As moved, one plant fewer"),
            ].join("&CHAR(10)&")}`,
          ),
          { across: 7, name: "HeadlineLiquid" },
        ),
      ],
      [
        "Deliveries",
        "First short date",
        "Short in all [L]",
        "Lowest stock [L]",
        "on",
        "Vented in all [L]",
        "Days below reserve",
      ].map((words) => tableHeader(words)),
      ...cases.map(({ words }, index) => [
        tableCell(words),
        ...caseFormats.map((format, at) =>
          tableCell(gatedFigure(caseFigure(index, at + 1)), { format, align: "right" }),
        ),
      ]),
      [
        note(
          "Short: gross litres that could not be drawn; the stock is 0 then. Lowest stock: at the close. One plant fewer: the one with the largest make fails on the first day. All on the mean demand with margin and surge of Inputs.",
          { across: 7 },
        ),
      ],
    ]),
    ...block("A14", [
      section("Where we stand"),
      [
        label("Chance of running short by the end"),
        figure("ShortChance", "Chance", formats.percent),
        aside("with needs, plants and deliveries that vary as Inputs says; see Chance"),
      ],
      [
        label("Deliveries wanted from now"),
        output(gatedFigure("DeliveriesWanted"), { name: "HeadlineDeliveries", align: "right" }),
        aside('="in batches of "&Batch&" L, if none were ordered, to stay above the reserve"'),
      ],
      [
        label("Need as a share of make"),
        figure("Loading", "Loading", formats.percent),
        aside("gross draw of the mean day over make here, power all day"),
      ],
      [
        label("Made a day, all plants"),
        figure("MakePerDay", "Make", formats.litresPerDay),
        aside(
          '="against "&TEXT(GrossNeed,"0")&" L/day gross ("&TEXT(NetNeed,"0")&" L/day net at the patients, before margin)"',
        ),
      ],
      [
        label("Liquid lasts with no making"),
        figure("LiquidDays", "LiquidDays", formats.days),
        aside("mean gross draw and boil-off, nothing kept back"),
      ],
      [
        label("Flow at a busy moment"),
        figure("BusyFlow", "BusyFlow", formats.litresPerMinute),
        aside('="mean "&TEXT(MeanFlow,"0")&" L/min; pipes go by the busy moment, volumes by the mean"'),
      ],
      [
        label("If all liquid fails, cylinders last"),
        figure("CylindersAlone", "CylindersAlone", formats.days),
        aside('="the whole hospital on "&CylindersOnHand&" cylinders; a tenth left in each"'),
      ],
      [
        label("In routine use, cylinders last"),
        figure("CylinderDays", "CylinderDays", formats.days),
        aside("issues as in the log, liquid running"),
      ],
      [
        label("Cylinders: order?"),
        output(gatedFigure("OrderNow"), { name: "HeadlineOrder", align: "right" }),
        aside('="order "&OrderCylinders&"; on hand "&CylindersOnHand&", on order "&CylindersOnOrder'),
      ],
      [
        label("Fuel at its lowest"),
        figure("LowestFuel", "Fuel", '#,##0" L"'),
        aside(
          '=TEXT(FuelKeep,"0")&" L of it kept for other uses; "&COUNTIF(DarkHours,"<24")&" days with plants without power in part"',
        ),
      ],
      [
        label("Generators"),
        output(gatedFigure('GeneratorCount&" of "&GeneratorsNeeded'), { name: "HeadlineGenerators", align: "right" }),
        aside('=IF(GeneratorsNeeded>GeneratorCount,"TOO FEW with one spare","on site of those needed with one spare")'),
      ],
      [
        label("Next service"),
        figure("NextServiceDate", "Service", formats.date),
        aside('=IF(NextServiceDate<AsOf,"OVERDUE: ","")&NextServiceTask'),
      ],
    ]),
    ...block("A30", [
      section("Hours left before each delivery, in the plan shown"),
      [
        ...["Delivery", "comes on", "Offered [L]", "Stock that morning [L]", "Hours left"].map((words) =>
          tableHeader(words),
        ),
      ],
      ...Array.from({ length: deliveries }, (_, index) => {
        const row = deliveryRows.first + index;
        const filled = (formula: string): string => `=IF(Inputs!A${row}="","",${gatedFigure(formula).slice(1)})`;
        const date = `IF(DeliveryCase="as moved",Inputs!E${row},Inputs!B${row})`;
        const stock = morning(row).replace(`Inputs!E${row}`, date);
        return [
          tableCell(filled(`Inputs!A${row}`)),
          tableCell(filled(date), { format: formats.date }),
          tableCell(filled(`Inputs!C${row}`), { format: formats.whole }),
          tableCell(filled(stock), { format: formats.whole }),
          tableCell(filled(`24*${stock}/INDEX('Stock plan'!D${firstPlanRow}#,1+${date}-FirstDay)`), {
            format: formats.whole,
          }),
        ];
      }),
      [
        note(
          '="Hours: morning stock over the need of that day, nothing kept back. The charts show the deliveries "&DeliveryCase&" (chosen on Inputs)."',
          { across: 7 },
        ),
      ],
    ]),
    A105: caution(
      "Caution: a planning figure, no better than its inputs. Keep a second supply that needs no power and a reserve. The clinician decides for the patient; local codes and the maker's manual decide for the work.",
      { across: 7 },
    ),
  },
  conditional: [
    checkLineMark("A3:G3"),
    { range: "A6:G6", when: '=ISNUMBER(SEARCH("CHECK",$A$6))', mark: "danger", last: true },
    { range: "A6:G6", when: '=ISNUMBER(SEARCH("As moved: SHORT",$A$6))', mark: "danger", last: true },
    { range: "A6:G6", when: '=ISNUMBER(SEARCH("SHORT",$A$6))', mark: "attention" },
    { range: "B8:B11", when: '=B8<>"none"', mark: "danger" },
    { range: "C8:C11", when: "=AND(ISNUMBER(C8),C8>0)", mark: "danger" },
    { range: "D8:D11", when: "=AND(ISNUMBER(D8),D8<ReserveLitres)", mark: "attention" },
    { range: "G8:G11", when: "=AND(ISNUMBER(G8),G8>0)", mark: "attention" },
    { range: "B15", when: "=AND(ISNUMBER(B15),B15>0.05)", mark: "danger" },
    { range: "B17", when: "=AND(ISNUMBER(B17),B17>1)", mark: "danger" },
    { range: "B23", when: '=B23<>"not yet"', mark: "danger" },
    { range: "B24", when: "=AND(ISNUMBER(B24),B24<=FuelKeep+1)", mark: "danger" },
    { range: "B25", when: "=GeneratorsNeeded>GeneratorCount", mark: "attention" },
    { range: "B26", when: "=AND(ISNUMBER(B26),B26<AsOf)", mark: "danger" },
    {
      range: `E${firstDelivery}:E${firstDelivery + deliveries - 1}`,
      when: `=AND(ISNUMBER(E${firstDelivery}),E${firstDelivery}<24)`,
      mark: "danger",
    },
  ],
  charts: [
    {
      kind: "line",
      title: "Liquid in the plants at the close of each day",
      from: "A49",
      to: "G66",
      categories: column("A"),
      dates: true,
      series: [
        { name: "closing stock", values: column("Q") },
        { name: "reserve", values: column("H"), reserve: true },
      ],
      x: { title: "day" },
      y: { title: "liquid [L]", least: 0 },
      altText: "Closing stock day by day against the dashed reserve line.",
    },
    {
      kind: "column",
      title: "Chance of running short, by the end of each week",
      from: "A68",
      to: "G85",
      categories: `Chance!H${weekRows.first}:H${weekRows.last}`,
      series: [{ name: "short by then", values: `Chance!J${weekRows.first}:J${weekRows.last}` }],
      x: { title: "week of the plan" },
      y: { title: "chance", least: 0, most: 1, format: "0%" },
      altText: "Columns of the chance that the plan has been short by the end of each week; they only rise.",
    },
    {
      kind: "column",
      title: "Made against need, gross litres a day",
      from: "A87",
      to: "G104",
      categories: column("A"),
      dates: true,
      series: [
        { name: "made", values: column("L") },
        { name: "need, gross", values: column("D"), as: "line" },
      ],
      x: { title: "day" },
      y: { title: "liquid [L/day]", least: 0 },
      altText:
        "Columns of what is made each day under a line of the gross need; the columns fail in the outage and shrink when the plants are full.",
    },
  ],
};
