import type { FormulaCell } from "../book";
import { finding, type Rule } from "../rule";
import type { Finding } from "../workbook";
import { ownId } from "../trace";

const name = "slow";

/** Excel takes about half a second for each level of dependent cells with custom functions. */
const deepest = 5;
/** Single calls one below the other from here on are worth one formula. */
const longest = 20;

export const slowCalls: Rule = {
  name,
  looksFor: "A column of single calls where one formula would spill, and chains of calls more than five deep.",
  find({ book }) {
    const depths = new Map<FormulaCell, number>();
    /** The deepest cell of an area by its top and sides, down to a row: a longer one goes on from there. */
    const areas = new Map<string, { readonly bottom: number; readonly deep: number }>();
    const ownCall = (formula: FormulaCell): boolean =>
      formula.parts.some((part) => part.kind === "call" && ownId(part.name) !== undefined);

    const depth = (formula: FormulaCell): number => {
      const known = depths.get(formula);
      if (known !== undefined) return known;
      depths.set(formula, 0);
      let below = 0;
      for (const reference of book.referencesIn(formula)) {
        const area = book.areaOf(reference, formula.sheet);
        if (!area) continue;
        const key = `${area.sheet}!${area.top},${area.left},${area.right}`;
        const known = areas.get(key);
        const goesOn = known !== undefined && known.bottom <= area.bottom;
        let deep = goesOn ? known.deep : 0;
        for (const each of book.filledIn(goesOn ? { ...area, top: known.bottom + 1 } : area)) {
          const from = book.formulaAt(each) ?? book.spillOver(each);
          if (from && from !== formula) deep = Math.max(deep, depth(from));
        }
        areas.set(key, { bottom: area.bottom, deep });
        below = Math.max(below, deep);
      }
      const own = below + (ownCall(formula) ? 1 : 0);
      depths.set(formula, own);
      return own;
    };

    const found: Finding[] = [];
    const deepestOf = new Map<string, FormulaCell>();
    for (const formula of book.formulas) {
      if (depth(formula) <= deepest || !ownCall(formula)) continue;
      const worst = deepestOf.get(formula.sheet);
      if (!worst || depth(worst) < depth(formula)) deepestOf.set(formula.sheet, formula);
    }
    deepestOf.forEach((formula) =>
      found.push(
        finding(
          name,
          "look",
          formula,
          `stands at the end of a chain of ${depth(formula)} cells with functions of this add-in; Excel takes about half a second a level: calculate from ranges where it can be done`,
        ),
      ),
    );

    const single = (formula: FormulaCell): string | undefined =>
      formula.expression.kind === "call" &&
      ownId(formula.expression.name) !== undefined &&
      formula.cell.spill === undefined
        ? formula.expression.name
        : undefined;
    const byPlace = new Map(
      book.formulas.map((formula) => [`${formula.sheet}!${formula.row},${formula.column}`, formula]),
    );
    for (const formula of book.formulas) {
      const called = single(formula);
      if (!called) continue;
      const at = (row: number): FormulaCell | undefined => byPlace.get(`${formula.sheet}!${row},${formula.column}`);
      const above = at(formula.row - 1);
      if (above && single(above) === called) continue;
      let rows = 1;
      for (let next = at(formula.row + 1); next && single(next) === called; next = at(formula.row + rows)) rows++;
      if (rows < longest) continue;
      found.push(
        finding(
          name,
          "look",
          formula,
          `${rows} single calls of ${called} stand one below the other: one formula with ranges spills them in one go`,
        ),
      );
    }
    return found;
  },
};
