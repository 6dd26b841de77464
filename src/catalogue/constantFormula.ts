import { type CellCall } from "../cells/cellValues";
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
  let at = 0;
  const fail = (wanted: string): never => {
    throw new Error(`${formula}: ${wanted} wanted at "${formula.slice(at, at + 20)}"`);
  };
  const skip = (): void => {
    while (formula[at] === " ") at++;
  };
  const take = (pattern: RegExp): string | undefined => {
    skip();
    const match = new RegExp(pattern.source, "y" + pattern.flags);
    match.lastIndex = at;
    const found = match.exec(formula)?.[0];
    if (found !== undefined) at += found.length;
    return found;
  };
  const expect = (pattern: RegExp, wanted: string): string => take(pattern) ?? fail(wanted);

  function constant(): Constant {
    const quoted = take(/"(?:[^"]|"")*"/);
    if (quoted !== undefined) return quoted.slice(1, -1).replace(/""/g, '"');
    const flag = take(/TRUE|FALSE/i);
    if (flag !== undefined) return flag.toUpperCase() === "TRUE";
    const percent = take(/[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?%?/i);
    if (percent === undefined) return fail("a constant");
    return percent.endsWith("%") ? Number(percent.slice(0, -1)) / 100 : Number(percent);
  }

  function array(): Constant[][] {
    const rows: Constant[][] = [[constant()]];
    for (;;) {
      const mark = expect(/[,;}]/, "a comma, semicolon or brace");
      if (mark === "}") return rows;
      if (mark === ";") rows.push([]);
      rows[rows.length - 1]!.push(constant());
    }
  }

  function call(): Call {
    const id = expect(/OXYGEN\.[A-Z0-9_]+/, "OXYGEN.ID").slice("OXYGEN.".length);
    expect(/\(/, "(");
    const args: Call["args"] = [];
    if (take(/\)/) !== undefined) return { id, args };
    for (;;) {
      skip();
      if (formula[at] === "," || formula[at] === ")") args.push(undefined);
      else if (formula.startsWith("OXYGEN.", at)) args.push(call());
      else if (take(/\{/) !== undefined) args.push(array());
      else args.push([[constant()]]);
      if (expect(/[,)]/, "a comma or )") === ")") return { id, args };
    }
  }

  expect(/=/, "=");
  const parsed = call();
  skip();
  if (at !== formula.length) fail("the end");
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
