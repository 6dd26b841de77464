import { argumentName, finding, givenArguments, referenceIn, type Rule } from "../rule";
import { measureAlike, unitsNamed } from "../labels";
import type { Finding } from "../workbook";

const name = "other unit";

/** Units that a label may name beside a fraction without contradiction, where the cell is shown as a percent. */
const isPercentFormat = (format: string | undefined): boolean => /%/.test(format ?? "");

export const otherUnit: Rule = {
  name,
  looksFor: "A label, heading or number format that names another unit than the argument takes for a bare number.",
  find(context) {
    const { book } = context;
    const found: Finding[] = [];
    const said = new Set<string>();
    for (const { formula, record, argument, expression } of givenArguments(context)) {
      const reference = referenceIn(book, expression);
      if (!reference || typeof argument.kind !== "string") continue;
      const area = book.areaOf(reference, formula.sheet);
      if (!area || area.left !== area.right || area.spill) continue;
      const isColumn = area.top !== area.bottom;
      const first = book
        .filledIn(area)
        .filter(({ cell }) => typeof cell.value === "number" && cell.formula === undefined)[0];
      if (!first) continue;
      const unit = argument.unit === "" && argument.kind === "fraction" ? "fraction" : argument.unit;
      if (unit === "" || /date/.test(unit)) continue;
      for (const named of unitsNamed(book, first, isColumn)) {
        if (named.unit === unit) break;
        if (
          named.unit === "%" &&
          unit === "fraction" &&
          (isPercentFormat(first.cell.format) || Number(first.cell.value) > 1)
        )
          continue;
        if (!measureAlike(named.unit, unit)) continue;
        const key = `${formula.sheet}!${formula.address} ${argument.name}`;
        if (said.has(key)) continue;
        said.add(key);
        const value = String(first.cell.value);
        found.push(
          finding(
            name,
            "danger",
            formula,
            `${argumentName(record, argument)} takes a bare number in ${unit}, but ${named.where} says ${named.unit}: write "${value} ${named.unit}" as text with its unit, or convert it`,
            [first, ...(named.place ? [named.place] : [])],
          ),
        );
      }
    }
    return found;
  },
};
