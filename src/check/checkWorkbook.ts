import type { FunctionRecord } from "../catalogue/record";
import { Book } from "./book";
import type { Rule } from "./rule";
import { hiddenError } from "./rules/hiddenError";
import { hiddenSheet } from "./rules/hiddenSheet";
import { ignoredInput } from "./rules/ignoredInput";
import { oddFormula } from "./rules/oddFormula";
import { oddInput } from "./rules/oddInput";
import { otherUnit } from "./rules/otherUnit";
import { shownWrong } from "./rules/shownWrong";
import { slowCalls } from "./rules/slowCalls";
import { unknownName } from "./rules/unknownName";
import { wrongKind } from "./rules/wrongKind";
import { wrongRange } from "./rules/wrongRange";
import { isSetAside, notesOf, notesSheet } from "./setAside";
import { Tracer } from "./trace";
import type { CheckedWorkbook, Finding, Severity } from "./workbook";

export const rules: readonly Rule[] = [
  wrongKind,
  otherUnit,
  oddInput,
  wrongRange,
  hiddenError,
  ignoredInput,
  oddFormula,
  unknownName,
  shownWrong,
  hiddenSheet,
  slowCalls,
];

export interface CheckResult {
  /** The gravest first, then in the order of sheets, rows and columns. */
  readonly findings: readonly Finding[];
  /** Findings that a note in the workbook lets stand. */
  readonly setAside: readonly Finding[];
  readonly formulas: number;
}

const graveness: readonly Severity[] = ["danger", "wrong", "look"];

/** Looks through a whole workbook for numbers that are most likely not what they are used as. */
export function checkWorkbook(workbook: CheckedWorkbook, records: readonly FunctionRecord[]): CheckResult {
  const book = new Book({
    ...workbook,
    sheets: workbook.sheets.filter(({ name }) => name.toLowerCase() !== notesSheet.toLowerCase()),
  });
  const context = { book, records, tracer: new Tracer(book, records) };
  const notes = notesOf(workbook);
  const sheetOrder = new Map(workbook.sheets.map(({ name }, index) => [name, index]));
  const order = (finding: Finding): number[] => {
    const { row, column } = book.placeOf(finding.sheet, finding.cell);
    return [graveness.indexOf(finding.severity), sheetOrder.get(finding.sheet) ?? 0, row, column];
  };
  const all = rules
    .map((rule) => rule.find(context))
    .reduce((found, more) => found.concat(more), [])
    .map((each) => ({ each, order: order(each) }))
    .sort((one, other) => {
      const at = one.order.findIndex((part, index) => part !== other.order[index]);
      return at < 0 ? 0 : one.order[at]! - other.order[at]!;
    })
    .map(({ each }) => each);
  return {
    findings: all.filter((each) => !isSetAside(each, notes)),
    setAside: all.filter((each) => isSetAside(each, notes)),
    formulas: book.formulas.length,
  };
}
