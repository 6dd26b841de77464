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
  table,
  tableCell,
  tableHeader,
  tableInput,
  text,
  title,
  withUnit,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { checkLine, checkLineMark, gated } from "../../checks";
import { costs } from "../../scenario/velmar";
import { numberInput } from "../numberInput";
import { optionCount, optionRows } from "./inputs";
import { firstShort } from "./outage";
import { supplyChance } from "./units";
import { figuresRange } from "./workings";

const { currency } = costs;
const head = 10;
const first = head + 1;
const last = first + optionCount - 1;
const testHead = last + 5;
const testFirst = testHead + 1;
const testLast = testHead + optionCount;
const scoreTop = testLast + 3;
const scoreHead = scoreTop + 6;
const scoreFirst = scoreHead + 1;
const scoreLast = scoreHead + optionCount;
const chartTop = scoreLast + 2;
const chartBottom = chartTop + 18;

const onSheet = (letter: string, from: number, to: number): string => `Options!$${letter}$${from}:$${letter}$${to}`;
/** "yes" for each option that may be recommended, else "no". */
export const feasibleRange = onSheet("F", testFirst, testLast);

const named = onSheet("A", first, last).replace("Options!", "");
const feasible = feasibleRange.replace("Options!", "");
const faults = onSheet("G", testFirst, testLast).replace("Options!", "");
const of = (letter: string): string => `INDEX($${letter}$${first}:$${letter}$${last},k)`;

/** One sentence: what to send, and what speaks for it. */
const bestWords =
  `=IF(COUNTIF(${feasible},"yes")=0,"None of these options can be recommended: each fails a test of the sheet Options. Change the options, or the limits on purpose.",` +
  `LET(best,INDEX($A$${scoreFirst}:$A$${scoreLast},MATCH(MAX($B$${scoreFirst}:$B$${scoreLast}),$B$${scoreFirst}:$B$${scoreLast},0)),k,MATCH(best,${named},0),` +
  `"Send "&best&": "&IF(COUNTIF(${feasible},"yes")=1,"the only option that passes all four tests","the best score of the "&COUNTIF(${feasible},"yes")&" options that pass all four tests")&". It weighs "&TEXT(${of("B")},"#,##0")&" of the "&TEXT(MassLimit,"#,##0")&" kg that can be shipped, makes "&TEXT(${of("H")},"0%")&" of the need with its largest plant out, runs short on no day of the outage, and is enough with a chance of "&TEXT(${of("K")},"0.0%")&"."))`;
const leftOutWords = `=IF(COUNTIF(${feasible},"no")=0,"No option fails a test.","Not to be recommended: "&TEXTJOIN("; ",TRUE,IF(${feasible}="yes","",${named}&" ("&${faults}&")"))&".")`;

