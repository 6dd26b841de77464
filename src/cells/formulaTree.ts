import { tokensOf, type TokenKind } from "./formulaTokens";

/**
 * A formula's text as a tree just deep enough to rename functions and names without touching texts, sheet names or
 * structured references. Whatever it does not understand it keeps as it stands, so printing a tree gives its text back.
 */
export type FormulaNode =
  | { kind: "text"; text: string; token: TokenKind }
  | { kind: "name"; text: string }
  | { kind: "call"; name: string; args: FormulaNode[][] }
  | { kind: "group"; items: FormulaNode[] }
  | { kind: "spill"; of: FormulaNode }
  | { kind: "single"; of: FormulaNode };

export type FormulaCall = Extract<FormulaNode, { kind: "call" }>;

const isOperand = (kind: TokenKind): boolean =>
  kind === "number" || kind === "quoted" || kind === "array" || kind === "error" || kind === "reference";

/** Reads a formula, with or without its "=". Unbalanced parentheses are closed at the end; nothing throws. */
export const parseFormula = (formula: string): FormulaNode[] => {
  const tokens = tokensOf(formula.replace(/^=/, ""));
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
        return { kind: "text", text: "@", token: "at" };
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
    const plain: FormulaNode = { kind: "text", text: token.text, token: token.kind };
    return isOperand(token.kind) ? spill(plain) : plain;
  };

  const until = (stops: TokenKind[]): FormulaNode[] => {
    const items: FormulaNode[] = [];
    while (at < tokens.length && stops.indexOf(tokens[at]!.kind) < 0) items.push(item());
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

/** The nodes that are no space. */
export const significant = (nodes: readonly FormulaNode[]): FormulaNode[] =>
  nodes.filter((node) => node.kind !== "text" || node.token !== "space");

const childrenOf = (node: FormulaNode): readonly FormulaNode[] => {
  switch (node.kind) {
    case "call":
      return ([] as FormulaNode[]).concat(...node.args);
    case "group":
      return node.items;
    case "spill":
    case "single":
      return [node.of];
    default:
      return [];
  }
};

/** Every node of a tree, each before what it holds. */
export const nodesIn = (nodes: readonly FormulaNode[]): FormulaNode[] => {
  const found: FormulaNode[] = [];
  const visit = (node: FormulaNode): void => {
    found.push(node);
    childrenOf(node).forEach(visit);
  };
  nodes.forEach(visit);
  return found;
};

/** Every function call of a tree, outermost first. */
export const callsIn = (nodes: readonly FormulaNode[]): FormulaCall[] =>
  nodesIn(nodes).filter((node): node is FormulaCall => node.kind === "call");
