import { findRecord } from "../catalogue/catalogue";
import { parseConstantFormula } from "../catalogue/constantFormula";
import type { FunctionRecord } from "../catalogue/record";
import {
  callsIn,
  nodesIn,
  parseFormula,
  printFormula,
  significant,
  type FormulaCall,
  type FormulaNode,
} from "../cells/formulaTree";
import { isCellDate, isErrorCell } from "../cells/cellValues";
import { isErrorCode } from "../cells/errorCodes";
import { namespace } from "../cells/namespace";
import { callOf } from "./functionForm";

/** One argument of a call, with what it holds now. */
export interface ExplainedArgument {
  readonly name: string;
  readonly description: string;
  readonly unit: string;
  /** As it stands in the formula; "" where it is left out. */
  readonly text: string;
  /** Undefined where it is left out or can't be told here. */
  readonly cells?: unknown[][];
  /** Why its value can't be told. */
  readonly untold?: string;
}

export interface ExplainedCall {
  readonly record: FunctionRecord;
  readonly text: string;
  readonly arguments: readonly ExplainedArgument[];
  /** The answer computed again here; undefined when some argument can't be told. */
  readonly result?: unknown[][];
}

const prefix = `${namespace}.`;

const recordOf = (call: FormulaCall): FunctionRecord | undefined => {
  const name = call.name.toUpperCase();
  return name.startsWith(prefix) ? findRecord(name.slice(prefix.length)) : undefined;
};

const constantOf = (text: string): unknown[][] | undefined => {
  try {
    const [cells] = parseConstantFormula(`=${prefix}X(${text})`).args;
    return Array.isArray(cells) ? cells : undefined;
  } catch {
    return undefined;
  }
};

/** Is the node a reference, a name or a spill, which Excel can be asked for? */
const isReference = (node: FormulaNode): boolean =>
  node.kind === "name" ||
  (node.kind === "spill" && isReference(node.of)) ||
  (node.kind === "text" && node.token === "reference");

type Read = (reference: string) => Promise<unknown[][]>;

async function valueOf(nodes: readonly FormulaNode[], read: Read): Promise<{ cells?: unknown[][]; untold?: string }> {
  const parts = significant(nodes);
  const text = printFormula(parts);
  if (parts.length === 0) return {};
  const constant = constantOf(text);
  if (constant) return { cells: constant };
  const [only] = parts;
  if (parts.length === 1 && only?.kind === "call") {
    const explained = await explainCall(only, read);
    if (explained?.result) return { cells: explained.result };
    return { untold: explained ? `some argument of ${explained.record.id} can't be told` : "Excel works it out" };
  }
  if (parts.length === 1 && isReference(only!)) {
    try {
      return { cells: await read(text) };
    } catch (fault) {
      return { untold: fault instanceof Error ? fault.message : "it could not be read" };
    }
  }
  return { untold: "Excel works it out" };
}

async function explainCall(call: FormulaCall, read: Read): Promise<ExplainedCall | undefined> {
  const record = recordOf(call);
  if (!record) return undefined;
  const args: ExplainedArgument[] = [];
  for (const [index, { name, description, unit }] of record.arguments.entries()) {
    const nodes = call.args[index] ?? [];
    args.push({ name, description, unit, text: printFormula(significant(nodes)), ...(await valueOf(nodes, read)) });
  }
  const text = printFormula([call]);
  const isTooLong = call.args.slice(record.arguments.length).some((nodes) => significant(nodes).length > 0);
  if (isTooLong || args.some(({ untold }) => untold !== undefined)) return { record, text, arguments: args };
  return {
    record,
    text,
    arguments: args,
    result: callOf.get(record.id)!(...args.map(({ cells }) => cells)) as unknown[][],
  };
}

/** Every call of ours in a formula, outermost first. */
export async function explainFormula(formula: string, read: Read): Promise<ExplainedCall[]> {
  const explained: ExplainedCall[] = [];
  for (const call of callsIn(parseFormula(formula))) {
    const one = await explainCall(call, read);
    if (one) explained.push(one);
  }
  return explained;
}

/**
 * Does a cell that holds one call alone show something else than the answer computed again? Undefined where that can't be
 * told, as of a longer formula.
 */
export function showsAnother(formula: string, shown: unknown, calls: readonly ExplainedCall[]): boolean | undefined {
  const parts = significant(parseFormula(formula));
  const answer = calls[0]?.result?.[0]?.[0];
  if (parts.length !== 1 || parts[0]!.kind !== "call" || !recordOf(parts[0]!) || answer === undefined) return undefined;
  if (isErrorCell(answer)) return !(typeof shown === "string" && isErrorCode(shown));
  const plain = isCellDate(answer) ? answer.basicValue : answer;
  if (typeof plain === "number" && typeof shown === "number")
    return Math.abs(plain - shown) > 1e-9 * Math.max(1, Math.abs(plain));
  return plain !== shown;
}

/** The references and names that a formula reads, each once. */
export const feedsOf = (formula: string): string[] => [
  ...new Set(
    nodesIn(parseFormula(formula))
      .filter((node) => node.kind === "text" && node.token === "reference")
      .map((node) => printFormula([node])),
  ),
];
