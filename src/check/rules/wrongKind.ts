import { kinds, type Kind } from "../../catalogue/kinds";
import { confusionOf } from "../confusion";
import { argumentName, finding, givenArguments, referenceIn, type Context, type Rule } from "../rule";
import type { Finding } from "../workbook";
import type { Expression } from "../expression";
import type { Place } from "../book";

const name = "wrong kind";

/** Sums and differences of two kinds that measure different things. */
function mixedSums({ book, tracer }: Context): Finding[] {
  const found: Finding[] = [];
  for (const formula of book.formulas) {
    const locals = tracer.locals(formula);
    const kindOf = (side: Expression): Kind | undefined => {
      const traced = tracer.expression(side, formula.sheet, locals);
      return traced && "kind" in traced ? traced.kind : undefined;
    };
    for (const part of formula.parts) {
      if (part.kind !== "operation" || (part.operator !== "+" && part.operator !== "-") || part.sides.length !== 2)
        continue;
      const [left, right] = [kindOf(part.sides[0]!), kindOf(part.sides[1]!)];
      if (!left || !right || kinds[left].group === "date" || kinds[right].group === "date") continue;
      if (kinds[left].group === kinds[right].group || !confusionOf(left, right)) continue;
      const verb = part.operator === "+" ? "adds" : "takes";
      found.push(
        finding(
          name,
          "wrong",
          formula,
          `${verb} ${kinds[right].words} ${part.operator === "+" ? "to" : "from"} ${kinds[left].words}`,
        ),
      );
    }
  }
  return found;
}

export const wrongKind: Rule = {
  name,
  looksFor: "A result of one kind used as another: gas as liquid, net as gross, the mean where the peak is sized.",
  find(context) {
    const { book, tracer } = context;
    const found: Finding[] = [];
    const say = (
      given: (typeof argumentsGiven)[number],
      kind: Kind | undefined,
      wanted: Kind | undefined,
      related: readonly Place[],
    ): boolean => {
      if (!kind || !wanted) return false;
      const confusion = confusionOf(kind, wanted);
      if (!confusion) return false;
      const why = confusion.why ? `; ${confusion.why}` : "";
      found.push(
        finding(
          name,
          confusion.severity,
          given.formula,
          `${argumentName(given.record, given.argument)} takes ${kinds[wanted].words} and is given ${kinds[kind].words}${why}`,
          related,
        ),
      );
      return true;
    };
    const argumentsGiven = givenArguments(context);
    for (const given of argumentsGiven) {
      if (!given.expression) continue;
      const traced = tracer.expression(given.expression, given.formula.sheet, tracer.locals(given.formula));
      if (!traced) continue;
      const reference = referenceIn(book, given.expression);
      const related = reference
        ? [{ sheet: reference.sheet ?? given.formula.sheet, row: reference.top, column: reference.left }]
        : [];
      const wanted = given.argument.kind;
      if (typeof wanted === "string") {
        if ("kind" in traced) say(given, traced.kind, wanted, related);
        continue;
      }
      if ("kind" in traced) continue;
      for (let column = 0; column < wanted.length; column++)
        if (say(given, traced.columns[column], wanted[column], related)) break;
    }
    return [...found, ...mixedSums(context)];
  },
};