const tests = (at: number): CellDescription[] => {
  const row = first + at;
  const test = testFirst + at;
  const pass = (good: string, figure: string): CellDescription =>
    tableCell(`=IF(ISERROR(${figure}),"unknown",IF(${good},"yes","no"))`, { align: "center" });
  const isMix = at === optionCount - 1;
  const missing = (letter: string, words: string): string =>
    `IF(${letter}${test}="yes","","${words}"&IF(${letter}${test}="no",""," unknown"))`;
  return [
    tableCell(`=Inputs!$A$${optionRows.first + at}`),
    pass(`B${row}<=MassLimit`, `B${row}`),
    pass(`H${row}>=1`, `H${row}`),
    pass(`L${row}="none"`, `L${row}`),
    pass(`K${row}>=LeastChance`, `K${row}`),
    tableCell(
      `=IF(${isMix ? `$A${test}="no mix fits","no",IF(` : ""}COUNTIF(B${test}:E${test},"yes")=4,"yes","no")${isMix ? ")" : ""}`,
      { align: "center" },
    ),
    tableCell(
      `=IF(${isMix ? `$A${test}="no mix fits","no mix fits the limits",IF(` : ""}F${test}="yes","",TEXTJOIN(", ",TRUE,${missing("B", "too heavy to ship")},${missing("C", "one unit down")},${missing("D", "short in the outage")},${missing("E", "chance of enough")}))${isMix ? ")" : ""}`,
      { across: 6 },
    ),
  ];
};
const letters = ["A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L"];
const rule = (words: string): CellDescription[] => headingRow(words, letters.length);

const better = ["less", "less", "less", "less", "more", "more", "more", "less"];
const weights = [1, 1, 0.5, 1, 3, 2, 3, 2];

export const optionsSheet: SheetDescription = {
  name: "Options",
  columns: [24, 12, 12, 16, 14, 14, 14, 14, 14, 16, 14, 16],
  tab: tabColours.result,
  freezeAt: "B5",
  print: { orientation: "landscape", pagesHigh: 1, titleRows: "1:1" },
  cells: {
    A1: title("Options side by side"),
    A2: text(
      "Need and supply in drawn litres of liquid, with filling losses. Supply with every plant working; days of stock with every plant full and nothing made, less boil-off.",
      { across: 12 },
    ),
    A3: link("Start!A1", "Back to the start"),
    A4: checkLine(12),
    ...block("A5", [rule("The answer")]),
    A6: answer(gated(bestWords), { across: 12, name: "HeadlineBest" }),
    A7: output(gated(leftOutWords), { across: 12, wrap: true, name: "HeadlineLeftOut" }),
    ...block("A9", [rule("Side by side")]),
    [`A${head}`]: table(`=OXYGEN.OPTION_TABLE(${figuresRange},DrawnNeed)`, {
      wrap: true,
      spill: {
        room: optionCount + 1,
        formats: [
          undefined,
          formats.kilograms,
          formats.whole,
          formats.kilowatts,
          withUnit(0, "L"),
          formats.percent,
          formats.days,
          formats.percent,
          withUnit(0, currency),
          undefined,
        ],
      },
    }),
    [`K${head}`]: tableHeader("chance of enough"),
    [`L${head}`]: tableHeader("first short day in the outage"),
    ...Object.fromEntries(
      Array.from({ length: optionCount }, (_, option) => [
        [
          `K${first + option}`,
          tableCell(`=${supplyChance(option)}`, { format: formats.percentOneDecimal, align: "right" }),
        ],
        [`L${first + option}`, tableCell(`=${firstShort(option)}`, { format: formats.date, align: "right" })],
      ]).flat() as [string, CellDescription][],
    ),
    [`A${last + 1}`]: label("Not beaten by another"),
    [`B${last + 1}`]: answer(gated(`=TEXTJOIN(", ",TRUE,IF($J$${first}:$J$${last}="",${named},""))`), {
      across: 5,
      name: "HeadlineNotBeaten",
    }),
    [`G${last + 1}`]: note("Beaten by: that option is at least as good in all eight measures and better in one.", {
      across: 6,
    }),
    ...block(`A${testHead - 2}`, [
      rule("Four tests first"),
      [
        note(
          "An option that fails one is not scored: too heavy to ship, under 100 % of the mean need with its largest plant out, a short day in the outage, or too small a chance that enough plants work. The limits stand on Inputs.",
          { across: 12 },
        ),
      ],
      [
        tableHeader("option"),
        tableHeader("can be shipped"),
        tableHeader("carries one unit down"),
        tableHeader("passes the outage"),
        tableHeader("chance of enough"),
        tableHeader("can be recommended"),
        tableHeader("what it fails", { across: 6 }),
      ],
      ...Array.from({ length: optionCount }, (_, option) => tests(option)),
    ]),
    ...block(`A${scoreTop}`, [rule("Score of those that pass")]),
    [`A${scoreTop + 1}`]: caution(
      "Caution: a score ranks this list and says nothing by itself. It shifts when an option is added or left out, and even the order of the others may turn. Agree on the weights before you look at it, and never let it outvote a short day.",
      { across: 12 },
    ),
    ...block(`A${scoreTop + 2}`, [
      [
        tableHeader("measure"),
        ...["mass", "pallets", "kW", "fuel/day", "supply share", "days of stock", "one-down share", "cost/day"].map(
          (words) => tableHeader(words),
        ),
      ],
      [
        label("Better is"),
        ...better.map((word) =>
          tableInput(word, {
            align: "center",
            validation: {
              rule: { kind: "list", values: ["less", "more"] },
              blankPasses: false,
              prompt: { title: "Better is", words: "less or more: which is better for this measure." },
              refusal: { title: "Better is", words: "Choose less or more." },
            },
          }),
        ),
      ],
      [
        label("Weight"),
        ...weights.map((weight) =>
          numberInput(
            weight,
            "Weight",
            {
              words: "How much this measure counts beside the others; any scale, 0 leaves it out.",
              least: 0,
              most: 1000,
            },
            { inTable: true, align: "center", format: "0.0" },
          ),
        ),
      ],
    ]),
    ...block(`A${scoreHead}`, [[tableHeader("passes all four"), null, null, tableHeader("all options")]]),
    [`A${scoreFirst}`]: tableCell(`=FILTER(${named},${feasible}="yes","none")`, { spill: { room: optionCount } }),
    [`B${scoreHead}`]: tableCell(
      `=IF(COUNTIF(${feasible},"yes")=0,"no score",OXYGEN.OPTION_SCORE(FILTER(B${first}:I${last},${feasible}="yes"),B${scoreTop + 3}:I${scoreTop + 3},B${scoreTop + 4}:I${scoreTop + 4}))`,
      { spill: { header: true, formats: [formats.twoDecimals], room: optionCount + 1 } },
    ),
    [`D${scoreFirst}`]: tableCell(`=${named}`, { spill: { room: optionCount } }),
    [`E${scoreHead}`]: tableCell(
      `=OXYGEN.OPTION_SCORE(B${first}:I${last},B${scoreTop + 3}:I${scoreTop + 3},B${scoreTop + 4}:I${scoreTop + 4})`,
      { spill: { header: true, formats: [formats.twoDecimals], room: optionCount + 1 } },
    ),
    [`G${scoreHead}`]: note(
      "0 is worst in every measure of the list, 1 best in every one; alone in its list an option scores 1. Darker is better. The right-hand score shows how far an option that fails would flatter.",
      { across: 6 },
    ),
  },
  conditional: [
    checkLineMark("A4:L4"),
    { range: "A6:L7", when: "CheckTotal>0", mark: "danger" },
    { range: "A6:L6", when: `COUNTIF(${feasible},"yes")=0`, mark: "danger" },
    { range: `B${testFirst}:F${testLast}`, when: `AND(B${testFirst}<>"",B${testFirst}<>"yes")`, mark: "attention" },
    { range: `B${scoreFirst}:B${scoreLast}`, shade: "lowToHigh" },
    { range: `E${scoreFirst}:E${scoreLast}`, shade: "lowToHigh" },
    { range: `B${first}:B${last}`, when: `AND(ISNUMBER(B${first}),B${first}>MassLimit)`, mark: "attention" },
    { range: `A${first}:L${last}`, when: `$J${first}<>""`, mark: "muted" },
    { range: `F${first}:F${last}`, when: `AND(ISNUMBER(F${first}),F${first}<1)`, mark: "attention" },
    { range: `H${first}:H${last}`, when: `AND(ISNUMBER(H${first}),H${first}<1)`, mark: "attention" },
    { range: `K${first}:K${last}`, when: `AND(ISNUMBER(K${first}),K${first}<LeastChance)`, mark: "attention" },
    { range: `L${first}:L${last}`, when: `ISNUMBER(L${first})`, mark: "attention" },
  ],
  charts: [
    {
      kind: "column",
      title: `Cost a day [${currency}]`,
      from: `A${chartTop}`,
      to: `E${chartBottom}`,
      categories: `Options!A${first}:A${last}`,
      series: [{ name: `cost ${currency}/day`, values: `Options!I${first}:I${last}` }],
      x: { title: "option" },
      y: { title: `${currency}/day`, least: 0 },
      altText: "Columns of the cost a day of each option.",
    },
    {
      kind: "column",
      title: "Supply as a share of the need",
      from: `F${chartTop}`,
      to: `L${chartBottom}`,
      categories: `Options!A${first}:A${last}`,
      series: [
        { name: "every plant working", values: `Options!F${first}:F${last}` },
        { name: "largest plant down", values: `Options!H${first}:H${last}` },
      ],
      x: { title: "option" },
      y: { title: "share of the need", format: "0%", least: 0 },
      altText: "Columns of each option's supply over the need, with every plant working and with the largest one down.",
    },
  ],
};
