/**
 * One check total a book. `withChecks(workbook, { checks, answers })` adds the sheet Checks: each entry with a validation
 * against its own rule, headings of tables, the book's own checks (`rowsWhole`, `rowsTogether`, `noRowTwice` and others), and
 * cells that must hold an answer. Headlines are cells named Headline…, their formulas wrapped in `gated` or `gatedFigure`;
 * `checkLine` says the total on the first and the summary sheet. An answer that is checked must not be gated itself.
 * A spare row's entries pass blank (`mayStayEmpty`); `rowsWhole` finds a row filled in part.
 */
export { checkNames, gated, gatedFigure } from "./checkNames";
export { noRowTwice, rowsTogether, rowsWhole, type BookCheck } from "./tableChecks";
export { checkLine, checkLineMark, checkSheetName, withChecks, type BookChecks } from "./withChecks";
