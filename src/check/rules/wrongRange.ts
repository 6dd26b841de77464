import { type Place, isFilled } from "../book";
import { finding, referenceIn, type Context, type Rule } from "../rule";
import type { Expression, Reference } from "../expression";
import type { Finding } from "../workbook";
import { labelOf } from "../labels";
import { ownId } from "../trace";

const name = "wrong range";

const adds = new Set(["SUM", "AVERAGE", "MIN", "MAX"]);
const totalWords = /^\s*(?:grand |sub-?)?total|^\s*sum\b|^\s*all\b/i;

/** Does the cell sum up what stands above it, by its formula or its label? */
function isTotal({ book }: Context, place: Place): boolean {
  const label = labelOf(book, place);
  if (label && totalWords.test(label.text)) return true;
  const formula = book.formulaAt(place);
  return (
    formula !== undefined &&
    formula.parts.some(
      (part) =>
        part.kind === "call" &&
        (part.name === "SUM" || part.name === "SUBTOTAL") &&
        part.args.some((argument) => {
          const reference = referenceIn(book, argument);
          return (
            reference !== undefined &&
            (reference.sheet ?? place.sheet) === place.sheet &&
            reference.left <= place.column &&
            reference.right >= place.column &&
            reference.bottom < place.row
          );
        }),
    )
  );
}

const isNumber = (context: Context, place: Place): boolean => {
  const cell = context.book.cell(place);
  return isFilled(cell) && typeof cell.value === "number";
};

export const wrongRange: Rule = {
  name,
  looksFor: "A range that stops short of the filled rows below it, or that takes a total row in.",
  find(context) {
    const { book } = context;
    const found: Finding[] = [];
    const said = new Set<string>();
    for (const formula of book.formulas) {
      for (const part of formula.parts) {
        if (part.kind !== "call" || !(adds.has(part.name) || ownId(part.name) !== undefined)) continue;
        for (const argument of part.args as readonly Expression[]) {
          const reference: Reference | undefined = referenceIn(book, argument);
          if (
            !reference ||
            reference.spill ||
            reference.left !== reference.right ||
            reference.bottom - reference.top < 2
          )
            continue;
          const area = book.areaOf(reference, formula.sheet);
          if (!area || area.bottom !== reference.bottom) continue;
          const key = `${formula.sheet}!${formula.address} ${reference.text}`;
          if (said.has(key)) continue;
          const last = { sheet: area.sheet, row: area.bottom, column: area.left };
          const below = { ...last, row: last.row + 1 };
          // A running total ends at its own row.
          if (book.spillOver(last) || (area.sheet === formula.sheet && area.bottom === formula.row)) continue;
          if (isNumber(context, last) && isTotal(context, last)) {
            said.add(key);
            found.push(
              finding(name, "danger", formula, `${reference.text} takes the total in its last row in as one more row`, [
                last,
              ]),
            );
          } else if (
            isNumber(context, last) &&
            isNumber(context, below) &&
            !book.spillOver(below) &&
            !isTotal(context, below) &&
            !(below.sheet === formula.sheet && below.row === formula.row && below.column === formula.column)
          ) {
            said.add(key);
            found.push(
              finding(name, "danger", formula, `${reference.text} stops short of the filled row below it`, [below]),
            );
          }
        }
      }
    }
    return found;
  },
};
