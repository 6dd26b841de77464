import { isFilled } from "../book";
import { argumentName, finding, givenArguments, referenceIn, type Rule } from "../rule";
import type { Finding } from "../workbook";

const name = "odd input";

/** Functions that are asked about blanks and errors themselves. */
const takesAnything = new Set(["THIS_EXCEL", "VALUE_CHECK", "LOG_FAULTS"]);

const numberAsText = /^\s*[+\-−]?\d+(?:[.,]\d+)*\s*$/;
const isDateFormat = (format: string | undefined): boolean =>
  format !== undefined && /y/i.test(format.replace(/"[^"]*"|\[[^\]]*\]/g, "")) && /[md]/i.test(format);

export const oddInput: Rule = {
  name,
  looksFor: "An argument that points at a blank cell, a number stored as text, or a date where none is wanted.",
  find(context) {
    const { book } = context;
    const found: Finding[] = [];
    for (const { formula, record, argument, expression, isConditional } of givenArguments(context)) {
      if (takesAnything.has(record.id)) continue;
      const reference = referenceIn(book, expression);
      if (!reference) continue;
      const sheet = reference.sheet ?? formula.sheet;
      const wanted = argumentName(record, argument);
      if (!book.sheet(sheet)) continue;
      const single = reference.top === reference.bottom && reference.left === reference.right && !reference.spill;
      const area = book.areaOf(reference, formula.sheet)!;
      const cells = book.filledIn(area);
      if (single && cells.length === 0) {
        const place = { sheet, row: reference.top, column: reference.left };
        if (book.spillOver(place) || isConditional) continue;
        found.push(
          finding(name, "danger", formula, `${wanted} points at a blank cell; some Excels take it for 0`, [place]),
        );
        continue;
      }
      if (typeof argument.kind !== "string" || argument.kind === "text" || argument.kind === "value") continue;
      const takesDates = argument.kind === "date" || argument.kind === "date-time";
      for (const each of cells) {
        if (!isFilled(each.cell) || each.cell.formula !== undefined || book.spillOver(each)) continue;
        const { value, format } = each.cell;
        if (typeof value === "string" && numberAsText.test(value) && !takesDates) {
          found.push(
            finding(
              name,
              "wrong",
              formula,
              `${wanted} points at "${value}", a number stored as text: enter it as a number`,
              [each],
            ),
          );
          break;
        }
        if (
          typeof value === "number" &&
          isDateFormat(format) &&
          !takesDates &&
          argument.kind !== "amount" &&
          argument.kind !== "number"
        ) {
          found.push(finding(name, "danger", formula, `${wanted} points at a date, which counts as ${value}`, [each]));
          break;
        }
      }
    }
    return found;
  },
};
