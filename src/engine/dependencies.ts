import { areaOf, cellName, isInArea, overlaps, placeOf, type Area, type Place } from "../cells/addresses";
import { tokensOf } from "../cells/formulaTokens";
import type { SheetInput, TableInput, WorkbookNames } from "./workbookInput";

export interface CellOfSheet extends Place {
  readonly sheet: string;
}

export interface AreaOfSheet extends Area {
  readonly sheet: string;
}

/** Formulas that depend on each other, and one way round: each cell reads the one after it. */
export interface Circle {
  readonly cells: readonly CellOfSheet[];
  readonly way: readonly CellOfSheet[];
}

interface FormulaNode extends CellOfSheet {
  readonly formula: string;
  /** The area it filled when it was saved, its own cell at least. */
  readonly fills: Area;
}

const sheetOf = (prefix: string): string => prefix.replace(/^'([^]*)'$/, "$1").replace(/''/g, "'");

const rowsOf = (table: TableInput, part: string, row: number): { startRow: number; endRow: number } => {
  const { startRow, endRow } = areaOf(table.ref);
  if (/#this row|@/i.test(part) && row >= startRow && row <= endRow) return { startRow: row, endRow: row };
  if (/#all/i.test(part)) return { startRow, endRow };
  if (/#headers/i.test(part) && !/#data/i.test(part)) return { startRow, endRow: startRow };
  return { startRow: Math.min(startRow + 1, endRow), endRow };
};

/** The columns a structured reference names; all where it names none. */
const columnsOf = (table: TableInput, part: string): { startColumn: number; endColumn: number } => {
  const { startColumn, endColumn } = areaOf(table.ref);
  const plain = part.replace(/'(.)/g, "$1").toLowerCase();
  const named = table.columns.flatMap((column, index) => (plain.includes(column.toLowerCase()) ? [index] : []));
  if (named.length === 0) return { startColumn, endColumn };
  return { startColumn: startColumn + Math.min(...named), endColumn: startColumn + Math.max(...named) };
};

/**
 * Which cells the formulas of a workbook read, as far as their texts tell: references, names and tables; what INDIRECT and
 * OFFSET reach is not in a text. A cell that a formula fills counts as that formula.
 */
export class Dependencies {
  private readonly formulas: FormulaNode[] = [];
  /** By sheet in small letters, column and rising row. */
  private readonly byColumn = new Map<string, Map<number, FormulaNode[]>>();
  private readonly spills = new Map<string, FormulaNode[]>();
  private readonly names: ReadonlyMap<string, string>;
  private readonly tables: ReadonlyMap<string, TableInput>;
  private readonly areasOfNames = new Map<string, AreaOfSheet[]>();

  constructor(sheets: readonly SheetInput[], { names = {}, tables = [] }: WorkbookNames) {
    this.names = new Map(Object.entries(names).map(([name, content]) => [name.toUpperCase(), content]));
    this.tables = new Map(tables.map((table) => [table.name.toUpperCase(), table]));
    for (const { name: sheet, cells } of sheets) {
      const columns = new Map<number, FormulaNode[]>();
      this.byColumn.set(sheet.toLowerCase(), columns);
      for (const [address, cell] of Object.entries(cells)) {
        if (cell.formula === undefined) continue;
        const place = placeOf(address);
        const node = { sheet, ...place, formula: cell.formula, fills: areaOf(cell.ref ?? address) };
        this.formulas.push(node);
        if (!columns.has(place.column)) columns.set(place.column, []);
        columns.get(place.column)!.push(node);
        if (cell.ref?.includes(":")) {
          const key = sheet.toLowerCase();
          this.spills.set(key, [...(this.spills.get(key) ?? []), node]);
        }
      }
      for (const nodes of columns.values()) nodes.sort((one, other) => one.row - other.row);
    }
  }

  /** The areas that a formula in a cell reads. */
  areasIn(formula: string, home: CellOfSheet, seen: ReadonlySet<string> = new Set()): AreaOfSheet[] {
    const areas: AreaOfSheet[] = [];
    for (const { kind, text } of tokensOf(formula)) {
      if (kind === "name") areas.push(...this.areasOfName(text, home, seen));
      if (kind !== "reference") continue;
      const bracket = text.indexOf("[");
      const mark = text.lastIndexOf("!");
      if (bracket >= 0 && bracket > mark) areas.push(...this.areaOfTable(text, bracket, home));
      else {
        try {
          areas.push({ sheet: mark < 0 ? home.sheet : sheetOf(text.slice(0, mark)), ...areaOf(text.slice(mark + 1)) });
        } catch {
          areas.push(...this.areasOfName(text.slice(mark + 1), home, seen));
        }
      }
    }
    return areas;
  }

  private areasOfName(name: string, home: CellOfSheet, seen: ReadonlySet<string>): AreaOfSheet[] {
    const upper = name.toUpperCase();
    const content = this.names.get(upper);
    if (content === undefined || seen.has(upper)) return [];
    const known = this.areasOfNames.get(upper);
    if (known) return known;
    const areas = this.areasIn(content, home, new Set([...seen, upper]));
    this.areasOfNames.set(upper, areas);
    return areas;
  }

  private areaOfTable(text: string, bracket: number, home: CellOfSheet): AreaOfSheet[] {
    const named = text.slice(0, bracket).toUpperCase();
    const table =
      this.tables.get(named) ??
      [...this.tables.values()].find(({ sheet, ref }) => sheet === home.sheet && isInArea(home, areaOf(ref)));
    if (!table) return [];
    const part = text.slice(bracket);
    return [{ sheet: table.sheet, ...rowsOf(table, part, home.row), ...columnsOf(table, part) }];
  }

  /** The formulas whose cells lie in an area, spilled cells included. */
  private *formulasIn(area: AreaOfSheet): Generator<FormulaNode> {
    const sheet = area.sheet.toLowerCase();
    const columns = this.byColumn.get(sheet);
    if (!columns) return;
    const isWide = area.endColumn - area.startColumn >= columns.size;
    const wanted = isWide
      ? [...columns.keys()].filter((column) => column >= area.startColumn && column <= area.endColumn)
      : Array.from({ length: area.endColumn - area.startColumn + 1 }, (_, index) => area.startColumn + index);
    for (const column of wanted) {
      const nodes = columns.get(column);
      if (!nodes) continue;
      let [low, high] = [0, nodes.length];
      while (low < high) {
        const middle = (low + high) >> 1;
        if (nodes[middle]!.row < area.startRow) low = middle + 1;
        else high = middle;
      }
      for (let at = low; at < nodes.length && nodes[at]!.row <= area.endRow; at++) yield nodes[at]!;
    }
    for (const spill of this.spills.get(sheet) ?? []) {
      if (!isInArea(spill, area) && overlaps(spill.fills, area)) yield spill;
    }
  }

  private *readBy(node: FormulaNode): Generator<FormulaNode> {
    for (const area of this.areasIn(node.formula, node)) yield* this.formulasIn(area);
  }

  /** Formulas that depend on themselves, in groups; Tarjan's algorithm (SIAM J. Comput. 1, 1972). */
  circles(): Circle[] {
    const order = new Map<FormulaNode, number>();
    const lowest = new Map<FormulaNode, number>();
    const stack: FormulaNode[] = [];
    const isOnStack = new Set<FormulaNode>();
    const found: Circle[] = [];
    for (const root of this.formulas) {
      if (order.has(root)) continue;
      const work: { node: FormulaNode; next: Generator<FormulaNode> }[] = [];
      const enter = (node: FormulaNode): void => {
        order.set(node, order.size);
        lowest.set(node, order.get(node)!);
        stack.push(node);
        isOnStack.add(node);
        work.push({ node, next: this.readBy(node) });
      };
      enter(root);
      while (work.length > 0) {
        const { node, next } = work[work.length - 1]!;
        const { value, done } = next.next();
        if (!done) {
          if (!order.has(value)) enter(value);
          else if (isOnStack.has(value)) lowest.set(node, Math.min(lowest.get(node)!, order.get(value)!));
          continue;
        }
        work.pop();
        const above = work[work.length - 1]?.node;
        if (above) lowest.set(above, Math.min(lowest.get(above)!, lowest.get(node)!));
        if (lowest.get(node) !== order.get(node)) continue;
        const group: FormulaNode[] = [];
        let member: FormulaNode;
        do {
          member = stack.pop()!;
          isOnStack.delete(member);
          group.push(member);
        } while (member !== node);
        if (group.length > 1 || this.readsItself(node)) found.push({ cells: group, way: this.wayRound(group) });
      }
    }
    return found;
  }

  /** The shortest way from a formula of a group back to it. */
  private wayRound(group: readonly FormulaNode[]): CellOfSheet[] {
    const start = group[group.length - 1]!;
    const members = new Set(group);
    const cameFrom = new Map<FormulaNode, FormulaNode>();
    const open = [start];
    for (let at = 0; at < open.length; at++) {
      for (const next of this.readBy(open[at]!)) {
        if (next === start) {
          const way = [open[at]!];
          while (way[0] !== start) way.unshift(cameFrom.get(way[0]!)!);
          return [...way, start];
        }
        if (!members.has(next) || cameFrom.has(next)) continue;
        cameFrom.set(next, open[at]!);
        open.push(next);
      }
    }
    return [start];
  }

  private readsItself(node: FormulaNode): boolean {
    for (const other of this.readBy(node)) if (other === node) return true;
    return false;
  }

  /** Does the formula in a cell depend, by any way, on one of these cells? */
  dependsOn(home: CellOfSheet, formula: string, changed: readonly CellOfSheet[]): boolean {
    const seen = new Set<FormulaNode>();
    const open: { sheet: string; row: number; column: number; formula: string }[] = [{ ...home, formula }];
    while (open.length > 0) {
      const node = open.pop()!;
      for (const area of this.areasIn(node.formula, node)) {
        const isChanged = changed.some(
          (cell) => cell.sheet.toLowerCase() === area.sheet.toLowerCase() && isInArea(cell, area),
        );
        if (isChanged) return true;
        for (const next of this.formulasIn(area)) {
          if (seen.has(next)) continue;
          seen.add(next);
          open.push(next);
        }
      }
    }
    return false;
  }
}

export const fullAddress = ({ sheet, row, column }: CellOfSheet): string => `${sheet}!${cellName(row, column)}`;
