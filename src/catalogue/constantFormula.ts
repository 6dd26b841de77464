import { type CellCall } from "../cells/cellValues";
import { tokensOf, unquoted, type FormulaToken } from "../cells/formulaTokens";
import { namespace } from "../cells/namespace";
import { readNumber } from "../cells/numberText";
import type { FunctionRecord } from "./record";

/** A formula of OXYGEN calls and constants, as examples are written: no cell references, no operators but a sign. */
export type Constant = number | string | boolean | null;
export interface Call {
  id: string;
  /** One 2-D array an argument, or a nested call; omitted arguments are undefined. */
  args: (Constant[][] | Call | undefined)[];
}

const isCall = (part: unknown): part is Call => typeof part === "object" && part !== null && "id" in part;

/** Parses `=OXYGEN.ID(…)`; throws on anything else. */
export function parseConstantFormula(formula: string): Call {
  let tokens: FormulaToken[] = [];
  let at = 0;
  const read = (text: string): void => {
    tokens = tokensOf(text).filter(({ kind }) => kind !== "space");
    at = 0;
  };
  const fail = (wanted: string): never => {
    const rest = tokens.slice(at).map(({ text }) => text);
    throw new Error(`${formula}: ${wanted} wanted at "${rest.join("").slice(0, 20)}"`);
  };
  const isNext = (text: string): boolean => tokens[at]?.text === text;
  const take = (...texts: string[]): string | undefined => (texts.some(isNext) ? tokens[at++]!.text : undefined);

  function constant(): Constant {
    const sign = take("-", "+");
    const token = tokens[at++];
    const value = token?.kind === "number" ? readNumber(token.text) : undefined;
    if (value !== undefined) return (sign === "-" ? -value : value) / (take("%") ? 100 : 1);
    if (sign === undefined && token?.kind === "quoted" && !token.isOpen) return unquoted(token.text);
    if (sign === undefined && /^(?:TRUE|FALSE)$/i.test(token?.text ?? "")) return token!.text.toUpperCase() === "TRUE";
    at--;
    return fail("a constant");
  }

  function array(text: string): Constant[][] {
    const [outer, position] = [tokens, at];
    read(text.slice(1, -1));
    const rows: Constant[][] = [[constant()]];
    while (at < tokens.length) {
      const mark = take(",", ";") ?? fail("a comma or semicolon");
      if (mark === ";") rows.push([]);
      rows[rows.length - 1]!.push(constant());
    }
    [tokens, at] = [outer, position];
    return rows;
  }

  const isOurs = (token: FormulaToken | undefined): boolean =>
    token?.kind === "name" && token.text.startsWith(`${namespace}.`);

  function call(): Call {
    if (!isOurs(tokens[at])) fail(`${namespace}.ID`);
    const id = tokens[at++]!.text.slice(namespace.length + 1);
    if (take("(") === undefined) fail("(");
    const args: Call["args"] = [];
    if (take(")") !== undefined) return { id, args };
    for (;;) {
      const token = tokens[at];
      if (isNext(",") || isNext(")")) args.push(undefined);
      else if (isOurs(token)) args.push(call());
      else if (token?.kind === "array" && !token.isOpen) {
        at++;
        args.push(array(token.text));
      } else args.push([[constant()]]);
      if ((take(",", ")") ?? fail("a comma or )")) === ")") return { id, args };
    }
  }

  if (!formula.startsWith("=")) fail("=");
  read(formula.slice(1));
  const parsed = call();
  if (at !== tokens.length) fail("the end");
  return parsed;
}

export type CallById = (id: string) => CellCall | undefined;

/** The 2-D arrays a call hands over, nested calls evaluated. */
export function argumentCells(call: Call, byId: CallById): (unknown[][] | undefined)[] {
  return call.args.map((part) => (isCall(part) ? evaluateCall(part, byId) : part));
}

export function evaluateCall(call: Call, byId: CallById): unknown[][] {
  const target = byId(call.id);
  if (!target) throw new Error(`no function ${call.id}`);
  return target(...argumentCells(call, byId));
}

/** The call of a function's first example. */
export const firstExample = (record: FunctionRecord): Call => parseConstantFormula(record.examples[0]!.formula);
