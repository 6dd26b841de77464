import { placeOf } from "../cells/addresses";
import { type FormulaNode, parseFormula } from "../cells/formulaTree";

/** Rows and columns from 0, both ends included; a whole column or row runs to the sheet's edge. */
export interface Reference {
  readonly kind: "reference";
  /** Undefined for the formula's own sheet. */
  readonly sheet: string | undefined;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  /** A1#: the whole result of the formula in the first cell. */
  readonly spill: boolean;
  /** As written, for words. */
  readonly text: string;
}

export type Expression =
  | Reference
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "text"; readonly value: string }
  | { readonly kind: "truth"; readonly value: boolean }
  | { readonly kind: "error"; readonly value: string }
  | { readonly kind: "omitted" }
  | { readonly kind: "array"; readonly items: readonly Expression[] }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "call"; readonly name: string; readonly args: readonly Expression[] }
  | { readonly kind: "operation"; readonly operator: string; readonly sides: readonly Expression[] }
  | { readonly kind: "unknown" };

const lastRow = 1_048_575;
const lastColumn = 16_383;
const unknown: Expression = { kind: "unknown" };

const sheetAndCells =
  /^(?:(.*)!)?(\$?[A-Za-z]{1,3}\$?\d+|\$?[A-Za-z]{1,3}|\$?\d+)(?::(\$?[A-Za-z]{1,3}\$?\d+|\$?[A-Za-z]{1,3}|\$?\d+))?$/;

const end = (text: string, last: boolean): { row: number; column: number } => {
  const plain = text.replace(/\$/g, "");
  if (/^\d+$/.test(plain)) return { row: Number(plain) - 1, column: last ? lastColumn : 0 };
  if (/^[A-Za-z]+$/.test(plain)) return { row: last ? lastRow : 0, column: placeOf(`${plain}1`).column };
  return placeOf(plain);
};

/** "Inputs!$B$4:B9" as a reference, or undefined where the text is none. */
export function referenceOf(text: string): Reference | undefined {
  const match = sheetAndCells.exec(text.trim());
  if (!match) return undefined;
  const [, prefix, from, to] = match;
  if (to === undefined && !/[A-Za-z]\$?\d/.test(from!)) return undefined;
  const [start, finish] = [end(from!, false), end(to ?? from!, true)];
  const sheet = prefix === undefined ? undefined : prefix.replace(/^'(.*)'$/, "$1").replace(/''/g, "'");
  return {
    kind: "reference",
    sheet,
    top: Math.min(start.row, finish.row),
    left: Math.min(start.column, finish.column),
    bottom: Math.max(start.row, finish.row),
    right: Math.max(start.column, finish.column),
    spill: false,
    text: text.trim(),
  };
}

const numberText = /^(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

function operandOf(text: string): Expression {
  if (numberText.test(text)) return { kind: "number", value: Number(text) };
  if (text.charAt(0) === '"') return { kind: "text", value: text.slice(1, -1).replace(/""/g, '"') };
  if (text.charAt(0) === "#") return { kind: "error", value: text.toUpperCase() };
  if (text.charAt(0) === "{") {
    const inside = text.slice(1, -1);
    const items = inside.match(/"(?:[^"]|"")*"|[^,;]+/g) ?? [];
    return { kind: "array", items: items.map((item) => parse(parseFormula(item.trim()))) };
  }
  return referenceOf(text) ?? unknown;
}

function single(node: FormulaNode): Expression {
  switch (node.kind) {
    case "call":
      return {
        kind: "call",
        name: node.name.toUpperCase(),
        args: node.args.length === 1 && isBlank(node.args[0]!) ? [] : node.args.map((argument) => parse(argument)),
      };
    case "group":
      return parse(node.items);
    case "spill": {
      const of = single(node.of);
      return of.kind === "reference" ? { ...of, spill: true } : unknown;
    }
    case "single":
      return single(node.of);
    case "name": {
      const upper = node.text.toUpperCase();
      return upper === "TRUE" || upper === "FALSE"
        ? { kind: "truth", value: upper === "TRUE" }
        : { kind: "name", name: node.text };
    }
    default:
      return operandOf(node.text);
  }
}

const isBlank = (nodes: readonly FormulaNode[]): boolean =>
  nodes.every((node) => node.kind === "text" && node.text.trim() === "");

const isOperator = (node: FormulaNode): boolean => node.kind === "text" && /^[-+*/^&=<>%]$/.test(node.text);

/** Loosest first, as Excel binds them. */
const levels: readonly (readonly string[])[] = [
  ["=", "<>", "<", ">", "<=", ">="],
  ["&"],
  ["+", "-"],
  ["*", "/"],
  ["^"],
];

type Item = Expression | { readonly sign: string };
const isSign = (item: Item | undefined): item is { readonly sign: string } => item !== undefined && "sign" in item;

/** The items of a formula as one expression; what is not understood is "unknown". */
function parse(nodes: readonly FormulaNode[]): Expression {
  if (isBlank(nodes)) return { kind: "omitted" };
  const items: Item[] = [];
  for (const node of nodes) {
    if (node.kind === "text" && node.text.trim() === "") continue;
    if (!isOperator(node)) {
      items.push(single(node));
      continue;
    }
    const sign = (node as { text: string }).text;
    const before = items[items.length - 1];
    if (isSign(before) && /^[<>]$/.test(before.sign) && /^[=>]$/.test(sign)) {
      items[items.length - 1] = { sign: before.sign + sign };
    } else if (sign === "%" && before && !isSign(before)) {
      items[items.length - 1] =
        before.kind === "number"
          ? { kind: "number", value: before.value / 100 }
          : { kind: "operation", operator: "%", sides: [before] };
    } else items.push({ sign });
  }
  // Signs in front: "-A1", "--A1", "3*-2".
  for (let at = items.length - 1; at >= 0; at--) {
    const item = items[at];
    const before = items[at - 1];
    const after = items[at + 1];
    if (!isSign(item) || !/^[-+]$/.test(item.sign) || !after || isSign(after)) continue;
    if (before !== undefined && !isSign(before)) continue;
    const signed: Expression =
      item.sign === "+"
        ? after
        : after.kind === "number"
          ? { kind: "number", value: -after.value }
          : { kind: "operation", operator: "negative", sides: [after] };
    items.splice(at, 2, signed);
  }
  return climb(items, 0);
}

function climb(items: readonly Item[], level: number): Expression {
  if (items.length === 1) return isSign(items[0]) ? unknown : (items[0] as Expression);
  if (items.length === 0 || level === levels.length) return unknown;
  const operators = levels[level]!;
  for (let at = items.length - 1; at > 0; at--) {
    const item = items[at];
    if (!isSign(item) || operators.indexOf(item.sign) < 0) continue;
    return {
      kind: "operation",
      operator: item.sign,
      sides: [climb(items.slice(0, at), level), climb(items.slice(at + 1), level + 1)],
    };
  }
  return climb(items, level + 1);
}

/** The expression of a formula's text after "=". */
export const expressionOf = (formula: string): Expression => parse(parseFormula(formula));

/** Every expression inside one, itself first. */
export function expressionsIn(expression: Expression): Expression[] {
  const found: Expression[] = [expression];
  for (let at = 0; at < found.length; at++) {
    const each = found[at]!;
    if (each.kind === "call") found.push(...each.args);
    else if (each.kind === "operation") found.push(...each.sides);
    else if (each.kind === "array") found.push(...each.items);
  }
  return found;
}
