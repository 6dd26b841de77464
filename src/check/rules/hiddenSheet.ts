import { finding, type Rule } from "../rule";
import type { Finding } from "../workbook";
import { ownId } from "../trace";

const name = "hidden sheet";

export const hiddenSheet: Rule = {
  name,
  looksFor: "A formula of this add-in that reads a cell of a hidden sheet.",
  find({ book }) {
    const found: Finding[] = [];
    for (const formula of book.formulas) {
      if (!formula.parts.some((part) => part.kind === "call" && ownId(part.name) !== undefined)) continue;
      for (const reference of book.referencesIn(formula)) {
        if (reference.sheet === undefined || reference.sheet === formula.sheet) continue;
        const sheet = book.sheet(reference.sheet);
        if (!sheet?.hidden || book.sheet(formula.sheet)?.hidden) continue;
        const place = { sheet: sheet.name, row: reference.top, column: reference.left };
        found.push(
          finding(name, "look", formula, `reads ${reference.text} on a hidden sheet, where nobody sees it change`, [
            place,
          ]),
        );
        break;
      }
    }
    return found;
  },
};
