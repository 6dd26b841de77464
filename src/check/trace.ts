import type { FunctionRecord } from "../catalogue/record";
import { type Kind, kinds } from "../catalogue/kinds";
import { namespace } from "../cells/namespace";
import type { Book, FormulaCell, Place } from "./book";
import type { Expression, Reference } from "./expression";

/** What is known of a value: one kind throughout, or a kind for each column of a table. Undefined: nothing is known. */
export type Traced = { readonly kind: Kind } | { readonly columns: readonly (Kind | undefined)[] } | undefined;

const of = (kind: Kind | undefined): Traced => (kind === undefined ? undefined : { kind });

/** Functions of Excel whose result is of the kind of their first argument. */
const keepsFirst = new Set(
  "SUM MIN MAX AVERAGE MEDIAN SMALL LARGE ROUND ROUNDUP ROUNDDOWN MROUND CEILING FLOOR CEILING.MATH FLOOR.MATH ABS N SORT UNIQUE FILTER TAKE DROP TOCOL TOROW TRANSPOSE SUMIF SUMIFS AVERAGEIF AVERAGEIFS MINIFS MAXIFS".split(
    " ",
  ),
);
const keepsAll = new Set(["VSTACK", "SUM", "MIN", "MAX", "AVERAGE"]);
/** Constants by which people go from one unit to another: a product by one of them is of a kind that is not known. */
const unitFactors = new Set([
  7, 12, 24, 30, 60, 365, 860, 861, 1000, 1440, 3600, 86400, 0.001, 1e6, 14.5, 14.5038, 0.0689, 6.895, 3.785, 3.7854,
  28.3, 28.32, 28.317, 35.3, 35.315, 0.3048, 3.281, 3.2808, 2.2046, 2.205, 0.4536, 0.45359237, 1.8,
]);

export const ownId = (name: string): string | undefined =>
  name.indexOf(`${namespace}.`) === 0 ? name.slice(namespace.length + 1) : undefined;

/** Follows kinds through the formulas of a workbook. Where it can't follow, it says nothing. */
export class Tracer {
  private readonly records: ReadonlyMap<string, FunctionRecord>;
  private readonly known = new Map<FormulaCell, Traced>();
  private readonly areas = new Map<string, Traced>();
  /** Columns by their top, down to a row: a longer one goes on from there. */
  private readonly columns = new Map<string, { bottom: number; kind: Kind | undefined; followed: boolean }>();
  private readonly underWay = new Set<FormulaCell>();

  constructor(
    private readonly book: Book,
    records: readonly FunctionRecord[],
  ) {
    this.records = new Map(records.map((record) => [record.id, record]));
  }

  record(name: string): FunctionRecord | undefined {
    const id = ownId(name);
    return id === undefined ? undefined : this.records.get(id);
  }

  /** What the formula of a cell gives. */
  formula(cell: FormulaCell): Traced {
    if (this.known.has(cell)) return this.known.get(cell);
    if (this.underWay.has(cell)) return undefined;
    this.underWay.add(cell);
    const traced = this.expression(cell.expression, cell.sheet, new Map());
    this.underWay.delete(cell);
    this.known.set(cell, traced);
    return traced;
  }

  /** What the names declared by LET inside a formula stand for. */
  locals(cell: FormulaCell): ReadonlyMap<string, Traced> {
    const found = new Map<string, Traced>();
    for (const part of cell.parts) {
      if (part.kind !== "call" || part.name !== "LET") continue;
      for (let index = 0; index + 1 < part.args.length; index += 2) {
        const local = part.args[index]!;
        if (local.kind === "name")
          found.set(local.name.toLowerCase(), this.expression(part.args[index + 1]!, cell.sheet, found));
      }
    }
    return found;
  }

  /** The kind of one cell, by its own formula or the one that fills it. */
  cell(place: Place): Kind | undefined {
    const own = this.book.formulaAt(place);
    const from = own ?? this.book.spillOver(place);
    if (!from) return undefined;
    const traced = this.formula(from);
    if (!traced) return undefined;
    if ("kind" in traced) return traced.kind;
    return place.row === from.row ? undefined : traced.columns[place.column - from.column];
  }

  /** The one kind of a column's numbers; undefined where one of them is not known or differs. */
  private column(area: Reference & { readonly sheet: string }): Kind | undefined {
    const key = `${area.sheet}!${area.top},${area.left}`;
    const known = this.columns.get(key);
    const goesOn = known !== undefined && known.bottom <= area.bottom;
    let kind = goesOn ? known.kind : undefined;
    let followed = goesOn ? known.followed : true;
    if (followed) {
      for (const each of this.book.filledIn(goesOn ? { ...area, top: known.bottom + 1 } : area)) {
        if (typeof each.cell.value === "string" && each.cell.formula === undefined) continue;
        const own = this.cell(each);
        if (own === undefined && each.row === this.book.spillOver(each)?.row) continue;
        followed = own !== undefined && (kind === undefined || kind === own);
        if (!followed) break;
        kind = own;
      }
    }
    this.columns.set(key, { bottom: area.bottom, kind, followed });
    return followed ? kind : undefined;
  }

  private area(reference: Reference, home: string): Traced {
    if (reference.spill) {
      const place = { sheet: reference.sheet ?? home, row: reference.top, column: reference.left };
      const anchor = this.book.formulaAt(place);
      return anchor && this.formula(anchor);
    }
    const area = this.book.areaOf(reference, home);
    if (!area) return undefined;
    const key = `${area.sheet}!${area.top},${area.left},${area.bottom},${area.right}`;
    if (this.areas.has(key)) return this.areas.get(key);
    const columns: (Kind | undefined)[] = [];
    for (let column = area.left; column <= area.right; column++)
      columns.push(this.column({ ...area, left: column, right: column }));
    const traced: Traced = columns.length === 1 ? of(columns[0]) : columns.some(Boolean) ? { columns } : undefined;
    this.areas.set(key, traced);
    return traced;
  }

