import { finding, type Rule } from "../rule";
import { expressionsIn, type Expression } from "../expression";
import type { Finding } from "../workbook";
import { ownId } from "../trace";
import type { Book, FormulaCell } from "../book";

const name = "hidden error";

const reassuring =
  /^\s*(?:(?:ok(?:ay)?|safe|fine|good|covered|enough|all well|nothing short|not yet)\b|(?:none|no|yes)\s*$)/i;

const calms = (value: Expression): string | undefined => {
  if (value.kind === "number" && value.value === 0) return "0";
  if (value.kind === "truth") return value.value ? "TRUE" : "FALSE";
  if (value.kind === "text" && reassuring.test(value.value)) return `"${value.value}"`;
  return undefined;
};

const callsOwn = (expression: Expression): boolean =>
  expressionsIn(expression).some((part) => part.kind === "call" && ownId(part.name) !== undefined);

/** Does the expression hold an OXYGEN call, or point at a cell that does? */
function dependsOnOwn(book: Book, expression: Expression, home: FormulaCell): boolean {
  if (callsOwn(expression)) return true;
  return expressionsIn(expression).some((part) => {
    if (part.kind !== "reference") return false;
    const place = { sheet: part.sheet ?? home.sheet, row: part.top, column: part.left };
    const from = book.formulaAt(place) ?? book.spillOver(place);
    return from !== undefined && callsOwn(from.expression);
  });
}

export const hiddenError: Rule = {
  name,
  looksFor: "A formula that puts a reassuring value in place of an error.",
  find({ book }) {
    const found: Finding[] = [];
    for (const formula of book.formulas) {
      for (const part of formula.parts) {
        if (part.kind !== "call") continue;
        // IF(ISERROR(x), y, z) hides like IFERROR(x, y); IFNA keeps #VALUE! visible and is a question's own "no answer".
        const test = part.args[0];
        const [tried, instead] =
          part.name === "IFERROR"
            ? [test, part.args[1]]
            : part.name === "IF" && test?.kind === "call" && (test.name === "ISERROR" || test.name === "ISERR")
              ? [test.args[0], part.args[1]]
              : [undefined, undefined];
        if (!tried || !instead) continue;
        // A FALSE inside a condition is no answer that anybody reads.
        const calm = instead.kind === "truth" && part !== formula.expression ? undefined : calms(instead);
        if (calm === undefined || !dependsOnOwn(book, tried, formula)) continue;
        found.push(
          finding(
            name,
            "danger",
            formula,
            `shows ${calm} where its formula fails: a wrong input then looks like a good answer`,
          ),
        );
      }
    }
    return found;
  },
};
