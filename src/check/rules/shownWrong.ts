import { kinds } from "../../catalogue/kinds";
import { cellName } from "../../cells/addresses";
import { referenceOf } from "../expression";
import { finding, type Rule } from "../rule";
import type { Finding } from "../workbook";
import { ownId } from "../trace";
import type { Book, FormulaCell, Place } from "../book";

const name = "shown wrong";

const errorCode =
  /^#(?:VALUE!|N\/A|NUM!|DIV\/0!|REF!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!)$/;
const asksForErrors = new Set("IFERROR IFNA ISERROR ISERR ISNA ERROR.TYPE ISNUMBER AGGREGATE THIS_EXCEL".split(" "));

/** Cells that another formula asks about their errors: those are meant to be seen there. */
function handled(book: Book): Set<string> {
  const asked = new Set<string>();
  for (const formula of book.formulas) {
    for (const part of formula.parts) {
      if (part.kind !== "call" || !(asksForErrors.has(part.name) || ownId(part.name) === "THIS_EXCEL")) continue;
      for (const argument of part.args) {
        if (argument.kind !== "reference") continue;
        const area = book.areaOf(argument, formula.sheet);
        if (!area) continue;
        if (area.bottom - area.top > 10000) continue;
        for (const each of book.filledIn(area)) asked.add(`${each.sheet.toLowerCase()}!${each.row},${each.column}`);
      }
    }
  }
  return asked;
}

const isPlainFormat = (format: string | undefined): boolean => {
  if (format === undefined || format === "General") return true;
  const bare = format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "");
  return !/[yd]/i.test(bare) && !/h/i.test(bare) && /[0#]/.test(bare);
};

/** The cells of a result that hold dates. */
function dateCells(formula: FormulaCell, columns: readonly (string | undefined)[] | undefined): Place[] {
  const area = formula.cell.spill === undefined ? undefined : referenceOf(formula.cell.spill);
  if (!area) return [formula];
  const places: Place[] = [];
  for (let row = area.top + (columns ? 1 : 0); row <= area.bottom; row++)
    for (let column = area.left; column <= area.right; column++)
      if (!columns || columns[column - area.left] === "date" || columns[column - area.left] === "date-time")
        places.push({ sheet: formula.sheet, row, column });
  return places;
}

export const shownWrong: Rule = {
  name,
  looksFor: "A date shown as a number, a spill that is blocked, an error with its words.",
  find({ book, tracer }) {
    const found: Finding[] = [];
    const asked = handled(book);
    for (const formula of book.formulas) {
      const { value, words } = formula.cell;
      if (typeof value === "string" && errorCode.test(value)) {
        if (value === "#SPILL!")
          found.push(
            finding(name, "wrong", formula, "shows #SPILL!: cells in the way of its result are filled; clear them"),
          );
        else if (!asked.has(`${formula.sheet.toLowerCase()}!${formula.row},${formula.column}`) && value !== "#NAME?")
          found.push(finding(name, "wrong", formula, `shows ${value}${words ? `: ${words}` : ""}`));
        continue;
      }
      const traced = tracer.formula(formula);
      if (!traced) continue;
      const columns = "columns" in traced ? traced.columns : undefined;
      if (!columns && kinds[(traced as { kind: keyof typeof kinds }).kind].group !== "date") continue;
      const bare = dateCells(formula, columns).filter((place) => {
        const cell = book.cell(place);
        return typeof cell?.value === "number" && cell.value > 366 && isPlainFormat(cell.format);
      })[0];
      if (bare)
        found.push(
          finding(
            name,
            "look",
            formula,
            `gives a date that is shown as ${String(book.cell(bare)!.value)} in ${cellName(bare.row, bare.column)}: format it as a date`,
            [bare],
          ),
        );
    }
    return found;
  },
};
