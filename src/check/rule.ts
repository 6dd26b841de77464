import type { FunctionRecord, ArgumentRecord } from "../catalogue/record";
import { type Book, type FormulaCell, type Place, addressOf, fullAddress } from "./book";
import type { Expression, Reference } from "./expression";
import type { Tracer } from "./trace";
import type { Finding, Severity } from "./workbook";

export interface Context {
  readonly book: Book;
  readonly tracer: Tracer;
  readonly records: readonly FunctionRecord[];
}

export interface Rule {
  readonly name: string;
  /** What the rule looks for, one sentence. */
  readonly looksFor: string;
  find(context: Context): Finding[];
}

/** One argument of one OXYGEN call in a formula. */
export interface GivenArgument {
  readonly formula: FormulaCell;
  readonly record: FunctionRecord;
  readonly argument: ArgumentRecord;
  /** Undefined where it is left out. */
  readonly expression: Expression | undefined;
  /** The call stands behind a condition, which may keep it from being reached. */
  readonly isConditional: boolean;
}

/** Calls that stand in a branch of IF, IFS or SWITCH, or behind one of LET's names that may. */
function conditionalCalls(expression: Expression, found = new Set<Expression>(), inside = false): Set<Expression> {
  if (expression.kind === "call") {
    if (inside) found.add(expression);
    const branches = /^(?:IF|IFS|SWITCH|CHOOSE|LET|LAMBDA|MAP|BYROW)$/.test(expression.name);
    expression.args.forEach((argument, index) => conditionalCalls(argument, found, inside || (branches && index > 0)));
  } else if (expression.kind === "operation") {
    for (const side of expression.sides) conditionalCalls(side, found, inside);
  }
  return found;
}

/** Every argument of every OXYGEN call of the workbook, those left out too. */
export function givenArguments({ book, tracer }: Context): GivenArgument[] {
  const found: GivenArgument[] = [];
  for (const formula of book.formulas) {
    const conditional = conditionalCalls(formula.expression);
    for (const part of formula.parts) {
      if (part.kind !== "call") continue;
      const record = tracer.record(part.name);
      if (!record) continue;
      record.arguments.forEach((argument, index) => {
        const given = part.args[index];
        const expression = given?.kind === "omitted" ? undefined : given;
        found.push({ formula, record, argument, expression, isConditional: conditional.has(part) });
      });
    }
  }
  return found;
}

/** The reference an argument is, its own or by a name. */
export function referenceIn(book: Book, expression: Expression | undefined): Reference | undefined {
  if (expression?.kind === "reference") return expression;
  if (expression?.kind !== "name") return undefined;
  const meaning = book.meaningOf(expression.name);
  return meaning?.kind === "reference" ? meaning : undefined;
}

export const finding = (
  rule: string,
  severity: Severity,
  place: Place,
  words: string,
  related: readonly Place[] = [],
): Finding => ({
  sheet: place.sheet,
  cell: addressOf(place),
  rule,
  severity,
  words,
  related: related.map(fullAddress),
});

/** "TIMES_OF.amount", as words name an argument. */
export const argumentName = (record: FunctionRecord, argument: ArgumentRecord): string =>
  `${argument.name} of ${record.id}`;
