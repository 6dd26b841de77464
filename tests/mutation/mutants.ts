import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { projectFolder } from "../../src/tooling/build";

/** One small mistake in one file: a stretch of its text replaced. */
export interface Mutant {
  /** Path below the project, with "/". */
  readonly file: string;
  readonly kind: Kind;
  readonly start: number;
  readonly end: number;
  readonly from: string;
  readonly to: string;
  readonly line: number;
}

export type Kind =
  | "operator"
  | "comparison"
  | "logic"
  | "constant"
  | "guard"
  | "rounding"
  | "argument ignored"
  | "limit removed"
  | "sort removed";

const layers = ["models", "arguments", "functions", "cells", "check"];

const operators: Readonly<Record<string, string>> = { "+": "-", "-": "+", "*": "/", "/": "*", "%": "*", "**": "*" };
const comparisons: Readonly<Record<string, string>> = {
  "<": "<=",
  "<=": "<",
  ">": ">=",
  ">=": ">",
  "===": "!==",
  "!==": "===",
};
const logic: Readonly<Record<string, string>> = { "&&": "||", "||": "&&" };
const roundings: Readonly<Record<string, string>> = { ceil: "floor", floor: "ceil", round: "floor", trunc: "ceil" };
const extremes: Readonly<Record<string, string>> = { max: "min", min: "max" };

/** What narrows an argument: methods of the readers, and functions that a read value goes through. */
const limiting = new Set([
  "positive",
  "atLeast",
  "atMost",
  "between",
  "aboveTo",
  "fromToBelow",
  "inside",
  "whole",
  "doubted",
]);

/** Words, types and examples: not what these mutants are about. */
const isLeftAlone = (node: ts.Node): boolean =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node) ||
  ts.isTemplateExpression(node) ||
  ts.isThrowStatement(node) ||
  (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.name.text === "about") ||
  (ts.isCallExpression(node) &&
    ts.isIdentifier(node.expression) &&
    /^(?:invalid|noAnswer|inWords)$/.test(node.expression.text));

function mutantsOf(file: string): Mutant[] {
  const text = readFileSync(path.join(projectFolder, file), "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Mutant[] = [];
  const add = (kind: Kind, start: number, end: number, to: string): void => {
    const from = text.slice(start, end);
    if (from !== to)
      found.push({ file, kind, start, end, from, to, line: source.getLineAndCharacterOfPosition(start).line + 1 });
  };
  const replace = (kind: Kind, node: ts.Node, to: string): void => add(kind, node.getStart(source), node.end, to);

  const optionalOf = (node: ts.Node): Set<string> => {
    let around: ts.Node | undefined = node;
    while (around && !ts.isFunctionDeclaration(around)) around = around.parent;
    return new Set(around?.parameters.filter((each) => each.questionToken).map((each) => each.name.getText(source)));
  };

  const visit = (node: ts.Node): void => {
    if (isLeftAlone(node)) return;
    if (ts.isBinaryExpression(node)) {
      const sign = node.operatorToken.getText(source);
      const isWords = [node.left, node.right].some(
        (side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side),
      );
      if (operators[sign] && !(sign === "+" && isWords)) replace("operator", node.operatorToken, operators[sign]);
      if (comparisons[sign]) replace("comparison", node.operatorToken, comparisons[sign]);
      if (logic[sign]) replace("logic", node.operatorToken, logic[sign]);
      if (sign === "??") replace("guard", node, node.right.getText(source));
    }
    if (ts.isNumericLiteral(node)) {
      const value = Number(node.text);
      // Small whole numbers count places and steps, where a hundredth is cut off again.
      const isSmall = Number.isInteger(value) && value <= 10;
      replace("constant", node, isSmall ? `${value + 1}` : `(${node.getText(source)} * 1.01)`);
      if (value !== 0) replace("constant", node, isSmall ? `${value - 1}` : `(${node.getText(source)} * 0.99)`);
    }
    if (ts.isIfStatement(node)) {
      const then = ts.isBlock(node.thenStatement) ? node.thenStatement.statements.at(-1) : node.thenStatement;
      if (then && (ts.isReturnStatement(then) || ts.isContinueStatement(then)))
        replace("guard", node.expression, "false as boolean");
    }
    if (ts.isConditionalExpression(node)) replace("guard", node.condition, "(false as boolean)");
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
      replace("logic", node, node.operand.getText(source));
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name, expression } = node.expression;
      const receiver = expression.getText(source);
      if (limiting.has(name.text) && receiver !== "this") replace("limit removed", node, receiver);
      if (name.text === "sort") replace("sort removed", node, receiver);
      if (receiver === "Math" && roundings[name.text]) replace("rounding", name, roundings[name.text]!);
      if (receiver === "Math" && extremes[name.text]) replace("rounding", name, extremes[name.text]!);
    }
    if (
      ts.isCallExpression(node) &&
      /^(?:eachCell|wholeTable)$/.test(node.expression.getText(source)) &&
      node.arguments[1] &&
      ts.isArrayLiteralExpression(node.arguments[1])
    ) {
      const optional = optionalOf(node);
      for (const element of node.arguments[1].elements)
        if (optional.has(element.getText(source))) replace("argument ignored", element, "undefined");
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Draws with a seed: mulberry32 (public domain, from memory). */
export const drawing = (seed: number) => (): number => {
  seed = (seed + 0x6d2b79f5) | 0;
  let mixed = Math.imul(seed ^ (seed >>> 15), seed | 1);
  mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
};

/** Every mutant of the layers, in order of file and place. */
export const allMutants = (): Mutant[] =>
  layers.flatMap((layer) =>
    readdirSync(path.join(projectFolder, "src", layer), { recursive: true, encoding: "utf8" })
      .map((file) => `src/${layer}/${file.split(path.sep).join("/")}`)
      .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts") && !file.includes("/generated/"))
      .sort()
      .flatMap(mutantsOf),
  );

/** A seeded sample; where there is room for both, every mutant of the two kinds that must not survive is in it. */
export function sample(mutants: readonly Mutant[], count: number, seed: number): Mutant[] {
  const draw = drawing(seed);
  const shuffled = mutants.map((mutant) => ({ mutant, at: draw() })).sort((a, b) => a.at - b.at);
  const first = ({ mutant: { kind } }: { mutant: Mutant }): number =>
    kind === "argument ignored" || kind === "limit removed" ? 0 : 1;
  if (count >= 1000) shuffled.sort((a, b) => first(a) - first(b));
  return shuffled.slice(0, count).map(({ mutant }) => mutant);
}
