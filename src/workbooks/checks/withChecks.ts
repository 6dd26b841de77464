import { quotedSheet, sheetAndRange } from "../../cells/addresses";
import {
  answer,
  block,
  link,
  note,
  subtitle,
  tabColours,
  tableCell,
  tableHeader,
  title,
  type CellDescription,
  type SheetDescription,
  type WorkbookDescription,
} from "../writer";
import { checkFirst, checkNames } from "./checkNames";
import { inputRuns, type InputRun } from "./inputRuns";
import { ruleFormula } from "./ruleFormula";
import type { BookCheck } from "./tableChecks";

export const checkSheetName = "Checks";

export interface BookChecks {
  /** Beyond the rule of each entry: whole rows, dates inside the plan, nothing twice. */
  checks?: readonly BookCheck[];
  /** Cells or ranges that must hold an answer: "Stock plan!J10:T130". */
  answers?: readonly { at: string; what: string }[];
  /** Sheets whose entries decide nothing. */
  except?: readonly string[];
  /** The checks stand before this sheet; last if left out. */
  before?: string;
}

interface CheckRow {
  at: string;
  what: string;
  formula: string;
}

const full = (at: string): string => {
  const { sheet, range } = sheetAndRange(at);
  return `${quotedSheet(sheet)}!${range}`;
};

const ofRun = (run: InputRun): CheckRow => {
  const last = run.first + run.rows - 1;
  const at = `${run.sheet}!${run.column}${run.first}`;
  const range = `${quotedSheet(run.sheet)}!${run.column}${run.first}${run.rows > 1 ? `:${run.column}${last}` : ""}`;
  return { at, what: run.what, formula: ruleFormula(run.validation, { ...run, range }) };
};

/** A heading that was typed over stands for rows that may have slipped. */
const ofHeadings = (runs: readonly InputRun[]): CheckRow[] => {
  const byRow = new Map<string, { sheet: string; at: string; words: string }[]>();
  for (const { sheet, heading } of runs) {
    if (!heading) continue;
    const key = `${sheet}!${heading.at.replace(/\D+/, "")}`;
    byRow.set(key, [...(byRow.get(key) ?? []), { sheet, ...heading }]);
  }
  return [...byRow.values()].map((headings) => {
    const { sheet, at } = headings[0]!;
    const same = headings.map(
      (heading) => `EXACT(${quotedSheet(sheet)}!${heading.at},"${heading.words.replace(/"/g, '""')}")`,
    );
    return {
      at: `${sheet}!${at}`,
      what: "Headings of the table",
      formula: `=IF(AND(${same.join(",")}),"ok","${sheet}!${at} begins headings that were typed over: put them back")`,
    };
  });
};

const ofAnswer = ({ at, what }: { at: string; what: string }): CheckRow => ({
  at: at.replace(/:.*/, ""),
  what,
  formula: `=IF(SUMPRODUCT(--ISERROR(${full(at)}))=0,"ok","${at.replace(/:.*/, "")} has no answer: click it, then the warning sign beside it, and read which entry is wrong")`,
});

const firstRow = 8;

const checkSheet = (rows: readonly CheckRow[]): SheetDescription => {
  const last = firstRow + rows.length - 1;
  const states = `C${firstRow}:C${last}`;
  return {
    name: checkSheetName,
    columns: [26, 34, 78],
    tab: tabColours.reference,
    freezeAt: `A${firstRow}`,
    print: { titleRows: `${firstRow - 1}:${firstRow - 1}`, orientation: "landscape" },
    cells: {
      A1: title("Checks"),
      A2: subtitle(
        "Every entry against its rule, and every answer that the headlines hang on. One fault stops them all.",
        {
          across: 3,
        },
      ),
      A4: tableCell("Checks that found something"),
      B4: tableCell(`=SUMPRODUCT(--NOT(IFERROR(${states}="ok",FALSE)))`, { name: checkNames.total, align: "right" }),
      A5: answer(
        `=IF(${checkNames.total}=0,"",LET(k,IFERROR(MATCH(FALSE,IFERROR(${states}="ok",FALSE),0),1),"${checkFirst}: "&IFERROR(INDEX(${states},k),"a check has no answer")&" ("&INDEX(B${firstRow}:B${last},k)&")"&IF(${checkNames.total}>1,"; and "&(${checkNames.total}-1)&" more, see ${checkSheetName}","")))`,
        { name: checkNames.words, across: 3 },
      ),
      A6: note(
        "No fault found is no proof: whether a figure is true, only a person can see. Have a second one read them.",
        {
          across: 3,
        },
      ),
      ...block(`A${firstRow - 1}`, [
        ["Where", "What", "State"].map((words) => tableHeader(words)),
        ...rows.map(({ at, what, formula }) => [link(at, at), tableCell(what), tableCell(formula, { wrap: true })]),
      ]),
    },
    rowHeights: { 5: 44 },
    conditional: [
      { range: states, when: `=C${firstRow}<>"ok"`, mark: "danger" },
      { range: "A5:C5", when: `=${checkNames.total}>0`, mark: "danger" },
    ],
  };
};

/** The book with one check total: a sheet Checks that goes through every entry, and the names that headlines hang on. */
export const withChecks = (
  workbook: WorkbookDescription,
  { checks = [], answers = [], except = [], before }: BookChecks = {},
): WorkbookDescription => {
  const runs = workbook.sheets.filter((sheet) => !except.includes(sheet.name)).flatMap(inputRuns);
  const rows: CheckRow[] = [
    ...runs.map(ofRun),
    ...ofHeadings(runs),
    ...checks.map(({ at, what, formula }) => ({
      at,
      what,
      formula: `=IFERROR(${formula.replace(/^=/, "")},"${at} can't be checked: look for an error there")`,
    })),
    ...answers.map(ofAnswer),
  ];
  const found = workbook.sheets.findIndex(({ name }) => name === before);
  const place = found < 0 ? workbook.sheets.length : found;
  const [first, ...others] = [
    ...workbook.sheets.slice(0, place),
    checkSheet(rows),
    ...workbook.sheets.slice(place),
  ] as [SheetDescription, ...SheetDescription[]];
  return { ...workbook, sheets: [first, ...others] };
};

/** The check total as it stands on the first and the summary sheet, over so many columns. */
export const checkLine = (across: number): CellDescription =>
  answer(`=IF(${checkNames.total}=0,"No entry found blank, mistyped or outside its range",${checkNames.words})`, {
    across,
    link: { to: `${checkSheetName}!A5`, tip: "To the checks" },
  });

/** Goes with checkLine, for the cells it is merged over. */
export const checkLineMark = (range: string): { range: string; when: string; mark: "danger" } => ({
  range,
  when: `=${checkNames.total}>0`,
  mark: "danger",
});
