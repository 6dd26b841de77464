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
import { firstPlanRow, lastPlanRow } from "./stockPlan";

const section = (words: string): CellDescription[] => headingRow(words, 6);

/** Spelt by hand: the codes of TEXT for dates differ from language to language. */
const iso = (date: string): string => `YEAR(${date})&"-"&TEXT(MONTH(${date}),"00")&"-"&TEXT(DAY(${date}),"00")`;

const days = `${firstPlanRow}:`;
const column = (letter: string): string => `Stock plan!${letter}${days}${letter}${lastPlanRow}`;

const aside = (content: string): CellDescription =>
  content.startsWith("=") ? { role: "unit", formula: content, across: 4 } : { role: "unit", value: content, across: 4 };

const stateOf = (kind: string): string =>
  `"As ${kind.toLowerCase()}: "&IF(ISERROR(FirstShort${kind}),"NO ANSWER, check Inputs.",IF(ISNUMBER(FirstShort${kind}),"SHORT on "&${iso(`FirstShort${kind}`)}&", "&TEXT(ShortLitres${kind},"0")&" L in all.","nothing short."))`;

/** One page to hand to the one who decides. */
export const summary: SheetDescription = {
  name: "Summary",
  columns: [31, 18, 18, 18, 20, 18],
  rowHeights: { 5: 44 },
  tab: tabColours.result,
  print: { pagesHigh: 1 },
  cells: {
    A1: title('=SiteName&": oxygen for 60 days"'),
    A2: subtitle(
      `="From "&${iso("FirstDay")}&" to "&${iso("(FirstDay+59)")}&", stocks as of "&${iso("AsOf")}&". Invented figures."`,
      { across: 6 },
    ),
    ...block("A4", [
      section("Does the liquid last?"),
      [answer(`=${stateOf("Ordered")}&"   "&${stateOf("Moved")}`, { across: 6 })],
      [
        "Deliveries",
        "First short date",
        "Short in all [L]",
        "Vented in all [L]",
        "Days below reserve",
        "Plants for no shortage",
      ].map((words) => tableHeader(words)),
      ...["Ordered", "Moved"].map((kind) => [
        tableCell(`as ${kind.toLowerCase()}`),
        output(`=FirstShort${kind}`, { format: formats.date, align: "right" }),
        tableCell(`=ShortLitres${kind}`, { format: formats.whole }),
        tableCell(`=Vented${kind}`, { format: formats.whole }),
        tableCell(`=LowDays${kind}`, { format: formats.whole }),
        tableCell(`=PlantsFor${kind}`, { format: formats.whole, align: "right" }),
      ]),
      [
        note(
          "Short: gross litres that could not be drawn. Plants for no shortage: of the first kind, the second as it is. Both on the mean demand with margin and surge of Inputs.",
          { across: 6 },
        ),
      ],
    ]),
    ...block("A11", [
      section("Where we stand"),
      [
        label("Need as a share of make"),
        output("=Loading", { format: formats.percent }),
        aside("gross draw of the mean day over make here, power all day"),
      ],
      [
        label("Made a day, all plants"),
        output("=MakePerDay", { format: formats.litresPerDay }),
        aside(
          '="against "&TEXT(GrossNeed,"0")&" L/day gross ("&TEXT(NetNeed,"0")&" L/day net at the patients, before margin)"',
        ),
      ],
      [
        label("Liquid lasts with no making"),
        output("=LiquidDays", { format: formats.days }),
        aside("mean gross draw and boil-off, nothing kept back"),
      ],
      [
        label("Flow at a busy moment"),
        output("=BusyFlow", { format: formats.litresPerMinute }),
        aside('="mean "&TEXT(MeanFlow,"0")&" L/min; pipes go by the busy moment, volumes by the mean"'),
      ],
      [
        label("Cylinders"),
        output("=OrderNow", { align: "right" }),
        aside('="order "&OrderCylinders&"; on hand "&CylindersOnHand&", on order "&CylindersOnOrder'),
      ],
      [
        label("Cylinders last, at mean use"),
        output("=CylinderDays", { format: formats.days }),
        aside("nothing kept back"),
      ],
      [label("Fuel lasts"), output("=FuelLasts", { format: formats.days }), aside("all plants making all day")],
      [
        label("Generators"),
        output('=GeneratorCount&" of "&GeneratorsNeeded', { align: "right" }),
        aside('=IF(GeneratorsNeeded>GeneratorCount,"TOO FEW with one spare","on site of those needed with one spare")'),
      ],
      [
        label("Next service"),
        output("=NextServiceDate", { format: formats.date, align: "right" }),
        aside('=IF(NextServiceDate<AsOf,"OVERDUE: ","")&NextServiceTask'),
      ],
    ]),
    A22: note('="The charts show the deliveries "&DeliveryCase&" (chosen on Inputs)."', { across: 6 }),
    A61: caution(
      "Caution: a planning figure, no better than its inputs. Keep a second supply that needs no power and a reserve. The clinician decides for the patient; local codes and the maker's manual decide for the work.",
      { across: 6 },
    ),
  },
  conditional: [
    { range: "A5:F5", when: "=COUNT($B$7:$B$8)=2", mark: "danger", last: true },
    { range: "A5:F5", when: '=OR(COUNT($B$7:$B$8)=1,ISNUMBER(SEARCH("NO ANSWER",$A$5)))', mark: "attention" },
    { range: "B7:B8", when: "=ISNUMBER(B7)", mark: "danger" },
    { range: "C7:C8", when: "=C7>0", mark: "danger" },
    { range: "E7:E8", when: "=E7>0", mark: "attention" },
    { range: "B12", when: "=B12>1", mark: "danger" },
    { range: "B16", when: '=B16="ORDER NOW"', mark: "danger" },
    { range: "B19", when: "=GeneratorsNeeded>GeneratorCount", mark: "attention" },
    { range: "B20", when: "=NextServiceDate<AsOf", mark: "danger" },
  ],
  charts: [
    {
      kind: "line",
      title: "Liquid in the plants at the close of each day",
      from: "A23",
      to: "F40",
      categories: column("A"),
      dates: true,
      series: [
        { name: "closing stock", values: column("Q") },
        { name: "reserve", values: column("H"), reserve: true },
      ],
      x: { title: "day" },
      y: { title: "liquid [L]", least: 0 },
      altText: "Closing stock over 60 days against the dashed reserve line.",
    },
    {
      kind: "column",
      title: "Made against need, gross litres a day",
      from: "A42",
      to: "F59",
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