  expression(expression: Expression, home: string, locals: ReadonlyMap<string, Traced>): Traced {
    switch (expression.kind) {
      case "reference":
        return this.area(expression, home);
      case "name": {
        const local = expression.name.toLowerCase();
        if (locals.has(local)) return locals.get(local);
        const meaning = this.book.meaningOf(expression.name);
        return meaning && meaning.kind !== "name" ? this.expression(meaning, home, locals) : undefined;
      }
      case "text":
        return { kind: "text" };
      case "truth":
        return { kind: "flag" };
      case "call":
        return this.call(expression.name, expression.args, home, locals);
      case "operation":
        return this.operation(expression, home, locals);
      default:
        return undefined;
    }
  }

  private call(name: string, args: readonly Expression[], home: string, locals: ReadonlyMap<string, Traced>): Traced {
    const record = this.record(name);
    if (record) {
      const { gives } = record.result;
      return typeof gives === "string" ? { kind: gives } : { columns: gives };
    }
    const at = (index: number): Traced =>
      args[index] === undefined ? undefined : this.expression(args[index]!, home, locals);
    const agreed = (indexes: readonly number[]): Traced => {
      const found = indexes.map(at).filter((each) => each !== undefined);
      const [first] = found;
      if (!first || !("kind" in first)) return undefined;
      return found.every((each) => each && "kind" in each && each.kind === first.kind) ? first : undefined;
    };
    switch (name) {
      case "IF":
        return args.slice(1).every((each, index) => each.kind === "number" || each.kind === "text" || at(index + 1))
          ? agreed([1, 2].filter((index) => args[index] !== undefined && !isLiteral(args[index]!)))
          : undefined;
      case "IFERROR":
      case "IFNA":
        return at(0);
      case "XLOOKUP":
        return at(2);
      case "CHOOSE":
        return agreed(args.map((_, index) => index).slice(1));
      case "INDEX": {
        const table = at(0);
        if (!table || "kind" in table) return table;
        const column = args[2];
        return column?.kind === "number" ? of(table.columns[column.value - 1]) : undefined;
      }
      case "CHOOSECOLS": {
        const table = at(0);
        if (!table || "kind" in table) return table;
        const column = args[1];
        return args.length === 2 && column?.kind === "number" ? of(table.columns[column.value - 1]) : undefined;
      }
      case "LET": {
        const inside = new Map(locals);
        for (let index = 0; index + 1 < args.length; index += 2) {
          const local = args[index]!;
          if (local.kind === "name")
            inside.set(local.name.toLowerCase(), this.expression(args[index + 1]!, home, inside));
        }
        return args.length === 0 ? undefined : this.expression(args[args.length - 1]!, home, inside);
      }
      case "TODAY":
        return { kind: "date" };
      case "NOW":
        return { kind: "date-time" };
      case "COUNT":
      case "COUNTA":
      case "COUNTIF":
      case "COUNTIFS":
      case "ROWS":
      case "COLUMNS":
        return { kind: "count" };
      case "TEXT":
        return { kind: "text" };
      case "AND":
      case "OR":
      case "NOT":
        return { kind: "flag" };
    }
    if (keepsAll.has(name)) return agreed(args.map((_, index) => index));
    if (name === "AVERAGEIF" || name === "SUMIF") return args.length === 3 ? at(2) : at(0);
    return keepsFirst.has(name) ? at(0) : undefined;
  }

  private operation(
    { operator, sides }: Extract<Expression, { kind: "operation" }>,
    home: string,
    locals: ReadonlyMap<string, Traced>,
  ): Traced {
    if (operator === "negative") return this.expression(sides[0]!, home, locals);
    if (operator === "&") return { kind: "text" };
    if (/[=<>]/.test(operator)) return { kind: "flag" };
    if (sides.length !== 2) return undefined;
    const kindOf = (side: Expression): Kind | undefined => {
      const traced = this.expression(side, home, locals);
      return traced && "kind" in traced ? traced.kind : undefined;
    };
    const [left, right] = [kindOf(sides[0]!), kindOf(sides[1]!)];
    const [leftFixed, rightFixed] = [isLiteral(sides[0]!), isLiteral(sides[1]!)];
    if (operator === "+" || operator === "-") {
      const isDate = (kind: Kind | undefined): boolean => kind !== undefined && kinds[kind].group === "date";
      if (isDate(left) && isDate(right)) return operator === "-" ? { kind: "days" } : undefined;
      if (isDate(left)) return of(left);
      if (left !== undefined && left === right) return of(left);
      if (rightFixed) return of(left);
      return leftFixed && operator === "+" ? of(right) : undefined;
    }
    const scales = (side: Expression, kind: Kind | undefined): boolean =>
      isLiteral(side)
        ? !(side.kind === "number" && unitFactors.has(Math.abs(side.value)))
        : kind !== undefined && (kinds[kind].group === "fraction" || kinds[kind].group === "count");
    if (operator === "*") {
      if (left !== undefined && scales(sides[1]!, right) && !sameGroup(left, right)) return of(left);
      if (right !== undefined && scales(sides[0]!, left) && !sameGroup(left, right)) return of(right);
      return undefined;
    }
    return operator === "/" && rightFixed && scales(sides[1]!, right) ? of(left) : undefined;
  }
}

const sameGroup = (one: Kind | undefined, other: Kind | undefined): boolean =>
  one !== undefined && other !== undefined && kinds[one].group === kinds[other].group;

const isLiteral = (side: Expression): boolean => side.kind === "number";
