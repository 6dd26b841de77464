import { catalogue } from "../../../catalogue/catalogue";
import type { FunctionRecord } from "../../../catalogue/record";
import {
  formats,
  link,
  note,
  output,
  tabColours,
  tableCell,
  tableHeader,
  text,
  title,
  type CellDescription,
  type SheetDescription,
} from "../../writer";
import { comparison, tablePlaces } from "./tables";

const sheetName = "Checks";
/** Begins the source of an example that is worked out by hand from the function's stated rule, with no value from outside. */
export const byRule = "Stated rule";
const firstRow = 6;

type Example = FunctionRecord["examples"][number];

interface Check {
  record: FunctionRecord;
  example: Example;
  row: number;
}

/** Every example of every function that is the same in every program, in the catalogue's order, with the row it stands in. */
export const checks: readonly Check[] = catalogue
  .flatMap((record) => record.examples.filter(({ localOnly }) => !localOnly).map((example) => ({ record, example })))
  .map((check, index) => ({ ...check, row: firstRow + index }));

const lastRow = firstRow + checks.length - 1;
export const columnOf = (letter: string): string => `${sheetName}!$${letter}$${firstRow}:$${letter}$${lastRow}`;

const dateFormat = (unit: string): string | undefined =>
  unit === "date" ? formats.date : unit === "date-time" ? formats.dateTime : undefined;

/** Words as they stand, also where they begin with "=". */
const words = (value: string, wrap = true): CellDescription => ({ role: "tableCell", value, wrap });

/** Words that name something outside the project. What names nothing counts as the stated rule, so the count never flatters. */
const namesSource =
  /\b(ISO|NIST|NEC|CFR|WHO|GB 50751|Fire Code|Schmidt|SciPy|CoolProp|equation of state|tables?|chart|worked example|teaching|course|librar(y|ies)|published|printed|handbook|independently|outside (this|the) project|monographs|Loewen|Brody|Samuels|Billinton|Chest|EDATE)\b|[A-Z][a-z]+ & [A-Z][a-z]+/;

const sourceOf = ({ source }: Example): string => {
  if (source === undefined) return `${byRule}: plain arithmetic`;
  return namesSource.test(source) ? source : `${byRule}: ${source}`;
};

const rowOf = ({ record, example, row }: Check): (CellDescription | null)[] => {
  const { formula, result, tolerance } = example;
  const format = dateFormat(record.result.unit);
  const live = `E${row}`;
  const looks = { align: "right" as const, ...(format ? { format } : {}) };
  const head = [tableCell(record.group), tableCell(record.id), words(formula)];
  const shows = (kind: string): CellDescription => words([kind, example.note].filter(Boolean).join(" "));
  const source = words(sourceOf(example));

  if (Array.isArray(result)) {
    const place = tablePlaces.get(formula)!;
    return [
      ...head,
      link(`${place.sheet}!${place.title}`, "table", `To the table on the sheet ${place.sheet}`),
      link(
        `${place.sheet}!${place.expected.split(":")[0]}`,
        `${result.length} × ${result[0]!.length}`,
        "To the expected cells",
      ),
      tolerance === undefined
        ? tableCell("exact", { align: "center" })
        : tableCell(tolerance, { format: "General", align: "right" }),
      tableCell(comparison(place, example), { align: "center" }),
      shows(""),
      source,
    ];
  }
  if (typeof result === "object") {
    const isExpected = result.error === "#N/A" ? `ISNA(${live})` : `IF(ISERROR(${live}),ERROR.TYPE(${live})=3,FALSE)`;
    return [
      ...head,
      tableCell(formula, { align: "center" }),
      tableCell(result.error, { align: "center" }),
      tableCell("code", { align: "center" }),
      tableCell(`=IF(${isExpected},"ok","differs")`, { align: "center" }),
      shows(`Refused on purpose; the words hold: ${result.words}.`),
      source,
    ];
  }
  if (typeof result === "number") {
    const margin = tolerance === undefined ? `1E-9*MAX(1,ABS(F${row}))` : `G${row}`;
    return [
      ...head,
      tableCell(formula, looks),
      tableCell(result, looks),
      tolerance === undefined
        ? tableCell("exact", { align: "center" })
        : tableCell(tolerance, { format: "General", align: "right" }),
      tableCell(`=IF(ISNUMBER(${live}),IF(ABS(${live}-F${row})<=${margin},"ok","differs"),"differs")`, {
        align: "center",
      }),
      shows(""),
      source,
    ];
  }
  return [
    ...head,
    tableCell(formula, { wrap: true }),
    tableCell(result, { wrap: true }),
    tableCell("exact", { align: "center" }),
    tableCell(`=IF(ISERROR(${live}),"differs",IF(EXACT(${live},F${row}),"ok","differs"))`, { align: "center" }),
    shows(""),
    source,
  ];
};

const letters = "BCDEFGHIJ";

/** Names the rows that are not ok; a first result of #NAME? means that Excel knows none of the functions. */
const verdict =
  `=IF(IF(ISERROR(E${firstRow}),ERROR.TYPE(E${firstRow})=5,FALSE),"Not checked: the add-in is not loaded",` +
  `IF(COUNTIF(H${firstRow}:H${lastRow},"ok")=ROWS(H${firstRow}:H${lastRow}),` +
  `"All ok: "&ROWS(H${firstRow}:H${lastRow})&" of "&ROWS(H${firstRow}:H${lastRow})&" checks",` +
  `"NOT ok: "&TEXTJOIN(", ",TRUE,IF(H${firstRow}:H${lastRow}="ok","",C${firstRow}:C${lastRow}&" (row "&ROW(H${firstRow}:H${lastRow})&")"))))`;

export const checksSheet: SheetDescription = {
  name: sheetName,
  columns: [2, 12, 25, 50, 20, 20, 11, 9, 40, 44],
  tab: tabColours.result,
  freezeAt: `D${firstRow}`,
  print: { orientation: "landscape", titleRows: "5:5" },
  rowHeights: { 1: 30, 2: 30 },
  cells: {
    B1: title("Function checks"),
    B2: output(verdict, { across: 9, name: "Verdict", wrap: true }),
    B3: text(
      "Result is the live formula; ok compares it with the expected value. Exact: equal within 1e-9 of the value. Code: the error's code is expected on purpose.",
      { across: 9 },
    ),
    B4: link("Start!A1", "Back to the start"),
    ...Object.fromEntries(
      [
        "group",
        "function",
        "formula",
        "result",
        "expected",
        "tolerance",
        "ok",
        "what it shows",
        "where the expected value comes from",
      ].map((heading, at) => [`${letters[at]}5`, tableHeader(heading)] as const),
    ),
    ...Object.fromEntries(
      checks.flatMap((check) =>
        rowOf(check).flatMap((cell, at) => (cell ? [[`${letters[at]}${check.row}`, cell] as const] : [])),
      ),
    ),
    [`B${lastRow + 2}`]: note(
      "Expected values come from the source named in each row, or, where it says so, from the stated rule worked out by hand: such a row shows that the function keeps its rule, not that the rule is right. A result outside its tolerance means: don't use that function until it is explained.",
      { across: 9 },
    ),
  },
  conditional: [
    { range: "B2:J2", when: 'LEFT($B$2,6)<>"All ok"', mark: "danger" },
    { range: `H${firstRow}:H${lastRow}`, when: `IF(ISERROR(H${firstRow}),TRUE,H${firstRow}<>"ok")`, mark: "danger" },
  ],
};
