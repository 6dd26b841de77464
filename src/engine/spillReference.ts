import {
  BaseFunction,
  BaseReferenceObject,
  ErrorValueObject,
  ErrorType,
  NullValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";
import type { IRange } from "@univerjs/core";
import { parseFormula, printFormula, significant, type FormulaNode } from "../cells/formulaTree";
import { namespace } from "../cells/namespace";

type AnyValue = BaseValueObject | BaseReferenceObject;

const isReference = (value: AnyValue): value is BaseReferenceObject => value.isReferenceObject();

const isOneCell = ({ startRow, startColumn, endRow, endColumn }: IRange): boolean =>
  startRow === endRow && startColumn === endColumn;

/** `ANCHORARRAY(D4)`, what `D4#` means: the cells that the formula in D4 fills now. */
export class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  override calculate(anchor: AnyValue): BaseValueObject {
    if (anchor.isError()) return anchor as BaseValueObject;
    if (!isReference(anchor)) return ErrorValueObject.create(ErrorType.REF);
    const position = anchor.getRangePosition();
    if (!isOneCell(position)) return ErrorValueObject.create(ErrorType.REF);
    const { startRow: row, startColumn: column } = position;
    const cell = anchor.getCurrentActiveSheetData()?.cellData.getValue(row, column);
    if (!cell?.f && !cell?.si) return ErrorValueObject.create(ErrorType.REF);
    const now = anchor.getCurrentRuntimeActiveArrayFormulaRange()?.[row]?.[column];
    const isComputed = anchor.getCurrentRuntimeSheetData()?.getValue(row, column) != null;
    const before = anchor.getCurrentActiveArrayFormulaRange()?.[row]?.[column];
    const range = now ?? (isComputed ? undefined : before) ?? position;
    const first = anchor.getFirstCell();
    // An anchor that can't spill shows its error alone; its neighbours belong to others.
    const isBlocked = first.isError() && String(first.getValue()) === "#SPILL!";
    return this.createReferenceObject(anchor, isBlocked ? position : range) as unknown as BaseValueObject;
  }
}

/** `SINGLE(x)`, what `@x` means: of a range the cell in this row or column, of an array its first value. */
export class Single extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  override calculate(value: AnyValue): BaseValueObject {
    if (value.isError()) return value as BaseValueObject;
    if (!isReference(value)) {
      return value.isArray() ? (value as unknown as { getFirstCell(): BaseValueObject }).getFirstCell() : value;
    }
    const range = value.getRangePosition();
    const one = (row: number, column: number): BaseValueObject =>
      this.createReferenceObject(value, {
        startRow: row,
        endRow: row,
        startColumn: column,
        endColumn: column,
      }) as unknown as BaseValueObject;
    if (isOneCell(range)) return one(range.startRow, range.startColumn);
    if (range.startColumn === range.endColumn && this.row >= range.startRow && this.row <= range.endRow) {
      return one(this.row, range.startColumn);
    }
    if (range.startRow === range.endRow && this.column >= range.startColumn && this.column <= range.endColumn) {
      return one(range.startRow, this.column);
    }
    return ErrorValueObject.create(ErrorType.VALUE);
  }
}

/** What stands for an argument that is left out of a formula. */
export const omitted = new NullValueObject(0);

/** `OMITTED()`, what `,,` means in a call of ours. */
export class Omitted extends BaseFunction {
  override minParams = 0;
  override maxParams = 0;

  override calculate(): BaseValueObject {
    return omitted;
  }
}

/** Is this a name right behind a minus sign? The engine takes "-Rate" for one unknown name. */
const isNegatedName = (nodes: readonly FormulaNode[], index: number): boolean => {
  const node = nodes[index]!;
  const before = significant(nodes.slice(0, index)).at(-1);
  return node.kind === "name" && !node.text.startsWith("[") && before?.kind === "text" && before.text === "-";
};

const omittedCall: FormulaNode = { kind: "call", name: "OMITTED", args: [[]] };

const withCalls = (nodes: readonly FormulaNode[]): FormulaNode[] =>
  nodes.map((node, index): FormulaNode => {
    if (isNegatedName(nodes, index)) return { kind: "group", items: [node] };
    switch (node.kind) {
      case "spill":
        return { kind: "call", name: "ANCHORARRAY", args: [withCalls([node.of])] };
      case "single":
        return { kind: "call", name: "SINGLE", args: [withCalls([node.of])] };
      case "call": {
        const isOurs = node.name.toUpperCase().startsWith(`${namespace}.`) && node.args.length > 1;
        return {
          ...node,
          args: node.args.map((argument) =>
            isOurs && significant(argument).length === 0 ? [omittedCall] : withCalls(argument),
          ),
        };
      }
      case "group":
        return { kind: "group", items: withCalls(node.items) };
      default:
        return node;
    }
  });

/**
 * The formula with `D4#` as ANCHORARRAY(D4), `@x` as SINGLE(x) and `-Rate` as -(Rate), the only forms the engine computes,
 * and with OMITTED() where a function of ours is given nothing between two commas, which the engine takes for a blank cell.
 */
export const spellOutOperators = (formula: string): string =>
  /[#@]|-\s*[\p{L}_\\]|[,(]\s*,|,\s*\)/u.test(formula) ? `=${printFormula(withCalls(parseFormula(formula)))}` : formula;
