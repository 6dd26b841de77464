import { defaults } from "../../../models/defaults";
import {
  answer,
  block,
  caution,
  formats,
  headingRow,
  input,
  label,
  note,
  output,
  subtitle,
  tabColours,
  table,
  tableCell,
  tableHeader,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";

const delay = defaults.start_delay.value;
const heading = (words: string): CellDescription[] => headingRow(words, 5);

interface Row {
  what: string;
  /** The live formula. */
  here: string;
  format?: string;
  /** What must be seen. */
  wanted: string;
  /** TRUE where it is seen; {here} is the cell. */
  holds: string;
  otherwise: string;
}

const firstRow = 20;
const tableAt = "A38";
const planAt = "A46";
/** Asked without the broken cell, which in perpetual Excel stops the whole answer. */
const asked = (row: number, column: number): string => `INDEX(OXYGEN.THIS_EXCEL($B$15,$B$15),${row},${column})`;

const rows: readonly Row[] = [
  {
    what: "The add-in calculates",
    here: "=OXYGEN.HOURS_TO_FILL(60,1.5)",
    format: "0.0",
    wanted: `${delay + 40}.0`,
    holds: `ABS({here}-${delay + 40})<0.000001`,
    otherwise:
      "#NAME?: the add-in is not loaded in this workbook; load it and enter the cells again (find = and replace by = on every sheet). #BUSY! for more than a minute: restart Excel.",
  },
  {
    what: "Empty cells come as empty",
    here: `=${asked(2, 2)}`,
    wanted: "come as blank",
    holds: '{here}="come as blank"',
    otherwise:
      "Here an empty cell is taken for 0 and no function can catch it: fill every input, also with 0, look for empty ones before you believe a result, and bring Excel up to date.",
  },
  {
    what: "Broken cells break what hangs on them",
    // Microsoft 365 hands errors over; perpetual Excel gives the error in place of the answer.
    here: `=IF(ISERROR(${tableAt}),"stop the answer",INDEX(${tableAt}#,3,2))`,
    wanted: "come through / stop the answer",
    holds: 'OR({here}="come through",{here}="stop the answer")',
    otherwise:
      "A figure built on a broken cell looks like a good one here: look for errors before you believe a result.",
  },
  {
    what: "One formula fills a column",
    here: "=SUM(OXYGEN.HOURS_TO_FILL({66;90;120},1.5))",
    format: "0.0",
    wanted: `${3 * delay + 184}.0`,
    holds: `ABS({here}-${3 * delay + 184})<0.000001`,
    otherwise:
      "Results that fill several cells don't work here: this Excel is older than 2021, and these workbooks need that.",
  },
  {
    what: "A date comes as its day",
    here: "=OXYGEN.FULL_AT(46082.25,60,1.5,0,3)",
    wanted: "2026-03-03 01:00",
    // 1 March 2026 6:00 and 43 h later.
    holds: "ABS({here}-46084.0416667)<0.0001",
    otherwise:
      "If it shows 46084.04 the day is right and unformatted: format cells that give dates as yyyy-mm-dd hh:mm. Another number: this workbook counts from 1904; copy the sheets into a new workbook.",
  },
  {
    what: "A wrong entry is refused",
    here: '=OXYGEN.HOURS_TO_FILL("sixty",1.5)',
    wanted: "#VALUE!",
    holds: "IF(ISERROR({here}),ERROR.TYPE({here})=3,FALSE)",
    otherwise: "Don't use the functions here until it is explained: a wrong entry must never give a figure.",
  },
  {
    what: "Text carries a unit",
    here: '=OXYGEN.HOURS_TO_FILL("20 gal",2,0,0)',
    format: "0.000",
    // NIST SP 811: 1 US gal = 3.785411784 L; twenty at 2 L/h.
    wanted: "37.854",
    holds: "ABS({here}-37.85411784)<0.0000001",
    otherwise: "Don't use the functions here until it is explained.",
  },
  {
    what: "A full stop in text is read as such",
    here: '=OXYGEN.HOURS_TO_FILL(60,"1.5 L/h")',
    format: "0.0",
    wanted: `${delay + 40}.0`,
    holds: `ABS({here}-${delay + 40})<0.000001`,
    otherwise: "Don't use the functions here until it is explained.",
  },
  {
    what: "The decimal sign of this computer",
    here: '=MID(TEXT(1.5,"0"&MID(1/2,2,1)&"0"),2,1)',
    wanted: ". or ,",
    holds: 'OR({here}=".",{here}=",")',
    otherwise:
      "With a comma as decimal sign, formulas are typed with semicolons between arguments; the pane writes them so. Inside text with a unit a full stop is wanted everywhere.",
  },
  {
    what: "A table feeds another",
    here: `=INDEX(OXYGEN.PLAN_TOTALS(${planAt}#),1+1,9)`,
    format: "0.000",
    wanted: "0.000",
    holds: "ABS({here})<0.000001",
    otherwise: "Tables can't be handed on here: plans would have to be read by hand. Bring Excel up to date.",
  },
];

const lastRow = firstRow + rows.length - 1;
const held = `D${firstRow}:D${lastRow}`;
const items = `A${firstRow}:A${lastRow}`;

const rowOf = ({ what, here, format, holds, wanted, otherwise }: Row, index: number): CellDescription[] => {
  const place = `B${firstRow + index}`;
  const test = holds.replace(/\{here\}/g, place);
  const own = /ISERROR/.test(test) ? test : `IFERROR(${test},FALSE)`;
  return [
    label(what),
    tableCell(here, { align: "right", ...(format ? { format } : {}) }),
    { role: "tableCell", value: wanted, align: "right", format: "@" },
    tableCell(`=IF(${own},"held","NOT HELD")`, { align: "center" }),
    tableCell(`=IF(D${firstRow + index}="held","",${JSON.stringify(otherwise)})`, { wrap: true }),
  ];
};

/** Values that were saved when the book was made come from the local engine, whose THIS_EXCEL says so. */
const notAsked = `ISNUMBER(SEARCH("local engine",${asked(2, 3)}))`;

const program = `IF(IFERROR(${asked(4, 2)}="formatted",FALSE),"Microsoft 365",IF(IFERROR(${asked(4, 2)}="as plain numbers",FALSE),"Excel 2021 and 2024","no answer"))`;

export const page: SheetDescription = {
  name: "This Excel",
  columns: [36, 22, 30, 12, 70],
  tab: tabColours.start,
  print: { orientation: "landscape" },
  cells: {
    A1: title("Does this Excel do what the other books count on?"),
    A2: subtitle("Open it first on a new computer, and again after an update of Excel or of the add-in.", {
      across: 5,
    }),
    ...block("A4", [
      heading("Use it"),
      [text("1. With the add-in loaded press Ctrl+Alt+F9, so that everything is calculated here.", { across: 5 })],
      [
        text("2. Look at the box below, then at each row of What must hold: what must be seen stands beside it.", {
          across: 5,
        }),
      ],
      [text("3. Look with your own eyes at the two rows that no formula can judge.", { across: 5 })],
      [
        label("4. Excel's version (File, Account, About)"),
        input(undefined, {
          across: 2,
          validation: {
            rule: { kind: "textLength", most: 80 },
            prompt: {
              title: "Excel's version",
              words: "As File, Account, About Excel says it, and the kind of computer.",
            },
          },
        }),
      ],
      [text("5. Read out or send the line below the box to whoever looks after the books.", { across: 5 })],
    ]),
    A10: answer(
      `=IF(COUNTIF(${held},"held")<${rows.length},"NOT ALL HOLDS: "&TEXTJOIN("; ",TRUE,IF(${held}="held","",${items})),IF(IFERROR(${notAsked},TRUE),"NOT ASKED IN EXCEL YET: what is shown was saved, or calculated by another program","All ${rows.length} hold here"))`,
      { across: 5, name: "Verdict" },
    ),
    A11: output(
      `="Oxygen functions: "&IF(IFERROR(${notAsked},FALSE),"saved values or another program than Excel",IF(IF(ISNUMBER(B${firstRow}),B${firstRow}=${delay + 40},FALSE),"build for "&${program},"add-in not loaded"))&" | Excel: "&IF(B8="","version not written in B8",B8)&" | held "&COUNTIF(${held},"held")&" of ${rows.length}"&IF(COUNTIF(${held},"held")<${rows.length}," | not held: "&TEXTJOIN("; ",TRUE,IF(${held}="held","",${items})),"")&" | blank cells: "&IFERROR(${asked(2, 2)},"no answer")&" | decimal sign: "&IFERROR(B${firstRow + 8},"?")`,
      { across: 5, wrap: true, name: "LineToSend" },
    ),
    A12: caution(
      "Caution: that all holds here shows that the functions and this Excel work together, not that any figure in a plan is right. Until all holds, check every plan by hand and by a second person.",
      { across: 5 },
    ),
    A14: note(
      "Nothing here is to be changed. B15 is empty on purpose and B16 is broken on purpose: the functions are shown both.",
      {
        across: 5,
      },
    ),
    A15: label("An empty cell, to be left empty"),
    A16: label("A broken cell"),
    B16: tableCell("=NA()", { align: "center" }),
    ...block("A18", [
      heading("What must hold"),
      [
        tableHeader("item"),
        tableHeader("seen here"),
        tableHeader("must be seen"),
        tableHeader("held?"),
        tableHeader("what to do when it is not"),
      ],
      ...rows.map(rowOf),
    ]),
    ...block(`A${lastRow + 2}`, [
      heading("For your own eyes"),
      [
        label("The date above"),
        text(
          "In the build for Microsoft 365 it shows as 2026-03-03 01:00; in the build for Excel 2021 and 2024 as 46084.04.",
          {
            across: 4,
          },
        ),
      ],
      [
        label("The words of the error above"),
        text(
          "Select the #VALUE! of A wrong entry is refused and the sign beside it: it must say that sixty is not a number. If only #VALUE! is told, open the pane (Formulas, Oxygen functions): it says the words of the selected cell.",
          { across: 4 },
        ),
      ],
    ]),
    [`A${Number(tableAt.slice(1)) - 1}`]: headingRow("What THIS_EXCEL says", 1)[0]!,
    ...Object.fromEntries(
      ["B", "C", "D", "E"].map((letter) => [`${letter}${Number(tableAt.slice(1)) - 1}`, headingRow("", 1)[0]!]),
    ),
    [tableAt]: table("=OXYGEN.THIS_EXCEL(B15,B16)", { spill: { header: true } }),
    [`A${Number(planAt.slice(1)) - 1}`]: headingRow("A plan of three days, invented, that is handed on", 1)[0]!,
    [planAt]: table(
      '=OXYGEN.STOCK_PLAN({"2026-03-01";"2026-03-02";"2026-03-03"},{14;16;15},{0;0;30},{24;24;24},{2,"2026-02-01",24,1.2,50},70,1.25,8,3)',
      { spill: { header: true, formats: [formats.date, formats.oneDecimal] } },
    ),
  },
  conditional: [
    { range: "A10:E10", when: 'LEFT($A$10,4)<>"All "', mark: "danger" },
    { range: `D${firstRow}:D${lastRow}`, when: `IF(ISERROR(D${firstRow}),TRUE,D${firstRow}<>"held")`, mark: "danger" },
  ],
};
