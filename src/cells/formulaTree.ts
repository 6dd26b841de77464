/**
 * A formula's text as a tree just deep enough to rename functions and names without touching texts, sheet names or
 * structured references. Whatever it does not understand it keeps as it stands, so printing a tree gives its text back.
 */
export type FormulaNode =
  | { kind: "text"; text: string }
  | { kind: "name"; text: string }
  | { kind: "call"; name: string; args: FormulaNode[][] }
  | { kind: "group"; items: FormulaNode[] }
  | { kind: "spill"; of: FormulaNode }
  | { kind: "single"; of: FormulaNode };

type TokenKind = "space" | "operand" | "name" | "open" | "close" | "comma" | "hash" | "at" | "other";

interface Token {
  kind: TokenKind;
  text: string;
}

const space = /\s+/y;
const text = /"(?:[^"]|"")*"/y;
const arrayConstant = /\{(?:"(?:[^"]|"")*"|[^"}])*\}/y;
const number = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const errorValue = /#(?:N\/A|[A-Z_]+(?:\/0)?[!?]|GETTING_DATA)/iy;
const sheetPrefix = /(?:'(?:[^']|'')*'|(?:\[\d+\])?[\p{L}_][\p{L}\p{N}_.]*(?::[\p{L}_][\p{L}\p{N}_.]*)?)!/uy;
const cellOrArea =
  /\$?[A-Za-z]{1,3}\$?\d{1,7}(?::\$?[A-Za-z]{1,3}\$?\d{1,7})?(?![\p{L}\p{N}_.(!])|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}(?![\p{L}\p{N}_.(!])|\$?\d+:\$?\d+/uy;
const identifier = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/uy;
const optionalParameter = /\[\s*[\p{L}_\\][\p{L}\p{N}_.]*\s*\]/uy;

const match = (pattern: RegExp, formula: string, at: number): string | undefined => {
  pattern.lastIndex = at;
  return pattern.exec(formula)?.[0];
};

/** From "[" to its partner; an apostrophe in a structured reference escapes the character after it. */
const bracketed = (formula: string, start: number): string => {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    if (formula[at] === "'") at++;
    else if (formula[at] === "[") depth++;
    else if (formula[at] === "]" && --depth === 0) return formula.slice(start, at + 1);
  }
  return formula.slice(start);
};

const tokenise = (formula: string): Token[] => {
  const tokens: Token[] = [];
  let afterOperand = false;
  for (let at = 0; at < formula.length;) {
    const add = (kind: TokenKind, found: string): void => {
      tokens.push({ kind, text: found });
      at += found.length;
      if (kind !== "space") afterOperand = kind === "operand" || kind === "name" || kind === "close" || kind === "hash";
    };
    const blank = match(space, formula, at);
    if (blank) {
      add("space", blank);
      continue;
    }
    const character = formula.charAt(at);
    if (character === "#") {
      const error = afterOperand ? undefined : match(errorValue, formula, at);
      if (error) add("operand", error);
      else add("hash", "#");
      continue;
    }
    const whole = match(text, formula, at) ?? match(arrayConstant, formula, at);
    if (whole) {
      add("operand", whole);
      continue;
    }
    const prefix = match(sheetPrefix, formula, at) ?? "";
    const rest = at + prefix.length;
    const reference = match(cellOrArea, formula, rest) ?? (prefix && match(errorValue, formula, rest));
    if (reference) {
      add("operand", prefix + reference);
      continue;
    }
    const name = match(identifier, formula, rest);
    if (name) {
      const table = formula[rest + name.length] === "[" ? bracketed(formula, rest + name.length) : "";
      add(prefix || table ? "operand" : "name", prefix + name + table);
      continue;
    }
    const digits = match(number, formula, at);
    if (digits) add("operand", digits);
    else if (character === "[") add("name", match(optionalParameter, formula, at) ?? bracketed(formula, at));
    else if (character === "(") add("open", character);
    else if (character === ")") add("close", character);
    else if (character === ",") add("comma", character);
    else if (character === "@") add("at", character);
    else add("other", character);
  }
  return tokens;
};

/** Reads the text after "=". Unbalanced parentheses are closed at the end; nothing throws. */
export const parseFormula = (formula: string): FormulaNode[] => {
  const tokens = tokenise(formula);
  let at = 0;

  const spill = (node: FormulaNode): FormulaNode => {
    let result = node;
    while (tokens[at]?.kind === "hash") {
      at++;
      result = { kind: "spill", of: result };
    }
    return result;
  };

  const item = (): FormulaNode => {
    const token = tokens[at++]!;
    if (token.kind === "at") {
      const next = tokens[at];
      if (!next || next.kind === "close" || next.kind === "comma" || next.kind === "space") {
        return { kind: "text", text: "@" };
      }
      return { kind: "single", of: item() };
    }
    if (token.kind === "name" && tokens[at]?.kind === "open") {
      at++;
      const args: FormulaNode[][] = [until(["comma", "close"])];
      while (tokens[at]?.kind === "comma") {
        at++;
        args.push(until(["comma", "close"]));
      }
      at++;
      return spill({ kind: "call", name: token.text, args });
    }
    if (token.kind === "open") {
      const items = until(["close"]);
      at++;
      return spill({ kind: "group", items });
    }
    if (token.kind === "name") return spill({ kind: "name", text: token.text });
    const plain: FormulaNode = { kind: "text", text: token.text };
    return token.kind === "operand" ? spill(plain) : plain;
  };

  const until = (stops: TokenKind[]): FormulaNode[] => {
    const items: FormulaNode[] = [];
    while (at < tokens.length && !stops.includes(tokens[at]!.kind)) items.push(item());
    return items;
  };

  return until([]);
};

export const printFormula = (nodes: readonly FormulaNode[]): string =>
  nodes
    .map((node): string => {
      switch (node.kind) {
        case "call":
          return `${node.name}(${node.args.map(printFormula).join(",")})`;
        case "group":
          return `(${printFormula(node.items)})`;
        case "spill":
          return `${printFormula([node.of])}#`;
        case "single":
          return `@${printFormula([node.of])}`;
        default:
          return node.text;
      }
    })
    .join("");

/** Every function call of a tree, outermost first. */
export const callsIn = (nodes: readonly FormulaNode[]): Extract<FormulaNode, { kind: "call" }>[] =>
  nodes.flatMap((node) => {
    switch (node.kind) {
      case "call":
        return [node, ...node.args.flatMap(callsIn)];
      case "group":
        return callsIn(node.items);
      case "spill":
      case "single":
        return callsIn([node.of]);
      default:
        return [];
    }
  });
